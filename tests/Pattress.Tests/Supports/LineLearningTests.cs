using Pattress.Supports;

namespace Pattress.Tests.Supports;

/// <summary>Rates of taps and magnets re-estimated: closed forms by hand, and invented walls whose rates are known.</summary>
public class LineLearningTests
{
    private static readonly LineRates Assumed = LineRates.Default;

    /// <summary>A wall that can have no support at all.</summary>
    private static readonly LinePriors Bare = LinePriors.Default with { EndStud = 0, Presence = 0, ExtraPerBay = 0, RenewalShare = 0 };

    private static double Now(LineLearning learned, string rate) => learned.Learned.Single(r => r.Name == rate).Now;

    [Fact]
    public void Without_scans_the_assumed_rates_stay()
    {
        var none = LineLearning.Of([], Assumed, LinePriors.Default);
        Assert.Equal(Assumed, none.Rates);
        Assert.Equal(0, none.Holes);
    }

    [Fact] // by hand: 1 hit in 5 m before, 3 hits in 6 m now: 4 / 11 m
    public void Where_no_support_can_be_every_hit_is_false()
    {
        LineScan[] scans = [.. Enumerable.Range(0, 3).Select(i => new LineScan(2400, [new ThinHole("h", 600, HoleMet.Void), new MagnetSweep("m", 200, 2200, [900])], []))];
        Assert.Equal(1000 * 4.0 / 11000, Now(LineLearning.Of(scans, Assumed, Bare), "magnet_false_per_m"), 0.003);
    }

    [Fact] // by hand: Beta(16, 4), 18 found of 30: 34 / 50; a hit that is not the stud's own screw: at most .0002 x .3 / (.7 / 50 mm) = .004
    public void A_stud_that_a_hole_met_counts_as_found_or_not()
    {
        var sure = Assumed with { HoleMeetsOff = 1e-4 };
        LineScan[] scans = [.. Enumerable.Range(0, 30).Select(i => new LineScan(2400, [new ThinHole("h", 600, HoleMet.Support), new MagnetSweep("m", 550, 650, i < 18 ? [600] : [])], []))];
        Assert.Equal(34.0 / 50, Now(LineLearning.Of(scans, sure, LinePriors.Default with { SteelShare = 0 }), "magnet_finds"), 0.005);
    }

    [Fact] // facts: a screw under a stud is none of the "hits that are no screw in a support"
    public void A_screw_that_no_hole_has_opened_is_no_false_hit()
    {
        int[] studs = [600, 1200, 1800, 2400, 3000, 3600];
        LineScan scan = new(4200, [
            new ThinHole("h", 1200, HoleMet.Support), .. studs.Select(s => new Tap($"t{s}", s, TapSound.Solid)), .. studs.Select(s => new Tap($"u{s}", s + 300, TapSound.Hollow)),
            .. studs.Select(s => new MagnetSweep($"m{s}", s - 70, s + 70, [s + 3]))], []);
        Assert.True(Now(LineLearning.Of([scan], Assumed, LinePriors.Default), "magnet_false_per_m") < 0.2);
    }

    [Fact] // facts: two trimmers and a stud of the row beside them have three lines of screws
    public void Screws_of_three_timbers_side_by_side_are_no_false_hits()
    {
        LineScan[] scans = [.. Enumerable.Range(0, 10).Select(i => new LineScan(4200, [
            new Tap("a", 1800, TapSound.Solid), new Tap("b", 1840, TapSound.Solid), new Tap("c", 1870, TapSound.Solid), new MagnetSweep("m", 1760, 1920, [1800, 1840, 1878]), new ThinHole("h", 1836, HoleMet.Support)], []))];
        Assert.True(Now(LineLearning.Of(scans, Assumed, LinePriors.Default), "magnet_false_per_m") <= 0.2);
    }

    [Fact]
    public void Order_of_the_walls_does_not_matter_and_far_misses_lower_the_rate()
    {
        LineScan[] scans = [.. Enumerable.Range(0, 8).Select(i => new LineScan(2400, [new Tap("t", 600, TapSound.Hollow), new ThinHole("h", 600, HoleMet.Support), new MagnetSweep("m", 530, 670, i % 2 == 0 ? [600] : [])], []))];
        var learned = LineLearning.Of(scans, Assumed, LinePriors.Default);
        Assert.True(Now(learned, "tap_solid_on") < Assumed.TapSolidOn - 0.1);
        Assert.Equal(8, learned.Holes);
        var turned = LineLearning.Of([.. scans.Reverse()], Assumed, LinePriors.Default);
        Assert.All(learned.Learned.Zip(turned.Learned), pair => Assert.Equal(pair.First.Now, pair.Second.Now, 1e-9));
    }

    [Fact] // steps of .25 in log odds: the likeliest is at most half of one away, and .005 of the two digits, .05 in log odds at .88
    public void Walls_are_read_by_the_nearest_step_to_what_is_likeliest()
    {
        LineScan[] scans = [.. Enumerable.Range(0, 8).Select(i => new LineScan(2400, [new Tap("t", 600, TapSound.Hollow), new ThinHole("h", 600, HoleMet.Support)], []))];
        var learned = LineLearning.Of(scans, Assumed, LinePriors.Default);
        var row = learned.Learned.Single(r => r.Name == "tap_solid_on");
        Assert.Equal(learned.Rates.TapSolidOn, row.Used);
        Assert.Equal(Math.Log(row.Now / (1 - row.Now)), Math.Log(row.Used / (1 - row.Used)), 0.175);
        double steps = (Math.Log(row.Used / (1 - row.Used)) - Math.Log(0.88 / 0.12)) / 0.25;
        Assert.True(steps < -1.5);
        Assert.Equal(Math.Round(steps), steps, 0.2);
    }

    [Fact]
    public void One_wall_as_it_was_is_nearly_what_learning_anew_would_give()
    {
        LineScan[] scans = [.. Enumerable.Range(0, 12).Select(i => new LineScan(2400, [new Tap("t", 600, i < 3 ? TapSound.Hollow : TapSound.Solid), new ThinHole("h", 600, HoleMet.Support)], []))];
        var then = LineLearning.Of(scans, Assumed, LinePriors.Default).With(0, null);
        Assert.Equal(LineLearning.Of(scans[1..], Assumed, LinePriors.Default).Rates.TapSolidOn, then.TapSolidOn, 0.041); // one step of what is kept, .80 to .84
    }

    /// <summary>
    /// Facts: the rates that the invented walls are made with. Some 200 taps over studs, 2,000 off them, 200 studs swept and, more than 100 mm from them,
    /// half of 105 m: three standard deviations are .07, .02, .085 and .19 a metre; the wrong start, of 20 in some 200, pulls by .01 more.
    /// </summary>
    [Fact]
    public void Rates_that_were_assumed_wrong_by_a_factor_of_two_are_found_again()
    {
        var wrong = Assumed with { TapSolidOff = 2 * Assumed.TapSolidOff, MagnetFalsePerMm = 2 * Assumed.MagnetFalsePerMm, MagnetFinds = 0.6, TapSolidOn = 0.76 };
        var random = new Random(20261126);
        LineScan[] scans = [.. Enumerable.Range(0, 25).Select(i => new InventedWall(random, Assumed).Scan(random))];
        var learned = LineLearning.Of(scans, wrong, LinePriors.Default);
        Assert.Equal(Assumed.TapSolidOn, Now(learned, "tap_solid_on"), 0.08);
        Assert.Equal(Assumed.TapSolidOff, Now(learned, "tap_solid_off"), 0.03);
        Assert.Equal(Assumed.MagnetFinds, Now(learned, "magnet_finds"), 0.095);
        Assert.Equal(Assumed.MagnetFalsePerMm * 1000, Now(learned, "magnet_false_per_m"), 0.2);
    }
}
