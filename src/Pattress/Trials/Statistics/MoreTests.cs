using Pattress.Trials.Special;

namespace Pattress.Trials.Statistics;

/// <summary>How many tests would settle which of two kinds is the stronger.</summary>
public static class MoreTests
{
    /// <summary>
    /// Tests of each kind in all for which the one-sided interval of the difference of two lognormal medians would just
    /// exclude 0, if the medians were in the ratio seen: n = 2 (z s / ln ratio)²; null when the ratio is 1 or the number above 10,000.
    /// </summary>
    /// <param name="ratio">Ratio of the two medians, above 0.</param>
    /// <param name="cov">Coefficient of variation of single tests, above 0.</param>
    /// <param name="confidence">Above 0.5 and below 1.</param>
    public static int? OfEach(double ratio, double cov, double confidence)
    {
        if (!(ratio > 0 && cov > 0)) throw new ArgumentOutOfRangeException(nameof(ratio), ratio, "ratio and scatter above 0");
        if (!(confidence is > 0.5 and < 1)) throw new ArgumentOutOfRangeException(nameof(confidence), confidence, "above 0.5 and below 1");
        double z = Normal.Quantile(confidence), log = Math.Log(ratio);
        double n = 2 * z * z * Math.Log(1 + cov * cov) / (log * log);
        return n <= 10_000 ? (int)Math.Ceiling(n) : null;
    }
}
