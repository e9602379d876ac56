using Pattress.Working;

namespace Pattress.Actions.Fixtures.Kinds;

/// <summary>A vertical blind: vanes that stack to either side like a single curtain.</summary>
internal sealed class VerticalBlind : Blind
{
    public override string Kind => "vertical_blind";

    protected override string Headrail => "headrail_vertical";

    protected override double CurtainKg(Site site, double width, double drop)
    {
        double fabric = site.Entries.Entered("fabric_g_m2") ?? site.Entries.Table("fabric.vanes"), overlap = site.Entries.Table("vanes.overlap");
        return site.Step("m_blind", width * drop * overlap * fabric / 1000, "kg", "arithmetic",
            [In.Of(width), In.Of(drop), In.Of(overlap), In.Of(fabric)]);
    }

    protected override IReadOnlyList<Draft> Own(Site site, Rail rail, double railN, double clothN, double arm) =>
        Curtains.Cases(site, rail, new(railN, clothN, clothN, clothN, 1), arm);
}
