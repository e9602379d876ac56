namespace Pattress.Actions.Fixtures.Kinds;

/// <summary>A grab rail: a person's pull at any point in any direction, so each bracket must take all of it.</summary>
internal sealed class GrabRail : FixtureModel
{
    // A third bracket beyond 0.9 m (common practice, no source).
    private const double SpacingMm = 900;

    public override string Kind => "grab_rail";

    public override Hung Hang(Site site)
    {
        double mass = site.Entries.Number("mass_kg"), arm = site.Arm();
        var stand = site.Stand(() => Layout.Line(site.Middle, site.Entries.Number("width_mm"), 0, SpacingMm));
        var each = new EachAlone(stand.Brackets);
        var at = new Push(0, 0, arm, default);
        var hangs = each.Carry(at with { Force = site.Surface.Down(site.Weight(mass) / stand.Count) });
        return new(mass, stand, arm, [
            new("hangs", LoadDuration.Permanent, hangs, Wrenches.None(stand.Count), 0),
            .. site.Pulls(each, hangs, at, People.AllWays)]) { Cautions = [Site.Caution("grab_rail")] };
    }
}
