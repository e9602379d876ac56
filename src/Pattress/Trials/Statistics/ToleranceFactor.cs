using Pattress.Trials.Special;

namespace Pattress.Trials.Statistics;

/// <summary>
/// Factors k such that mean - k s lies below a share of the population with a stated confidence (normal law).
/// </summary>
public static class ToleranceFactor
{
    /// <summary>Scatter unknown: k = t'(confidence; n - 1; u sqrt n) / sqrt n, noncentral t by quadrature.</summary>
    /// <param name="n">Number of tests, at least 2.</param>
    /// <param name="exceeded">Share of the population above the value, above 0.5 and below 1: 0.95 for a 5 % fractile.</param>
    /// <param name="confidence">Between 0 and 1, both excluded.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double ScatterUnknown(int n, double exceeded, double confidence)
    {
        Check(n, 2, exceeded, confidence);
        double root = Math.Sqrt(n);
        return NoncentralT.Quantile(confidence, n - 1, Normal.Quantile(exceeded) * root) / root;
    }

    /// <summary>Scatter known (ISO 16269-6): k = u + u(confidence) / sqrt n; n at least 1.</summary>
    public static double ScatterKnown(int n, double exceeded, double confidence)
    {
        Check(n, 1, exceeded, confidence);
        return Normal.Quantile(exceeded) + Normal.Quantile(confidence) / Math.Sqrt(n);
    }

    /// <summary>The approximation of the NIST/SEMATECH handbook 7.2.6.3; null where it has no value (few tests, high confidence).</summary>
    public static double? Approximate(int n, double exceeded, double confidence)
    {
        Check(n, 2, exceeded, confidence);
        double zp = Normal.Quantile(exceeded), zg = Normal.Quantile(confidence);
        double a = 1 - zg * zg / (2.0 * (n - 1)), b = zp * zp - zg * zg / n, inside = zp * zp - a * b;
        return a > 0 && inside >= 0 ? (zp + Math.Sign(zg) * Math.Sqrt(inside)) / a : null;
    }

    /// <summary>Tests needed for k not to exceed <paramref name="factor"/>; null if ten thousand do not suffice.</summary>
    public static int? TestsNeeded(double factor, double exceeded, double confidence)
    {
        int low = 2, high = 10_000;
        if (ScatterUnknown(high, exceeded, confidence) > factor) return null;
        while (low < high)
        {
            int middle = (low + high) / 2;
            if (ScatterUnknown(middle, exceeded, confidence) <= factor) high = middle; else low = middle + 1;
        }
        return low;
    }

    private static void Check(int n, int least, double exceeded, double confidence)
    {
        if (n < least) throw new ArgumentOutOfRangeException(nameof(n), n, $"at least {least} tests");
        if (!(exceeded is >= 0.5 and < 1)) throw new ArgumentOutOfRangeException(nameof(exceeded), exceeded, "from 0.5 to below 1");
        if (!(confidence is > 0 and < 1)) throw new ArgumentOutOfRangeException(nameof(confidence), confidence, "between 0 and 1");
    }
}
