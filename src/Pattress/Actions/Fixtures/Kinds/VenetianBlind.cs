using Pattress.Working;

namespace Pattress.Actions.Fixtures.Kinds;

/// <summary>A venetian blind by its slats.</summary>
internal sealed class VenetianBlind : Blind
{
    public override string Kind => "venetian_blind";

    protected override string Headrail => "headrail_venetian";

    protected override double CurtainKg(Site site, double width, double drop)
    {
        double slats = site.Entries.Table("slats." + site.Entries.Word("slats")), bar = site.Entries.Table("bar.bottom");
        return site.Step("m_blind", width * (drop * slats + bar), "kg", "arithmetic", [In.Of(width), In.Of(drop), In.Of(slats), In.Of(bar)]);
    }
}
