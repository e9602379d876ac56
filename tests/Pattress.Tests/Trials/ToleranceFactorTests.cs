using CsCheck;
using Pattress.Trials.Special;
using Pattress.Trials.Statistics;

namespace Pattress.Tests.Trials;

public sealed class ToleranceFactorTests
{
    /// <summary>Forty factors over random n, fractile and confidence, by scipy while the tests run.</summary>
    [Fact]
    public void Agrees_with_scipy()
    {
        var values = ScipyReferences.Of("tolerance");
        Assert.True(values.Count >= 40);
        foreach (var v in values)
        {
            double ours = ToleranceFactor.ScatterUnknown((int)v.Arguments[0], v.Arguments[1], v.Arguments[2]);
            Assert.True(Math.Abs(ours - v.Expected) < 1e-10 * v.Expected, $"k({string.Join(", ", v.Arguments)}) = {ours:R}, scipy {v.Expected:R}");
        }
    }

    /// <summary>A zero noncentrality gives Student's t; the quantile undoes the distribution function.</summary>
    [Fact]
    public void Noncentral_t_holds_together() =>
        Gen.Select(Gen.Int[1, 200], Gen.Double[-8, 40], Gen.Double[0.001, 0.999]).Sample((degrees, delta, p) =>
        {
            double t = NoncentralT.Quantile(p, degrees, delta);
            return Math.Abs(NoncentralT.Cdf(t, degrees, delta) - p) < 1e-10
                && Math.Abs(NoncentralT.Cdf(t, degrees, 0) - StudentT.Cdf(t, degrees)) < 1e-10;
        }, iter: 500);

    /// <summary>More tests never raise k, more confidence never lowers it.</summary>
    [Fact]
    public void Falls_with_tests_and_rises_with_confidence() =>
        Gen.Select(Gen.Int[2, 400], Gen.Double[0.5, 0.99], Gen.Double[0.5, 0.9]).Sample((n, exceeded, confidence) =>
        {
            double k = ToleranceFactor.ScatterUnknown(n, exceeded, confidence);
            return ToleranceFactor.ScatterUnknown(n + 1, exceeded, confidence) <= k + 1e-12
                && ToleranceFactor.ScatterUnknown(n, exceeded, confidence + 0.05) >= k;
        }, iter: 300);

    [Fact]
    public void A_million_tests_need_no_surcharge() =>
        Assert.Equal(Normal.Quantile(0.95), ToleranceFactor.ScatterUnknown(1_000_000, 0.95, 0.5), 1e-5);

    [Fact]
    public void Says_how_many_tests_would_do()
    {
        // k(10, .95, .75) = 2.1037 and k(8) = 2.1883, ISO 16269-6 by noncentral t: 2.15 needs nine or ten.
        Assert.InRange(ToleranceFactor.TestsNeeded(2.15, 0.95, 0.75)!.Value, 9, 10);
        Assert.Null(ToleranceFactor.TestsNeeded(1.6, 0.95, 0.75));
    }
}
