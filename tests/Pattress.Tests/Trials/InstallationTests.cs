using Pattress.Trials.Installations;

namespace Pattress.Tests.Trials;

public sealed class InstallationTests
{
    /// <summary>Against scipy.integrate.quad on the same definition, run with the tests; the promise is 1e-10 absolute.</summary>
    [Fact]
    public void Agrees_with_scipy_quadrature()
    {
        foreach (var v in ScipyReferences.Of("installation"))
        {
            var (walls, brackets, shared) = Read(v.Arguments);
            double ours = InstallationFailure.Probability(walls, brackets, shared);
            Assert.True(Math.Abs(ours - v.Expected) < 1e-10, $"ours {ours:R}, scipy {v.Expected:R}, {shared}");
        }
    }

    private static (double[] Walls, BracketOnWall[] Brackets, SharedCauses Shared) Read(double[] a)
    {
        int walls = (int)a[3], brackets = (int)a[4], at = 5 + walls;
        var shared = new SharedCauses(a[0] == 1 ? LoadLaw.Gumbel : LoadLaw.Lognormal, a[1], a[2]);
        var all = Enumerable.Range(0, walls * brackets).Select(i => new BracketOnWall(a[at + 4 * i], a[at + 4 * i + 1], a[at + 4 * i + 2], a[at + 4 * i + 3]));
        return (a[5..at], [.. all], shared);
    }

    /// <summary>One bracket, all lognormal: the closed form of the ratio of two lognormals, whatever is called shared.</summary>
    [Theory]
    [InlineData(400, 0.25, 100, 0.3)]
    [InlineData(250, 0.15, 120, 0.6)]
    [InlineData(900, 0.4, 90, 0.1)]
    public void One_bracket_is_the_closed_form(double r, double vr, double s, double vs)
    {
        double shared = InstallationFailure.Probability([new(r, vr, s)], new(LoadLaw.Lognormal, vs));
        double own = InstallationFailure.Probability([new(r, vr, s, vs)], new(LoadLaw.Lognormal, 0));
        Assert.Equal(BracketFailure.Probability(r, vr, s, vs), shared, 1e-12);
        Assert.Equal(BracketFailure.Probability(r, vr, s, vs), own, 1e-15);
    }

    /// <summary>The closed form itself: B-LN-1 of the reliability textbooks (beta 3.075738, Pf 1.049913e-3).</summary>
    [Fact]
    public void The_lognormal_closed_form()
    {
        Assert.Equal(3.075738, BracketFailure.ReliabilityIndex(4.0, 0.15, 1.5, 0.30), 5e-7);
        Assert.Equal(1.049913e-3, BracketFailure.Probability(4.0, 0.15, 1.5, 0.30), 5e-10);
        Assert.Equal(0, BracketFailure.Probability(4.0, 0.15, 0, 0.30));
    }

    [Theory]
    [InlineData(double.NaN, 0.2, 100)]
    [InlineData(0, 0.2, 100)]
    [InlineData(300, -0.2, 100)]
    [InlineData(300, 0.2, -1)]
    [InlineData(300, 0.2, double.PositiveInfinity)]
    public void What_makes_no_sense_is_refused(double r, double vr, double s) =>
        Assert.ThrowsAny<ArgumentException>(() => InstallationFailure.Probability([new(r, vr, s)], new(LoadLaw.Lognormal, 0.3)));

    [Fact]
    public void Walls_must_sum_to_one_and_fit_the_brackets()
    {
        BracketOnWall b = new(300, 0.2, 100);
        Assert.Throws<ArgumentException>(() => InstallationFailure.Probability([0.5, 0.4], [b, b], new(LoadLaw.Lognormal, 0.3)));
        Assert.Throws<ArgumentException>(() => InstallationFailure.Probability([0.5, 0.5], [b, b, b], new(LoadLaw.Lognormal, 0.3)));
    }
}
