using Pattress.Working;

namespace Pattress.Actions.Fixtures.Kinds;

/// <summary>A roller blind: a tube between two brackets.</summary>
internal sealed class RollerBlind : Blind
{
    public override string Kind => "roller_blind";

    protected override string Headrail => "tube_roller";

    protected override double CurtainKg(Site site, double width, double drop)
    {
        double fabric = site.Entries.Entered("fabric_g_m2") ?? site.Entries.Table("fabric.roller"), bar = site.Entries.Table("bar.bottom");
        return site.Step("m_blind", width * (drop * fabric / 1000 + bar), "kg", "arithmetic", [In.Of(width), In.Of(drop), In.Of(fabric), In.Of(bar)]);
    }

    protected override IEnumerable<Jobs.Point> Brackets(Site site, double width) => Layout.Line(site.Middle, width, 0, 2);
}
