using Pattress.Jobs;
using Pattress.Working;

namespace Pattress.Actions.Fixtures.Kinds;

/// <summary>A wall cabinet on hangers or on a rail; its lower edge bears on the wall.</summary>
internal sealed class Cabinet : FixtureModel
{
    // Hangers sit about 50 mm from the top and the sides; the screws of a rail at most 400 mm apart (common practice, no source).
    private const double InsetMm = 50, RailScrewsMm = 400;

    // An open door stands out by its width, at most this (assumed).
    private const double DoorMm = 600;

    // Hangers sit this far in front of the wall (assumed).
    private const double HangerMm = 10;

    public override string Kind => "cabinet";

    public override Hung Hang(Site site)
    {
        var e = site.Entries;
        double width = e.Number("width_mm"), height = e.Number("height_mm"), depth = e.Number("depth_mm"), packing = e.Number("packing_mm");
        double own = OwnKg(site), load = Contents.Kg(site, width, depth, e.Count("shelves"));
        var stand = site.Stand(() => Hangers(site.Middle, e.Word("hanging"), width, height));
        var body = new Body(stand.Brackets, HangerMm + packing, site.Middle.Y - Math.Max(height - InsetMm, height / 2));
        var middle = new Push(site.Middle.X, site.Middle.Y, depth / 2 + packing, default);
        var empty = body.Carry(middle with { Force = site.Surface.Down(site.Weight(own, "W_own")) });
        var full = body.Carry(middle with { Force = site.Surface.Down(site.Weight(load, "W_contents")) });
        double cov = e.Table("cov.contents");
        return new(own + load, stand, depth / 2 + packing, [
            new("empty", LoadDuration.Permanent, empty, Wrenches.None(stand.Count), 0),
            new("loaded", LoadDuration.LongTerm, empty, full, cov),
            .. Leaning(site, body, empty, full, new(width, depth + packing))]);
    }

    private static IEnumerable<Draft> Leaning(Site site, Body body, IReadOnlyList<Wrench> empty, IReadOnlyList<Wrench> full, Point front)
    {
        double person = site.PersonN(), door = Math.Min(front.X / 2, DoorMm);
        foreach (int side in (int[])[-1, 1])
        {
            var at = new Push(site.Middle.X + side * front.X / 2, site.Middle.Y, front.Y + door, site.Surface.Down(person));
            yield return site.Does(side < 0 ? "door_left" : "door_right", empty, body.Carry(at).Plus(full));
        }
    }

    private static IEnumerable<Point> Hangers(Point middle, string hanging, double width, double height)
    {
        if (hanging == "rail") return Layout.Line(middle, width, InsetMm, RailScrewsMm);
        var top = Layout.Line(middle, width, InsetMm, 2);
        double lower = Math.Max(height - 2 * InsetMm, height / 2);
        return hanging == "four_hangers" ? [.. top, .. Layout.Line(middle with { Y = middle.Y - lower }, width, InsetMm, 2)] : top;
    }

    // Back, door, two sides and the boards between them, by the area.
    private static double OwnKg(Site site)
    {
        var e = site.Entries;
        if (e.Entered("mass_kg") is { } weighed) return weighed;
        double w = e.Number("width_mm") / 1000, h = e.Number("height_mm") / 1000, d = e.Number("depth_mm") / 1000;
        double boards = e.Count("shelves") + 1, board = e.Table("cabinet.board");
        return site.Step("m_cabinet", (2 * w * h + 2 * h * d + boards * w * d) * board, "kg", Weights.Of("cabinet.board").Source,
            [In.Of(w), In.Of(h), In.Of(d), In.Of(boards), In.Of(board)]);
    }
}
