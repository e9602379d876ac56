namespace Pattress.Actions.Fixtures.Kinds;

/// <summary>Anything else: a mass, where its middle is, and brackets.</summary>
internal sealed class Free : FixtureModel
{
    public override string Kind => "free";

    public override Hung Hang(Site site)
    {
        var e = site.Entries;
        double mass = e.Number("mass_kg"), packing = e.Number("packing_mm"), arm = e.Number("cog_out_mm") + packing;
        var stand = site.Stand(() => [site.Middle]);
        double? edge = e.Entered("bears_below_mm") is { } below && site.Surface == Surface.Wall ? site.Middle.Y - below : null;
        var body = new Body(stand.Brackets, packing, edge);
        var middle = new Push(site.Middle.X + e.Number("cog_x_mm"), site.Middle.Y + e.Number("cog_y_mm"), arm, default);
        var hangs = body.Carry(middle with { Force = site.Surface.Down(site.Weight(mass)) });
        var pulled = middle with { Out = (e.Entered("pull_out_mm") ?? e.Number("cog_out_mm")) + packing };
        return new(mass, stand, arm, [
            new("hangs", LoadDuration.Permanent, hangs, Wrenches.None(stand.Count), 0),
            .. site.Pulls(body, hangs, pulled, People.AllWays)]) { Class = FixtureCatalogue.Class(e.Word("class")) };
    }
}
