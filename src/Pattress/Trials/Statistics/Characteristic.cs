namespace Pattress.Trials.Statistics;

/// <summary>Law that a series is taken to follow.</summary>
public enum StrengthLaw
{
    Lognormal,
    Normal,
}

/// <summary>Values that only a small share of the population falls below: mean - k s, on the loads or on their logarithms.</summary>
public static class Characteristic
{
    /// <summary>m - k s with the scatter of the series; never below 0 for a lognormal law.</summary>
    /// <param name="loads">Loads at failure (N), at least two; above 0 for a lognormal law.</param>
    /// <param name="k">Factor for the number of tests, see <see cref="ToleranceFactor"/>.</param>
    /// <param name="law">Law of the loads.</param>
    /// <exception cref="ArgumentException">Fewer than two loads, or one not above 0 with a lognormal law.</exception>
    public static double Value(ReadOnlySpan<double> loads, double k, StrengthLaw law)
    {
        if (loads.Length < 2) throw new ArgumentException("one test shows no scatter: at least two are needed");
        return law == StrengthLaw.Normal ? Below(loads, k) : Math.Exp(Below(Logarithms(loads), k));
    }

    /// <summary>The same with a scatter known beforehand, from one test on.</summary>
    /// <param name="cov">The known coefficient of variation, above 0.</param>
    public static double ValueKnownScatter(ReadOnlySpan<double> loads, double k, double cov, StrengthLaw law)
    {
        if (!(cov > 0)) throw new ArgumentOutOfRangeException(nameof(cov), cov, "above 0");
        return law == StrengthLaw.Normal
            ? Summary.Of(loads).Mean * (1 - k * cov)
            : Math.Exp(Summary.Of(Logarithms(loads)).Mean - k * Math.Sqrt(Math.Log(1 + cov * cov)));
    }

    /// <summary>The natural logarithms of loads above 0.</summary>
    public static double[] Logarithms(ReadOnlySpan<double> loads)
    {
        var logs = new double[loads.Length];
        for (int i = 0; i < logs.Length; i++)
            logs[i] = loads[i] > 0 ? Math.Log(loads[i]) : throw new ArgumentException($"{loads[i]} has no logarithm: a lognormal law needs loads above 0");
        return logs;
    }

    private static double Below(ReadOnlySpan<double> values, double k)
    {
        var s = Summary.Of(values);
        return s.Mean - k * s.StandardDeviation.GetValueOrDefault();
    }
}
