using Pattress.Actions.Beams;

namespace Pattress.Tests.Beams;

/// <summary>Influence lines, envelopes and stiffness boxes by handbook formulas and by every case counted out.</summary>
public sealed class BeamsByHandTests
{
    // Any handbook (Clapeyron): built in at the left, propped at L: M there = -b (L² - b²) / 2L² for a unit load b from the prop;
    // built in at both ends: -a b² / L². Reactions of the prop: a² (3L - a) / 2L³.
    [Theory]
    [InlineData(100), InlineData(400), InlineData(650), InlineData(999)]
    public void Built_in_beams(double a)
    {
        const double L = 1000;
        double b = L - a;
        Beam propped = new(L, 2e9, new BeamSupport(0, Clamped: true), new(L)), both = new(L, 2e9, new BeamSupport(0, Clamped: true), new(L, Clamped: true));
        Beam right = new(L, 2e9, new BeamSupport(0), new(L, Clamped: true));
        Assert.Equal(-b * (L * L - b * b) / (2 * L * L), InfluenceLine.OfMoment(propped, 0)!.At(a), 1e-7);
        Assert.Equal(-a * b * b / (L * L), InfluenceLine.OfMoment(both, 0)!.At(a), 1e-7);
        Assert.Equal(-a * a * b / (L * L), InfluenceLine.OfMoment(both, L)!.At(a), 1e-7);
        Assert.Equal(-a * (L * L - a * a) / (2 * L * L), InfluenceLine.OfMoment(right, L)!.At(a), 1e-7);
        Assert.Equal(a * a * (3 * L - a) / (2 * L * L * L), InfluenceLine.OfReaction(propped, 1)!.At(a), 1e-10);
        // Within the span: the line at x is the reaction of the prop times (L - x), less what lies to the right of x.
        double prop = a * a * (3 * L - a) / (2 * L * L * L);
        Assert.Equal(prop * (L - 300) - Math.Max(0, a - 300), InfluenceLine.OfMoment(propped, 300)!.At(a), 1e-7);
    }

    // A joint carries no moment: a beam hung on to a cantilever of 400 by a hinge there, propped at 1000: R = (a - 400) / 600 beyond the hinge, none before it;
    // the moment at the wall is -a before it, -400 (1000 - a) / 600 beyond it.
    [Theory]
    [InlineData(200), InlineData(399), InlineData(700), InlineData(1000)]
    public void Hung_beam(double a)
    {
        var beam = new Beam([new(1000, 2e9)], [new(0, Clamped: true), new(1000)], [400]);
        Assert.Equal(a < 400 ? 0 : (a - 400) / 600, InfluenceLine.OfReaction(beam, 1)!.At(a), 1e-9);
        Assert.Equal(a < 400 ? -a : -400 * (1000 - a) / 600, InfluenceLine.OfMoment(beam, 0)!.At(a), 1e-6);
        Assert.Equal(0, InfluenceLine.OfMoment(beam, 400)!.At(a), 1e-6);
    }

    // Two spans L = 1000, the middle one packed by -2 mm: 6 E I d / L³ = 24 N more on it for E I = 2e9, 12 N less on the ends, wherever the load is.
    [Fact]
    public void Packing_shifts_an_envelope()
    {
        Beam level = new(2000, 2e9, new BeamSupport(0), new(1000), new(2000)), packed = level with { Supports = [new(0), new(1000, Settlement: -2), new(2000)] };
        BeamLoads own = new([new(0, 2000, 0.02)], [new(300, 15), new(1700, 5)]);
        var moving = new MovingLoads(new(400, 0.3));
        var (a, b) = (BeamEnvelope.Of(level, own, moving)!.Reactions, BeamEnvelope.Of(packed, own, moving)!.Reactions);
        double[] shift = [-12, 24, -12];
        for (int i = 0; i < 3; i++)
        {
            Assert.Equal(a[i].Max.Value + shift[i], b[i].Max.Value, 1e-8);
            Assert.Equal(a[i].Min.Value + shift[i], b[i].Min.Value, 1e-8);
            // With the patch where it is said to be, a standing one of its size gives that reaction.
            foreach (var end in (Extreme[])[b[i].Max, b[i].Min])
                Assert.Equal(end.Value, BeamSolver.Solve(packed, own with { Uniform = [.. own.Uniform, new(end.At, end.At + 400, 0.3)] })!.Reactions[i], 1e-8);
        }
    }

    // Whatever lifts (a negative patch) turns most and least round; one as long as the beam has one place only.
    [Fact]
    public void Patch_that_lifts_and_patch_as_long_as_the_beam()
    {
        var line = InfluenceLine.OfReaction(new Beam(2000, 2e9, new BeamSupport(0), new(1000), new(2000)), 0)!;
        var (down, up) = (MovingPatch.Envelope(line, new(300, 0.5)), MovingPatch.Envelope(line, new(300, -0.5)));
        Assert.Equal((down.Max.Value, down.Max.At, down.Min.Value, down.Min.At), (-up.Min.Value, up.Min.At, -up.Max.Value, up.Max.At));
        // 3/8 q L by any table.
        var whole = MovingPatch.Envelope(line, new(2000, 0.5));
        Assert.Equal((0.0, 0.0), (whole.Max.At, whole.Min.At));
        Assert.Equal(0.375 * 0.5 * 1000, whole.Max.Value, 1e-9);
        Assert.Equal(whole.Max.Value, whole.Min.Value);
    }

    /// <summary>Said places: the effect there is the extreme said; at random beams, one patch, between many cuts.</summary>
    [Fact]
    public void Extremes_are_where_they_are_said_to_be()
    {
        var random = new Random(12);
        for (int n = 0; n < 200; n++)
        {
            double length = 1500 + 3000 * random.NextDouble(), patch = length * (0.02 + 0.5 * random.NextDouble());
            int count = random.Next(2, 9);
            var beam = new Beam(length, 1e9, [.. Enumerable.Range(0, count).Select(i => new BeamSupport(length * (i + 0.2 + 0.6 * random.NextDouble()) / count, random.Next(2) == 0 ? double.PositiveInfinity : 40))]);
            foreach (var line in InfluenceLine.OfReactions(beam)!)
            {
                var (max, min) = MovingPatch.Envelope(line, new(patch, 0.4));
                Assert.Equal(max.Value, MovingPatch.Effect(line, new(patch, 0.4), max.At), 1e-9);
                Assert.Equal(min.Value, MovingPatch.Effect(line, new(patch, 0.4), min.At), 1e-9);
                for (double a = 0; a <= length - patch; a += (length - patch) / 97)
                    Assert.InRange(MovingPatch.Effect(line, new(patch, 0.4), a), min.Value - 1e-9, max.Value + 1e-9);
            }
        }
    }

    /// <summary>Six ranges: every corner counted out here; the patterns of the nearest find the same, the climb from one corner never goes past them and reaches them.</summary>
    [Fact]
    public void Boxes_of_stiffness()
    {
        double[] at = [0, 300, 700, 1100, 1400, 2000];
        SupportStiffness[] ranges = [new(20, 400), new(30, 300), new(25, 900), new(20, 20), new(15, 600), new(40, 800)];
        int[] open = [0, 1, 2, 4, 5];
        var beam = new Beam(2000, 3e8, [.. at.Select((x, i) => new BeamSupport(x, ranges[i].Low))]);
        BeamLoads loads = new([new(100, 900, 0.2)], [new(1300, 60)]);
        double[] most = [.. at.Select(_ => double.NegativeInfinity)], least = [.. at.Select(_ => double.PositiveInfinity)];
        foreach (int c in Enumerable.Range(0, 64))
        {
            var reactions = BeamSolver.Solve(beam with { Supports = [.. at.Select((x, i) => new BeamSupport(x, (c >> i & 1) == 1 ? ranges[i].High : ranges[i].Low))] }, loads)!.Reactions;
            for (int i = 0; i < 6; i++) (most[i], least[i]) = (Math.Max(most[i], reactions[i]), Math.Min(least[i], reactions[i]));
        }

        var all = SupportRange.Of(beam, ranges, loads, null)!;
        Assert.True(all.Exhaustive);
        var windows = new SupportBox(beam, ranges, open, loads, null);
        Assert.True(windows.Windows());
        var climb = new SupportBox(beam, ranges, open, loads, null);
        Assert.True(climb.Look([false, false, false, false, false]) && climb.Look([true, true, true, true, true]) && climb.Climb());
        for (int i = 0; i < 6; i++)
            foreach (var (max, min) in ((double, double)[])[(all.Max[i], all.Min[i]), (windows.Max[i], windows.Min[i]), (climb.Max[i], climb.Min[i])])
            {
                Assert.Equal(most[i], max, 1e-9);
                Assert.Equal(least[i], min, 1e-9);
            }
    }

    // A beam on one support that may be soft or stiff turns over either way: no box.
    [Fact]
    public void A_box_that_moves_freely()
    {
        var box = new SupportBox(new Beam(1000, 1e9, new BeamSupport(200, 10)), [new(10, 20)], [0], new([new(0, 1000, 0.1)], []), null);
        Assert.False(box.Look([true]));
        Assert.False(box.Windows());
        Assert.Null(SupportRange.Of(new Beam(1000, 1e9, new BeamSupport(200, 10)), [new(10, 20)], BeamLoads.None, null));
    }

    // Cups at 0, 200 and 2000 mm, 0.3 N/mm over 300 mm: at the far end, from 1700, the near one lifts: 90 x 1650 / 1800 on the far one, 7.5 on the middle.
    // Over the long span there is nothing on the near one.
    [Fact]
    public void Cups_under_a_moving_load()
    {
        var beam = new Beam(2000, 3e8, new BeamSupport(0, OneSided: true), new(200, OneSided: true), new(2000, OneSided: true));
        var envelope = BeamEnvelope.Of(beam, BeamLoads.None, new(new(300, 0.3)))!;
        Assert.False(envelope.Exact);
        Assert.Equal(90 * 1650 / 1800.0, envelope.Reactions[2].Max.Value, 1e-6);
        Assert.Equal(1700, envelope.Reactions[2].Max.At, 1e-6);
        Assert.All(envelope.Reactions, r => Assert.True(r.Min.Value >= -1e-9 && r.Max.Value > 10));
        Assert.Equal(0, envelope.Reactions[0].Min.Value, 1e-9);
        Assert.True(envelope.SteppedMoments!.Value.Max.Value > 0 && envelope.SteppedMoments.Value.Min.Value < 0);
    }

    // Two stretches of other stiffness are one beam: a cantilever 2 EI over the first half: tip under P: P L³ (1/8/EI + 7/8/2EI) / 3.
    [Fact]
    public void Stepped_cantilever()
    {
        const double L = 1000, EI = 1e9, P = 10;
        var beam = new Beam([new(500, 2 * EI), new(500, EI)], [new(0, Clamped: true)], []);
        var answer = BeamSolver.Solve(beam, new([], [new(L, P)]))!;
        Assert.Equal(P * L * L * L / 3 * (0.125 / EI + 0.875 / (2 * EI)), answer.DeflectionAt(L), 1e-9);
        Assert.Equal(-P * L, answer.MomentAt(0), 1e-6);
        Assert.Equal((-P * L, 0.0), (Math.Round(answer.MomentMin.Value, 6), answer.MomentMin.At));
    }
}
