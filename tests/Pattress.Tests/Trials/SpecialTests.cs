using Pattress.Trials.Special;

namespace Pattress.Tests.Trials;

/// <summary>Special functions against scipy, computed while the tests run.</summary>
public sealed class SpecialTests
{
    [Theory]
    [InlineData("normal_quantile", 1e-13)]
    [InlineData("normal_cdf", 2e-13)]
    [InlineData("student_quantile", 1e-11)]
    [InlineData("beta_inverse", 1e-11)]
    [InlineData("chi_square_tail", 1e-11)]
    public void Agrees_with_scipy(string name, double relative)
    {
        foreach (var v in ScipyReferences.Of(name))
            Assert.True(Math.Abs(Ours(name, v.Arguments) - v.Expected) <= relative * Math.Abs(v.Expected) + 1e-300,
                $"{name}({string.Join(", ", v.Arguments)}) = {Ours(name, v.Arguments):R}, scipy {v.Expected:R}");
    }

    private static double Ours(string name, double[] a) => name switch
    {
        "normal_quantile" => Normal.Quantile(a[0]),
        "normal_cdf" => Normal.Cdf(a[0]),
        "student_quantile" => StudentT.Quantile(a[0], a[1]),
        "beta_inverse" => BetaFunctions.Inverse(a[0], a[1], a[2]),
        "chi_square_tail" => GammaFunctions.ChiSquareUpperTail(a[0], a[1]),
        _ => throw new ArgumentException(name),
    };

    [Fact]
    public void The_table_agrees_with_the_function_everywhere()
    {
        for (double x = -13; x < 10; x += 0.00317)
        {
            double error = Math.Abs(NormalTable.Cdf(x) - Normal.Cdf(x));
            Assert.True(error < 1e-15, $"{x}: {error}");
        }
    }

    [Fact]
    public void A_rule_of_forty_nodes_is_exact_for_degree_79()
    {
        double even = GaussLegendre.Forty.Integrate(x => Math.Pow(x, 78), -1, 1), odd = GaussLegendre.Forty.Integrate(x => Math.Pow(x, 79), -1, 1);
        Assert.Equal(2.0 / 79, even, 1e-15);
        Assert.Equal(0, odd, 1e-15);
    }
}
