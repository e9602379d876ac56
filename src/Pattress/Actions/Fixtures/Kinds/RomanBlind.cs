using Pattress.Working;

namespace Pattress.Actions.Fixtures.Kinds;

/// <summary>A roman blind: lined cloth with rods.</summary>
internal sealed class RomanBlind : Blind
{
    public override string Kind => "roman_blind";

    protected override string Headrail => "headrail_roman";

    protected override double CurtainKg(Site site, double width, double drop)
    {
        var e = site.Entries;
        double fabric = Curtains.FabricGM2(e), lining = e.Table("lining." + e.Word("lining")), interlining = e.Table("interlining." + e.Word("interlining"));
        double turns = e.Table("roman.overlap"), battens = e.Table("battens.roman");
        return site.Step("m_blind", width * drop * (turns * (fabric + lining + interlining) / 1000 + battens), "kg", "arithmetic",
            [In.Of(width), In.Of(drop), In.Of(turns), In.Of(fabric), In.Of(lining), In.Of(interlining), In.Of(battens)]);
    }
}
