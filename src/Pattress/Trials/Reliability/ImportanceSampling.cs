using Pattress.Trials.Special;

namespace Pattress.Trials.Reliability;

/// <summary>An estimate by sampling.</summary>
/// <param name="Probability">The estimate.</param>
/// <param name="StandardError">Its standard error.</param>
public sealed record Sampled(double Probability, double StandardError);

/// <summary>Sampling about every design point at once, each sample weighed by how much likelier it was made than it is.</summary>
public static class ImportanceSampling
{
    /// <summary>The chance that any of the limit states fails; they share the same variables in the same order.</summary>
    /// <param name="states">One limit state, or the members of a series system.</param>
    /// <param name="points">All their design points.</param>
    /// <param name="samples">How many, at least 2.</param>
    /// <param name="seed">Same seed, same answer.</param>
    public static Sampled Probability(IReadOnlyList<LimitState> states, IReadOnlyList<DesignPoint> points, int samples, int seed)
    {
        if (points.Count == 0) throw new ArgumentException("sampling needs at least one design point");
        var random = new Random(seed);
        double[] shares = Shares(points);
        double sum = 0, squares = 0;
        for (int i = 0; i < samples; i++)
        {
            double[] u = Draw(random, points, shares);
            double weight = Fails(states, u) ? Weight(u, points, shares) : 0;
            sum += weight;
            squares += weight * weight;
        }
        double mean = sum / samples;
        return new(mean, Math.Sqrt(Math.Max(0, squares / samples - mean * mean) / (samples - 1)));
    }

    private static bool Fails(IReadOnlyList<LimitState> states, double[] u)
    {
        foreach (var s in states) if (s.At(u) < 0) return true;
        return false;
    }

    private static double[] Shares(IReadOnlyList<DesignPoint> points)
    {
        double sum = points.Sum(p => p.Probability);
        return [.. points.Select(p => sum > 0 ? p.Probability / sum : 1.0 / points.Count)];
    }

    private static double[] Draw(Random random, IReadOnlyList<DesignPoint> points, double[] shares)
    {
        double pick = random.NextDouble();
        int at = 0;
        while (at < shares.Length - 1 && (pick -= shares[at]) > 0) at++;
        var u = new double[points[at].U.Length];
        for (int i = 0; i < u.Length; i++) u[i] = points[at].U[i] + StandardNormal(random);
        return u;
    }

    private static double StandardNormal(Random random) => Normal.Quantile(Math.Max(random.NextDouble(), 1e-17));

    /// <summary>phi(u) / sum of shares phi(u - u_k), as 1 / sum shares exp(u.u_k - |u_k|²/2).</summary>
    private static double Weight(double[] u, IReadOnlyList<DesignPoint> points, double[] shares)
    {
        double density = 0;
        for (int k = 0; k < shares.Length; k++)
            density += shares[k] * Math.Exp(Vectors.Dot(u, points[k].U) - 0.5 * Vectors.Dot(points[k].U, points[k].U));
        return 1 / density;
    }
}
