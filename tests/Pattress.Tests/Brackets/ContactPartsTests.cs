using System.Numerics;
using Pattress.Brackets;

namespace Pattress.Tests.Brackets;

/// <summary>The parts of the contact solver, each against the same thing found another way.</summary>
public class ContactPartsTests
{
    private const int Cases = 300;

    private static Plate PlateOf(Random random, int n)
    {
        static Corner[] R(double l, double r, double b, double t) => [new(l, b), new(r, b), new(r, t), new(l, t)];
        double s = 1 + random.NextDouble();
        return (n % 4) switch
        {
            0 => Plate.Of([R(0, 80 * s, 0, 100)], [R(30, 50, 10, 70 * s / 2)]),
            1 => Plate.Of([R(-40, 40, -50 * s, -10), R(-10, 10, -10, 10), R(-40, 40 * s, 10, 50)], []),
            2 => Plate.Of([new(0, 0), new(100, 0), new(100, 20 * s), new(20, 20 * s), new(20, 100), new(0, 100)]),
            _ => Plate.Of([new(0, 0), new(60 * s, 5), new(70, 90), new(-20, 40)]),
        };
    }

    private static ScaledFixing[] FixingsOf(Random random) => [.. Enumerable.Range(0, random.Next(1, 5)).Select(i => new ScaledFixing
    {
        X = random.NextDouble() * 1.6 - 0.8,
        Y = random.NextDouble() * 1.6 - 0.8,
        K = 0.1 + random.NextDouble(),
        Gap = random.Next(2) == 0 ? 0 : random.NextDouble() - 0.5,
        Cap = random.Next(3) == 0 ? 0.2 * random.NextDouble() : double.PositiveInfinity,
    })];

    /// <summary>Gradient, second derivative and area: the rings cut by the line (Sutherland and Hodgman) and integrated by the rule of the sides' middles, exact to degree two.</summary>
    [Fact]
    public void Integrals_over_the_zone_are_those_of_another_rule()
    {
        var random = new Random(4);
        for (int n = 0; n < Cases; n++)
        {
            var plate = PlateOf(random, n);
            var fixings = FixingsOf(random);
            Triple load = new(random.NextDouble(), random.NextDouble(), random.NextDouble()), lift = n % 3 == 0 ? new(0.1, -0.3, 0.2) : default;
            Triple u = new(0.6 * (random.NextDouble() - 0.5), random.NextDouble() - 0.5, random.NextDouble() - 0.5);
            double crush = n % 2 == 0 ? double.PositiveInfinity : 0.3 * random.NextDouble(), bed = 0.5 + random.NextDouble();
            var energy = new ContactEnergy
            {
                X = plate.X, Y = plate.Y, RingEnds = plate.RingEnds, Gaps = new double[plate.X.Length], Fixings = fixings, Load = load, Bed = bed, CrushDepth = crush,
                Lift = plate.X.Select((x, i) => lift.At(x, plate.Y[i])).ToArray(),
            };
            energy.Evaluate(u);
            var zone = Zone(plate, u.Plus(1, lift));
            var (g, k) = (new double[3], new double[3, 3]);
            Bed(zone, u.Plus(1, lift), bed, g, k);
            double contact = -g[0], area = zone.Sum(t => t.Area);
            if (crush < double.PositiveInfinity)
            {
                var deep = u.Plus(1, lift).Plus(1, new(crush, 0, 0));
                Bed(Zone(plate, deep), deep, -bed, g, k);
                contact = -g[0];
            }
            double pulled = Pulls(fixings, u, g, k);
            double[] found = [energy.Gradient.A, energy.Gradient.B, energy.Gradient.C, energy.Contact, energy.Pulled, energy.Area,
                energy.Second.AA, energy.Second.AB, energy.Second.AC, energy.Second.BB, energy.Second.BC, energy.Second.CC];
            double[] expected = [g[0] - load.A, g[1] - load.B, g[2] - load.C, contact, pulled, area, k[0, 0], k[0, 1], k[0, 2], k[1, 1], k[1, 2], k[2, 2]];
            for (int i = 0; i < found.Length; i++) Assert.Equal(expected[i], found[i], 1e-11);
            double residual = Math.Sqrt(Math.Pow(g[0] - load.A, 2) + Math.Pow(g[1] - load.B, 2) + Math.Pow(g[2] - load.C, 2)) / Math.Max(1, pulled);
            Assert.Equal(residual, energy.Residual, 1e-11);
        }
    }

    private static double Pulls(ScaledFixing[] fixings, in Triple u, double[] g, double[,] k)
    {
        double pulled = 0;
        foreach (var f in fixings)
        {
            double free = f.K * (u.A + u.B * f.X + u.C * f.Y - f.Gap), pull = Math.Clamp(free, 0, f.Cap);
            double[] a = [1, f.X, f.Y];
            pulled += pull;
            for (int i = 0; i < 3; i++) g[i] += pull * a[i];
            if (free > 0 && free < f.Cap)
                for (int i = 0; i < 9; i++) k[i / 3, i % 3] += f.K * a[i / 3] * a[i % 3];
        }
        return pulled;
    }

    private sealed record Triangle(double Area, (double X, double Y)[] Middles);

    private static void Bed(List<Triangle> zone, Triple d, double bed, double[] g, double[,] k)
    {
        foreach (var t in zone)
            foreach (var (x, y) in t.Middles)
            {
                double[] a = [1, x, y];
                for (int i = 0; i < 3; i++) g[i] += bed * t.Area / 3 * d.At(x, y) * a[i];
                for (int i = 0; i < 9; i++) k[i / 3, i % 3] += bed * t.Area / 3 * a[i / 3] * a[i % 3];
            }
    }

    private static List<Triangle> Zone(Plate plate, Triple d)
    {
        var found = new List<Triangle>();
        int start = 0;
        foreach (int end in plate.RingEnds)
        {
            var cut = new List<(double X, double Y)>();
            for (int i = start; i + 1 < end; i++)
            {
                var (a, b) = ((X: plate.X[i], Y: plate.Y[i]), (X: plate.X[i + 1], Y: plate.Y[i + 1]));
                double da = d.At(a.X, a.Y), db = d.At(b.X, b.Y), t = da / (da - db);
                if (da < 0) cut.Add(a);
                if (da < 0 != db < 0) cut.Add((a.X + t * (b.X - a.X), a.Y + t * (b.Y - a.Y)));
            }
            for (int i = 1; i + 1 < cut.Count; i++) found.Add(Of(cut[0], cut[i], cut[i + 1]));
            start = end;
        }
        return found;
    }

    private static Triangle Of((double X, double Y) a, (double X, double Y) b, (double X, double Y) c) => new(
        ((b.X - a.X) * (c.Y - a.Y) - (c.X - a.X) * (b.Y - a.Y)) / 2,
        [((a.X + b.X) / 2, (a.Y + b.Y) / 2), ((b.X + c.X) / 2, (b.Y + c.Y) / 2), ((c.X + a.X) / 2, (c.Y + a.Y) / 2)]);

    /// <summary>The two nets, each alone and from a place of no use, come to the balance that Newton's method finds.</summary>
    [Fact]
    public void Each_net_alone_finds_the_balance()
    {
        for (int seed = 0; seed < 60; seed++)
        {
            var b = RandomBracket.Ordinary(seed);
            var expected = b.Solve();
            double[] tensions = [.. b.Tensions];
            double size = Math.Max(tensions.Max(), expected.Contact);
            Triple raw = ContactScale.AboutCentre(b.Plate, b.Load);
            var scale = ContactScale.Of(b.Plate, b.Used, b.Bed, raw);
            ScaledFixing[] scaled = [.. b.Used.ToArray().Select(f => scale.Of(f))];
            var energy = scale.Energy(b.Plate, scaled, b.Bed, raw, new double[b.Plate.X.Length]);
            var whole = energy.WholePlate(b.Plate.Whole);
            Triple u = ContactBracketing.Minimise(ref energy, new(0.3, -0.2, 0.1));
            Assert.True(energy.Residual <= 1e-10, $"{seed}: {energy.Residual}");
            for (int i = 0; i < b.Count; i++) Assert.Equal(tensions[i], energy.Tension(i, u) * scale.Force, 1e-6 * size);
            var again = ContactRescue.Settle(scale, ref energy, whole, new(5, -3, 2), b.Tensions);
            Assert.Equal((ContactStatus.Balanced, true), (again.Status, again.Residual <= 1e-10));
            for (int i = 0; i < b.Count; i++) Assert.Equal(tensions[i], b.Tensions[i], 1e-6 * size);
            Assert.Equal(expected.Contact, again.Contact, 1e-6 * size);
            Assert.Equal(expected.PressureMax, again.PressureMax, 1e-6 * expected.PressureMax + 1e-9);
        }
    }

    /// <summary>What is answered is what the plate's movement says: tension k (d - gap) + pre-tension, pressure bed times the deepest corner, and the balance of forces.</summary>
    [Fact]
    public void Movement_and_forces_say_the_same()
    {
        for (int seed = 0; seed < 400; seed++)
        {
            var b = RandomBracket.Ordinary(seed);
            if (seed % 3 == 0) b.Fixings[0] = b.Fixings[0] with { PreTension = 50 };
            var a = b.Solve();
            double At(double x, double y) => a.U0 + a.U1 * x + a.U2 * y;
            double size = b.Tensions.Take(b.Count).Max() + a.Contact;
            for (int i = 0; i < b.Count; i++)
                Assert.Equal(Math.Max(0, b.Fixings[i].PreTension + b.Fixings[i].Stiffness * (At(b.Fixings[i].X, b.Fixings[i].Y) - b.Fixings[i].Gap)), b.Tensions[i], 1e-7 * size);
            double deepest = Math.Max(0, -b.Corners.Min(c => At(c.X, c.Y)));
            Assert.Equal(b.Bed.Modulus * deepest, a.PressureMax, 1e-7 * (1 + a.PressureMax));
            Assert.Equal(b.Load.N, b.Tensions.Take(b.Count).Sum() - a.Contact, 1e-8 * size);
            double pressed = Zone(b.Plate, new(At(b.Plate.CentreX, b.Plate.CentreY), a.U1 * b.Plate.Size, a.U2 * b.Plate.Size)).Sum(t => t.Area) * b.Plate.Size * b.Plate.Size;
            Assert.Equal(pressed, a.Area, 1e-7 * b.Plate.Area);
        }
    }

    /// <summary>
    /// Newton's method on a quadratic is done in one step: a plate pressed on is right at the start, one lifted clear after one step. And it converges
    /// quadratically: over a thousand brackets eight evaluations are enough on average, thirty for all but one in a hundred.
    /// </summary>
    [Fact]
    public void Newton_is_quick()
    {
        var plate = Plate.Rectangle(-50, 50, -40, 40);
        double[] t = new double[3];
        FixingPoint[] three = [new(-30, -20, 500), new(30, -20, 900), new(5, 25, 700)];
        Assert.Equal(1, ContactSolver.Solve(plate, [], new Bed(2), new(-100, 300, -200), t).Evaluations);
        Assert.InRange(ContactSolver.Solve(plate, three, new Bed(2), new(500, 100, -200), t).Evaluations, 2, 3);
        Assert.Equal(500, t.Sum(), 1e-9);
        int sum = 0, slow = 0;
        for (int seed = 0; seed < 1000; seed++)
        {
            int n = RandomBracket.Ordinary(seed).Solve().Evaluations;
            (sum, slow) = (sum + n, slow + (n > 30 ? 1 : 0));
        }
        Assert.True(sum <= 8000 && slow <= 10, $"{sum} {slow}");
    }

    [Fact]
    public void No_load_and_too_many_fixings()
    {
        var plate = Plate.Rectangle(-50, 50, -50, 50);
        double[] t = [1, 2, 3];
        var a = ContactSolver.Solve(plate, [new(0, 0, 100), new(10, 0, 100)], new Bed(1), default, t);
        Assert.Equal((0, 0, 3.0), (t[0], t[1], t[2]));
        Assert.Equal((ContactStatus.Balanced, 0, 0, 0), (a.Status, a.U0, a.Contact, a.Evaluations));
        var many = Enumerable.Range(0, 257).Select(i => new FixingPoint(i % 16 - 8, i / 16 - 8, 100)).ToArray();
        Assert.Equal(ContactStatus.Balanced, ContactSolver.Solve(plate, many.AsSpan(0, 256), new Bed(1), new(100, 0, 0), new double[256]).Status);
        Assert.Throws<ArgumentException>(() => ContactSolver.Solve(plate, many, new Bed(1), new(100, 0, 0), new double[257]));
        Assert.Throws<ArgumentException>(() => ContactSolver.Solve(plate, many.AsSpan(0, 3), new Bed(1), new(100, 0, 0), new double[2]));
    }

    /// <summary>Sums of products whose terms cancel, against whole numbers of any length.</summary>
    [Fact]
    public void Cancelling_sums_are_rounded_once()
    {
        var random = new Random(8);
        for (int n = 0; n < 500; n++)
        {
            long b = random.NextInt64(-1L << 50, 1L << 50), x = random.NextInt64(-1L << 50, 1L << 50), c = random.NextInt64(-1L << 50, 1L << 50), y = random.NextInt64(-1L << 50, 1L << 50);
            BigInteger products = (BigInteger)b * x + (BigInteger)c * y;
            double a = -(double)products, extra = random.NextInt64(-1L << 40, 1L << 40);
            BigInteger sum = products + new BigInteger(a) + new BigInteger(extra);
            double expected = (double)sum, found = Exact.At(new Triple(a, b, c), x, y, extra);
            Assert.True(Math.Abs(found - expected) <= 1e-15 * Math.Abs(expected) + 1e-32 * Math.Abs(a), $"{n}: {found:R} {expected:R}");
        }
    }

    /// <summary>Ten fixings and the bed: every corner. Twelve: not every one, and no draw from the box goes past the worst.</summary>
    [Fact]
    public void Many_fixings_in_ranges()
    {
        var plate = Plate.Rectangle(-100, 100, -60, 60);
        FixingRange[] ranges = [.. Enumerable.Range(0, 12).Select(i => new FixingRange(new(-85 + 15 * i, i % 3 * 40 - 40, 0), 200 + 30 * i, 1500))];
        var (bed, load) = (new BedRange(0.5, 6), new BracketLoad(120, 4000, 16_000));
        Assert.True(StiffnessRange.Worst(plate, [.. ranges.Take(10)], bed, load)!.Exhaustive);
        Assert.False(StiffnessRange.Worst(plate, [.. ranges.Take(11)], bed, load)!.Exhaustive);
        var worst = StiffnessRange.Worst(plate, ranges, bed, load)!;
        var random = new Random(3);
        double[] t = new double[12];
        double most = worst.Tension.Max();
        for (int n = 0; n < 3000; n++)
        {
            bool corner = n % 2 == 0;
            double Between(double low, double high) => corner ? random.Next(2) == 0 ? low : high : low * Math.Pow(high / low, random.NextDouble());
            FixingPoint[] points = [.. ranges.Select(r => r.Fixing with { Stiffness = Between(r.Low, r.High) })];
            var a = ContactSolver.Solve(plate, points, new Bed(Between(bed.Low, bed.High)), load, t);
            for (int i = 0; i < 12; i++) Assert.True(t[i] <= worst.Tension[i] + 2e-3 * most, $"{n}: fixing {i} {t[i]} {worst.Tension[i]}");
            Assert.True(a.PressureMax <= worst.PressureMax * (1 + 2e-3));
        }
    }
}
