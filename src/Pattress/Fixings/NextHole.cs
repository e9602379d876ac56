namespace Pattress.Fixings;

/// <summary>A hole only grows: which kind would swallow it if the first one fails.</summary>
public static class NextHole
{
    /// <summary>The size with the smallest hole that is larger than <paramref name="failed"/>'s and fits the spot, or null. Ties by id.</summary>
    public static FixingSize? After(FixingSize failed, Spot spot, IReadOnlyList<FixingSize> sizes) => sizes
        .Where(s => s.HoleMm >= Math.Max(failed.HoleMm, failed.ScrewMm) + 1 && s.Kind != failed.Kind && !HoldsLess(s, spot) && Fit.Refusal(s, spot) is null)
        .OrderBy(s => s.HoleMm).ThenBy(s => s.Id, StringComparer.Ordinal).FirstOrDefault();

    /// <summary>What opens behind a board holds less in masonry than a plug would.</summary>
    private static bool HoldsLess(FixingSize size, Spot spot) => size.Kind.HoldsBy == HoldsBy.Wings && spot.Behind == Behind.Masonry;
}
