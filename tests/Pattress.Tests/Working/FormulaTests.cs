using Pattress.Working;

namespace Pattress.Tests.Working;

public class FormulaTests
{
    private static double Value(string formula, params (string Name, double Value)[] inputs) =>
        FormulaReader.Evaluate(formula, [.. inputs.Select(i => new KeyValuePair<string, double>(i.Name, i.Value))]);

    // Expected: arithmetic done by hand.
    [Theory]
    [InlineData("1 + 2 * 3", 7)]
    [InlineData("(1 + 2) * 3", 9)]
    [InlineData("8 / 4 / 2", 1)]
    [InlineData("10 - 4 - 3", 3)]
    [InlineData("-2 - -3", 1)]
    [InlineData("2 < 3 ? 5 : 7", 5)]
    [InlineData("2 >= 3 ? 5 : 2 == 2 ? 8 : 9", 8)]
    [InlineData("1 < 2 && 3 < 2 ? 1 : 0", 0)]
    [InlineData("1 > 2 || 3 > 2 ? 1 : 0", 1)]
    [InlineData("Pow(2, 10)", 1024)]
    [InlineData("Sqrt(16) + Abs(-3) + Min(4, 2) + Max(4, 2)", 13)]
    [InlineData("Ceiling(2.1) + Floor(2.9) + Round(2.6)", 8)]
    [InlineData("2.5e-1 * 4E+1", 10)]
    [InlineData("a * b", 6)]
    public void Evaluates(string formula, double expected) => Assert.Equal(expected, Value(formula, ("a", 2), ("b", 3)), 1e-12);

    [Fact]
    public void Knows_the_usual_functions()
    {
        Assert.Equal(1, Value("Exp(0) * Cos(0) + Sin(0) + Log(1) + Tan(0)"), 1e-15);
        Assert.Equal(3.14159265358979, Value("PI"), 1e-14);
    }

    [Theory]
    [InlineData("1 +")]
    [InlineData("(1")]
    [InlineData("nobody")]
    [InlineData("Foo(1)")]
    [InlineData("1 ? 2")]
    [InlineData("2 $ 3")]
    public void Refuses_what_it_does_not_know(string formula) => Assert.Throws<FormatException>(() => Value(formula));

    [Fact]
    public void A_step_is_typeset_on_one_line()
    {
        var trace = new Trace();
        double d = 6, l_ef = 60, rho_k = 350;
        trace.Step("f_ax_k", 0.52 * Math.Pow(d, -0.5) * Math.Pow(l_ef, -0.1) * Math.Pow(rho_k, 0.8), "N/mm²", "EN 1995-1-1 (8.39)",
            [In.Of(d), In.Of(l_ef), In.Of(rho_k)], "0.52 * Pow(d, -0.5) * Pow(l_ef, -0.1) * Pow(rho_k, 0.8)");
        Assert.Equal("f_ax,k = 0.52·d^−0.5·l_ef^−0.1·ρ_k^0.8 = 0.52·6^−0.5·60^−0.1·350^0.8 = 15.29 N/mm², EN 1995-1-1 (8.39)", FormulaText.Line(trace.Steps[0]));
    }

    [Theory]
    [InlineData("Sqrt(4 * A_s / PI)", "√(4·A_s / π)")]
    [InlineData("a - (b - c)", "a − (b − c)")]
    [InlineData("a / (b * c)", "a / (b·c)")]
    [InlineData("Pow(a + b, 2)", "(a + b)²")]
    [InlineData("f_uk <= 500 ? 0.6 : 0.5", "0.6 if f_uk ≤ 500, else 0.5")]
    [InlineData("Min(gamma_M, 1)", "min(γ_M; 1)")]
    [InlineData("-a * b", "−a·b")]
    public void Formulas_are_typeset(string formula, string expected) => Assert.Equal(expected, FormulaText.Formula(formula));

    [Theory]
    [InlineData(0.000123456, "0.0001235")]
    [InlineData(12345.6, "12346")]
    [InlineData(-2.5, "−2.5")]
    [InlineData(0, "0")]
    public void Numbers_are_rounded_for_the_eye(double value, string expected) => Assert.Equal(expected, FormulaText.Number(value));
}
