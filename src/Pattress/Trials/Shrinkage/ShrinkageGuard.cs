namespace Pattress.Trials.Shrinkage;

/// <summary>A kind that the others would not have led one to expect.</summary>
/// <param name="Kind">Its place in the list.</param>
/// <param name="Chance">How likely the others thought a mean at least as far out, two-sided.</param>
public sealed record KindConflict(int Kind, double Chance);

/// <summary>
/// Guard against kinds that do not belong: each is held against what all others predict. A kind that stands out keeps
/// its place but is not lifted by the others: the lower of the shrunk and its own value counts.
/// </summary>
public static class ShrinkageGuard
{
    /// <summary>Chance below which a kind stands out; assumed.</summary>
    public const double Level = 0.01;

    /// <summary>Fewer other kinds than this say too little of the spread to hold a kind against; assumed.</summary>
    public const int FewestOthers = 3;

    /// <summary>With more kinds than this the check, which refits for each kind, is left out.</summary>
    public const int MostKinds = 60;

    /// <summary>The kinds that stand out; kinds with tests known only as an interval are not judged.</summary>
    public static IReadOnlyList<KindConflict> Conflicts(IReadOnlyList<KindSeries> kinds, ShrinkagePrior? prior = null)
    {
        if (kinds.Count <= FewestOthers || kinds.Count > MostKinds) return [];
        var found = new List<KindConflict>();
        for (int i = 0; i < kinds.Count; i++)
            if (kinds[i].Intervals.Count == 0 && Chance(kinds, i, prior) is < Level and var chance) found.Add(new(i, chance));
        return found;
    }

    private static double Chance(IReadOnlyList<KindSeries> kinds, int kind, ShrinkagePrior? prior)
    {
        var others = ShrunkKinds.Fit([.. kinds.Where((_, i) => i != kind)], prior);
        double below = others.NewKindMeanOf(kinds[kind].Values.Count).Cdf(kinds[kind].Values.Average());
        return 2 * Math.Min(below, 1 - below);
    }

    /// <summary>The fractile of one more test of a kind that stands out: never above what its own tests alone give.</summary>
    public static double Guarded(ShrunkKinds fit, int kind, double p, ShrinkagePrior? prior = null) =>
        Math.Min(fit.NextOf(kind).Quantile(p), ShrunkKinds.Fit([fit.Kinds[kind]], prior).NextOf(0).Quantile(p));
}
