namespace Pattress.Actions.Fixtures.Kinds;

/// <summary>A curtain on a pole that lies in cups.</summary>
internal sealed class CurtainPole : FixtureModel
{
    // Poles longer than about 1.2 m want a middle bracket (common practice, no source).
    private const double SpacingMm = 1200;

    public override string Kind => "curtain_pole";

    public override Hung Hang(Site site)
    {
        var e = site.Entries;
        double width = e.Number("width_mm"), end = e.Number("end_mm"), arm = site.Arm();
        var pole = e.Rail(e.Word("pole"));
        double cloth = Curtains.ClothKg(site, width), own = width / 1000 * (pole.MassKgM + e.Table("rings"));
        var stand = site.Stand(() => Layout.Line(site.Middle, width, end, 1 + (int)Math.Max(1, Math.Ceiling(width / SpacingMm - 1e-9))));
        var rail = new Rail(site, stand, width, pole.EiNmm2, arm, cups: true);
        double clothN = site.Weight(cloth, "W_cloth");
        var load = new CurtainLoad(site.Weight(own, "W_pole"), clothN, clothN, clothN, e.Word("curtains") == "pair" ? 2 : 1);
        var cases = Curtains.Cases(site, rail, load, arm);
        var at = new Push(0, 0, arm, default);
        return new(cloth + own, stand, arm, [.. cases, .. site.Pulls(rail, cases[^1].Permanent, at, People.DownAndOut)]);
    }
}
