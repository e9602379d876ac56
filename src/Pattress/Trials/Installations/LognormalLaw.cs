namespace Pattress.Trials.Installations;

/// <summary>A lognormal law by the median and standard deviation of its logarithm.</summary>
public readonly record struct LognormalLaw(double LogMedian, double LogSd)
{
    /// <summary>From mean (above 0) and coefficient of variation (0 or more): s² = ln(1+V²), m = ln mean - s²/2.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or not a number.</exception>
    public static LognormalLaw FromMean(double mean, double cov)
    {
        if (!(mean > 0 && double.IsFinite(mean))) throw new ArgumentOutOfRangeException(nameof(mean), mean, "above 0");
        if (!(cov >= 0 && double.IsFinite(cov))) throw new ArgumentOutOfRangeException(nameof(cov), cov, "0 or more");
        double variance = Math.Log(1 + cov * cov);
        return new(Math.Log(mean) - variance / 2, Math.Sqrt(variance));
    }

    public double Mean => Math.Exp(LogMedian + LogSd * LogSd / 2);

    public double Cov => Math.Sqrt(Math.Exp(LogSd * LogSd) - 1);
}
