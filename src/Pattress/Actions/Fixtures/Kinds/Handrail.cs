namespace Pattress.Actions.Fixtures.Kinds;

/// <summary>A handrail: the line load of the standard, level and downwards, and a person who falls against it.</summary>
internal sealed class Handrail : FixtureModel
{
    // Brackets at most 1 m apart (common practice, no source).
    private const double SpacingMm = 1000;

    public override string Kind => "handrail";

    public override Hung Hang(Site site)
    {
        var e = site.Entries;
        double width = e.Number("width_mm"), arm = site.Arm();
        var row = e.Rail("handrail");
        double mass = e.Entered("mass_kg") ?? width / 1000 * row.MassKgM, line = width / 1000 * LineNM(site);
        var stand = site.Stand(() => Layout.Line(site.Middle, width, e.Number("end_mm"), SpacingMm));
        var rail = new Rail(site, stand, width, row.EiNmm2, arm);
        var hangs = rail.Along(site.Surface.Down(site.Weight(mass)), arm);
        Draft Line(string way) => new("line_" + way, LoadDuration.ShortTerm, hangs,
            rail.OnAnySpans(site.Surface.Way(way, line), arm), e.Table("cov.standard"));
        return new(mass, stand, arm, [
            new("hangs", LoadDuration.Permanent, hangs, Wrenches.None(stand.Count), 0), Line("down"), Line("out"),
            .. site.Pulls(rail, hangs, new(0, 0, arm, default), People.AllWays)]) { Cautions = [Site.Caution("handrail")] };
    }

    // 50 lbf a foot where the American set of standards holds.
    private static double LineNM(Site site)
    {
        const double Us = 50 * 4.4482216152605 / 0.3048;
        if (site.Settings.Standards != "us" || site.Entries.Entered("line_n_m") != null) return site.Entries.Number("line_n_m");
        site.Entries.Note("line_n_m", new("assumed_entry", [Said.Name("field.line_n_m"), Said.Plain(Us)], "ASCE 7 4.5.1: 50 lbf/ft (from memory)"));
        return Us;
    }
}
