using CsCheck;
using Pattress.Brackets;

namespace Pattress.Tests.Brackets;

public class BracketPropertyTests
{
    private static readonly Gen<int> Seeds = Gen.Int[0, 10_000_000];

    /// <summary>How closely two roads to one answer agree: the residual of 1e-10 through the stiffness of an ordinary bracket.</summary>
    private const double Same = 1e-7;

    [Fact]
    public void Moving_turning_and_mirroring_change_nothing() => Gen.Select(Seeds, Gen.Double[-500, 500], Gen.Double[0, 6.3], Gen.Bool).Sample((seed, shift, turn, mirror) =>
    {
        var b = RandomBracket.Ordinary(seed);
        var before = b.Solve();
        double[] tensions = [.. b.Tensions];
        var m = new Move(shift, -shift / 3, turn, mirror);
        var fixings = b.Used.ToArray().Select(f => f with { X = m.Of(f.X, f.Y).X, Y = m.Of(f.X, f.Y).Y }).ToArray();
        var moved = ContactSolver.Solve(Plate.Of([.. b.Corners.Select(c => m.Of(c.X, c.Y))]), fixings, b.Bed, m.Of(b.Load.N, b.Load.Mx, b.Load.My), b.Tensions);
        double size = Math.Max(before.Contact, tensions.Max());
        return moved.Status == ContactStatus.Balanced && Math.Abs(moved.Contact - before.Contact) <= Same * size
            && tensions.Zip(b.Tensions).All(t => Math.Abs(t.First - t.Second) <= Same * size);
    }, iter: 2000);

    [Fact]
    public void Forces_balance() => Seeds.Sample(seed =>
    {
        var b = RandomBracket.Ordinary(seed);
        var a = b.Solve();
        double pull = b.Tensions.Take(b.Count).Sum();
        return Math.Abs(pull - a.Contact - b.Load.N) <= 1e-9 * (pull + a.Contact + Math.Abs(b.Load.N));
    }, iter: 2000);

    /// <summary>The pressure's moments by a grid of 40,000 cells laid over the plate, where enough of it presses for the grid to see: to 4 %.</summary>
    [Fact]
    public void Moments_balance_over_a_grid() => Seeds.Sample(seed =>
    {
        var b = RandomBracket.Ordinary(seed);
        var a = b.Solve();
        if (a.Area < 0.2 * b.Plate.Area) return true;
        var (mx, my) = (b.Load.Mx, b.Load.My);
        for (int i = 0; i < b.Count; i++) (mx, my) = (mx - b.Tensions[i] * b.Fixings[i].X, my - b.Tensions[i] * b.Fixings[i].Y);
        double left = b.Corners.Min(c => c.X), right = b.Corners.Max(c => c.X), low = b.Corners.Min(c => c.Y), high = b.Corners.Max(c => c.Y);
        const int N = 200;
        double cell = (right - left) * (high - low) / N / N, contact = 0, reach = 0;
        for (int i = 0; i < N; i++)
            for (int j = 0; j < N; j++)
            {
                double x = left + (right - left) * (i + 0.5) / N, y = low + (high - low) * (j + 0.5) / N;
                double p = -b.Bed.Modulus * Math.Min(0, a.U0 + a.U1 * x + a.U2 * y);
                if (p == 0 || !Outline.Holds(b.Corners, x, y)) continue;
                (contact, mx, my) = (contact + p * cell, mx + p * cell * x, my + p * cell * y);
                reach = Math.Max(reach, Math.Abs(x) + Math.Abs(y));
            }
        double allowed = 0.04 * (a.Contact + 1) * (reach + 1) + 1e-9 * (Math.Abs(b.Load.Mx) + Math.Abs(b.Load.My));
        return Math.Abs(contact - a.Contact) <= 0.04 * a.Contact + 1e-9 && Math.Abs(mx) <= allowed && Math.Abs(my) <= allowed;
    }, iter: 200);

    [Fact]
    public void A_stiffer_fixing_never_carries_less() => Gen.Select(Seeds, Gen.Double[1.01, 20]).Sample((seed, factor) =>
    {
        var b = RandomBracket.Ordinary(seed);
        b.Solve();
        double before = b.Tensions[0], size = b.Tensions.Max();
        b.Fixings[0] = b.Fixings[0] with { Stiffness = b.Fixings[0].Stiffness * factor };
        b.Solve();
        return b.Tensions[0] >= before - 1e-8 * size;
    }, iter: 2000);

    [Fact]
    public void Doubling_the_load_doubles_the_forces() => Seeds.Sample(seed =>
    {
        var b = RandomBracket.Ordinary(seed);
        for (int i = 0; i < b.Count; i++) b.Fixings[i] = b.Fixings[i] with { Gap = 0, PreTension = 0 };
        var once = b.Solve();
        double[] tensions = [.. b.Tensions];
        b.Load = new(2 * b.Load.N, 2 * b.Load.Mx, 2 * b.Load.My);
        var twice = b.Solve();
        double size = Math.Max(once.Contact, tensions.Max());
        return tensions.Zip(b.Tensions).All(t => Math.Abs(2 * t.First - t.Second) <= Same * size) && Math.Abs(once.Area - twice.Area) <= 1e-6 * b.Plate.Area;
    }, iter: 2000);

    [Fact]
    public void Sampling_never_beats_the_worst_case() => Seeds.Sample(seed =>
    {
        var b = RandomBracket.Ordinary(seed);
        var random = new Random(seed);
        var ranges = b.Used.ToArray().Select(f => new FixingRange(f, f.Stiffness / 4, f.Stiffness * 4)).ToList();
        var bed = new BedRange(b.Bed.Modulus / 4, b.Bed.Modulus * 4);
        var worst = StiffnessRange.Worst(b.Plate, ranges, bed, b.Load)!;
        double most = worst.Tension.Max();
        for (int s = 0; s < 400; s++)
        {
            for (int i = 0; i < b.Count; i++) b.Fixings[i] = ranges[i].Fixing with { Stiffness = ranges[i].Low * Math.Pow(16, random.NextDouble()) };
            var a = ContactSolver.Solve(b.Plate, b.Used, new Bed(bed.Low * Math.Pow(16, random.NextDouble())), b.Load, b.Tensions);
            for (int i = 0; i < b.Count; i++)
                if (b.Tensions[i] > worst.Tension[i] + 1e-7 * most) return false;
            if (a.PressureMax > worst.PressureMax * (1 + 1e-7)) return false;
        }
        return true;
    }, iter: 60);

    /// <summary>
    /// Plastic limits: fixings stay within their caps and the board within its own, and what is carried at some load is carried
    /// at any smaller share of it. A false alarm (overloaded at a smaller share) errs on the safe side and is known to
    /// happen about once in 70,000 loads: at most one in a thousand is let pass.
    /// </summary>
    [Fact]
    public void Yielding_brackets_balance_up_to_a_limit()
    {
        int alarms = 0;
        for (int seed = 0; seed < 500; seed++) alarms += FalseAlarms(seed);
        Assert.InRange(alarms, 0, 6);
    }

    private static int FalseAlarms(int seed)
    {
        var b = RandomBracket.Ordinary(seed);
        double crush = b.Solve().PressureMax * 0.7 + 1e-6, cap = b.Tensions.Max() * 0.6 + 1e-3;
        for (int i = 0; i < b.Count; i++) b.Fixings[i] = b.Fixings[i] with { TensionCap = cap };
        b.Bed = b.Bed with { PressureCap = crush };
        var full = b.Load;
        int alarms = 0, refused = 0;
        for (int step = 1; step <= 12; step++)
        {
            double s = step / 6.0;
            b.Load = new(s * full.N, s * full.Mx, s * full.My);
            var a = b.Solve();
            Assert.True(a.Status is ContactStatus.Balanced or ContactStatus.Overloaded);
            if (a.Status == ContactStatus.Overloaded) { refused++; continue; }
            Assert.True(a.Residual <= 1e-10 && a.PressureMax <= crush * (1 + 1e-9) && b.Tensions.Max() <= cap * (1 + 1e-9));
            (alarms, refused) = (alarms + refused, 0);
        }
        return alarms;
    }
}
