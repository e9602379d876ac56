namespace Pattress.Actions.Fixtures.Kinds;

/// <summary>A stair gate by its hinge side: it stands square to the wall, and a child rides on its far end.</summary>
internal sealed class StairGate : FixtureModel
{
    // The hinge's pin stands this far in front of the wall (assumed).
    private const double PinMm = 30;

    public override string Kind => "stair_gate";

    public override Hung Hang(Site site)
    {
        var e = site.Entries;
        double width = e.Number("width_mm"), height = e.Number("height_mm"), mass = e.Number("mass_kg"), pin = PinMm + e.Number("packing_mm");
        var stand = site.Stand(() => Layout.Column(site.Middle, height, 2));
        var body = new Body(stand.Brackets, pin);
        var middle = new Push(site.Middle.X, site.Middle.Y, pin + width / 2, default);
        var hangs = body.Carry(middle with { Force = site.Surface.Down(site.Weight(mass)) });
        double child = site.PersonN();
        // Pushed when latched, the pin lets it turn: only the force comes to the hinges, at the gate's top.
        var top = new Push(site.Middle.X, site.Middle.Y + height / 2, pin, default);
        return new(mass, stand, pin, [
            new("hangs", LoadDuration.Permanent, hangs, Wrenches.None(stand.Count), 0),
            site.Does("child_swings", hangs, body.Carry(middle with { Out = pin + width, Force = site.Surface.Down(child) })),
            .. site.Pulls(body, hangs, top, ["out", "left", "right"])])
        { Cautions = [Site.Caution("stair_gate")] };
    }
}
