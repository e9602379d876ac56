using Pattress.Jobs;

namespace Pattress.Planning;

/// <summary>The order of work: holes by bit and by drill stop, the bit that explores first, then from
/// the smallest, since a hole only grows. Each bit goes in once, so bits are changed least.</summary>
public static class OrderOfWork
{
    /// <summary>Diameter of the thin hole that explores first, mm (common practice, no source).</summary>
    public const double ExploreMm = 5;

    /// <summary>Steps in order: explore everywhere, then each bit at each stop.</summary>
    public static IReadOnlyList<WorkStep> Steps(IReadOnlyList<ItemAnswer> items)
    {
        var holes = items.Where(i => i.Verdict != Verdict.NotHere)
            .SelectMany(i => i.Brackets.SelectMany(b => b.Holes.Select(h => (Item: i.Id, Hole: h)))).ToList();
        if (holes.Count == 0) return [];
        var wide = holes.Where(h => h.Hole.DiameterMm > ExploreMm).ToList();
        var steps = new List<WorkStep>();
        if (wide.Count > 0)
            steps.Add(new("masonry", ExploreMm, wide.Min(h => h.Hole.DepthMm), Ids(wide), wide.Count, new Reason("step_explore", Said.Count(wide.Count), Said.Length(ExploreMm))));
        steps.AddRange(holes.Where(h => h.Hole.Bit != "none")
            .GroupBy(h => (h.Hole.Bit, h.Hole.DiameterMm, Stop: h.Hole.DepthMm))
            .OrderBy(g => wide.Count > 0 && g.Key is { Bit: "masonry", DiameterMm: ExploreMm } ? 0 : 1).ThenBy(g => g.Key.DiameterMm).ThenBy(g => g.Key.Bit, StringComparer.Ordinal).ThenBy(g => g.Key.Stop)
            .Select(g => new WorkStep(g.Key.Bit, g.Key.DiameterMm, g.Key.Stop, Ids(g), g.Count(),
                new Reason("step_drill", Said.Count(g.Count()), Said.Length(g.Key.DiameterMm), Said.Name("bit." + g.Key.Bit), Said.Length(g.Key.Stop)))));
        return steps;
    }

    private static IReadOnlyList<string> Ids(IEnumerable<(string Item, HoleAnswer Hole)> holes) => [.. holes.Select(h => h.Item).Distinct(StringComparer.Ordinal)];
}
