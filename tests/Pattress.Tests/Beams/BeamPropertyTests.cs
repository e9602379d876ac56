using CsCheck;
using Pattress.Actions.Beams;

namespace Pattress.Tests.Beams;

public class BeamPropertyTests
{
    private static readonly Gen<int> Seeds = Gen.Int[0, 10_000_000];

    /// <summary>A rail of 1.2 to 6 m in one to three stretches on two to seven supports, rigid or 5 to 500 N/mm, with loads.</summary>
    private sealed class RandomRail
    {
        internal readonly Beam Beam;
        internal readonly BeamLoads Loads;
        internal readonly Random Random;

        internal RandomRail(int seed, bool oneSided = false)
        {
            Random = new Random(seed);
            double length = 1200 + 4800 * Random.NextDouble();
            var parts = Enumerable.Range(0, Random.Next(1, 4)).Select(_ => 0.2 + Random.NextDouble()).ToArray();
            var stretches = parts.Select(p => new BeamStretch(p / parts.Sum() * length, Math.Pow(10, 8 + 2 * Random.NextDouble()))).ToList();
            int n = Random.Next(2, 8);
            var supports = Enumerable.Range(0, n).Select(i => new BeamSupport(
                length * (i + 0.1 + 0.8 * Random.NextDouble()) / n, Random.Next(3) == 0 ? double.PositiveInfinity : 5 * Math.Pow(100, Random.NextDouble()), OneSided: oneSided));
            Beam = new Beam(stretches, [.. supports], []);
            var cuts = Enumerable.Range(0, 4).Select(_ => length * Random.NextDouble()).Order().ToArray();
            Loads = new([new(0, Beam.Length, 0.02), new(cuts[0], cuts[1], 0.3)], [new(cuts[2], 40), new(cuts[3], 25)]);
        }
    }

    private static double Total(BeamLoads loads) => loads.Uniform.Sum(u => u.PerLength * (u.To - u.From)) + loads.Points.Sum(p => p.Force);

    private static double Moment(BeamLoads loads) =>
        loads.Uniform.Sum(u => u.PerLength * (u.To - u.From) * (u.From + u.To) / 2) + loads.Points.Sum(p => p.Force * p.At);

    [Fact]
    public void Forces_and_moments_balance() => Seeds.Sample(seed =>
    {
        var r = new RandomRail(seed);
        var a = BeamSolver.Solve(r.Beam, r.Loads)!;
        double moment = r.Beam.Supports.Zip(a.Reactions, (s, f) => s.At * f).Sum();
        return Math.Abs(a.Reactions.Sum() - Total(r.Loads)) <= 1e-9 * Total(r.Loads) && Math.Abs(moment - Moment(r.Loads)) <= 1e-9 * Moment(r.Loads);
    }, iter: 2000);

    [Fact]
    public void Extremes_are_not_beaten_along_the_rail() => Seeds.Sample(seed =>
    {
        var r = new RandomRail(seed);
        var a = BeamSolver.Solve(r.Beam, r.Loads)!;
        double m = Math.Max(a.MomentMax.Value, -a.MomentMin.Value), d = Math.Max(a.DeflectionMax.Value, -a.DeflectionMin.Value);
        return Enumerable.Range(0, 500).Select(i => r.Beam.Length * i / 499).All(x =>
            a.MomentAt(x) <= a.MomentMax.Value + 1e-9 * m && a.MomentAt(x) >= a.MomentMin.Value - 1e-9 * m
            && a.DeflectionAt(x) <= a.DeflectionMax.Value + 1e-9 * d && a.DeflectionAt(x) >= a.DeflectionMin.Value - 1e-9 * d);
    }, iter: 300);

    [Fact]
    public void Influence_lines_are_what_unit_loads_give() => Seeds.Sample(seed =>
    {
        var r = new RandomRail(seed);
        double x = r.Beam.Length * r.Random.NextDouble(), at = r.Beam.Length * r.Random.NextDouble();
        var lines = InfluenceLine.OfReactions(r.Beam)!;
        var a = BeamSolver.Solve(r.Beam, new([], [new(x, 1)]))!;
        return lines.Zip(a.Reactions).All(p => Math.Abs(p.First.At(x) - p.Second) <= 1e-8)
            && Math.Abs(InfluenceLine.OfMoment(r.Beam, at)!.At(x) - a.MomentAt(at)) <= 1e-8 * r.Beam.Length;
    }, iter: 500);

    [Fact]
    public void No_position_of_a_patch_beats_the_envelope() => Seeds.Sample(seed =>
    {
        var r = new RandomRail(seed);
        var patch = new PatchLoad(r.Beam.Length * (0.05 + 0.6 * r.Random.NextDouble()), 0.4);
        var lines = InfluenceLine.OfReactions(r.Beam)!;
        return lines.All(line =>
        {
            var (max, min) = MovingPatch.Envelope(line, patch);
            return Enumerable.Range(0, 400).Select(i => MovingPatch.Effect(line, patch, (r.Beam.Length - patch.Length) * i / 399))
                .All(v => v <= max.Value + 1e-9 * 1000 && v >= min.Value - 1e-9 * 1000);
        });
    }, iter: 200);

    [Fact]
    public void No_pair_of_positions_beats_the_envelope_of_two_patches() => Seeds.Sample(seed =>
    {
        var r = new RandomRail(seed);
        PatchLoad one = new(r.Beam.Length * (0.05 + 0.35 * r.Random.NextDouble()), 0.4), two = new(r.Beam.Length * (0.05 + 0.35 * r.Random.NextDouble()), 0.25);
        double slack = r.Beam.Length - one.Length - two.Length;
        return InfluenceLine.OfReactions(r.Beam)!.All(line =>
        {
            var (max, min) = TwoPatches.Envelope(line, one, two);
            for (int i = 0; i <= 40; i++)
                for (int j = i; j <= 40; j++)
                {
                    double v = MovingPatch.Effect(line, one, slack * i / 40) + MovingPatch.Effect(line, two, one.Length + slack * j / 40);
                    if (v > max.Value + 1e-6 || v < min.Value - 1e-6) return false;
                }
            return max.Second >= max.First + one.Length - 1e-9 && min.Second >= min.First + one.Length - 1e-9;
        });
    }, iter: 60);

    /// <summary>Statically indeterminate rails: whatever position of the stack is tried, no moment anywhere goes past the envelope, and it is reached.</summary>
    [Fact]
    public void No_position_of_a_patch_beats_the_envelope_of_the_moment() => Seeds.Sample(seed =>
    {
        var r = new RandomRail(seed);
        var moving = new MovingLoads(new(r.Beam.Length * (0.05 + 0.4 * r.Random.NextDouble()), 0.4));
        var envelope = MomentEnvelope.Of(r.Beam, r.Loads, moving)!.Value;
        double most = double.NegativeInfinity, least = double.PositiveInfinity, size = Math.Max(envelope.Max.Value, -envelope.Min.Value);
        for (int i = 0; i <= 150; i++)
        {
            double from = (r.Beam.Length - moving.First.Length) * i / 150;
            var a = BeamSolver.Solve(r.Beam, r.Loads with { Uniform = [.. r.Loads.Uniform, new(from, from + moving.First.Length, 0.4)] })!;
            (most, least) = (Math.Max(most, a.MomentMax.Value), Math.Min(least, a.MomentMin.Value));
        }
        return most <= envelope.Max.Value + 1e-7 * size && least >= envelope.Min.Value - 1e-7 * size
            && most >= envelope.Max.Value - 2e-3 * size && least <= envelope.Min.Value + 2e-3 * size;
    }, iter: 60);

    [Fact]
    public void A_stiffer_bracket_never_carries_less_of_what_it_carries() => Seeds.Sample(seed =>
    {
        var r = new RandomRail(seed);
        double before = BeamSolver.Solve(r.Beam, r.Loads)!.Reactions[0];
        if (r.Beam.Supports[0].Rigid) return true;
        var supports = r.Beam.Supports.ToArray();
        supports[0] = supports[0] with { Stiffness = supports[0].Stiffness * 3 };
        double after = BeamSolver.Solve(r.Beam with { Supports = supports }, r.Loads)!.Reactions[0];
        return Math.Abs(after) >= Math.Abs(before) - 1e-9 && after * before >= 0;
    }, iter: 500);

    [Fact]
    public void Sampling_never_beats_the_stiffness_ranges() => Seeds.Sample(seed =>
    {
        var r = new RandomRail(seed);
        var ranges = r.Beam.Supports.Select(s => s.Rigid ? new SupportStiffness(s.Stiffness, s.Stiffness) : new(s.Stiffness / 3, s.Stiffness * 3)).ToList();
        var moving = new MovingLoads(new(r.Beam.Length / 5, 0.3));
        var worst = SupportRange.Of(r.Beam, ranges, r.Loads, moving)!;
        for (int s = 0; s < 50; s++)
        {
            var supports = r.Beam.Supports.Select((p, i) => p.Rigid ? p : p with { Stiffness = ranges[i].Low * Math.Pow(9, r.Random.NextDouble()) }).ToList();
            var inside = BeamEnvelope.Of(r.Beam with { Supports = supports }, r.Loads, moving)!.Reactions;
            for (int i = 0; i < supports.Count; i++)
                if (inside[i].Max.Value > worst.Max[i] + 1e-6 || inside[i].Min.Value < worst.Min[i] - 1e-6) return false;
        }
        return true;
    }, iter: 15);

    [Fact]
    public void Cups_push_or_let_go() => Seeds.Sample(seed =>
    {
        var r = new RandomRail(seed, oneSided: true);
        if (BeamSolver.Solve(r.Beam, r.Loads) is not { } a) return !Within(r);
        double down = Math.Max(a.DeflectionMax.Value, -a.DeflectionMin.Value);
        return Math.Abs(a.Reactions.Sum() - Total(r.Loads)) <= 1e-8 * Total(r.Loads)
            && r.Beam.Supports.Zip(a.Reactions).All(p => p.Second >= -1e-7 && (p.Second > 1e-7 || a.DeflectionAt(p.First.At) <= 1e-6 * down));
    }, iter: 1000);

    /// <summary>The loads' resultant lies between the outermost cups, so that some cups can carry it.</summary>
    private static bool Within(RandomRail r)
    {
        double at = Moment(r.Loads) / Total(r.Loads);
        return at > r.Beam.Supports.Min(s => s.At) && at < r.Beam.Supports.Max(s => s.At);
    }

    /// <summary>Statics: a hinge carries no moment; a rail of two pieces hinged between three supports is determinate.</summary>
    [Fact]
    public void A_hinge_carries_no_moment()
    {
        var beam = new Beam([new(2000, 1e9)], [new(0), new(1000), new(2000)], [1500]);
        var a = BeamSolver.Solve(beam, new([new(1500, 2000, 0.2)], []))!;
        Assert.Equal(0, a.MomentAt(1500), 1e-6);
        Assert.Equal(50, a.Reactions[2], 1e-9);
        Assert.Equal(75, a.Reactions[1], 1e-9);
        Assert.Equal(-25, a.Reactions[0], 1e-9);
    }

    [Fact]
    public void What_moves_freely_is_said()
    {
        Assert.Null(BeamSolver.Solve(new Beam(1000, 1e9, new BeamSupport(500)), BeamLoads.None));
        Assert.Null(BeamSolver.Solve(new Beam([new(2000, 1e9)], [new(0), new(2000)], [1000]), BeamLoads.None));
        Assert.Null(BeamSolver.Solve(new Beam(1000, 1e9, new BeamSupport(0, OneSided: true), new(600, OneSided: true)), new([], [new(900, 10)])));
    }

    /// <summary>Statics: held on two cups under its own weight the far overhang lifts the third.</summary>
    [Fact]
    public void A_rail_in_cups_lifts_where_a_held_one_would_be_pulled_down()
    {
        var held = new Beam(2500, 1e9, new BeamSupport(0), new(1000), new(2000));
        var cups = held with { Supports = [.. held.Supports.Select(s => s with { OneSided = true })] };
        var load = new BeamLoads([], [new(2500, 10), new(1500, 1)]);
        Assert.True(BeamSolver.Solve(held, load)!.Reactions[1] < 0);
        var lifted = BeamSolver.Solve(cups, load);
        Assert.Null(lifted);
    }
}
