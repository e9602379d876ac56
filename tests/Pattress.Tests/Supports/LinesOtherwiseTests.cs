using Pattress.Supports;

namespace Pattress.Tests.Supports;

/// <summary>Lines up a wall, ceilings whose joists may run either way, pairs of timbers.</summary>
public class LinesOtherwiseTests
{
    private static List<LineReading> Taps(double length, Func<double, bool> solid, double height = 0) =>
        [.. Enumerable.Range(1, (int)(length / 40) - 1).Select(i => new Tap($"{height:0}-t{i}", i * 40, solid(i * 40) ? TapSound.Solid : TapSound.Hollow, height))];

    [Fact] // common practice, no source: noggins stand in a row at mid height
    public void Up_a_wall_between_studs_a_solid_place_at_mid_height_is_a_noggin()
    {
        var belief = SupportModel.Infer(new(2400, Taps(2400, y => Math.Abs(y - 1200) < 26), []) { IsUp = true });
        Assert.True(belief.HitAt(1200) > 0.4);
        Assert.True(belief.HitAt(1200) > 10 * belief.HitAt(700));
        Assert.True(belief.AlongProbability < 0.01);
    }

    [Fact]
    public void Up_a_wall_that_is_solid_all_the_way_the_line_lies_on_a_stud()
    {
        var belief = SupportModel.Infer(new(2400, Taps(2400, _ => true), [new(600, 900)]) { IsUp = true });
        Assert.True(belief.AlongProbability > 0.9);
        Assert.True(belief.HitAt(700) > 0.9);
        Assert.True(belief.Zones[0].NoneProbability < 0.1);
    }

    [Fact]
    public void Up_a_wall_solid_places_each_600_are_battens()
    {
        var belief = SupportModel.Infer(new(2400, Taps(2400, y => Math.Abs((y % 600) - 300) < 26), []) { IsUp = true });
        Assert.Equal(600, belief.Pitches[0].Mm);
        Assert.True(belief.HitAt(900) > 0.8);
    }

    [Fact] // joints are made on supports: common practice, no source
    public void A_board_joint_speaks_for_a_support_under_it()
    {
        var bare = new LineScan(4200, [], []);
        Assert.True(SupportModel.Infer(bare with { Readings = [new BoardJoint("j", 2150)] }).HitAt(2150) > 2 * SupportModel.Infer(bare).HitAt(2150));
    }

    private static LineScan Ceiling(double x, double y, IReadOnlyList<(double X, double Y, bool Solid)> taps) => new(x, Along(taps, false), [])
    {
        IsCeiling = true,
        OtherWay = new(y, Along(taps, true), []) { IsCeiling = true },
    };

    private static List<LineReading> Along(IReadOnlyList<(double X, double Y, bool Solid)> taps, bool turned) =>
        [.. taps.Select((t, i) => new Tap($"t{i:000}", turned ? t.Y : t.X, t.Solid ? TapSound.Solid : TapSound.Hollow, turned ? t.X : t.Y))];

    /// <summary>Taps along both lines through a place between two joists, which lie each 400 along y.</summary>
    private static List<(double X, double Y, bool Solid)> Cross() =>
    [
        .. Enumerable.Range(1, 60).Select(i => (i * 40.0, 1200.0, false)),
        .. Enumerable.Range(1, 60).Select(i => (1500.0, i * 40.0, Math.Abs((i * 40 % 400) - 200) < 26)),
    ];

    [Fact] // common practice, no source: joists are set out for the house, so a room's end says less of them than of studs
    public void Before_anything_is_seen_a_joist_is_expected_hardly_more_at_a_pitch_from_the_end_than_elsewhere()
    {
        var ceiling = SupportModel.Infer(new(4200, [], []) { IsCeiling = true });
        var wall = SupportModel.Infer(new(4200, [], []));
        Assert.True(wall.HitAt(1200) > 3 * wall.HitAt(1100));
        Assert.True(ceiling.HitAt(1200) < 3 * ceiling.HitAt(1100));
    }

    [Fact]
    public void Solid_places_along_y_and_none_along_x_turn_the_joists()
    {
        var belief = SupportModel.Infer(Ceiling(3000, 2600, Cross()));
        Assert.True(belief.ParallelProbability > 0.95);
        Assert.True(belief.OtherWay!.HitAt(1000) > 0.9);
        Assert.True(belief.HitAt(1500) < 0.1);
    }

    [Fact]
    public void Turned_by_a_quarter_a_ceiling_gives_the_other_direction()
    {
        // Either way is as likely before, so that the two directions' chances change places and sum to one.
        var even = LinePriors.Default with { ParallelShare = 0.5 };
        var one = Ceiling(3000, 2600, [.. Cross().Where((_, i) => i % 3 == 0)]);
        var turned = one.OtherWay! with { OtherWay = one with { OtherWay = null } };
        Assert.Equal(1, SupportModel.Infer(one, priors: even).ParallelProbability + SupportModel.Infer(turned, priors: even).ParallelProbability, 1e-9);
    }

    [Fact]
    public void A_place_on_a_ceiling_counts_both_directions_by_their_chance()
    {
        var belief = SupportModel.Infer(Ceiling(3000, 2600, Cross()));
        // By hand, the law of total probability: P(along x) P(meets | along x) + P(along y) P(meets | along y).
        Assert.Equal(belief.HitAt(1500) + (belief.ParallelProbability * belief.OtherWay!.HitAt(1000)), belief.HitAt(1500, 1000), 1e-12);
        Assert.True(belief.HitAt(1500, 1000) > 0.9);
        Assert.True(belief.HitAt(1500, 1200) < 0.1);
    }

    [Fact]
    public void Two_timbers_beside_an_opening_are_written_out()
    {
        var p = LinePriors.Default with { EndStud = 0, EndSdMm = 1 };
        var random = new Random(3);
        double[] w = [.. Enumerable.Range(0, 1001).Select(_ => Math.Exp(random.NextDouble() - 0.5))], pair = [.. w.Select(_ => Math.Exp(random.NextDouble() - 0.5))];
        var studs = new FixedStuds();
        studs.Set(new(1000, [], []) { Openings = [new(400, 600, false)] }, p, 38, 1, pairs: true);
        // By hand: on each side no trimmer, one with its centre 19 from the opening, or two nailed together with theirs 38 from it.
        double[] kernel = Normal.Kernel(1, 0, 0, 1);
        double Mean(double[] row, int at) => kernel.Select((k, i) => k * row[at + i - (kernel.Length / 2)]).Sum();
        double Side(int one, int two) => 1 - p.Trimmer + (p.Trimmer * (((1 - p.TrimmerDoubled) * Mean(w, one)) + (p.TrimmerDoubled * Mean(pair, two))));
        Assert.Equal(Math.Log(Side(381, 362)) + Math.Log(Side(619, 638)), studs.LogFactor(w, pair), 1e-12);
        double[] density = new double[1001];
        studs.AddDensity(w, pair, density, 1);
        // Expected timbers: one or two a side, by their shares.
        double Timbers(int one, int two) => p.Trimmer * (((1 - p.TrimmerDoubled) * Mean(w, one)) + (2 * p.TrimmerDoubled * Mean(pair, two))) / Side(one, two);
        Assert.Equal(Timbers(381, 362) + Timbers(619, 638), density.Sum(), 1e-9);
    }

    [Fact]
    public void A_hole_between_two_timbers_is_counted_once_for_the_pair()
    {
        var r = LineRates.Default;
        double[] pair = [.. Enumerable.Repeat(1.0, 301)];
        PointWeights.Hole(pair, 1, new("h", 150, HoleMet.Support), SupportKind.Pair(LinePriors.Default, r), r);
        // P(met | either timber there) / P(met | none): once, not squared.
        Assert.Equal(r.HoleMeetsOn / r.HoleMeetsOff, pair[150], 1e-12);
        Assert.Equal(1, pair[150 + 39], 1e-12);
    }

    [Fact]
    public void What_is_behind_a_hole_without_the_hole_is_what_the_other_readings_say()
    {
        var others = new LineScan(4200, [new Tap("a", 1000, TapSound.Solid), new Tap("b", 1200, TapSound.Hollow)], []);
        foreach (var hole in new[] { new ThinHole("h", 1000, HoleMet.Void), new ThinHole("h", 1200, HoleMet.Void) })
        {
            var belief = SupportModel.Infer(others with { Readings = [.. others.Readings, hole] });
            // Exact but where a hole touches two supports at once.
            Assert.Equal(SupportModel.Infer(others).HitAt(hole.AtMm), belief.HitWithout(hole), 0.01);
        }
    }

    [Fact]
    public void Many_contradictory_certain_readings_still_give_chances_and_are_named()
    {
        List<LineReading> holes = [.. Enumerable.Range(0, 40).Select(i => new ThinHole($"h{i}", 1000 + (i % 3), i % 2 == 0 ? HoleMet.Support : HoleMet.Void))];
        var belief = SupportModel.Infer(new(3000, holes, [new(900, 1100)]));
        Assert.All(belief.Hit, h => Assert.InRange(h, 0, 1));
        Assert.InRange(belief.Zones[0].NoneProbability, 0, 1);
        Assert.NotEmpty(belief.Contradictions);
    }

    [Fact]
    public void Once_warm_the_average_of_models_allocates_nothing()
    {
        var model = new LineModel();
        model.Load(new(4200, Taps(4200, x => x % 600 < 40), []) { Openings = [new(1000, 1900, false)] }, LineRates.Default, LinePriors.Default, 1);
        // Tiered compilation replaces methods while they run; a handful of runs passes that.
        for (int i = 0; i < 60; i++) model.Run(null, marginals: true);
        long before = GC.GetAllocatedBytesForCurrentThread();
        model.Run(null, marginals: true);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    /// <summary>
    /// Facts: the stud at an end stands there wherever the lattice begins, so that a tap over it says nothing of studs farther in; nor does one
    /// over a trimmer. If its readings counted for an extra or a place of the lattice too, they would draw the lattice there.
    /// </summary>
    [Fact]
    public void What_is_heard_of_an_end_stud_or_a_trimmer_says_nothing_of_the_lattice()
    {
        var timber = LinePriors.Default with { SteelShare = 0 };
        var bare = new LineScan(4200, [new Tap("a", 1500, TapSound.Solid), new Tap("b", 1700, TapSound.Hollow)], []) { Openings = [new(2400, 3300, false)] };
        var all = SupportModel.Infer(bare, priors: timber);
        foreach (double at in new[] { 19.0, 4181, 2381, 3319 })
        {
            var heard = SupportModel.Infer(bare with { Readings = [.. bare.Readings, new Tap("t", at, TapSound.Solid), new MagnetSweep("m", at - 15, at + 15, [at])] }, priors: timber);
            Assert.Equal(all.HitAt(1500), heard.HitAt(1500), 0.004); // a trimmer's tap is faintly heard 55 mm on
            Assert.True(heard.HitAt(at) > all.HitAt(at));
        }
    }
}
