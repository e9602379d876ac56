namespace Pattress.Trials.Shrinkage;

/// <summary>What the model needs of the tests: count and mean of each kind, and the squares left within kinds.</summary>
internal sealed class Means
{
    private Means(double[] counts, double[] means, double squares) => (Counts, Averages, Squares) = (counts, means, squares);

    public double[] Counts { get; }

    public double[] Averages { get; }

    /// <summary>Sum of squared deviations from the kinds' own means.</summary>
    public double Squares { get; }

    /// <summary>Tests less kinds: how much is known of the scatter.</summary>
    public double Freedom => Counts.Sum() - Counts.Length;

    public static Means Of(IReadOnlyList<IReadOnlyList<double>> kinds)
    {
        double[] means = [.. kinds.Select(k => k.Average())];
        double squares = kinds.Select((k, i) => k.Sum(v => (v - means[i]) * (v - means[i]))).Sum();
        return new([.. kinds.Select(k => (double)k.Count)], means, squares);
    }

    /// <summary>
    /// ln of the likelihood given s and tau with the common mean integrated out, up to a constant; and the common mean
    /// with its variance.
    /// </summary>
    public double LogLikelihood(double s, double tau, out double mean, out double variance)
    {
        double product = 1, logs = 0, sw = 0, swy = 0, swyy = 0, s2 = s * s, t2 = tau * tau;
        for (int i = 0; i < Counts.Length; i++)
        {
            double v = s2 / Counts[i] + t2, w = 1 / v, y = Averages[i];
            product *= v;
            if (product is < 1e-200 or > 1e200) { logs += Math.Log(product); product = 1; }
            sw += w;
            swy += w * y;
            swyy += w * y * y;
        }
        mean = swy / sw;
        variance = 1 / sw;
        double off = Math.Max(0, swyy - swy * mean);
        return -Freedom * Math.Log(s) - Squares / (2 * s2) - 0.5 * (logs + Math.Log(product * sw) + off);
    }
}
