namespace Pattress.Brackets;

/// <summary>A fixing whose stiffness is only known to lie between two values, N/mm.</summary>
public readonly record struct FixingRange(FixingPoint Fixing, double Low, double High);

/// <summary>A bed whose modulus is only known to lie between two values, N/mm³.</summary>
public readonly record struct BedRange(double Low, double High, double PressureCap = double.PositiveInfinity);

/// <summary>The most that each fixing, and the wall, can get for any stiffness within its range.</summary>
/// <param name="Tension">N, one a fixing.</param>
/// <param name="PressureMax">MPa.</param>
/// <param name="Exhaustive">False when there were too many ranges to look at every corner.</param>
public sealed record WorstCase(IReadOnlyList<double> Tension, double PressureMax, bool Exhaustive);

/// <summary>
/// Worst case over stiffness ranges. While the contact zone stands still each force is a quotient of two linear functions of
/// any one stiffness, hence monotone in it, so the worst lies at a corner of the box: every corner is looked at.
/// Since the zone does move a little, each corner is then improved along one stiffness at a time until none helps.
/// </summary>
public static class StiffnessRange
{
    private const int CornersMax = 11;
    private const int Sweeps = 12;
    private const int Probes = 6;
    private const int Narrowings = 40;

    /// <summary>The worst case, or null when some stiffness within the ranges admits no balance.</summary>
    public static WorstCase? Worst(Plate plate, IReadOnlyList<FixingRange> fixings, BedRange bed, in BracketLoad load)
    {
        var box = new Box(plate, fixings, bed, load);
        int n = fixings.Count;
        bool all = n + 1 <= CornersMax;
        foreach (var corner in all ? Corners(n + 1) : Starts(n))
            if (!box.Look(corner)) return null;
        for (int goal = 0; goal <= n; goal++)
            if (!Climb(box, goal)) return null;
        return new WorstCase([.. box.Best.Take(n)], box.Best[n], all);
    }

    private static IEnumerable<double[]> Corners(int n) =>
        Enumerable.Range(0, 1 << n).Select(c => Enumerable.Range(0, n).Select(i => (double)(c >> i & 1)).ToArray());

    /// <summary>All soft, all stiff, each one stiff among soft and soft among stiff, on a soft and on a stiff bed.</summary>
    private static IEnumerable<double[]> Starts(int n)
    {
        for (int bed = 0; bed <= 1; bed++)
            for (int rest = 0; rest <= 1; rest++)
                for (int odd = -1; odd < n; odd++)
                    yield return [.. Enumerable.Range(0, n).Select(i => (double)(i == odd ? 1 - rest : rest)), bed];
    }

    private static bool Climb(Box box, int goal)
    {
        for (int sweep = 0; sweep < Sweeps; sweep++)
        {
            double before = box.Best[goal];
            for (int axis = 0; axis < box.Axes; axis++)
                if (!Along(box, goal, axis)) return false;
            if (box.Best[goal] <= before * (1 + 1e-12)) return true;
        }
        return true;
    }

    /// <summary>Probes a whole axis, then narrows around the best.</summary>
    private static bool Along(Box box, int goal, int axis)
    {
        for (int i = 0; i <= Probes; i++)
            if (!box.Look(box.With(goal, axis, (double)i / Probes))) return false;
        double width = 1.0 / Probes, middle = box.Where[goal][axis];
        for (int i = 0; i < Narrowings && width > 1e-7; i++)
        {
            width *= 0.6;
            if (!box.Look(box.With(goal, axis, Math.Max(0, middle - width)))) return false;
            if (!box.Look(box.With(goal, axis, Math.Min(1, middle + width)))) return false;
            middle = box.Where[goal][axis];
        }
        return true;
    }

    /// <summary>The box of stiffnesses, 0 to 1 on a logarithmic scale along each axis; the bed is the last axis.</summary>
    private sealed class Box
    {
        private readonly Plate _plate;
        private readonly IReadOnlyList<FixingRange> _fixings;
        private readonly BedRange _bed;
        private readonly BracketLoad _load;
        private readonly FixingPoint[] _points;
        private readonly double[] _tensions;

        internal Box(Plate plate, IReadOnlyList<FixingRange> fixings, BedRange bed, in BracketLoad load)
        {
            (_plate, _fixings, _bed, _load) = (plate, fixings, bed, load);
            (_points, _tensions) = (new FixingPoint[fixings.Count], new double[fixings.Count]);
            Best = [.. Enumerable.Repeat(double.NegativeInfinity, fixings.Count + 1)];
            Where = [.. Best.Select(_ => new double[fixings.Count + 1])];
        }

        internal int Axes => Best.Length;

        internal double[] Best { get; }

        internal double[][] Where { get; }

        internal double[] With(int goal, int axis, double value)
        {
            double[] at = [.. Where[goal]];
            at[axis] = value;
            return at;
        }

        internal bool Look(double[] at)
        {
            for (int i = 0; i < _points.Length; i++)
                _points[i] = _fixings[i].Fixing with { Stiffness = Between(_fixings[i].Low, _fixings[i].High, at[i]) };
            var bed = new Bed(Between(_bed.Low, _bed.High, at[^1]), _bed.PressureCap);
            var answer = ContactSolver.Solve(_plate, _points, bed, _load, _tensions);
            if (answer.Status != ContactStatus.Balanced) return false;
            for (int i = 0; i < _tensions.Length; i++) Take(i, _tensions[i], at);
            Take(_tensions.Length, answer.PressureMax, at);
            return true;
        }

        private void Take(int goal, double value, double[] at)
        {
            if (value > Best[goal]) (Best[goal], Where[goal]) = (value, at);
        }

        private static double Between(double low, double high, double t) => t == 0 ? low : t == 1 ? high : low * Math.Pow(high / low, t);
    }
}
