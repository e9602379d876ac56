using BenchmarkDotNet.Attributes;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;
using Pattress.Brackets;

namespace Pattress.Bench;

/// <summary>
/// One contact solve of a plate on four fixings, pulled and tilted both ways (sixteen loads in turn), beside a general-purpose
/// BFGS on the same energy to the same promise (residual 1e-10); the ratio is of one run. A general program knows nothing of plates, so it starts at rest. It is
/// given the energy in our scaled units, which is a help of ours, and once more in N and mm, as who has no scale would write it;
/// a third benchmark gives it our start too, a linear solve of ours, and lets it stop at 1e-8.
/// </summary>
[ShortRunJob, MemoryDiagnoser]
public class ContactBench
{
    private const int Loads = 16;
    private readonly Plate _plate = Plate.Rectangle(-40, 40, -50, 50);
    private readonly FixingPoint[] _fixings = [new(-30, -40, 600), new(30, -40, 600), new(-30, 40, 600), new(30, 40, 600)];
    private readonly BracketLoad[] _loads;
    private readonly double[] _tensions = new double[4];
    private readonly double[] _room;

    public ContactBench()
    {
        var random = new Random(1);
        _room = new double[_plate.X.Length];
        _loads = [.. Enumerable.Range(0, Loads).Select(_ => new BracketLoad(
            300 * random.NextDouble() - 100, 8000 * random.NextDouble() - 4000, 3000 + 8000 * random.NextDouble()))];
    }

    [Benchmark(Baseline = true, OperationsPerInvoke = Loads)]
    public double Newton()
    {
        double sum = 0;
        foreach (ref readonly var load in _loads.AsSpan()) sum += ContactSolver.Solve(_plate, _fixings, new Bed(1.5), load, _tensions).Contact;
        return sum;
    }

    /// <summary>Evaluations of the energy that our own solve needs, on average.</summary>
    public double Evaluations()
    {
        double sum = 0;
        foreach (ref readonly var load in _loads.AsSpan()) sum += ContactSolver.Solve(_plate, _fixings, new Bed(1.5), load, _tensions).Evaluations;
        return sum / Loads;
    }

    [Benchmark(OperationsPerInvoke = Loads)]
    public double Bfgs()
    {
        double sum = 0;
        foreach (var load in _loads) sum += General(load, false, 1e-10);
        return sum;
    }

    [Benchmark(OperationsPerInvoke = Loads)]
    public double Bfgs_from_the_glued_plate()
    {
        double sum = 0;
        foreach (var load in _loads) sum += General(load, true, 1e-8);
        return sum;
    }

    [Benchmark(OperationsPerInvoke = Loads)]
    public double Bfgs_in_newtons_and_millimetres()
    {
        double sum = 0;
        foreach (var load in _loads) sum += Unscaled(load);
        return sum;
    }

    /// <summary>How often the general program's line search gave up short of its promise.</summary>
    public int GivenUp { get; private set; }

    /// <summary>The same of the energy in N and mm, and what it left out of balance at most, over the load.</summary>
    public int GivenUpUnscaled { get; private set; }

    public double LeftUnscaled { get; private set; }

    /// <summary>MathNet's BFGS on the energy in N and mm about the plate's middle.</summary>
    private double Unscaled(BracketLoad load)
    {
        double size = Math.Max(Math.Abs(load.N), Math.Max(Math.Abs(load.Mx), Math.Abs(load.My)) / 50);
        ScaledFixing[] fixings = [.. _fixings.Select(f => new ScaledFixing { X = f.X, Y = f.Y, K = f.Stiffness, Cap = double.PositiveInfinity })];
        double[] level = new double[5];
        double left = 0;
        (double, Vector<double>) At(Vector<double> at)
        {
            ContactEnergy e = new()
            {
                X = [-40, 40, 40, -40, -40], Y = [-50, -50, 50, 50, -50], Lift = level, RingEnds = [5], Gaps = _room, Fixings = fixings,
                Load = new(load.N, load.Mx, load.My), Bed = 1.5, CrushDepth = double.PositiveInfinity,
            };
            var u = new Triple(at[0], at[1], at[2]);
            e.Evaluate(u);
            left = Math.Max(Math.Abs(e.Gradient.A), Math.Max(Math.Abs(e.Gradient.B), Math.Abs(e.Gradient.C)) / 50) / size;
            return ((-0.5 * e.Load.Dot(u)) + (0.5 * e.Gradient.Dot(u)), Vector<double>.Build.Dense([e.Gradient.A, e.Gradient.B, e.Gradient.C]));
        }
        try
        {
            var found = new BfgsMinimizer(1e-10 * size, 1e-14, 1e-16, 1000).FindMinimum(ObjectiveFunction.Gradient(At), Vector<double>.Build.Dense(3));
            LeftUnscaled = Math.Max(LeftUnscaled, left);
            return found.MinimizingPoint[0];
        }
        catch (OptimizationException)
        {
            GivenUpUnscaled++;
            return 0;
        }
    }

    /// <summary>MathNet's BFGS on the scaled energy.</summary>
    private double General(BracketLoad load, bool fromGlued, double tolerance)
    {
        var raw = ContactScale.AboutCentre(_plate, load);
        var scale = ContactScale.Of(_plate, _fixings, new Bed(1.5), raw);
        ScaledFixing[] scaled = [.. _fixings.Select(f => scale.Of(f))];
        var objective = ObjectiveFunction.Gradient(u => Both(scale, scaled, raw, u));
        var start = scale.Energy(_plate, scaled, new Bed(1.5), raw, _room);
        var glued = fromGlued ? start.Glued(start.WholePlate(_plate.Whole)) : default;
        try
        {
            var found = new BfgsMinimizer(tolerance, 1e-14, 1e-16, 1000).FindMinimum(objective, Vector<double>.Build.Dense([glued.A, glued.B, glued.C]));
            return found.MinimizingPoint[0];
        }
        catch (OptimizationException)
        {
            GivenUp++;
            return 0;
        }
    }

    private (double, Vector<double>) Both(ContactScale scale, ScaledFixing[] scaled, in Triple raw, Vector<double> at)
    {
        var e = scale.Energy(_plate, scaled, new Bed(1.5), raw, _room);
        var u = new Triple(at[0], at[1], at[2]);
        e.Evaluate(u);
        double energy = -0.5 * e.Load.Dot(u) + 0.5 * e.Gradient.Dot(u);
        for (int i = 0; i < scaled.Length; i++) energy -= 0.5 * e.Tension(i, u) * scaled[i].Gap;
        return (energy, Vector<double>.Build.Dense([e.Gradient.A, e.Gradient.B, e.Gradient.C]));
    }
}
