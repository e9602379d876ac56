namespace Pattress.Fixings;

/// <summary>A measure that is not quite known: mean and standard deviation in mm. An sd of zero means exactly known.</summary>
public readonly record struct Spread(double Mean, double Sd)
{
    /// <summary>Nothing there: an infinite distance.</summary>
    public static Spread None { get; } = new(double.PositiveInfinity, 0);

    public bool IsNone => double.IsPositiveInfinity(Mean);

    /// <summary>Chance that the measure is at least <paramref name="mm"/>.</summary>
    public double AtLeast(double mm) => IsNone ? 1 : Sd <= 0 ? (Mean >= mm ? 1 : 0) : Trials.Special.Normal.Cdf((Mean - mm) / Sd);

    /// <summary>Chance that the measure is at most <paramref name="mm"/>.</summary>
    public double AtMost(double mm) => IsNone ? 0 : Sd <= 0 ? (Mean <= mm ? 1 : 0) : Trials.Special.Normal.Cdf((mm - Mean) / Sd);
}
