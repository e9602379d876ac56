namespace Pattress.Walls;

/// <summary>Readings that do not go together, named with their values.</summary>
internal static class WallContradictions
{
    /// <summary>Hooked wires, or wire and breakthrough, farther apart than this contradict each other, mm.</summary>
    private const double FrontMm = 4;

    /// <summary>Void depths that lie farther apart than this contradict each other, mm.</summary>
    private const double VoidMm = 12;

    public static IReadOnlyList<WallContradiction> Of(WallEvidence e, IReadOnlyList<BuildUpBelief> belief)
    {
        var readings = WallLikelihood.Ordered(e.Readings);
        List<WallContradiction> found = [.. Pairs<HookedWire>(readings, (a, b) => Math.Abs(a.ThicknessMm - b.ThicknessMm) > FrontMm, "wires_disagree", w => w.ThicknessMm)];
        found.AddRange(Pairs<StiffWire>(readings, (a, b) => Math.Abs(a.VoidMm - b.VoidMm) > VoidMm, "voids_disagree", w => w.VoidMm));
        found.AddRange(WireAndHole(readings));
        found.AddRange(ChuckAndMasonry(readings));
        found.AddRange(DepthAndWires(readings));
        found.AddRange(Told(readings, belief));
        return found;
    }

    private static IEnumerable<WallContradiction> Pairs<T>(List<WallReading> all, Func<T, T, bool> differ, string code, Func<T, double> value) where T : WallReading
    {
        var some = all.OfType<T>().OrderBy(value).ToList();
        if (some.Count > 1 && differ(some[0], some[^1]))
            yield return Say(code, [Said.Length(value(some[0])), Said.Length(value(some[^1]))], some[0], some[^1]);
    }

    /// <summary>The wire says one thickness, the drill broke through at another: two boards with a gap, or a mis-read hook.</summary>
    private static IEnumerable<WallContradiction> WireAndHole(List<WallReading> all) =>
        from w in all.OfType<HookedWire>()
        from h in all.OfType<HoleFelt>()
        where h.BoardBackMm is { } back && Math.Abs(back - w.ThicknessMm) > FrontMm + 2
        select Say("wire_against_hole", [Said.Length(w.ThicknessMm), Said.Length(h.BoardBackMm!.Value)], w, h);

    /// <summary>One hole ran up to the chuck, another met masonry.</summary>
    private static IEnumerable<WallContradiction> ChuckAndMasonry(List<WallReading> all)
    {
        var deep = all.OfType<HoleFelt>().FirstOrDefault(h => h is { Met: "void", SolidAtMm: null });
        var hard = all.OfType<HoleFelt>().FirstOrDefault(h => h.Met == "masonry");
        if (deep is { RanToMm: null or >= 60 } && hard is not null)
            yield return Say("chuck_against_masonry", [Said.Length(hard.SolidAtMm ?? 0), Said.Length(deep.RanToMm ?? 75)], deep, hard);
    }

    /// <summary>Board by wire and void by wire do not add up to the depth at which the drill met masonry.</summary>
    private static IEnumerable<WallContradiction> DepthAndWires(List<WallReading> all) =>
        from t in all.OfType<HookedWire>().Take(1)
        from v in all.OfType<StiffWire>().Take(1)
        from h in all.OfType<HoleFelt>()
        where h is { Met: "masonry", SolidAtMm: not null } && Math.Abs(h.SolidAtMm.Value - t.ThicknessMm - v.VoidMm) > VoidMm
        select Say("depths_do_not_add", [Said.Length(t.ThicknessMm), Said.Length(v.VoidMm), Said.Length(h.SolidAtMm!.Value)], t, v, h);

    /// <summary>What the owner says is all but ruled out by what was felt.</summary>
    private static IEnumerable<WallContradiction> Told(List<WallReading> all, IReadOnlyList<BuildUpBelief> belief) =>
        from w in all.OfType<WordReading>()
        where w.Kind == "told"
        let share = belief.Where(b => Means(w.Finding, b.BuildUp.Family)).Sum(b => b.Probability)
        where share < 0.02
        select Say("told_against_found", [Said.Name(w.Finding), Said.Percent(share), Said.Name(belief[0].BuildUp.Id)], w);

    private static bool Means(string told, string family) => told == family
        || (told == "timber_studs" && family is "board_ceiling" or "lath") || (told == "laminate" && family == "laminate_battens")
        || (told == "lath" && family == "lath_ceiling") || (told == "dabs" && family is "battens" or "laminate");

    private static WallContradiction Say(string code, Said[] values, params WallReading[] readings) => new(new(code, values), [.. readings.Select(r => r.Id)]);
}
