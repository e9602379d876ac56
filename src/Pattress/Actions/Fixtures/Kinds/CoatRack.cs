namespace Pattress.Actions.Fixtures.Kinds;

/// <summary>A board with coat hooks.</summary>
internal sealed class CoatRack : FixtureModel
{
    // Screws at most 400 mm apart, 75 mm in from the ends (common practice, no source).
    private const double EndMm = 75, SpacingMm = 400;

    public override string Kind => "coat_rack";

    public override Hung Hang(Site site)
    {
        var e = site.Entries;
        double width = e.Number("width_mm"), arm = site.Arm(), own = e.Number("mass_kg"), coats = e.Count("hooks") * e.Number("coat_kg");
        var stand = site.Stand(() => Layout.Line(site.Middle, width, EndMm, SpacingMm));
        var body = new Body(stand.Brackets, 0);
        var middle = new Push(site.Middle.X, site.Middle.Y, arm, default);
        var hangs = body.Carry(middle with { Out = arm / 2, Force = site.Surface.Down(site.Weight(own, "W_own")) });
        var full = body.Carry(middle with { Force = site.Surface.Down(site.Weight(coats, "W_coats")) });
        var cases = new List<Draft>
        {
            new("empty", LoadDuration.Permanent, hangs, Wrenches.None(stand.Count), 0),
            new("loaded", LoadDuration.MediumTerm, hangs, full, e.Table("cov.contents")),
        };
        cases.AddRange(site.Pulls(body, hangs, middle with { X = site.Middle.X + width / 2 - EndMm / 2 }, People.DownAndOut, full));
        cases.AddRange(site.Pulls(body, hangs, middle with { X = site.Middle.X - width / 2 + EndMm / 2 }, ["down", "out"], full)
            .Select(d => d with { Code = d.Code + "_left_end" }));
        return new(own + coats, stand, arm, cases);
    }
}
