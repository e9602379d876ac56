using Pattress.Working;

namespace Pattress.Actions.Fixtures.Kinds;

/// <summary>A pelmet: a top board on angles and a front board at its edge.</summary>
internal sealed class Pelmet : FixtureModel
{
    // Angles at most 800 mm apart, 100 mm in from the ends (common practice, no source).
    private const double EndMm = 100, SpacingMm = 800;

    public override string Kind => "pelmet";

    public override Hung Hang(Site site)
    {
        var e = site.Entries;
        double width = e.Number("width_mm"), depth = e.Number("depth_mm"), packing = e.Number("packing_mm");
        double top = Boards.Kg(site, "m_top", width, depth), front = Boards.Kg(site, "m_front", width, e.Number("height_mm"));
        var stand = site.Stand(() => Layout.Line(site.Middle, width, EndMm, SpacingMm));
        var rail = new Rail(site, stand, width, Boards.Ei(site, depth), depth / 2 + packing);
        var hangs = rail.Along(site.Surface.Down(site.Weight(top, "W_top")), depth / 2 + packing)
            .Plus(rail.Along(site.Surface.Down(site.Weight(front, "W_front")), depth + packing));
        return new(top + front, stand, depth / 2 + packing, [
            new("hangs", LoadDuration.Permanent, hangs, Wrenches.None(stand.Count), 0),
            .. site.Pulls(rail, hangs, new(0, 0, depth + packing, default), ["down", "out"])]);
    }
}

/// <summary>Boards by thickness and material.</summary>
internal static class Boards
{
    /// <summary>Mass in kg of a board of the fixture's thickness and material.</summary>
    public static double Kg(Site site, string symbol, double widthMm, double depthMm)
    {
        var e = site.Entries;
        string id = "board." + e.Word("material");
        double width = widthMm / 1000, depth = depthMm / 1000, thickness = e.Number("board_mm") / 1000, gamma = e.Table(id), g = Weights.Gravity;
        return site.Step(symbol, 1000 * gamma * width * depth * thickness / g, "kg", Weights.Of(id).Source,
            [In.Of(gamma), In.Of(width), In.Of(depth), In.Of(thickness), In.Of(g)]);
    }

    /// <summary>Bending stiffness of that board lying flat, Nmm².</summary>
    public static double Ei(Site site, double depth)
    {
        string id = "stiffness." + site.Entries.Word("material");
        double E = site.Entries.Table(id), t = site.Entries.Number("board_mm");
        return site.Step("EI", E * depth * t * t * t / 12, "Nmm2", Weights.Of(id).Source, [In.Of(E), In.Of(depth), In.Of(t)]);
    }
}
