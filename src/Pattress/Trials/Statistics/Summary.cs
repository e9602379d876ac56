namespace Pattress.Trials.Statistics;

/// <summary>Count, mean and standard deviation of a series.</summary>
/// <param name="Count">Number of tests, at least 1.</param>
/// <param name="Mean">Arithmetic mean.</param>
/// <param name="StandardDeviation">With n - 1; null for a single test, which shows no scatter.</param>
public sealed record Summary(int Count, double Mean, double? StandardDeviation)
{
    private const double LargestExact = 1e20, SmallestExact = 1e-6;

    /// <summary>Coefficient of variation; null for a single test or a mean of 0.</summary>
    public double? Cov => Mean == 0 ? null : StandardDeviation / Math.Abs(Mean);

    /// <summary>
    /// Reads each number as the decimal it was written as (15 digits), so that mean and deviations carry no error of
    /// binary fractions; two passes, so that a large mean does not swallow the scatter.
    /// </summary>
    /// <exception cref="ArgumentException">No value, or one that is not a finite number.</exception>
    public static Summary Of(ReadOnlySpan<double> values)
    {
        double mean = MeanOf(values, out bool exact, out decimal exactMean), squares = 0;
        if (values.Length == 1) return new(1, mean, null);
        foreach (double v in values) squares += Square(Deviation(v, mean, exact, exactMean));
        return new(values.Length, mean, Math.Sqrt(squares / (values.Length - 1)));
    }

    /// <summary>Lag-1 autocorrelation; null where it has no meaning (one value, or all equal).</summary>
    public static double? Autocorrelation(ReadOnlySpan<double> values)
    {
        double mean = MeanOf(values, out bool exact, out decimal exactMean), before = 0, products = 0, squares = 0;
        for (int i = 0; i < values.Length; i++)
        {
            double now = Deviation(values[i], mean, exact, exactMean);
            if (i > 0) products += now * before;
            squares += Square(now);
            before = now;
        }
        return values.Length > 1 && squares > 0 ? products / squares : null;
    }

    private static double MeanOf(ReadOnlySpan<double> values, out bool exact, out decimal exactMean)
    {
        if (values.IsEmpty) throw new ArgumentException("a series needs at least one test");
        double largest = 0;
        foreach (double v in values) largest = double.IsFinite(v) ? Math.Max(largest, Math.Abs(v)) : throw new ArgumentException($"{v} is no measured value");
        exact = largest is < LargestExact and > SmallestExact;
        exactMean = 0;
        return exact ? (double)(exactMean = ExactSum(values) / values.Length) : Sum(values) / values.Length;
    }

    private static decimal ExactSum(ReadOnlySpan<double> values)
    {
        decimal sum = 0;
        foreach (double v in values) sum += (decimal)v;
        return sum;
    }

    private static double Sum(ReadOnlySpan<double> values)
    {
        double sum = 0;
        foreach (double v in values) sum += v;
        return sum;
    }

    private static double Deviation(double v, double mean, bool exact, decimal exactMean) =>
        exact ? (double)((decimal)v - exactMean) : v - mean;

    private static double Square(double x) => x * x;
}
