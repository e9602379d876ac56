using Pattress.Jobs.Locate;
using Pattress.Supports;

namespace Pattress.Tests.Supports;

/// <summary>Rates that holes have taught: they can be given with a scan, and walls are gone through together.</summary>
public class OwnRatesTests
{
    [Fact]
    public void A_scan_takes_rates_of_its_own_and_refuses_what_is_none()
    {
        const string scan = """{"length_mm":3600,"readings":[{"kind":"tap","at_mm":900,"sound":"solid"}],"zones":[{"from_mm":800,"to_mm":1000}],"rates":{RATES}}""";
        var own = LocateDocument.Read(scan.Replace("{RATES}", """{"tap_solid_off":0.3}""", StringComparison.Ordinal)).Value!;
        var usual = LocateDocument.Read(scan.Replace(",\"rates\":{RATES}", "", StringComparison.Ordinal)).Value!;
        // A tap that sounds solid three times in ten where nothing is says less.
        Assert.True(SupportModel.Infer(own).HitAt(900) < SupportModel.Infer(usual).HitAt(900));
        var refused = LocateDocument.Read(scan.Replace("{RATES}", """{"tap_solid_off":1.5}""", StringComparison.Ordinal));
        Assert.Equal("$.rates.tap_solid_off", Assert.Single(refused.Problems).Path.ToString());
    }

    [Fact]
    public void The_order_of_walls_does_not_matter_and_none_teach_nothing()
    {
        List<LineScan> scans = [.. Enumerable.Range(0, 6).Select(i => new LineScan(2400 + (100 * i), [new Tap("t", 600, i % 2 == 0 ? TapSound.Solid : TapSound.Hollow), new ThinHole("h", 600, i < 4 ? HoleMet.Support : HoleMet.Void)], []))];
        var rates = LineRates.Default;
        var one = LineLearning.Of(scans, rates, LinePriors.Default).Rates;
        scans.Reverse();
        var other = LineLearning.Of(scans, rates, LinePriors.Default).Rates;
        Assert.Equal(one.TapSolidOn, other.TapSolidOn, 1e-9);
        Assert.Equal(one.MagnetFalsePerMm, other.MagnetFalsePerMm, 1e-12);
        Assert.Equal(rates.TapSolidOn, LineLearning.Of([], rates, LinePriors.Default).Rates.TapSolidOn, 1e-12);
    }
}
