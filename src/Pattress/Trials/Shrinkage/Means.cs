namespace Pattress.Trials.Shrinkage;

/// <summary>What the model needs of the tests: weight and mean of each kind, and the squares left within kinds.</summary>
internal sealed class Means
{
    private Means(double[] counts, double[] means, double squares, double freedom) => (Counts, Averages, Squares, Freedom) = (counts, means, squares, freedom);

    /// <summary>Tests of each kind; one that scatters more counts for less than one.</summary>
    public double[] Counts { get; }

    public double[] Averages { get; }

    /// <summary>Sum of squared deviations from the kinds' own means.</summary>
    public double Squares { get; }

    /// <summary>Tests less kinds: how much is known of the scatter.</summary>
    public double Freedom { get; }

    public static Means Of(IReadOnlyList<IReadOnlyList<double>> kinds)
    {
        double[] means = [.. kinds.Select(k => k.Average())];
        double squares = kinds.Select((k, i) => k.Sum(v => (v - means[i]) * (v - means[i]))).Sum();
        double[] counts = [.. kinds.Select(k => (double)k.Count)];
        return new(counts, means, squares, counts.Sum() - counts.Length);
    }

    /// <summary>The same with a weight for each test: the reciprocal of its variance over that of the others.</summary>
    /// <param name="logWeight">What the weights add to the ln of the likelihood, against all of them being 1.</param>
    public static Means Of(IReadOnlyList<IReadOnlyList<double>> kinds, IReadOnlyList<double[]> weights, out double logWeight)
    {
        double[] counts = [.. weights.Select(w => w.Sum())];
        double[] means = [.. kinds.Select((k, i) => k.Zip(weights[i], (v, w) => v * w).Sum() / counts[i])];
        double squares = kinds.Select((k, i) => k.Zip(weights[i], (v, w) => w * (v - means[i]) * (v - means[i])).Sum()).Sum();
        logWeight = weights.Sum(k => k.Sum(w => 0.5 * Math.Log(w))) - kinds.Select((k, i) => 0.5 * Math.Log(counts[i] / k.Count)).Sum();
        return new(counts, means, squares, kinds.Sum(k => k.Count) - kinds.Count);
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
