using Pattress.Jobs;

namespace Pattress.Actions.Fixtures.Kinds;

/// <summary>A shelf on brackets.</summary>
internal class Shelf : FixtureModel
{
    // Brackets a fifth of the length in, at most 150 mm, and at most 600 mm apart (common practice, no source).
    private const double EndOfWidth = 0.2, EndMostMm = 150;

    public override string Kind => "shelf";

    protected virtual double SpacingMm => 600;

    protected virtual double BracketKg(Site site) => site.Entries.Number("bracket_kg");

    public override Hung Hang(Site site)
    {
        var e = site.Entries;
        double width = e.Number("width_mm"), depth = e.Number("depth_mm"), packing = e.Number("packing_mm"), arm = depth / 2 + packing;
        double board = Boards.Kg(site, "m_board", width, depth);
        double load = width / 1000 * (e.Entered("load_kg_m") ?? Contents.PerMetre(site, depth));
        var stand = site.Stand(() => Brackets(site, width));
        double ei = Boards.Ei(site, depth);
        var rail = new Rail(site, stand, width, ei, arm);
        double own = board + stand.Count * BracketKg(site);
        var empty = rail.Along(site.Surface.Down(site.Weight(own, "W_own")), arm);
        var full = rail.OnAnySpans(site.Surface.Down(site.Weight(load, "W_contents")), arm);
        var sagging = ShelfSag.Of(site, stand, width, ei, site.Weight(board + load, "W_shelf"));
        // Sideways the board ties its brackets together: they share the pull and take its turning as push and pull on the wall.
        var edge = new Push(site.Middle.X, site.Middle.Y, depth + packing, default);
        return new(own + load, stand, arm, [
            new("empty", LoadDuration.Permanent, empty, Wrenches.None(stand.Count), 0),
            new("loaded", LoadDuration.LongTerm, empty, full, e.Table("cov.contents")),
            site.Does("leant_on", empty, rail.Carry(edge with { Force = site.Surface.Down(site.PersonN()) }).Plus(full)),
            .. site.Pulls(rail, empty, edge, ["out"], full),
            .. site.Pulls(new Body(stand.Brackets, 0), empty, edge, ["left", "right"], full)])
        { Cautions = [.. e.Word("material") == "glass" ? [Site.Caution("glass")] : (Reason[])[], .. sagging] };
    }

    private IEnumerable<Point> Brackets(Site site, double width)
    {
        double end = site.Entries.Entered("end_mm") ?? Math.Min(EndOfWidth * width, EndMostMm);
        return site.Entries.Entered("bracket_count") is { } n ? Layout.Line(site.Middle, width, end, (int)n) : Layout.Line(site.Middle, width, end, SpacingMm);
    }
}

/// <summary>A shelf on hidden rods: the same loads on a bar that is hardly higher than the board.</summary>
internal sealed class FloatingShelf : Shelf
{
    public override string Kind => "floating_shelf";

    // Rods at most 400 mm apart (common practice, no source).
    protected override double SpacingMm => 400;

    protected override double BracketKg(Site site) => 0;
}
