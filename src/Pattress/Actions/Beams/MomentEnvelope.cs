namespace Pattress.Actions.Beams;

/// <summary>The most and least bending moment anywhere on a beam, wherever the moving loads stand; sagging positive, Nmm, and its place, mm.</summary>
public readonly record struct MomentRange(Extreme Max, Extreme Min);

/// <summary>
/// Envelope of the bending moment. At any place the worst position of the moving loads is exact (the influence line of that moment);
/// along the beam the envelope is smooth between cuts, so its peaks are bracketed and closed in on to rounding.
/// </summary>
public static class MomentEnvelope
{
    private const int LooksAPiece = 8, Peaks = 4, Rounds = 40;
    private const double Golden = 0.6180339887498949;

    /// <summary>The envelope where effects add up; null when the beam can move freely. Where supports lift it is stepped, with the reactions.</summary>
    public static MomentRange? Of(Beam beam, BeamLoads standing, MovingLoads moving)
    {
        if (BeamSolver.Solve(beam, standing, null) is not { } rest || BeamModel.Of(beam, []) is not { } model) return null;
        var nodes = InfluenceLine.OfMoments(model);
        (double Most, double Least) Value(double x) => Beside(rest, BeamEnvelope.Range(InfluenceLine.OfMoment(nodes, x), moving), x);
        double[] at = Places(beam, standing);
        var seen = Array.ConvertAll(at, Value);
        return new(Peak(at, i => seen[i].Most, x => Value(x).Most, 1), Peak(at, i => seen[i].Least, x => Value(x).Least, -1));
    }

    private static (double Most, double Least) Beside(BeamAnswer rest, ReactionRange moving, double x)
    {
        double standing = rest.MomentAt(x);
        return (standing + moving.Max.Value, standing + moving.Min.Value);
    }

    private static double[] Places(Beam beam, BeamLoads standing)
    {
        double[] cuts = new BeamMesh(beam, standing.Places).At;
        return [.. cuts.Zip(cuts.Skip(1)).SelectMany(p => Enumerable.Range(0, LooksAPiece).Select(i => p.First + (p.Second - p.First) * i / LooksAPiece)), beam.Length];
    }

    private static Extreme Peak(double[] at, Func<int, double> seen, Func<double, double> value, int sign)
    {
        double V(int i) => i < 0 || i >= at.Length ? double.NegativeInfinity : sign * seen(i);
        var tops = Enumerable.Range(0, at.Length).Where(i => V(i) >= V(i - 1) && V(i) >= V(i + 1)).OrderByDescending(V).Take(Peaks);
        var best = new Extreme(double.NegativeInfinity, 0);
        foreach (int i in tops)
        {
            if (V(i) > best.Value) best = new(V(i), at[i]);
            if (i > 0) best = Closer(at[i - 1], at[i], x => sign * value(x), best);
            if (i + 1 < at.Length) best = Closer(at[i], at[i + 1], x => sign * value(x), best);
        }
        return best with { Value = sign * best.Value };
    }

    // Golden section: the value at the peak of a smooth curve is found to rounding long before its place.
    private static Extreme Closer(double low, double high, Func<double, double> value, Extreme best)
    {
        Extreme At(double x) => new(value(x), x);
        Extreme a = At(high - Golden * (high - low)), b = At(low + Golden * (high - low));
        for (int round = 0; round < Rounds; round++)
        {
            if (a.Value > b.Value) (high, b, a) = (b.At, a, At(b.At - Golden * (b.At - low)));
            else (low, a, b) = (a.At, b, At(a.At + Golden * (high - a.At)));
        }
        var top = a.Value >= b.Value ? a : b;
        return top.Value > best.Value ? top : best;
    }
}
