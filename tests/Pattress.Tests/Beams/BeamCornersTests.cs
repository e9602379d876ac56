using System.Text.Json;
using Pattress.Actions.Beams;

namespace Pattress.Tests.Beams;

/// <summary>Odd corners of beams by hand: what a rail does at its ends, at a hinge, on cups, between stiffnesses, when it has settled.</summary>
public sealed class BeamCornersTests
{
    // A curve through its Bernstein ordinates 1, 4, -2, 3 over [0, 2], by hand: in t = x/2 it is 1 + 9t - 27t² + 20t³, in x 1 + 4.5x - 6.75x² + 2.5x³. It lies
    // between the least and the most of them; turned over, the bounds change places.
    [Fact]
    public void Hull_of_a_curve()
    {
        var c = new Cubic(1, 4.5, -6.75, 2.5);
        Assert.Equal((-2, 4), c.Hull(2));
        Assert.Equal((-4, 2), new Cubic(-1, -4.5, 6.75, -2.5).Hull(2));
        // Ordinates 3, 3.5, 4, 5: in t 3 + 1.5t + 0 + 0.5t³; and the same from the right: 5, 4, 3.5, 3.
        Assert.Equal((3, 5), new Cubic(3, 0.75, 0, 0.0625).Hull(2));
        Assert.Equal((3, 5), new Cubic(5, -1.5, 0.375, -0.0625).Hull(2));
    }

    /// <summary>Cubics made from three known roots, one to three of them within the interval: as many are found, where they are.</summary>
    [Fact]
    public void Roots_that_are_known()
    {
        var random = new Random(7);
        Span<double> found = stackalloc double[3];
        for (int n = 0; n < 3000; n++)
        {
            double[] r = [.. Enumerable.Range(0, 3).Select(_ => -1 + 4 * random.NextDouble()).Order()];
            double s = random.Next(2) == 0 ? 1 : -1;
            var c = new Cubic(-s * r[0] * r[1] * r[2], s * (r[0] * r[1] + r[1] * r[2] + r[2] * r[0]), -s * (r[0] + r[1] + r[2]), s);
            double[] inside = [.. r.Where(x => x is > 0 and < 2)];
            if (r.Any(x => Math.Abs(x) < 1e-3 || Math.Abs(x - 2) < 1e-3) || r[1] - r[0] < 1e-3 || r[2] - r[1] < 1e-3) continue;
            Assert.Equal(inside.Length, c.Roots(2, found));
            for (int i = 0; i < inside.Length; i++) Assert.Equal(inside[i], found[i], 1e-9);
        }
    }

    // Two spans of 1000, E I = 2e9: the left end packed down by 2 mm. About the line through the outer supports the middle one stands 1 mm high, which draws
    // 6 E I 1 / L³ = 12 N to it and takes 6 N from each end (the handbook's 3 E I d / L² over the support).
    [Fact]
    public void An_end_that_has_settled()
    {
        Beam level = new(2000, 2e9, new BeamSupport(0), new(1000), new(2000)), sunk = level with { Supports = [new(0, Settlement: 2), new(1000), new(2000)] };
        var moving = new MovingLoads(new(300, 0.5));
        var (a, b) = (BeamEnvelope.Of(level, BeamLoads.None, moving)!.Reactions, BeamEnvelope.Of(sunk, BeamLoads.None, moving)!.Reactions);
        double[] shift = [-6, 12, -6];
        for (int i = 0; i < 3; i++)
        {
            Assert.Equal(a[i].Max.Value + shift[i], b[i].Max.Value, 1e-8);
            Assert.Equal(a[i].Min.Value + shift[i], b[i].Min.Value, 1e-8);
        }
        Assert.Equal(3 * 2e9 * 1 / (1000.0 * 1000), -BeamSolver.Solve(sunk, BeamLoads.None)!.MomentAt(1000), 1e-6);
    }

    // Overhangs of 200 at both ends of 600 between supports: a patch of 100 at 0.5 N/mm is worst for the left support at the very end: 50 x (800 - 50) / 600 = 62.5 N; it
    // lifts it most at the other end: 50 x (800 - 950) / 600 = -12.5 N.
    [Fact]
    public void A_patch_at_the_very_end_of_an_overhang()
    {
        var line = InfluenceLine.OfReaction(new Beam(1000, 2e9, new BeamSupport(200), new(800)), 0)!;
        var (max, min) = MovingPatch.Envelope(line, new(100, 0.5));
        Assert.Equal((62.5, 0), (Math.Round(max.Value, 9), max.At));
        Assert.Equal((-12.5, 900), (Math.Round(min.Value, 9), min.At));
    }

    // A rail hung by a hinge at 400 on to a cantilever: left of the hinge nothing comes to the prop at 1000. A patch that ends half a millimetre short of the hinge, at the
    // wall, gives it nothing, and half a millimetre on a sliver: 0.5 x 0.5² / 2 / 600 N for 0.5 N/mm.
    [Theory]
    [InlineData(399.5), InlineData(399.9), InlineData(400.5)]
    public void A_patch_that_ends_beside_a_hinge(double length)
    {
        var line = InfluenceLine.OfReaction(new Beam([new(1000, 2e9)], [new(0, Clamped: true), new(1000)], [400]), 1)!;
        double over = Math.Max(0, length - 400), least = 0.5 * over * over / 2 / 600;
        var (max, min) = MovingPatch.Envelope(line, new(length, 0.5));
        Assert.Equal(least, min.Value, 1e-9);
        // Hard against the prop its middle is at 1000 - length/2, the hinge's piece bears (x - 400) / 600.
        Assert.Equal(0.5 * length * (600 - length / 2) / 600, max.Value, 1e-9);
        Assert.Equal(1000 - length, max.At, 1e-9);
    }

    private const string TwoSpans = """ "length_mm":2400,"ei_nmm2":2e8,"loads":[{"kind":"uniform","from_mm":0,"to_mm":2400,"n_per_mm":0.06}] """;

    // C-SPR-1 and C-SPR-2 (compatibility: 5 w (2L)⁴/384EI over (2L)³/48EI + 1/k): the middle bracket anything from 5 to 20 N/mm carries 79.02439 to 86.97987 N, each end
    // (144 - R) / 2; where only the range is given the answer is at its geometric middle, 10 N/mm.
    [Fact]
    public void A_range_of_stiffness_in_a_document()
    {
        var answer = BeamDocument.Answer($$"""{{{TwoSpans}},"supports":[{"at_mm":0},{"at_mm":1200,"stiffness_range_n_per_mm":[5,20]},{"at_mm":2400}]}""");
        Assert.Empty(answer.Problems);
        using var json = JsonDocument.Parse(BeamDocument.Json(answer.Value!));
        var range = json.RootElement.GetProperty("stiffness_range");
        double[] Numbers(JsonElement e, string name) => [.. e.GetProperty(name).EnumerateArray().Select(v => v.GetDouble())];
        double[] most = Numbers(range, "max_n"), least = Numbers(range, "min_n"), now = Numbers(json.RootElement, "reactions_n");
        Assert.Equal(86.97987, most[1], 1e-5);
        Assert.Equal(79.02439, least[1], 1e-5);
        Assert.Equal((144 - 79.02439) / 2, most[0], 1e-5);
        Assert.Equal((144 - 86.97987) / 2, least[2], 1e-5);
        double Middle(double k) => 5 * 0.06 * Math.Pow(2400, 4) / (384 * 2e8) / (Math.Pow(2400, 3) / (48 * 2e8) + 1 / k);
        Assert.Equal(Middle(10), now[1], 1e-8);
        // No range, or one without width, is no interval.
        Assert.Null(BeamDocument.Answer($$"""{{{TwoSpans}},"supports":[{"at_mm":0},{"at_mm":1200,"stiffness_range_n_per_mm":[9,9]},{"at_mm":2400}]}""").Value!.Range);
        Assert.Null(BeamDocument.Answer($$"""{{{TwoSpans}},"supports":[{"at_mm":0},{"at_mm":2400}]}""").Value!.Range);
    }

    // Statics: a rail in two open cups at 500 and 1500 holds 10 N in the middle; a stack of 40 N that may stand at the far end tips it out: no envelope. Held cups keep it.
    [Fact]
    public void A_stack_that_tips_the_rail_out_of_its_cups()
    {
        const string rest = """ "length_mm":2000,"ei_nmm2":1e9,"loads":[{"kind":"point","at_mm":1000,"n":10}] """, moving = """ "moving":{"length_mm":200,"n_per_mm":0.2} """;
        string Cups(string how) => $$""" "supports":[{"at_mm":500,"one_sided":"{{how}}"},{"at_mm":1500,"one_sided":"{{how}}"}] """;
        Assert.True(BeamDocument.Answer($$"""{{{rest}},{{Cups("yes")}}}""").Ok);
        Assert.Equal("beam_mechanism", Assert.Single(BeamDocument.Answer($$"""{{{rest}},{{Cups("yes")}},{{moving}}}""").Problems).Code);
        // Held: 40 N at 1900 over the far support at 1500: 56 on it, -16 on the other, beside 5 on each.
        var held = BeamDocument.Answer($$"""{{{rest}},{{Cups("no")}},{{moving}}}""").Value!;
        Assert.Equal(61, held.Envelope!.Reactions[1].Max.Value, 1e-8);
        Assert.Equal(-11, held.Envelope.Reactions[0].Min.Value, 1e-8);
    }

    // What moves may be as long as the rail, not longer, two of them together neither; k_def without a word on the damp is service class 1 (solid timber 0.6).
    [Fact]
    public void What_just_fits()
    {
        const string beam = """ "length_mm":1000,"ei_nmm2":1e9,"supports":[{"at_mm":0},{"at_mm":1000}] """;
        var whole = BeamDocument.Answer($$"""{{{beam}},"moving":{"length_mm":1000,"n_per_mm":0.2} }""").Value!.Envelope!.Reactions[0];
        Assert.Equal((100, 100), (Math.Round(whole.Max.Value, 9), Math.Round(whole.Min.Value, 9)));
        Assert.True(BeamDocument.Answer($$"""{{{beam}},"moving":{"length_mm":400,"n_per_mm":0.2},"moving_second":{"length_mm":600,"n_per_mm":0.2} }""").Ok);
        Assert.Equal("moving_longer_than_beam", BeamDocument.Answer($$"""{{{beam}},"moving":{"length_mm":400,"n_per_mm":0.2},"moving_second":{"length_mm":600.5,"n_per_mm":0.2} }""").Problems[0].Code);
        var timber = BeamDocument.Answer($$"""{{{beam}},"loads":[{"kind":"point","at_mm":500,"n":10}],"creep_material":"solid_timber"}""").Value!;
        Assert.Equal(1.6 * 10 * 1e9 / (48 * 1e9), timber.DeflectionLong!.Value, 1e-9);
        // Stretches as long as the beam, in either direction of being wrong.
        Assert.Equal("stretches_do_not_add_up", BeamDocument.Answer("""{"length_mm":1000,"stretches":[{"length_mm":600,"ei_nmm2":1e9},{"length_mm":500,"ei_nmm2":1e9}],"supports":[{"at_mm":0},{"at_mm":500}]}""").Problems[0].Code);
        Assert.True(BeamDocument.Answer("""{"length_mm":1000,"stretches":[{"length_mm":600,"ei_nmm2":1e9},{"length_mm":400,"ei_nmm2":1e9}],"supports":[{"at_mm":0},{"at_mm":500}]}""").Ok);
    }

    // On a metre, supports count as one from a micrometre down (refused); nearer than a millimetre they are said to be no lever.
    [Fact]
    public void Supports_a_hairs_breadth_apart()
    {
        static string At(string second) => $$"""{"length_mm":1000,"ei_nmm2":1e9,"supports":[{"at_mm":0},{"at_mm":500},{"at_mm":{{second}}}],"loads":[{"kind":"point","at_mm":900,"n":10}]}""";
        Assert.Equal("supports_in_one_place", BeamDocument.Answer(At("500.0009")).Problems[0].Code);
        var near = BeamDocument.Answer(At("500.9")).Value!.Cautions.Single(c => c.Code == "supports_nearly_coincide");
        Assert.Equal((2, 3, 1), (near.Values[0].Number, near.Values[1].Number, near.Values[2].Number));
        Assert.Contains(BeamDocument.Answer(At("499.1")).Value!.Cautions, c => c.Code == "supports_nearly_coincide");
        Assert.DoesNotContain(BeamDocument.Answer(At("501.1")).Value!.Cautions, c => c.Code == "supports_nearly_coincide");
    }

    // Cups packed so unevenly that the quick exchange is no help are found by trying: whatever is found, each cup pushes or the rail hangs clear of it, and statics hold. Ten cups
    // at random heights, 300 rails; what cannot be carried is said (null) only where the load lies outside the outermost cups.
    [Fact]
    public void Cups_at_random_heights()
    {
        var random = new Random(5);
        for (int n = 0; n < 300; n++)
        {
            int count = random.Next(3, 9);
            var beam = new Beam(3000, 3e8, [.. Enumerable.Range(0, count).Select(i => new BeamSupport(100 + 2800.0 * i / (count - 1), i % 2 == 0 ? double.PositiveInfinity : 60, OneSided: true, Settlement: 12 * random.NextDouble() - 6))]);
            var loads = new BeamLoads([new(0, 3000, 0.02)], [new(300 + 2400 * random.NextDouble(), 20)]);
            var a = BeamSolver.Solve(beam, loads)!;
            Assert.Equal(80, a.Reactions.Sum(), 1e-7);
            Assert.Equal(60 * 1500 + 20 * loads.Points[0].At, beam.Supports.Zip(a.Reactions, (s, r) => s.At * r).Sum(), 1e-4);
            for (int i = 0; i < count; i++)
            {
                Assert.True(a.Reactions[i] >= -1e-6);
                double sink = a.DeflectionAt(beam.Supports[i].At) - beam.Supports[i].Settlement;
                Assert.Equal(beam.Supports[i].Rigid ? 0 : Math.Max(0, sink) * 60, beam.Supports[i].Rigid ? Math.Max(0, sink) : a.Reactions[i], 1e-5);
            }
        }
    }

    // Nine ranges, so that not all are in one window of seven, each corner counted out here (512): what is searched finds the same to a thousandth of the largest.
    [Fact]
    public void Nine_ranges_by_windows()
    {
        var supports = Enumerable.Range(0, 9).Select(i => new BeamSupport(100 + 350 * i, 40)).ToArray();
        SupportStiffness[] ranges = [.. Enumerable.Range(0, 9).Select(i => new SupportStiffness(15 + i, 150 + 20 * i))];
        var beam = new Beam(3000, 4e9, supports);
        BeamLoads loads = new([new(200, 2800, 0.05)], [new(800, 40)]);
        double[] most = [.. supports.Select(_ => double.NegativeInfinity)], least = [.. supports.Select(_ => double.PositiveInfinity)];
        for (int c = 0; c < 512; c++)
        {
            var r = BeamSolver.Solve(beam with { Supports = [.. supports.Select((s, i) => s with { Stiffness = (c >> i & 1) == 1 ? ranges[i].High : ranges[i].Low })] }, loads)!.Reactions;
            for (int i = 0; i < 9; i++) (most[i], least[i]) = (Math.Max(most[i], r[i]), Math.Min(least[i], r[i]));
        }

        var all = SupportRange.Of(beam, ranges, loads, null)!;
        Assert.True(all.Exhaustive);
        var box = new SupportBox(beam, ranges, [.. Enumerable.Range(0, 9)], loads, null);
        Assert.True(box.Windows());
        for (int i = 0; i < 9; i++)
        {
            Assert.Equal(most[i], all.Max[i], 1e-9);
            Assert.Equal(least[i], all.Min[i], 1e-9);
            Assert.InRange(box.Max[i], most[i] - 1e-3 * most.Max(), most[i] + 1e-9);
            Assert.InRange(box.Min[i], least[i] - 1e-9, least[i] + 1e-3 * most.Max());
        }
    }

    // One support of a range, the other two known: the range with no width stays as it is. Simple statics on two supports: stiffness does not matter at all.
    [Fact]
    public void Two_supports_do_not_care_how_stiff_they_are()
    {
        var worst = SupportRange.Of(new Beam(1000, 1e9, new BeamSupport(0, 50), new(1000, 80)), [new(10, 100), new(80, 80)], new([], [new(250, 40)]), null)!;
        Assert.Equal(30, worst.Max[0], 1e-9);
        Assert.Equal(30, worst.Min[0], 1e-9);
        Assert.Equal(10, worst.Max[1], 1e-9);
        Assert.Equal(10, worst.Min[1], 1e-9);
    }

    // Two patches, 0.5 N/mm over 100 and 0.3 over 50, on overhangs of 200: worst for the left support with both hard on the left end, the heavy one outside:
    // 50 x (800 - 50) / 600 + 15 x (800 - 125) / 600 = 62.5 + 16.875; it lifts most with both at the other end: 50 x (800 - 950) / 600 + 15 x (800 - 875) / 600 = -14.375.
    [Fact]
    public void Two_patches_hard_on_an_overhang()
    {
        var beam = new Beam(1000, 2e9, new BeamSupport(200), new(800));
        var r = BeamEnvelope.Of(beam, BeamLoads.None, new(new(100, 0.5), new(50, 0.3)))!.Reactions;
        Assert.Equal((79.375, 0), (Math.Round(r[0].Max.Value, 9), r[0].Max.At));
        Assert.Equal((-14.375, 900), (Math.Round(r[0].Min.Value, 9), Math.Round(r[0].Min.At, 9)));
        Assert.Equal((79.375, 900), (Math.Round(r[1].Max.Value, 9), Math.Round(r[1].Max.At, 9)));
        // The same two named the other way round.
        var other = BeamEnvelope.Of(beam, BeamLoads.None, new(new(50, 0.3), new(100, 0.5)))!.Reactions;
        Assert.Equal(79.375, other[0].Max.Value, 1e-9);
        Assert.Equal(100, other[0].Max.At, 1e-9);
    }

    // Where supports lift, positions are stepped: every one on the beam, both ends among them, no gap wider than a two-hundredth of the way; of two patches neither on the other, in
    // either order, each hard at each end in some.
    [Fact]
    public void Positions_that_are_stepped_through()
    {
        var lines = InfluenceLine.OfReactions(new Beam(3000, 1e9, new BeamSupport(300), new(1500), new(2700)))!;
        double[] one = [.. LiftingPositions.Of(lines, new(new(400, 0.5)), 200).Select(p => p.Single().From).Order()];
        Assert.Equal((0, 2600), (one[0], one[^1]));
        Assert.All(one.Zip(one.Skip(1)), p => Assert.True(p.Second - p.First <= 2600 / 200.0 + 1e-9));
        Assert.All(LiftingPositions.Of(lines, new(new(400, 0.5)), 200), p => Assert.Equal((400, 0.5), (Math.Round(p[0].To - p[0].From, 9), p[0].PerLength)));
        var two = LiftingPositions.Of(lines, new(new(400, 0.5), new(700, 0.2)), 200).ToList();
        Assert.All(two, p =>
        {
            Assert.Equal((400, 0.5, 700, 0.2), (Math.Round(p[0].To - p[0].From, 9), p[0].PerLength, Math.Round(p[1].To - p[1].From, 9), p[1].PerLength));
            Assert.True(p.All(u => u.From >= -1e-9 && u.To <= 3000 + 1e-9) && (p[0].To <= p[1].From + 1e-9 || p[1].To <= p[0].From + 1e-9));
        });
        foreach (int k in (int[])[0, 1])
        {
            double[] at = [.. two.Select(p => Math.Round(p[k].From, 9)).Distinct().Order()];
            Assert.Equal((0, k == 0 ? 2600 : 2300), (at[0], at[^1]));
            // Fourteen steps (the root of 200) over the way that is left, 1900 mm, in each order.
            Assert.All(at.Zip(at.Skip(1)), p => Assert.True(p.Second - p.First <= 1900 / 14.0 + 1e-9));
        }
    }

    // With nothing that moves the envelope of the moment is what stands: over the middle of two spans w L² / 8, in the spans 9 w L² / 128 at 3/8 L, any table. With a force of
    // 60 N on 0.01 mm: 0.2074 P L at 0.43232 L and 0.09623 P L over the support (C-MOV-2: 1/(6 sqrt 3)).
    [Fact]
    public void Envelope_of_the_moment_of_two_spans()
    {
        const double L = 1000, w = 0.4;
        var beam = new Beam(2 * L, 2e9, new BeamSupport(0), new(L), new(2 * L));
        var still = MomentEnvelope.Of(beam, new([new(0, 2 * L, w)], []), new(new(100, 0)))!.Value;
        Assert.Equal((L, -w * L * L / 8), (still.Min.At, Math.Round(still.Min.Value, 6)));
        Assert.Equal(9 * w * L * L / 128, still.Max.Value, 1e-7);
        Assert.Equal(375, Math.Min(still.Max.At, 2 * L - still.Max.At), 1e-3);
        var moves = MomentEnvelope.Of(beam, BeamLoads.None, new(new(0.01, 6000)))!.Value;
        Assert.Equal(-60 * L / (6 * Math.Sqrt(3)), moves.Min.Value, 1e-3);
        Assert.Equal(L, moves.Min.At);
        // a/L at the most: x (1 - x) - x² (1 - x²) / 4, its slope 1 - 2.5 x + x³ = 0 (from R = (1 - x) - x (1 - x²) / 4 by Clapeyron): 0.43232.
        double x = 0.43232;
        // The force is spread over 0.01 mm, which takes q b² / 8 from the moment under it.
        Assert.Equal(60 * L * (x * (1 - x) - x * x * (1 - x * x) / 4) - 6000 * 0.01 * 0.01 / 8, moves.Max.Value, 1e-3);
        Assert.Equal(x * L, Math.Min(moves.Max.At, 2 * L - moves.Max.At), 0.05);
    }

    // Everything said stands in the document: creep and its factor, cautions with their numbers, that not every corner of many ranges was looked at.
    [Fact]
    public void Everything_said_stands_in_the_document()
    {
        string supports = string.Join(',', Enumerable.Range(0, 13).Select(i => $$"""{"at_mm":{{200 * i}},"stiffness_range_n_per_mm":[30,50]}"""));
        using var many = JsonDocument.Parse(BeamDocument.Json(BeamDocument.Answer($$"""{"length_mm":2400,"ei_nmm2":1e8,"supports":[{{supports}}],"loads":[{"kind":"point","at_mm":1000,"n":10}],"creep_factor":0.8}""").Value!));
        Assert.Contains(many.RootElement.GetProperty("cautions").EnumerateArray(), c => c.GetProperty("code").GetString() == "stiffness_worst_case_searched");
        Assert.Equal(0.8, many.RootElement.GetProperty("creep_factor").GetDouble());
        Assert.Equal(13, many.RootElement.GetProperty("stiffness_range").GetProperty("min_n").GetArrayLength());
        // By statics 10 N at 2500, 500 beyond the second of two supports 500 apart: 20 on it and 10 down on the first, whose number is 1.
        using var pulled = JsonDocument.Parse(BeamDocument.Json(BeamDocument.Answer("""{"length_mm":2500,"ei_nmm2":1e9,"supports":[{"at_mm":1500},{"at_mm":2000}],"loads":[{"kind":"point","at_mm":2500,"n":10}]}""").Value!));
        var caution = pulled.RootElement.GetProperty("cautions")[0];
        Assert.Equal(("support_pulls_down", 1, 10), (caution.GetProperty("code").GetString(), caution.GetProperty("values")[0].GetDouble(), Math.Round(caution.GetProperty("values")[1].GetDouble(), 6)));
        // Particleboard may stand in service class 1, which is meant where none is said.
        Assert.True(BeamDocument.Answer("""{"length_mm":800,"ei_nmm2":1e9,"supports":[{"at_mm":0},{"at_mm":800}],"creep_material":"particleboard"}""").Ok);
    }

    // C-1S-Pa the other way round: the load 0.3 L from the left, so the deepest place is sqrt((L² - b²) / 3) from the right, b = 0.3 L: beyond the load, in the second piece.
    [Fact]
    public void Where_a_beam_sags_most()
    {
        const double L = 1000, P = 10, EI = 1e9, b = 300;
        var a = BeamSolver.Solve(new Beam(L, EI, new BeamSupport(0), new(L)), new([], [new(b, P)]))!;
        Assert.Equal(L - Math.Sqrt((L * L - b * b) / 3), a.DeflectionMax.At, 1e-4);
        Assert.Equal(P * b * Math.Pow(L * L - b * b, 1.5) / (9 * Math.Sqrt(3) * EI * L), a.DeflectionMax.Value, 1e-10);
        Assert.Equal((300, 2100), (a.MomentMax.At, Math.Round(a.MomentMax.Value, 6)));
    }

    // Levers: 0.5 N/mm from 300 to 700 of 1000 stand, 200 N at 500, 100 on each; 40 N over 100 mm comes and goes: 38 N more at its nearest, 2 at its farthest.
    [Fact]
    public void A_standing_load_over_a_part()
    {
        var r = BeamEnvelope.Of(new Beam(1000, 1e9, new BeamSupport(0), new(1000)), new([new(300, 700, 0.5)], []), new(new(100, 0.4)))!.Reactions;
        Assert.Equal(138, r[0].Max.Value, 1e-8);
        Assert.Equal(102, r[0].Min.Value, 1e-8);
    }

    // Cups at 0, 300 and 2000 mm, own weight 0.1 N/mm and 0.3 N/mm over 300 mm: the near one lifts for some positions. What is stepped is no more and no less than what the
    // positions of our own here find, within 1 %; the far one keeps its own weight's share, more than nothing.
    [Fact]
    public void Least_and_most_where_supports_lift()
    {
        var beam = new Beam(2000, 3e8, new BeamSupport(0, OneSided: true), new(300, OneSided: true), new(2000, OneSided: true));
        BeamLoads own = new([new(0, 2000, 0.1)], []);
        var envelope = BeamEnvelope.Of(beam, own, new(new(300, 0.3)))!;
        Assert.False(envelope.Exact);
        double most = double.NegativeInfinity, least = double.PositiveInfinity;
        for (double a = 0; a <= 1700; a += 17)
            if (BeamSolver.Solve(beam, own with { Uniform = [.. own.Uniform, new(a, a + 300, 0.3)] }) is { } at) (most, least) = (Math.Max(most, at.Reactions[2]), Math.Min(least, at.Reactions[2]));
        Assert.InRange(envelope.Reactions[2].Min.Value, 0.99 * least, least + 1e-9);
        Assert.InRange(envelope.Reactions[2].Max.Value, most - 1e-9, 1.01 * most);
        Assert.True(least > 50);
    }

    // A hinge in a document: the beam of A_hinge_carries_no_moment by statics -25, 75, 50. A held support that carries nothing does not lift; a cup that lifts is named by its number; where
    // something lifts, positions are said to be stepped.
    [Fact]
    public void Hinges_and_cups_in_a_document()
    {
        var hinged = BeamDocument.Answer("""{"length_mm":2000,"ei_nmm2":1e9,"hinges_mm":[1500],"supports":[{"at_mm":0},{"at_mm":1000},{"at_mm":2000}],"loads":[{"kind":"uniform","from_mm":1500,"to_mm":2000,"n_per_mm":0.2}]}""").Value!;
        Assert.Equal([-25, 75, 50], hinged.Standing.Reactions.Select(r => Math.Round(r, 8)));
        var held = BeamDocument.Answer("""{"length_mm":1000,"ei_nmm2":1e9,"supports":[{"at_mm":0},{"at_mm":1000}]}""").Value!;
        Assert.Empty(held.Cautions);
        const string cups = """{"length_mm":2500,"ei_nmm2":1e9,"supports":[{"at_mm":500,"one_sided":"yes"},{"at_mm":0,"one_sided":"yes"},{"at_mm":2000,"one_sided":"yes"}],"loads":[{"kind":"point","at_mm":1000,"n":10},{"kind":"point","at_mm":2500,"n":1}]}""";
        var lifted = BeamDocument.Answer(cups).Value!;
        Assert.Equal(2, lifted.Cautions.Single(c => c.Code == "support_lifts_off").Values[0].Number);
        Assert.DoesNotContain(lifted.Cautions, c => c.Code == "envelope_stepped");
        Assert.Contains(BeamDocument.Answer(cups[..^1] + ""","moving":{"length_mm":100,"n_per_mm":0.01} }""").Value!.Cautions, c => c.Code == "envelope_stepped");
    }

    // Pieces of a hundredth of a millimetre between metres, EI of 1 to 50: reactions by stiffness matrices in numbers of 60 digits (References/beam_exact.py, mpmath). In ordinary
    // numbers stiffness matrices lose so many digits on such a rail that it looks as if it moved freely.
    [Fact]
    public void Loads_and_joints_a_hairs_breadth_from_supports()
    {
        var answer = BeamDocument.Answer("""
            {"length_mm":3000,"stretches":[{"length_mm":800,"ei_nmm2":1e10},{"length_mm":1400.03,"ei_nmm2":2e8},{"length_mm":799.97,"ei_nmm2":3e9}],
             "supports":[{"at_mm":0,"clamped":"yes"},{"at_mm":800.02},{"at_mm":1500,"stiffness_n_per_mm":40},{"at_mm":2200},{"at_mm":2900}],
             "loads":[{"kind":"uniform","from_mm":0,"to_mm":3000,"n_per_mm":0.02},{"kind":"uniform","from_mm":799.99,"to_mm":1500.01,"n_per_mm":0.4},
                      {"kind":"point","at_mm":2200.05,"n":50},{"kind":"point","at_mm":1499.98,"n":30}]}
            """);
        double[] expected = [-44.50222803629648, 247.91758089768942, 137.84361410812306, 76.47323091190226, 2.2758021185817627];
        for (int i = 0; i < 5; i++) Assert.Equal(expected[i], answer.Value!.Standing.Reactions[i], 1e-9);
    }
}
