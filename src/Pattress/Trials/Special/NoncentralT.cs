namespace Pattress.Trials.Special;

/// <summary>
/// The noncentral t law: T = (Z + delta) / Y, with Y = sqrt(chi-square / degrees). By quadrature over Y, cut where the
/// normal factor is 0 or 1 so that each panel is smooth (the usual series loses its digits in the tails).
/// </summary>
public static class NoncentralT
{
    /// <summary>P(T &lt;= t); degrees a whole number of at least 1, any noncentrality. Absolute error about 1e-13.</summary>
    public static double Cdf(double t, int degrees, double delta)
    {
        CheckDegrees(degrees);
        return t < 0 ? 1 - At(-t, degrees, -delta).Value : At(t, degrees, delta).Value;
    }

    /// <summary>Density at t.</summary>
    public static double Pdf(double t, int degrees, double delta)
    {
        CheckDegrees(degrees);
        return t < 0 ? At(-t, degrees, -delta).Slope : At(t, degrees, delta).Slope;
    }

    /// <summary>The t with P(T &lt;= t) = p, 0 &lt; p &lt; 1.</summary>
    public static double Quantile(double p, int degrees, double delta)
    {
        CheckDegrees(degrees);
        if (!(p > 0 && p < 1)) throw new ArgumentOutOfRangeException(nameof(p), p, "a probability strictly between 0 and 1");
        bool negative = p < Normal.Cdf(-delta);
        double q = negative ? 1 - p : p, d = negative ? -delta : delta, high = Math.Max(1, 2 * d);
        while (At(high, degrees, d).Value < q) high *= 2;
        double t = Root.Newton(x => Less(At(x, degrees, d), q), Guess(q, degrees, d, high), 0, high);
        return negative ? -t : t;
    }

    private static (double Value, double Slope) Less((double Value, double Slope) cdf, double p) => (cdf.Value - p, cdf.Slope);

    private static void CheckDegrees(int degrees)
    {
        if (degrees < 1) throw new ArgumentOutOfRangeException(nameof(degrees), degrees, "at least 1");
    }

    /// <summary>Jennett and Welch's normal approximation to the quantile, as in the NIST handbook, 7.2.6.3.</summary>
    private static double Guess(double p, int degrees, double delta, double high)
    {
        double z = Normal.Quantile(p), a = 1 - z * z / (2.0 * degrees), b = delta * delta - z * z;
        double inside = delta * delta - a * b;
        double t = a > 0.1 && inside > 0 ? (delta + Math.Sign(z) * Math.Sqrt(inside)) / a : 0.5 * high;
        return t > 0 && t < high ? t : 0.5 * high;
    }

    /// <summary>Distribution and density at t &gt;= 0.</summary>
    private static (double Value, double Slope) At(double t, int degrees, double delta)
    {
        double width = 10 / Math.Sqrt(2.0 * degrees), low = Math.Max(0, 1 - width), high = 1 + width;
        double from = Math.Clamp((delta - 8.5) / t, low, high), to = Math.Clamp((delta + 8.5) / t, low, high);
        if (t == 0) (from, to) = (low, high);
        var (value, slope) = Middle(t, degrees, delta, from, to);
        return (Math.Min(1, value + ChiTail(degrees, to, high)), slope);
    }

    private static (double Value, double Slope) Middle(double t, int degrees, double delta, double from, double to)
    {
        double half = 0.5 * (to - from), middle = 0.5 * (from + to), value = 0, slope = 0, norm = LogNorm(degrees);
        ReadOnlySpan<double> nodes = GaussLegendre.Forty.Nodes, weights = GaussLegendre.Forty.Weights;
        for (int i = 0; i < nodes.Length; i++)
        {
            double y = middle + half * nodes[i], mass = weights[i] * Density(y, degrees, norm), x = t * y - delta;
            value += mass * NormalTable.Cdf(x);
            slope += mass * y * Normal.Pdf(x);
        }
        return (half * value, half * slope);
    }

    /// <summary>P(Y &gt; from), where Phi is 1.</summary>
    private static double ChiTail(int degrees, double from, double high)
    {
        if (from >= high) return 0;
        double half = 0.5 * (high - from), middle = 0.5 * (from + high), sum = 0, norm = LogNorm(degrees);
        ReadOnlySpan<double> nodes = GaussLegendre.Forty.Nodes, weights = GaussLegendre.Forty.Weights;
        for (int i = 0; i < nodes.Length; i++) sum += weights[i] * Density(middle + half * nodes[i], degrees, norm);
        return half * sum;
    }

    /// <summary>ln of the constant of Y's density relative to its value at y = 1, so that nothing cancels for many degrees.</summary>
    private static double LogNorm(int degrees)
    {
        double half = 0.5 * degrees;
        return half < 12
            ? Math.Log(2) + half * Math.Log(half) - half - GammaFunctions.LogGamma(half)
            : Math.Log(2) + 0.5 * Math.Log(half / (2 * Math.PI)) - GammaFunctions.Stirling(half);
    }

    private static double Density(double y, int degrees, double norm) =>
        Math.Exp(norm + (degrees - 1) * Math.Log(y) - 0.5 * degrees * (y * y - 1));
}
