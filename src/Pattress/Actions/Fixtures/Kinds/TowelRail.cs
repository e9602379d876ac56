using Pattress.Jobs;

namespace Pattress.Actions.Fixtures.Kinds;

/// <summary>A towel rail, or a heated ladder with its water.</summary>
internal sealed class TowelRail : FixtureModel
{
    private const double EndMm = 25;

    public override string Kind => "towel_rail";

    public override Hung Hang(Site site)
    {
        var e = site.Entries;
        double width = e.Number("width_mm"), height = e.Number("height_mm"), arm = site.Arm();
        double own = e.Number("mass_kg") + e.Number("water_l") * Weights.Of("water").Value, towels = e.Number("towels_kg");
        var stand = site.Stand(() => Flanges(site.Middle, width, height));
        var body = new Body(stand.Brackets, arm);
        var middle = new Push(site.Middle.X, site.Middle.Y, arm, default);
        var hangs = body.Carry(middle with { Force = site.Surface.Down(site.Weight(own, "W_own")) });
        var wet = body.Carry(middle with { Force = site.Surface.Down(site.Weight(towels, "W_towels")) });
        var end = middle with { X = site.Middle.X + width / 2, Y = site.Middle.Y + height / 2 };
        return new(own + towels, stand, arm, [
            new("empty", LoadDuration.Permanent, hangs, Wrenches.None(stand.Count), 0),
            new("wet_towels", LoadDuration.MediumTerm, hangs, wet, e.Table("cov.contents")),
            .. site.Pulls(body, hangs, end, People.AllWays, wet),
            .. site.Pulls(body, hangs, end with { X = site.Middle.X - width / 2 }, ["down", "out", "up", "down_and_out"], wet).Select(d => d with { Code = d.Code + "_left_end" })])
        { Cautions = [Site.Caution("not_a_grab_rail")] };
    }

    private static IEnumerable<Point> Flanges(Point middle, double width, double height) => height <= 0
        ? Layout.Line(middle, width, EndMm, 2)
        : [.. Layout.Line(middle with { Y = middle.Y + height / 2 }, width, EndMm, 2), .. Layout.Line(middle with { Y = middle.Y - height / 2 }, width, EndMm, 2)];
}
