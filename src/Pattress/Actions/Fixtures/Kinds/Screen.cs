namespace Pattress.Actions.Fixtures.Kinds;

/// <summary>A wall-hung screen on a flat mount or on a reaching arm that swings to either side.</summary>
internal sealed class Screen : FixtureModel
{
    // How far in front of the wall a screen stands on a flat mount, on an arm, and on an arm swung along the wall (assumed).
    private const double FlatMm = 60, ReachMm = 450, FoldedMm = 120;

    public override string Kind => "screen";

    public override Hung Hang(Site site)
    {
        var e = site.Entries;
        bool reaching = e.Word("arm") == "reaching";
        double mass = e.Number("mass_kg") + e.Number("arm_kg"), weight = site.Weight(mass);
        double reach = Extension(site, reaching) + e.Number("packing_mm"), folded = FoldedMm + e.Number("packing_mm");
        var stand = site.Stand(() => [site.Middle]);
        var body = new Body(stand.Brackets, stand.Count > 1 ? Math.Min(reach, folded) : 0);
        var screen = new Push(site.Middle.X, site.Middle.Y, reach, default);
        var hangs = body.Carry(screen with { Force = site.Surface.Down(weight) });
        var cases = new List<Draft> { Case("hangs", hangs) };
        if (reaching) cases.AddRange(Swung(site, body, weight, screen with { Out = folded }, reach));
        cases.AddRange(Pulled(site, body, hangs, screen, reaching));
        return new(mass, stand, reach, cases);
    }

    // A flat mount takes a pull at the screen's edge as it comes. The upright pins of an arm let it swing instead, so that
    // level pulls come to the plate straight in front of it.
    private static IEnumerable<Draft> Pulled(Site site, Body body, IReadOnlyList<Wrench> hangs, Push screen, bool reaching)
    {
        var edge = screen with { X = screen.X + site.Entries.Number("width_mm") / 2 };
        var pins = reaching ? screen with { Out = Math.Min(screen.Out, FlatMm) } : screen;
        return
        [
            .. site.Pulls(body, hangs, edge, ["down", "up"]),
            .. site.Pulls(body, hangs, reaching ? screen : edge, ["out"]),
            .. site.Pulls(body, hangs, pins, ["left", "right"]),
        ];
    }

    private static IEnumerable<Draft> Swung(Site site, Body body, double weight, Push folded, double reach)
    {
        foreach (var (side, name) in ((int, string)[])[(-1, "left"), (1, "right")])
        {
            var at = folded with { X = folded.X + side * reach };
            var hangs = body.Carry(at with { Force = site.Surface.Down(weight) });
            yield return Case("arm_" + name, hangs);
            yield return site.Does("pulled_down_arm_" + name, hangs, body.Carry(at with { Force = site.Surface.Down(site.PersonN()) }));
        }
    }

    private static Draft Case(string code, IReadOnlyList<Wrench> hangs) =>
        new(code, LoadDuration.Permanent, hangs, Wrenches.None(hangs.Count), 0);

    private static double Extension(Site site, bool reaching)
    {
        if (site.Entries.Entered("extension_mm") is { } measured) return measured;
        double taken = reaching ? ReachMm : FlatMm;
        site.Entries.Note("extension_mm", new("assumed_entry", [Said.Name("field.extension_mm"), Said.Length(taken)], "assumed"));
        return taken;
    }
}
