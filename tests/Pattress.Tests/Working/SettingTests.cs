using Pattress.Working;

namespace Pattress.Tests.Working;

/// <summary>Formulas set in type.</summary>
public sealed class SettingTests
{
    // MathML Core's own elements (W3C): mfrac over and under, msqrt, msub, msup, mn for numbers, mi for symbols, mo for signs.
    [Theory]
    [InlineData("a / b", "<math><mfrac><mi>a</mi><mi>b</mi></mfrac></math>")]
    [InlineData("Pow(d, 2)", "<math><msup><mi>d</mi><mn>2</mn></msup></math>")]
    [InlineData("f_ax_k", "<math><msub><mi>f</mi><mtext>ax,k</mtext></msub></math>")]
    [InlineData("Pow(rho_k, 0.8)", "<math><msubsup><mi>ρ</mi><mtext>k</mtext><mn>0.8</mn></msubsup></math>")]
    [InlineData("Sqrt(4 * A)", "<math><msqrt><mrow><mn>4</mn><mo>·</mo><mi>A</mi></mrow></msqrt></math>")]
    [InlineData("a + b", "<math><mi>a</mi></math> <math><mrow><mo>+</mo><mi>b</mi></mrow></math>")]
    [InlineData("a < b", "<math><mi>a</mi></math> <math><mrow><mo>&lt;</mo><mi>b</mi></mrow></math>")]
    public void Markup_of_a_formula(string formula, string expected) => Assert.Equal(expected, MathMarkup.Line(FormulaSetting.Formula(formula)));

    // Parentheses only where they are needed once quotients are fractions and powers stand above.
    [Theory]
    [InlineData("(a + b) / (c * d)", "((a+b) / (c*d))")]
    [InlineData("Pow(a / b, 2)", "Pow((((a) / (b))), 2)")]
    [InlineData("Pow(a + b, -0.5)", "Pow((a+b), -0.5)")]
    [InlineData("a - (b - c)", "a-(b-c)")]
    [InlineData("a * (b + c)", "a*(b+c)")]
    [InlineData("Min(Min(1, 2), Max(3, 4))", "Min(1, Min(2, Max(3, 4)))")]
    [InlineData("2 * Pow(Pow(3, 2), 3)", "2*Pow((Pow(3, 2)), 3)")]
    [InlineData("2 * -3", "2*(-3)")]
    public void Set_and_read_back(string formula, string expected) => Assert.Equal(expected.Replace("a", "A").Replace("b", "B").Replace("c", "C").Replace("d", "D").Replace("MAx", "Max"), SetBack.Line(FormulaSetting.Formula(formula)));

    [Theory]
    [InlineData("1E-05", "Pow(10, -05)"), InlineData("1.5E+6", "1.5*Pow(10, 6)"), InlineData("-2.5", "-2.5")]
    public void Powers_of_ten(string number, string expected) => Assert.Equal(expected, SetBack.Line(FormulaSetting.Written(number)));

    [Fact]
    public void A_line_is_broken_before_signs() =>
        Assert.Equal(["A", "+B", "*Pow(C, 2)", "-D"], FormulaSetting.Pieces(FormulaSetting.Formula("a + b * Pow(c, 2) - d")).Select(SetBack.Line));
}
