using Pattress.Trials.Claims;
using Pattress.Trials.Installations;
using Pattress.Trials.Statistics;

namespace Pattress.Tests.Trials;

public sealed class SensitivityTests
{
    /// <summary>With almost all scatter in one unknown, knowing that one helps most.</summary>
    [Theory]
    [InlineData(0.6, 0.02, 0.05, Unknown.Load)]
    [InlineData(0.05, 0.5, 0.05, Unknown.Batch)]
    [InlineData(0.05, 0.02, 0.5, Unknown.OwnResistance)]
    public void The_widest_unknown_matters_most(double load, double batch, double own, Unknown expected)
    {
        BracketOnWall[] brackets = [.. Enumerable.Repeat(new BracketOnWall(300, own, 140, 0.02), 4)];
        Assert.Equal(expected, InstallationSensitivity.Of([1.0], brackets, new(LoadLaw.Lognormal, load, batch))[0].Of);
    }

    /// <summary>A weak wall that is unlikely, yet the one that fails: knowing the wall is the good one helps most.</summary>
    [Fact]
    public void An_unlikely_weak_wall_matters()
    {
        BracketOnWall strong = new(900, 0.15, 120, 0.05), weak = new(140, 0.15, 120, 0.05);
        var first = InstallationSensitivity.Of([0.9, 0.1], [strong, strong, weak, weak], new(LoadLaw.Lognormal, 0.3))[0];
        Assert.Equal(Unknown.Wall, first.Of);
        Assert.Equal(InstallationFailure.Probability([strong, strong], new(LoadLaw.Lognormal, 0.3)), first.IfKnown, 1e-12);
    }

    /// <summary>At the number found a difference as seen has just the confidence asked for; one test fewer has less.</summary>
    [Theory]
    [InlineData(1.5, 0.2)]
    [InlineData(1.1, 0.15)]
    public void Enough_tests_are_just_enough(double ratio, double cov)
    {
        int n = MoreTests.OfEach(ratio, cov, 0.95)!.Value;
        // The mean of n tests scatters like one test with ln(1 + V²) / n.
        double Chance(int tests) => SingleTests.ChanceOfDifference(ratio, 1, Math.Sqrt(Math.Exp(Math.Log(1 + cov * cov) / tests) - 1)) / 2;
        Assert.True(Chance(n) <= 0.05 && (n == 1 || Chance(n - 1) > 0.05), $"{n}");
        Assert.Null(MoreTests.OfEach(1, cov, 0.95));
    }
}
