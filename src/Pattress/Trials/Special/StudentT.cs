namespace Pattress.Trials.Special;

/// <summary>Student's t law.</summary>
public static class StudentT
{
    /// <summary>P(T &lt;= t) with <paramref name="degrees"/> &gt; 0 degrees of freedom.</summary>
    public static double Cdf(double t, double degrees)
    {
        double tail = t * t < degrees
            ? 0.5 - 0.5 * BetaFunctions.Regularised(0.5, degrees / 2, t * t / (degrees + t * t))
            : 0.5 * BetaFunctions.Regularised(degrees / 2, 0.5, degrees / (degrees + t * t));
        return t < 0 ? tail : 1 - tail;
    }

    /// <summary>The t with P(T &lt;= t) = p, 0 &lt; p &lt; 1.</summary>
    public static double Quantile(double p, double degrees)
    {
        if (!(p > 0 && p < 1)) throw new ArgumentOutOfRangeException(nameof(p), p, "a probability strictly between 0 and 1");
        if (p == 0.5) return 0;
        if (p > 0.5) return -LowerQuantile(1 - p, degrees);
        return LowerQuantile(p, degrees);
    }

    /// <summary>Via the beta law of w = degrees / (degrees + t^2), which is well scaled in the far tail.</summary>
    private static double LowerQuantile(double p, double degrees)
    {
        double logW = Root.Bisect(
            u => BetaFunctions.Regularised(degrees / 2, 0.5, Math.Exp(u)) - 2 * p, -700, 0);
        return -Math.Sqrt(degrees * ExpMinusOne(-logW));
    }

    /// <summary>e^x - 1 without cancellation, by the hyperbolic sine.</summary>
    private static double ExpMinusOne(double x) => 2 * Math.Exp(x / 2) * Math.Sinh(x / 2);
}
