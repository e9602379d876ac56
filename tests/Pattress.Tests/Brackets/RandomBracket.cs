using Pattress.Brackets;

namespace Pattress.Tests.Brackets;

/// <summary>
/// Random brackets over the whole range a fitter could meet and well beyond: plates of 20 to 400 mm with 3 to 12 corners, one
/// to eight fixings strictly inside, stiffness 10 to 1e5 N/mm, bed 0.01 to 1000 N/mm³, half of them with one soft
/// fixing or all load in one direction, gaps, pre-tension.
/// </summary>
internal sealed class RandomBracket(int seed)
{
    private readonly Random _random = new(seed);

    internal readonly FixingPoint[] Fixings = new FixingPoint[8];
    internal readonly double[] Tensions = new double[8];
    internal int Count;
    internal Plate Plate = Plate.Rectangle(0, 1, 0, 1);
    internal Bed Bed;
    internal BracketLoad Load;
    internal Corner[] Corners = [];

    /// <summary>What the plate is made of; as a rule one outline.</summary>
    internal Corner[][] Feet = [], Slots = [];

    internal ReadOnlySpan<FixingPoint> Used => Fixings.AsSpan(0, Count);

    internal ContactAnswer Solve() => ContactSolver.Solve(Plate, Used, Bed, Load, Tensions);

    /// <summary>A bracket such as fitters use: one to six fixings of 100 to 5,000 N/mm on 0.5 to 20 N/mm³.</summary>
    internal static RandomBracket Ordinary(int seed)
    {
        var b = new RandomBracket(seed);
        b.NextPlate();
        b.NextCase();
        b.Count = Math.Min(b.Count, 6);
        for (int i = 0; i < b.Count; i++)
            b.Fixings[i] = b.Fixings[i] with { Stiffness = b.Log(100, 5000), Gap = Math.Min(b.Fixings[i].Gap, 0.1), PreTension = 0 };
        b.Bed = new Bed(b.Log(0.5, 20));
        return b;
    }

    /// <summary>A new plate; several load cases are drawn on each, since digesting an outline allocates.</summary>
    internal void NextPlate()
    {
        int n = _random.Next(3, 13);
        double a = Span(10, 200), b = Span(10, 200), turn = _random.NextDouble() * 6;
        double cx = Span(1, 300) - 1, cy = -Span(1, 300);
        Corners = [.. Enumerable.Range(0, n).Select(i => 2 * Math.PI * (i + 0.4 * _random.NextDouble()) / n + turn)
            .Select(t => new Corner(cx + a * Math.Cos(t), cy + b * Math.Sin(t)))];
        (Plate, Feet) = (Plate.Of(Corners), [Corners]);
    }

    /// <summary>New fixings, bed and load.</summary>
    internal void NextCase()
    {
        Count = _random.Next(1, 9);
        bool soft = _random.Next(2) == 0;
        for (int i = 0; i < Count; i++) Fixings[i] = NextFixing(soft && i == 0);
        Bed = new Bed(Log(0.01, 1000));
        double f = Log(1, 1e4), arm = Log(1, 300);
        int mask = _random.Next(8);
        double n = (mask & 1) == 0 ? Signed(f) : 0, mx = (mask & 2) == 0 ? Signed(f * arm) : 0, my = (mask & 4) == 0 || mask == 7 ? Signed(f * arm) : 0;
        Load = new BracketLoad(n, mx, my);
    }

    private FixingPoint NextFixing(bool soft)
    {
        double w = 0, x = 0, y = 0;
        foreach (var c in Corners)
        {
            double s = 0.02 - Math.Log(1 - _random.NextDouble());
            (w, x, y) = (w + s, x + s * c.X, y + s * c.Y);
        }
        double gap = _random.Next(4) == 0 ? Log(1e-3, 1) : 0, pre = _random.Next(4) == 0 ? Log(1, 500) : 0;
        return new FixingPoint(x / w, y / w, soft ? Log(10, 100) : Log(10, 1e5), gap, pre);
    }

    internal double Log(double low, double high) => low * Math.Pow(high / low, _random.NextDouble());

    internal double Span(double low, double high) => low + (high - low) * _random.NextDouble();

    private double Signed(double size) => size * (2 * _random.NextDouble() - 1);
}
