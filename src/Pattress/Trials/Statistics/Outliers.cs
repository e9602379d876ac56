using Pattress.Trials.Special;

namespace Pattress.Trials.Statistics;

/// <summary>A value that stands apart from its series: named, never dropped by itself.</summary>
/// <param name="Index">Place in the series, from 0.</param>
/// <param name="Value">The value.</param>
/// <param name="Test">"grubbs" or "dixon".</param>
/// <param name="Statistic">How far it stands out.</param>
/// <param name="Critical">What chance alone exceeds in 5 % of series.</param>
public sealed record Suspect(int Index, double Value, string Test, double Statistic, double Critical);

/// <summary>Tests for a single outlier in a normal series, at 5 %, two-sided.</summary>
public static class Outliers
{
    private const double Level = 0.05;
    private static readonly Lazy<double[]> DixonTable = new(() =>
        [.. CsvTable.FromEmbedded("data/trials/dixon_r10.csv").Rows.Select(r => r.Number("critical"))]);

    /// <summary>Critical value of Grubbs' test (NIST handbook 1.3.5.17; ASTM E178); n at least 3.</summary>
    public static double GrubbsCritical(int n, double level, bool twoSided)
    {
        if (n < 3) throw new ArgumentOutOfRangeException(nameof(n), n, "at least 3 tests");
        double t = StudentT.Quantile(level / (twoSided ? 2.0 * n : n), n - 2);
        return (n - 1) / Math.Sqrt(n) * Math.Sqrt(t * t / (n - 2 + t * t));
    }

    /// <summary>Critical value of Dixon's r10, two-sided 5 %, from the table; null outside n = 3 to 10.</summary>
    public static double? DixonCritical(int n) => n is >= 3 and <= 10 ? DixonTable.Value[n - 3] : null;

    /// <summary>The suspects of a series by both tests; none with fewer than 3 tests or without scatter.</summary>
    public static IReadOnlyList<Suspect> Of(ReadOnlySpan<double> values)
    {
        if (values.Length < 3) return [];
        var s = Summary.Of(values);
        return s.StandardDeviation > 0 ? [.. Grubbs(values, s), .. Dixon(values)] : [];
    }

    private static List<Suspect> Grubbs(ReadOnlySpan<double> values, Summary s)
    {
        int at = 0;
        for (int i = 1; i < values.Length; i++) if (Math.Abs(values[i] - s.Mean) > Math.Abs(values[at] - s.Mean)) at = i;
        double g = Math.Abs(values[at] - s.Mean) / s.StandardDeviation!.Value, critical = GrubbsCritical(values.Length, Level, true);
        return g > critical ? [new(at, values[at], "grubbs", g, critical)] : [];
    }

    private static List<Suspect> Dixon(ReadOnlySpan<double> values)
    {
        if (DixonCritical(values.Length) is not { } critical) return [];
        double[] sorted = [.. values];
        Array.Sort(sorted);
        double range = sorted[^1] - sorted[0], low = (sorted[1] - sorted[0]) / range, high = (sorted[^1] - sorted[^2]) / range;
        double value = low > high ? sorted[0] : sorted[^1], r = Math.Max(low, high);
        return r > critical ? [new(values.IndexOf(value), value, "dixon", r, critical)] : [];
    }
}
