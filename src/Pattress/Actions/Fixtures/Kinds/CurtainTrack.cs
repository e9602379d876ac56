namespace Pattress.Actions.Fixtures.Kinds;

/// <summary>A curtain track on a wall, a ceiling or the underside of a recess; one straight of a bay, where the whole curtain may stack.</summary>
internal sealed class CurtainTrack : FixtureModel
{
    // Brackets at most 500 mm apart (common practice, no source: 400 to 600).
    private const double SpacingMm = 500;

    public override string Kind => "curtain_track";

    public override Hung Hang(Site site)
    {
        var e = site.Entries;
        double width = e.Number("width_mm"), arm = site.Arm();
        var track = e.Rail("track_" + e.Word("track"));
        double run = Run(site, width), cloth = Curtains.ClothKg(site, run), own = width / 1000 * (track.MassKgM + e.Table("rings"));
        var stand = site.Stand(() => Layout.Line(site.Middle, width, e.Number("end_mm"), SpacingMm));
        var rail = new Rail(site, stand, width, track.EiNmm2, arm);
        double clothN = site.Weight(cloth, "W_cloth");
        var load = Load(site.Weight(own, "W_track"), clothN, width / run, e.Word("curtains") == "pair", e.Word("bay") != "none");
        var cases = Curtains.Cases(site, rail, load, arm);
        return new(cloth * width / run + own, stand, arm,
            [.. cases, .. site.Pulls(rail, cases[^1].Permanent, new(0, 0, arm, default), People.DownAndOut)]);
    }

    // Round a bay one curtain of a pair comes to rest on one straight.
    private static CurtainLoad Load(double own, double cloth, double here, bool pair, bool bay) => bay
        ? new(own, cloth, cloth * here, pair ? cloth / 2 : cloth, 1)
        : new(own, cloth, cloth, cloth, pair ? 2 : 1);

    private static double Run(Site site, double width) =>
        site.Entries.Word("bay") == "none" ? width : Math.Max(width, site.Entries.Entered("bay_length_mm") ?? Assumed(site, width));

    private static double Assumed(Site site, double width)
    {
        double run = 2 * width;
        site.Entries.Note("bay_length_mm", new("assumed_entry", [Said.Name("field.bay_length_mm"), Said.Length(run)], "assumed: twice this straight"));
        return run;
    }
}
