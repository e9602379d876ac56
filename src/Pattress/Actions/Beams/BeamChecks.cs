using System.Globalization;
using Pattress.Jobs.Doors;

namespace Pattress.Actions.Beams;

/// <summary>Checks of a beam document that its shape alone cannot make.</summary>
internal static class BeamChecks
{
    private const double Together = 1e-6;

    internal static void Run(Entry e, ProblemList problems)
    {
        double? length = e.MaybeNumber("length_mm");
        CheckStiffness(e, length, problems);
        if (length is { } l) CheckPlaces(e, l, problems);
        CheckSupports(e.ItemsOf("supports"), length ?? 1, problems);
        CheckCreep(e, problems);
        if (e["moving_second"] is { } second && e["moving"] is null)
            problems.Add("second_without_first", second.Path, "an object", "moving as well");
    }

    private static void CheckStiffness(Entry e, double? length, ProblemList problems)
    {
        bool one = e["ei_nmm2"] is not null, parts = e["stretches"] is not null;
        if (one == parts && problems.IsEmpty)
            problems.Add(one ? "two_stiffnesses" : "missing_field", e.Path.Field("ei_nmm2"), "", "ei_nmm2 or stretches, one of the two");
        double sum = e.ItemsOf("stretches").Sum(s => s.NumberOr("length_mm", 0));
        if (parts && length is { } l && Math.Abs(sum - l) > Together * l)
            problems.Add("stretches_do_not_add_up", e["stretches"]!.Path, Text(sum), $"stretches that add up to {Text(l)}");
    }

    private static void CheckCreep(Entry e, ProblemList problems)
    {
        if (e["creep_material"] is not { } material) return;
        if (e["creep_factor"] is { } factor) problems.Add("two_creeps", factor.Path, Text(factor.Number), "creep_factor or creep_material, one of the two");
        int serviceClass = (int)e.NumberOr("service_class", 1);
        if (Creep.Factor(e.TextOf("creep_material"), serviceClass) is null)
            problems.Add("creep_not_covered", material.Path, e.TextOf("creep_material"), $"a material that EN 1995-1-1 Table 3.2 lets stand in service class {serviceClass}");
    }

    private static void CheckPlaces(Entry e, double length, ProblemList problems)
    {
        foreach (var s in e.ItemsOf("supports")) Inside(s["at_mm"], length, "support_outside_beam", problems);
        foreach (var l in e.ItemsOf("loads")) CheckLoad(l, length, problems);
        foreach (var h in e.ItemsOf("hinges_mm"))
            if (!(h.Number > Together * length && h.Number < length * (1 - Together)))
                problems.Add("hinge_outside_beam", h.Path, Text(h.Number), $"between the ends, 0 and {Text(length)}");
        double moving = (e["moving"]?.NumberOr("length_mm", 0) ?? 0) + (e["moving_second"]?.NumberOr("length_mm", 0) ?? 0);
        if (moving > length) problems.Add("moving_longer_than_beam", e.Path.Field("moving"), Text(moving), $"at most {Text(length)} in all");
    }

    private static void CheckLoad(Entry l, double length, ProblemList problems)
    {
        foreach (string name in new[] { "from_mm", "to_mm", "at_mm" }) Inside(l[name], length, "load_outside_beam", problems);
        if (l.MaybeNumber("from_mm") is { } from && l.MaybeNumber("to_mm") is { } to && !(to > from))
            problems.Add("empty_stretch", l["to_mm"]!.Path, Text(to), $"more than from_mm, {Text(from)}");
    }

    private static void Inside(Entry? place, double length, string code, ProblemList problems)
    {
        if (place is not null && place.Number > length) problems.Add(code, place.Path, Text(place.Number), $"from 0 to the beam's length, {Text(length)}");
    }

    private static void CheckSupports(IReadOnlyList<Entry> supports, double length, ProblemList problems)
    {
        for (int i = 0; i < supports.Count; i++)
        {
            var s = supports[i];
            if (s["at_mm"] is { } at && supports.Take(i).Any(o => Math.Abs(o.NumberOr("at_mm", double.NaN) - at.Number) <= Together * length))
                problems.Add("supports_in_one_place", at.Path, Text(at.Number), "each support in its own place");
            if (s["stiffness_range_n_per_mm"] is { Items: [var low, var high] } range && low.Number > high.Number)
                problems.Add("range_reversed", range.Path, $"[{Text(low.Number)}, {Text(high.Number)}]", "the smaller number first");
        }
    }

    private static string Text(double n) => n.ToString("G9", CultureInfo.InvariantCulture);
}
