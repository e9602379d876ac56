using System.Globalization;
using Pattress.Jobs.Doors;

namespace Pattress.Brackets;

/// <summary>Checks of a bracket document that its shape alone cannot make.</summary>
internal static class BracketRings
{
    private const double LeastArea = 1, Together = 1e-6;

    internal static (Plate Plate, IReadOnlyList<Corner> Outline)? Read(Entry e, ProblemList problems)
    {
        CheckFixings(e.ItemsOf("fixings"), problems);
        if (e["outline_mm"] is not { } first) return null;
        var outer = new[] { first }.Concat(e.ItemsOf("further_outlines_mm")).Select(r => Ring(r, problems)).ToList();
        var holes = e.ItemsOf("holes_mm").Select(r => Ring(r, problems)).ToList();
        if (!problems.IsEmpty) return null;
        CheckHoles(e.ItemsOf("holes_mm"), holes, outer, problems);
        CheckFeet(e.ItemsOf("further_outlines_mm"), outer, problems);
        return problems.IsEmpty ? (Plate.Of(outer, holes), outer[0]) : null;
    }

    internal static void CheckRanges(Entry e, ProblemList problems)
    {
        CheckRange(e["bed_range_n_per_mm3"], e.MaybeNumber("bed_n_per_mm3"), problems);
        foreach (var f in e.ItemsOf("fixings")) CheckRange(f["stiffness_range_n_per_mm"], f.MaybeNumber("stiffness_n_per_mm"), problems);
    }

    private static void CheckRange(Entry? range, double? value, ProblemList problems)
    {
        if (range is not { Items: [var low, var high] }) return;
        if (low.Number > high.Number) problems.Add("range_reversed", range.Path, $"[{Text(low.Number)}, {Text(high.Number)}]", "the smaller number first");
        else if (value < low.Number || value > high.Number)
            problems.Add("value_outside_range", range.Path, Text(value.Value), $"a range that holds {Text(value.Value)}");
    }

    /// <summary>The corners; one that repeats its neighbour (as when a ring is closed by hand) is left out.</summary>
    private static List<Corner> Ring(Entry ring, ProblemList problems)
    {
        var corners = new List<Corner>();
        foreach (var c in ring.Items.Select(i => new Corner(i.Point.X, i.Point.Y)))
            if (corners.Count == 0 || c != corners[^1]) corners.Add(c);
        if (corners.Count > 1 && corners[^1] == corners[0]) corners.RemoveAt(corners.Count - 1);
        if (corners.Count < 3 || Math.Abs(Outline.SignedArea(corners)) < LeastArea)
            problems.Add("outline_without_area", ring.Path, $"a list of {ring.Items.Count}", "at least three corners round an area of 1 mm² or more");
        else if (Outline.Crossing(corners) is var (i, j))
            problems.Add("outline_crosses_itself", ring.Path, $"sides {i + 1} and {j + 1}", "corners in order round the plate");
        return corners;
    }

    private static void CheckHoles(IReadOnlyList<Entry> entries, List<List<Corner>> holes, List<List<Corner>> outer, ProblemList problems)
    {
        for (int i = 0; i < holes.Count; i++)
            if (!outer.Any(o => holes[i].All(c => Outline.Holds(o, c.X, c.Y))))
                problems.Add("hole_outside_outline", entries[i].Path, Text(holes[i][0]), "a hole wholly inside one outline");
            else if (holes.Take(i).Any(h => Overlap(h, holes[i])))
                problems.Add("holes_overlap", entries[i].Path, Text(holes[i][0]), "holes apart from one another");
    }

    private static void CheckFeet(IReadOnlyList<Entry> entries, List<List<Corner>> outer, ProblemList problems)
    {
        for (int i = 1; i < outer.Count; i++)
            if (outer.Take(i).Any(o => Overlap(o, outer[i])))
                problems.Add("outlines_overlap", entries[i - 1].Path, Text(outer[i][0]), "outlines apart from one another");
    }

    private static bool Overlap(List<Corner> a, List<Corner> b) =>
        a.Any(c => Outline.Holds(b, c.X, c.Y)) || b.Any(c => Outline.Holds(a, c.X, c.Y)) || Outline.Cross(a, b);

    private static void CheckFixings(IReadOnlyList<Entry> fixings, ProblemList problems)
    {
        for (int i = 0; i < fixings.Count; i++)
            for (int j = 0; j < i; j++)
                if (Same(fixings[i], fixings[j]))
                {
                    problems.Add("fixings_in_one_place", fixings[i].Path, $"fixings {j + 1} and {i + 1}", "each fixing in its own place");
                    break;
                }
    }

    private static bool Same(Entry a, Entry b) =>
        Math.Abs((a.MaybeNumber("x_mm") ?? double.NaN) - (b.MaybeNumber("x_mm") ?? double.NaN)) < Together
        && Math.Abs((a.MaybeNumber("y_mm") ?? double.NaN) - (b.MaybeNumber("y_mm") ?? double.NaN)) < Together;

    private static string Text(double n) => n.ToString("G6", CultureInfo.InvariantCulture);

    private static string Text(Corner c) => $"[{Text(c.X)}, {Text(c.Y)}]";
}
