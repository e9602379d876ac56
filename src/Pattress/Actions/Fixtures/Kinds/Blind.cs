namespace Pattress.Actions.Fixtures.Kinds;

/// <summary>A blind on a headrail.</summary>
internal abstract class Blind : FixtureModel
{
    // Brackets at most 1 m apart (common practice, no source).
    protected virtual double SpacingMm => 1000;

    /// <summary>Row of the table of rails.</summary>
    protected abstract string Headrail { get; }

    /// <summary>Mass of what hangs from the headrail, kg.</summary>
    protected abstract double CurtainKg(Site site, double width, double drop);

    /// <summary>Cases of the blind's own weight.</summary>
    protected virtual IReadOnlyList<Draft> Own(Site site, Rail rail, double railN, double clothN, double arm) =>
        [new("hangs", LoadDuration.Permanent, rail.Along(site.Surface.Down(railN + clothN), arm), Wrenches.None(rail.Count), 0)];

    public override Hung Hang(Site site)
    {
        var e = site.Entries;
        double width = e.Number("width_mm"), arm = site.Arm();
        var head = e.Rail(Headrail);
        double cloth = CurtainKg(site, width / 1000, e.Number("drop_mm") / 1000), own = width / 1000 * head.MassKgM;
        var stand = site.Stand(() => Brackets(site, width));
        var rail = new Rail(site, stand, width, head.EiNmm2, arm);
        var cases = Own(site, rail, site.Weight(own, "W_rail"), site.Weight(cloth, "W_blind"), arm);
        return new(cloth + own, stand, arm, [.. cases, .. site.Pulls(rail, cases[^1].Permanent, new(0, 0, arm, default), People.DownAndOut)])
        { Cautions = e.Word("control") is "chain" or "cord" ? [Site.Caution("cords")] : [] };
    }

    protected virtual IEnumerable<Jobs.Point> Brackets(Site site, double width) =>
        Layout.Line(site.Middle, width, site.Entries.Number("end_mm"), SpacingMm);
}
