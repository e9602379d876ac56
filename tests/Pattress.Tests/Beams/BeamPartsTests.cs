using Pattress.Actions;
using Pattress.Actions.Beams;

namespace Pattress.Tests.Beams;

/// <summary>The small parts of beams: cubics by hand, and what moves where supports lift or ranges are many, by brute force.</summary>
public class BeamPartsTests
{
    /// <summary>(x - 1)(x - 2)(x - 5) = x³ - 8x² + 17x - 10, and its like with fewer roots inside.</summary>
    [Fact]
    public void Roots_of_a_cubic()
    {
        Span<double> roots = stackalloc double[3];
        var three = new Cubic(-10, 17, -8, 1);
        Assert.Equal(3, three.Roots(6, roots));
        Assert.Equal(1, roots[0], 1e-12);
        Assert.Equal(2, roots[1], 1e-12);
        Assert.Equal(5, roots[2], 1e-12);
        Assert.Equal(2, three.Roots(4.9, roots));
        Assert.Equal(1, three.Roots(1.5, roots));
        Assert.Equal(0, three.Roots(0.9, roots));
        // 3 - x; x² - 4 with a turning point at 0; x³ + x + 1 has none to the right of 0; 2 has none at all.
        Assert.Equal(1, new Cubic(3, -1, 0, 0).Roots(10, roots));
        Assert.Equal(3, roots[0], 1e-12);
        Assert.Equal(1, new Cubic(-4, 0, 1, 0).Roots(10, roots));
        Assert.Equal(2, roots[0], 1e-12);
        Assert.Equal(0, new Cubic(1, 1, 0, 1).Roots(10, roots));
        Assert.Equal(0, new Cubic(2, 0, 0, 0).Roots(10, roots));
        // (1 - x)(x - 2)(x - 5): falls where the first rises.
        Assert.Equal(3, new Cubic(10, -17, 8, -1).Roots(6, roots));
        Assert.Equal(2, roots[1], 1e-12);
    }

    /// <summary>By hand at x = 2: 1 + 2·2 + 3·4 + 4·8 = 49; integral 2 + 4 + 8 + 16 = 30; slope 2 + 12 + 48 = 62; shifted by 2 its value at 0 is 49, at 1 that at 3: 142.</summary>
    [Fact]
    public void A_cubic_by_hand()
    {
        var c = new Cubic(1, 2, 3, 4);
        Assert.Equal((49, 30, 62), (c.At(2), c.Integral(2), c.Derivative.At(2)));
        Assert.Equal((49, 142), (c.Shifted(2).At(0), c.Shifted(2).At(1)));
        Assert.Equal(49 + 3 * 49, c.Plus(3, c).At(2));
        Assert.Equal(0, c.Less(c).At(2));
    }

    private static readonly Beam Cups = new(3000, 1e9, new BeamSupport(300, OneSided: true), new(1500, OneSided: true), new(2700, OneSided: true));

    /// <summary>Two stacks on cups: where the middle lifts, positions are stepped through; a coarse look at our own positions finds nothing worse than 1 % beyond it.</summary>
    [Fact]
    public void Two_stacks_where_supports_lift()
    {
        PatchLoad one = new(300, 0.4), two = new(500, 0.2);
        var answer = BeamEnvelope.Of(Cups, new([new(0, 3000, 0.01)], []), new(one, two))!;
        Assert.False(answer.Exact);
        double[] most = new double[3];
        for (int i = 0; i <= 11; i++)
            for (int j = 0; j <= 11; j++)
            {
                double a = 2700.0 * i / 11, b = 2500.0 * j / 11;
                if (a < b + 500 && b < a + 300) continue;
                var loads = new BeamLoads([new(0, 3000, 0.01), new(a, a + 300, 0.4), new(b, b + 500, 0.2)], []);
                if (BeamSolver.Solve(Cups, loads) is not { } solved) continue;
                for (int s = 0; s < 3; s++) most[s] = Math.Max(most[s], solved.Reactions[s]);
            }
        for (int s = 0; s < 3; s++) Assert.InRange(most[s], 0.9 * answer.Reactions[s].Max.Value, 1.01 * answer.Reactions[s].Max.Value);
        Assert.True(answer.SteppedMoments!.Value.Max.Value > 0 && answer.SteppedMoments.Value.Min.Value < 0);
    }

    /// <summary>Two stacks of unequal weight in either order: no pair of positions beats the envelope of a reaction.</summary>
    [Fact]
    public void Two_stacks_in_either_order()
    {
        var rail = new Beam(3000, 1e9, new BeamSupport(200, 40), new(1400, 25), new(2900, 60));
        PatchLoad one = new(300, 0.5), two = new(700, 0.1);
        var envelope = BeamEnvelope.Of(rail, BeamLoads.None, new(one, two))!;
        Assert.True(envelope.Exact);
        double[] most = [double.NegativeInfinity, double.NegativeInfinity, double.NegativeInfinity];
        for (double a = 0; a <= 2700; a += 50)
            for (double b = 0; b <= 2300; b += 50)
            {
                if (a < b + 700 && b < a + 300) continue;
                var r = BeamSolver.Solve(rail, new([new(a, a + 300, 0.5), new(b, b + 700, 0.1)], []))!.Reactions;
                for (int s = 0; s < 3; s++) most[s] = Math.Max(most[s], r[s]);
            }
        for (int s = 0; s < 3; s++) Assert.InRange(most[s], envelope.Reactions[s].Max.Value * 0.995, envelope.Reactions[s].Max.Value + 1e-9);
    }

    /// <summary>Fourteen ranges: not every corner is looked at, the answer says so, and no sampled corner goes past it by more than a thousandth.</summary>
    [Fact]
    public void Many_stiffness_ranges()
    {
        var rail = new Beam(7000, 1.6e9, [.. Enumerable.Range(0, 14).Select(i => new BeamSupport(100 + 520 * i, 40))]);
        var ranges = Enumerable.Repeat(new SupportStiffness(20, 80), 14).ToList();
        var loads = new BeamLoads([new(0, 6000, 0.012), new(2000, 2400, 0.3)], []);
        var worst = SupportRange.Of(rail, ranges, loads, null)!;
        Assert.False(worst.Exhaustive);
        Assert.True(SupportRange.Of(rail, [.. ranges.Take(12), new(40, 40), new(40, 40)], loads, null)!.Exhaustive);
        var random = new Random(2);
        double size = worst.Max.Max();
        for (int n = 0; n < 300; n++)
        {
            var corner = rail with { Supports = [.. rail.Supports.Select(s => s with { Stiffness = random.Next(2) == 0 ? 20 : 80 })] };
            var r = BeamSolver.Solve(corner, loads)!.Reactions;
            for (int i = 0; i < 14; i++)
            {
                Assert.True(r[i] <= worst.Max[i] + 1e-3 * size, $"{r[i]} {worst.Max[i]}");
                Assert.True(r[i] >= worst.Min[i] - 1e-3 * size);
            }
        }
    }

    /// <summary>Statics: 90 N at 400 between hooks at 100 and 1000: 60 and 30; beside them at 1300: -30 and 120.</summary>
    [Fact]
    public void Two_hooks()
    {
        Assert.Equal((60, 30), Statics.TwoHooks(90, 100, 1000, 400));
        Assert.Equal((-30, 120), Statics.TwoHooks(90, 100, 1000, 1300));
        Assert.Throws<ArgumentOutOfRangeException>(() => Statics.TwoHooks(90, 100, 100, 400));
        Assert.Throws<ArgumentOutOfRangeException>(() => Statics.DynamicFactor(-1, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Statics.DynamicFactor(1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Statics.WireHook(1, 0, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Statics.WireHook(1, 1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Statics.PullAtTop(1, 1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => MovingPatch.Envelope(InfluenceLine.OfReaction(new Beam(100, 1, new BeamSupport(0), new(100)), 0)!, new(101, 1)));
    }
}
