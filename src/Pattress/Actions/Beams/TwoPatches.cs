namespace Pattress.Actions.Beams;

/// <summary>Where two patches stand when an effect is at its extreme: starts of the first and the second, mm.</summary>
public readonly record struct PairExtreme(double Value, double First, double Second);

/// <summary>
/// Two patches that do not overlap, the first to the left of the second. Either both stand where each alone is at a turning
/// point, or they touch and move as one: both are cubic roots.
/// </summary>
public static class TwoPatches
{
    /// <summary>Largest and least effect.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Together they are longer than the beam.</exception>
    public static (PairExtreme Max, PairExtreme Min) Envelope(InfluenceLine line, PatchLoad first, PatchLoad second)
    {
        double slack = line.Length - first.Length - second.Length;
        ArgumentOutOfRangeException.ThrowIfNegative(slack, nameof(second));
        var best = new Best(line, first, second);
        var firsts = MovingPatch.Turns(line, 0, slack, [(0, -1), (first.Length, 1)]);
        var seconds = MovingPatch.Turns(line, first.Length, first.Length + slack, [(0, -1), (second.Length, 1)]);
        foreach (double a in firsts)
            foreach (double b in seconds)
                if (b >= a + first.Length) best.Take(a, b);
        double q1 = first.PerLength, q2 = second.PerLength;
        foreach (double a in MovingPatch.Turns(line, 0, slack, [(0, -q1), (first.Length, q1 - q2), (first.Length + second.Length, q2)]))
            best.Take(a, a + first.Length);
        return (best.Max, best.Min);
    }

    private sealed class Best(InfluenceLine line, PatchLoad first, PatchLoad second)
    {
        internal PairExtreme Max = new(double.NegativeInfinity, 0, 0), Min = new(double.PositiveInfinity, 0, 0);

        internal void Take(double a, double b)
        {
            double v = MovingPatch.Effect(line, first, a) + MovingPatch.Effect(line, second, b);
            if (v > Max.Value) Max = new(v, a, b);
            if (v < Min.Value) Min = new(v, a, b);
        }
    }
}
