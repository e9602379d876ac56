using Pattress.Trials.Special;

namespace Pattress.Trials.Statistics;

/// <summary>One load at which a test failed, or was stopped before it failed (a suspension).</summary>
/// <param name="Load">Above 0.</param>
/// <param name="Failed">False for a suspension.</param>
public readonly record struct Reached(double Load, bool Failed = true);

/// <summary>A two-parameter Weibull law fitted to tests: P(load &lt;= x) = 1 - exp(-(x/scale)^shape).</summary>
public sealed record Weibull(double Shape, double Scale)
{
    /// <summary>The load that a share <paramref name="p"/> of the population does not reach.</summary>
    public double Quantile(double p) => Scale * Math.Pow(-Math.Log(1 - p), 1 / Shape);

    /// <summary>Maximum likelihood; a suspension counts as having survived its load.</summary>
    /// <exception cref="ArgumentException">Fewer than two different failures, or a load not above 0.</exception>
    public static Weibull Likeliest(IReadOnlyList<Reached> tests)
    {
        Check(tests);
        double top = tests.Max(t => t.Load), meanLog = tests.Where(t => t.Failed).Average(t => Math.Log(t.Load / top));
        double high = 1;
        while (Score(tests, top, meanLog, high) < 0) high *= 2;
        double shape = Root.Bisect(k => Score(tests, top, meanLog, k), high > 1 ? high / 2 : 1e-3, high);
        double mean = tests.Sum(t => Math.Pow(t.Load / top, shape)) / tests.Count(t => t.Failed);
        return new(shape, top * Math.Pow(mean, 1 / shape));
    }

    /// <summary>Increasing in the shape: sum x^k ln x / sum x^k - 1/k - mean of ln x over failures.</summary>
    private static double Score(IReadOnlyList<Reached> tests, double top, double meanLog, double shape)
    {
        double weighted = 0, total = 0;
        foreach (var t in tests)
        {
            double log = Math.Log(t.Load / top), power = Math.Exp(shape * log);
            weighted += power * log;
            total += power;
        }
        return weighted / total - 1 / shape - meanLog;
    }

    /// <summary>
    /// Rank regression of ln load on the Weibull scale (X on Y): Benard's median ranks (i - 0.3)/(n + 0.4), ranks
    /// raised for suspensions after Johnson. Another method than the likeliest fit, with other numbers.
    /// </summary>
    public static Weibull RankRegression(IReadOnlyList<Reached> tests)
    {
        Check(tests);
        var points = MedianRanks(tests).ToList();
        double mx = points.Average(p => p.X), my = points.Average(p => p.Y);
        double slope = points.Sum(p => (p.X - mx) * (p.Y - my)) / points.Sum(p => (p.Y - my) * (p.Y - my));
        return new(1 / slope, Math.Exp(mx - slope * my));
    }

    private static IEnumerable<(double X, double Y)> MedianRanks(IReadOnlyList<Reached> tests)
    {
        double rank = 0;
        int n = tests.Count, seen = 0;
        foreach (var t in tests.OrderBy(t => t.Load).ThenBy(t => t.Failed ? 0 : 1))
        {
            if (t.Failed)
            {
                rank += (n + 1 - rank) / (n - seen + 1);
                yield return (Math.Log(t.Load), Math.Log(-Math.Log(1 - (rank - 0.3) / (n + 0.4))));
            }
            seen++;
        }
    }

    private static void Check(IReadOnlyList<Reached> tests)
    {
        if (tests.Any(t => !(t.Load > 0 && double.IsFinite(t.Load)))) throw new ArgumentException("loads must be above 0");
        if (tests.Where(t => t.Failed).Select(t => t.Load).Distinct().Count() < 2) throw new ArgumentException("at least two different loads at failure are needed");
    }
}
