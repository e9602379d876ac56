using Pattress.Jobs;
using Pattress.Working;

namespace Pattress.Actions.Fixtures.Kinds;

/// <summary>Shutters hinged at both sides of an opening, on a frame that is screwed to the wall up each side.</summary>
internal sealed class Shutter : FixtureModel
{
    // Screws up each side at most 500 mm apart, 100 mm in from top and bottom (common practice, no source).
    private const double SpacingMm = 500, EndMm = 100;

    // The hinge's pin stands this far in front of the wall (assumed).
    private const double PinMm = 30;

    public override string Kind => "shutter";

    public override Hung Hang(Site site)
    {
        var e = site.Entries;
        double width = e.Number("width_mm"), height = e.Number("height_mm"), pin = PinMm + e.Number("packing_mm");
        double mass = MassKg(site), side = site.Weight(mass) / 2;
        double leaf = width / Math.Max(2, e.Count("panels"));
        var stand = site.Stand(() => Sides(site.Middle, width, height));
        var frame = new Sides(stand.Brackets, site.Middle, pin);
        var closed = frame.Carry(new(0, site.Middle.Y, pin, site.Surface.Down(side)));
        var open = frame.Carry(new(0, site.Middle.Y, pin + leaf / 2, site.Surface.Down(side)));
        var swings = frame.Carry(new(0, site.Middle.Y, pin + leaf, site.Surface.Down(site.PersonN())));
        return new(mass, stand, pin, [
            new("closed", LoadDuration.Permanent, closed, Wrenches.None(stand.Count), 0),
            new("open", LoadDuration.Permanent, open, Wrenches.None(stand.Count), 0),
            site.Does("child_swings", open, swings)]);
    }

    private static double MassKg(Site site)
    {
        var e = site.Entries;
        string id = "panel." + e.Word("panel");
        double w = e.Number("width_mm") / 1000, h = e.Number("height_mm") / 1000, panel = e.Table(id), frame = e.Table("shutter.frame");
        return site.Step("m", w * h * panel + 2 * (w + h) * frame, "kg", Weights.Of(id).Source,
            [In.Of(w), In.Of(h), In.Of(panel), In.Of(frame)]);
    }

    private static IEnumerable<Point> Sides(Point middle, double width, double height)
    {
        double span = height - 2 * Math.Min(EndMm, height / 4);
        int n = Math.Max(2, 1 + (int)Math.Ceiling(span / SpacingMm - 1e-9));
        return [.. Layout.Column(middle with { X = middle.X - width / 2 }, span, n), .. Layout.Column(middle with { X = middle.X + width / 2 }, span, n)];
    }
}

/// <summary>Two upright rows of screws, each carrying the leaf on its side; the push's x is the row's own.</summary>
internal sealed class Sides(IReadOnlyList<Point> brackets, Point middle, double armMm) : ICarrier
{
    public IReadOnlyList<Wrench> Carry(Push push)
    {
        var carried = new Wrench[brackets.Count];
        foreach (bool left in (bool[])[true, false]) CarrySide(push, left, carried);
        return carried;
    }

    // Where all brackets were placed on one side, that side carries both leaves.
    private void CarrySide(Push push, bool left, Wrench[] carried)
    {
        int[] mine = [.. Enumerable.Range(0, brackets.Count).Where(i => brackets[i].X < middle.X == left)];
        if (mine.Length == 0) return;
        double leaves = mine.Length == brackets.Count ? 2 : 1;
        Point[] row = [.. mine.Select(i => brackets[i])];
        var loads = new Body(row, armMm).Carry(push with { X = row.Average(b => b.X), Force = leaves * push.Force });
        for (int i = 0; i < mine.Length; i++) carried[mine[i]] = loads[i];
    }
}
