using Pattress.Walls;

namespace Pattress.Tests.Walls;

public class WallChecksTests
{
    private static readonly CheckSite Hidden = new(true, false, true);

    [Fact]
    public void An_unknown_wall_asks_for_a_check_that_is_expected_to_help()
    {
        var next = WallChecks.Next(WallModel.Infer(new("w", "wall", [])), Hidden);
        Assert.NotEqual("", next.Check);
        Assert.True(next.GainMinutes > 0);
        Assert.Equal("check_" + next.Check, next.Why.Code);
    }

    [Fact]
    public void What_a_check_may_find_sums_to_one_under_every_build_up()
    {
        foreach (string kind in new[] { "wall", "ceiling" })
        {
            List<BuildUpBelief> rows = [.. WallModel.Infer(new("w", kind, [])).BuildUps];
            foreach (var offer in WallChecks.Offers(rows, Hidden with { Also = "cold" }, WallRates.Default))
                for (int h = 0; h < rows.Count; h++) Assert.Equal(1, offer.Likelihood.Sum(l => l[h]), 0.011); // tables are given to two decimals
        }
    }

    [Fact] // a likelihood is a density: over all that a wire may show it integrates to one, void or none
    public void What_a_wire_shows_integrates_to_one()
    {
        var rates = WallRates.Default;
        foreach (string id in new[] { "masonry_brick.plaster_13", "timber_studs.12_5", "dabs_brick.12_5" })
        {
            IReadOnlyList<BuildUp> row = [BuildUps.Find(id)!];
            double stiff = 0, hooked = 0;
            for (double mm = 0.25; mm < rates.MisreadRangeMm; mm += 0.5)
            {
                stiff += 0.5 * Math.Exp(new WallLikelihood(row, new("w", "wall", [new StiffWire("v", 5, 5, mm)]), rates).Log[0]);
                hooked += 0.5 * Math.Exp(new WallLikelihood(row, new("w", "wall", [new HookedWire("h", 5, 5, mm)]), rates).Log[0]);
            }
            Assert.Equal(1, hooked, 0.01);
            Assert.Equal(1, stiff, 0.02); // a void of 85 mm sd 14 reaches past the range a little
        }
    }

    [Fact] // by hand: at .88 a tap, three or more of five are 10 x .88^3 x .12^2 + 5 x .88^4 x .12 + .88^5 = .985681
    public void Five_taps_on_plaster_over_brick_sound_mostly_solid()
    {
        List<BuildUpBelief> rows = [WallModel.Infer(new("w", "wall", [])).BuildUps.First(b => b.BuildUp.Id == "masonry_brick.plaster_13")];
        var offer = WallChecks.Offers(rows, Hidden, WallRates.Default with { TellWell = 1, TellPoor = 0 }).First(o => o.Id == "tap");
        Assert.Equal(0.985681, offer.Likelihood[offer.Outcomes.ToList().IndexOf("solid")][0], 1e-6);
    }

    [Fact]
    public void A_wall_that_is_known_asks_for_nothing()
    {
        var known = WallModel.Infer(new("w", "wall", [new HoleFelt("h", 5, 5) { Met = "void" }, new HookedWire("w", 5, 5, 12.4), new StiffWire("v", 5, 5, 88),
            new MagnetDrawn("m", 0, 0, 3000, 4), new WordReading("o", 0, 0, "outlet", "board_and_void"), new HookedWire("w2", 900, 5, 12.6)]));
        Assert.Equal("", WallChecks.Next(known, Hidden).Check);
    }

    [Fact]
    public void A_hole_in_sight_is_dearer_than_a_hidden_one()
    {
        var belief = WallModel.Infer(new("w", "wall", []));
        double hidden = WallChecks.Next(belief, Hidden).GainMinutes, seen = WallChecks.Next(belief, Hidden with { Hidden = false }).GainMinutes;
        Assert.True(hidden > seen);
    }
}
