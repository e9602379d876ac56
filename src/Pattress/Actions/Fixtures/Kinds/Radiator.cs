using Pattress.Working;

namespace Pattress.Actions.Fixtures.Kinds;

/// <summary>A radiator with its water.</summary>
internal sealed class Radiator : FixtureModel
{
    // Brackets sit about 150 mm in; beyond 1.6 m there is a third (common practice, no source).
    private const double EndMm = 150, SpacingMm = 1300;

    public override string Kind => "radiator";

    public override Hung Hang(Site site)
    {
        var e = site.Entries;
        double width = e.Number("width_mm"), height = e.Number("height_mm"), gap = site.Arm();
        string type = e.Word("type");
        double depth = e.Entered("depth_mm") ?? e.Table("radiator_depth." + type), arm = gap + depth / 2;
        double dry = ByFace(site, "mass_kg", "radiator." + type, "m_dry", "kg"), water = ByFace(site, "water_l", "radiator_water." + type, "V_water", "l");
        double litre = e.Table("water"), mass = site.Step("m", dry + water * litre, "kg", "arithmetic", [In.Of(dry), In.Of(water), In.Of(litre)]);
        var stand = site.Stand(() => Layout.Line(site.Middle, width, EndMm, SpacingMm));
        var body = new Body(stand.Brackets, gap);
        var hangs = body.Carry(new(site.Middle.X, site.Middle.Y, arm, site.Surface.Down(site.Weight(mass))));
        var cases = new List<Draft> { new("filled", LoadDuration.Permanent, hangs, Wrenches.None(stand.Count), 0) };
        double person = site.PersonN();
        foreach (int side in (int[])[-1, 1])
        {
            var corner = new Push(site.Middle.X + side * width / 2, site.Middle.Y + height / 2, gap + depth, default);
            cases.Add(site.Does(side < 0 ? "child_stands_left" : "child_stands_right", hangs, body.Carry(corner with { Force = site.Surface.Down(person) })));
            cases.Add(site.Does(side < 0 ? "child_pulls_left" : "child_pulls_right", hangs, body.Carry(corner with { Force = site.Surface.Outward(person) })));
        }
        return new(mass, stand, arm, cases) { Cautions = [Site.Caution("radiator_pipes")] };
    }

    private static double ByFace(Site site, string field, string table, string symbol, string unit)
    {
        if (site.Entries.Entered(field) is { } measured) return measured;
        double w = site.Entries.Number("width_mm") / 1000, h = site.Entries.Number("height_mm") / 1000, by_face = site.Entries.Table(table);
        return site.Step(symbol, w * h * by_face, unit, Weights.Of(table).Source, [In.Of(w), In.Of(h), In.Of(by_face)]);
    }
}
