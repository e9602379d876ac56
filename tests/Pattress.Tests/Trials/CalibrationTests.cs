using Pattress.Trials.Shrinkage;
using Pattress.Trials.Statistics;

namespace Pattress.Tests.Trials;

/// <summary>Whether what is said with a confidence holds that often, on simulated benches.</summary>
public sealed class CalibrationTests
{
    private const int Benches = 10_000, Tests = 5;

    private static double Bell(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    /// <summary>The 5 % fractile at 75 % confidence lies below the true one in 75 +- 1.5 % of 10,000 benches where its model holds.</summary>
    [Fact]
    public void The_characteristic_value_covers_as_often_as_it_says() => Assert.InRange(Coverage(new Random(3), (r, _) => Bell(r), -1.6448536), 0.735, 0.765);

    /// <summary>
    /// Where the model does not hold: a fifth of the tests fails by another, weaker mechanism (3 standard deviations lower).
    /// The true 5 % fractile is then -3 + u, with 0.2 Phi(u) + 0.8 Phi(u - 3) = 0.05, u = -0.6745; the value covers far less often.
    /// </summary>
    [Fact]
    public void Two_ways_of_failing_break_the_promise() =>
        Assert.True(Coverage(new Random(3), (r, _) => r.NextDouble() < 0.2 ? Bell(r) - 3 : Bell(r), -3.6745) < 0.70);

    private static double Coverage(Random random, Func<Random, int, double> draw, double trueFractile)
    {
        double k = ToleranceFactor.ScatterUnknown(Tests, 0.95, 0.75);
        int covered = 0;
        var bench = new double[Tests];
        for (int i = 0; i < Benches; i++)
        {
            for (int j = 0; j < Tests; j++) bench[j] = draw(random, j);
            if (Characteristic.Value(bench, k, StrengthLaw.Normal) <= trueFractile) covered++;
        }
        return covered / (double)Benches;
    }

    /// <summary>
    /// Kinds drawn from a fixed spread and scatter well inside the prior: the predictive's 5 % fractile is undercut by a
    /// new test in about 5 %, and the probabilities it gives are level (mean one half). Limits are four standard errors.
    /// </summary>
    [Fact]
    public void The_predictions_of_shrinkage_come_true()
    {
        var random = new Random(17);
        const int benches = 150;
        int below = 0;
        double sum = 0;
        for (int i = 0; i < benches; i++)
        {
            double s = 0.1 + 0.15 * random.NextDouble(), tau = 0.2 * Math.Tan(Math.PI / 2 * 0.9 * random.NextDouble());
            double[] theta = [.. Enumerable.Range(0, 6).Select(_ => 6 + tau * Bell(random))];
            var fit = ShrunkKinds.Fit([.. theta.Select((t, k) => new KindSeries($"{k}", [.. Enumerable.Range(0, 1 + k % 3).Select(_ => t + s * Bell(random))]))]);
            double p = fit.NextOf(i % 6).Cdf(theta[i % 6] + s * Bell(random));
            if (p < 0.05) below++;
            sum += p;
        }
        Assert.InRange(below / (double)benches, 0, 0.05 + 4 * Math.Sqrt(0.05 * 0.95 / benches));
        Assert.InRange(sum / benches, 0.5 - 4 / Math.Sqrt(12.0 * benches), 0.5 + 4 / Math.Sqrt(12.0 * benches));
    }

    /// <summary>
    /// Benches drawn from the model's own prior (ln s uniform from ln 0.01 to ln 1.5, tau half-Cauchy with scale 0.2): where a new test falls in its
    /// prediction is uniform. Chi-square over ten classes, refused at 0.1 %.
    /// </summary>
    [Fact]
    public void Kinds_from_its_own_prior_fall_where_shrinkage_predicts()
    {
        var random = new Random(29);
        const int benches = Benches, classes = 10;
        var counts = new int[classes];
        for (int i = 0; i < benches; i++)
        {
            double s = Math.Exp(Math.Log(0.01) + random.NextDouble() * Math.Log(150)), tau = 0.2 * Math.Tan(Math.PI / 2 * random.NextDouble());
            double[] theta = [.. Enumerable.Range(0, 5).Select(_ => 6 + tau * Bell(random))];
            var fit = ShrunkKinds.Fit([.. theta.Select((t, k) => new KindSeries($"{k}", [.. Enumerable.Range(0, 1 + k % 3).Select(_ => t + s * Bell(random))]))]);
            counts[Math.Min(classes - 1, (int)(classes * fit.NextOf(i % 5).Cdf(theta[i % 5] + s * Bell(random))))]++;
        }
        double expected = benches / (double)classes, chiSquare = counts.Sum(c => (c - expected) * (c - expected) / expected);
        Assert.True(Pattress.Trials.Special.GammaFunctions.ChiSquareUpperTail(chiSquare, classes - 1) > 0.001, $"{chiSquare}: {string.Join(' ', counts)}");
    }
}
