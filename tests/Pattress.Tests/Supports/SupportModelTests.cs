using Pattress.Supports;

namespace Pattress.Tests.Supports;

public class SupportModelTests
{
    private static LineScan Scan(params LineReading[] readings) => new(4200, readings, [new(600, 1240), new(2000, 2640)]);

    private static LineScan Taps(double length, IReadOnlyList<Zone> zones, params double[] studs) =>
        new(length, [.. Enumerable.Range(1, (int)(length / 40) - 1).Select(i =>
            new Tap($"t{i}", i * 40, studs.Any(s => Math.Abs(s - (i * 40)) < 26) ? TapSound.Solid : TapSound.Hollow))], zones);

    [Fact] // common practice, no source: solid at regular places is board on studs, at that pitch
    public void Solid_taps_each_600_make_600_the_pitch()
    {
        var belief = SupportModel.Infer(Taps(4200, [new(2000, 2640)], 600, 1200, 1800, 2400, 3000, 3600));
        Assert.Contains(belief.Pitches.Take(2), p => p.Mm == 600);
        Assert.InRange(belief.Zones[0].BestMm, 2380, 2420);
        Assert.True(belief.Zones[0].Probability > 0.9);
    }

    [Fact] // common practice, no source: a thin hole settles it
    public void A_probe_that_meets_wood_settles_its_place_and_one_that_misses_moves_the_best_place()
    {
        var before = SupportModel.Infer(Taps(4200, [new(2000, 2640)], 2400));
        var met = SupportModel.Infer(Taps(4200, [new(2000, 2640)], 2400) is var s ? s with { Readings = [.. s.Readings, new ThinHole("h", 2400, HoleMet.Support)] } : s);
        var missed = SupportModel.Infer(s with { Readings = [.. s.Readings, new ThinHole("h", before.Zones[0].BestMm, HoleMet.Void)] });
        Assert.True(met.Zones[0].Probability > Math.Max(0.95, before.Zones[0].Probability));
        // By hand: over a support a hole is felt as void with (1 - .98) x .6, beside one with 1 - .01 - 2 x .004.
        double p = before.HitAt(before.Zones[0].BestMm), odds = p / (1 - p) * 0.012 / 0.982;
        Assert.Equal(odds / (1 + odds), missed.HitAt(before.Zones[0].BestMm), 0.02);
    }

    [Fact]
    public void The_zones_best_place_maximises_the_chance_in_its_zone()
    {
        var belief = SupportModel.Infer(Taps(4200, [new(300, 900), new(2000, 2640)], 600, 1200, 1800, 2400));
        foreach (var z in belief.Zones)
        {
            double most = Enumerable.Range((int)z.FromMm, (int)(z.ToMm - z.FromMm) + 1).Max(x => belief.HitAt(x));
            Assert.InRange(z.BestMm, z.FromMm, z.ToMm);
            Assert.Equal(most, z.Probability, 1e-6);
            Assert.True(z.UsableProbability <= z.Probability + 1e-9 && z.Probability <= 1 - z.NoneProbability + 1e-6);
        }
    }

    [Fact]
    public void The_order_of_readings_is_irrelevant()
    {
        var scan = Scan(new Tap("a", 320, TapSound.Solid), new Tap("b", 340, TapSound.Hollow), new MagnetSweep("c", 250, 390, [318.5]), new ThinHole("d", 318, HoleMet.Support));
        Same(SupportModel.Infer(scan), SupportModel.Infer(scan with { Readings = [.. scan.Readings.Reverse()] }), 0);
    }

    [Fact]
    public void A_mirrored_wall_gives_the_mirrored_answer()
    {
        var even = LinePriors.Default with { DatumLeft = 0.35, DatumRight = 0.35 };
        var scan = new LineScan(4200, [new Tap("a", 320, TapSound.Solid), new Tap("b", 700, TapSound.Hollow), new MagnetSweep("c", 250, 390, [318]), new ThinHole("d", 900, HoleMet.Void)], []);
        var mirrored = scan with { Readings = [new Tap("a", 3880, TapSound.Solid), new Tap("b", 3500, TapSound.Hollow), new MagnetSweep("c", 3810, 3950, [3882]), new ThinHole("d", 3300, HoleMet.Void)] };
        var a = SupportModel.Infer(scan, priors: even).Hit;
        var b = SupportModel.Infer(mirrored, priors: even).Hit;
        // The grid's rounding of fractional pitches is not symmetric: half a step of the imperial ones.
        for (int i = 0; i < a.Count; i++) Assert.Equal(a[i], b[a.Count - 1 - i], 0.004);
    }

    [Fact]
    public void A_far_reading_matters_with_phase_memory_and_not_without_it()
    {
        LinePriors free = LinePriors.Default with { DatumLeft = 0, DatumRight = 0, SteelShare = 0, EndStud = 0 };
        var renewal = free with { RenewalShare = 1, GapAnyShare = 1 };
        var lattice = free with { RenewalShare = 0, Pitches = [new(600, 1)] };
        var near = new LineScan(30000, [new Tap("a", 600, TapSound.Solid)], []);
        var far = near with { Readings = [.. near.Readings, new ThinHole("b", 27000, HoleMet.Support)] };
        Assert.Equal(SupportModel.Infer(near, priors: renewal).HitAt(620), SupportModel.Infer(far, priors: renewal).HitAt(620), 1e-6);
        Assert.True(Math.Abs(SupportModel.Infer(near, priors: lattice).HitAt(600) - SupportModel.Infer(far, priors: lattice).HitAt(600)) > 0.05);
    }

    [Fact]
    public void A_second_tap_beside_the_first_is_no_second_opinion()
    {
        double one = SupportModel.Infer(Scan(new Tap("a", 1000, TapSound.Solid))).HitAt(1000);
        double twice = SupportModel.Infer(Scan(new Tap("a", 1000, TapSound.Solid), new Tap("b", 1000, TapSound.Solid))).HitAt(1000);
        double apart = SupportModel.Infer(Scan(new Tap("a", 1000, TapSound.Solid), new Tap("b", 1400, TapSound.Solid))).HitAt(1000);
        Assert.Equal(one, twice, 1e-9);
        Assert.True(apart > one);
    }

    [Fact]
    public void All_hit_of_one_place_is_its_chance_and_of_several_lies_between_product_and_least()
    {
        var scan = Taps(4200, [], 600, 1200, 1800, 2400, 3000);
        var belief = SupportModel.Infer(scan);
        double both = SupportModel.AllHit(scan, [1200, 2400]);
        Assert.Equal(belief.HitAt(1800), SupportModel.AllHit(scan, [1800]), 1e-3);
        Assert.InRange(both, belief.HitAt(1200) * belief.HitAt(2400), Math.Min(belief.HitAt(1200), belief.HitAt(2400)));
    }

    [Fact]
    public void Contradictory_holes_are_named()
    {
        var belief = SupportModel.Infer(Scan(new ThinHole("a", 1000, HoleMet.Support), new ThinHole("b", 1001, HoleMet.Void)));
        Assert.Equal("holes_disagree", Assert.Single(belief.Contradictions).What.Code);
        Assert.All(belief.Hit, h => Assert.InRange(h, 0, 1));
    }

    [Fact]
    public void A_next_check_gains_something_and_none_is_asked_for_when_all_is_known()
    {
        var open = SupportModel.Infer(Taps(4200, [new(2000, 2640)]));
        Assert.True(open.Next is { } n && n.After > n.Before);
        var done = Taps(4200, [new(2380, 2420)], 2400) is var s ? SupportModel.Infer(s with { Readings = [.. s.Readings, new ThinHole("h", 2400, HoleMet.Support), new MagnetSweep("m", 2330, 2470, [2400])] }) : null;
        Assert.Null(done!.Next);
    }

    private static void Same(SupportBelief a, SupportBelief b, double tolerance)
    {
        for (int i = 0; i < a.Hit.Count; i++) Assert.Equal(a.Hit[i], b.Hit[i], tolerance);
        Assert.Equal(a.LogEvidence, b.LogEvidence, tolerance);
    }

    [Fact] // facts: nothing was read at the ends; a stud between two that were found follows from them; unknown is never certain
    public void A_support_says_what_it_rests_on_and_is_never_certain()
    {
        var belief = SupportModel.Infer(Scan(new ThinHole("a", 1200, HoleMet.Support), new Tap("t", 1200, TapSound.Solid), new MagnetSweep("m", 1130, 1270, [1200]), new ThinHole("b", 2400, HoleMet.Support)));
        Assert.Equal("assumed", belief.Supports[0].Basis);
        Assert.Equal("assumed", belief.Supports[^1].Basis);
        Assert.Equal("read", belief.Supports.MinBy(s => Math.Abs(s.CentreMm - 1200))!.Basis);
        Assert.Equal("pitch", belief.Supports.MinBy(s => Math.Abs(s.CentreMm - 3000))!.Basis);
        Assert.All(belief.Supports, s => Assert.True(s.Probability <= 0.995));
    }
}
