using Pattress.Actions;
using Pattress.Actions.Beams;

namespace Pattress.Planning.Bearers;

/// <summary>A load of a bracket on the bearer at a place along it, mm.</summary>
public readonly record struct BearerLoad(double At, Wrench Load);

/// <summary>What a bearer hands on, and how far it is bent.</summary>
/// <param name="Reactions">On each support of the bearer, in their order.</param>
/// <param name="OutNmm">Greatest moment of the pulls out of the wall: the bearer bends about its width.</param>
/// <param name="DownNmm">Greatest moment of the loads along the wall: it bends about its thickness.</param>
public sealed record BearerForces(IReadOnlyList<Wrench> Reactions, double OutNmm, double DownNmm)
{
    /// <summary>Bending stress over its design strength.</summary>
    /// <param name="t">Thickness, mm.</param>
    /// <param name="b">Width up the wall, mm.</param>
    /// <param name="f_md">Design bending strength, N/mm².</param>
    public double Bent(double t, double b, double f_md) => (OutNmm / (b * t * t / 6) + DownNmm / (t * b * b / 6)) / f_md;
}

/// <summary>
/// A bearer as a continuous beam over what holds it. Pulls and weights go by the beam; what tilts a bracket is shared by the two supports beside it by
/// their distance, or goes to the last one beyond it.
/// </summary>
public static class BearerBeam
{
    /// <summary>Null when there are fewer than two supports.</summary>
    /// <param name="supports">Places along the wall, mm, in order.</param>
    /// <param name="ei">Bending stiffness; it changes nothing where all supports are rigid, but must be above 0.</param>
    public static BearerForces? Of(IReadOnlyList<double> supports, IReadOnlyList<BearerLoad> loads, double ei = 1e9)
    {
        if (supports.Count < 2 || loads.Count == 0) return null;
        double left = Math.Min(supports[0], loads.Min(l => l.At)), right = Math.Max(supports[^1], loads.Max(l => l.At));
        var beam = new Beam(right - left, ei, [.. supports.Select(s => new BeamSupport(s - left))]);
        var (n, vx, vy) = (Solve(beam, left, loads, w => w.N), Solve(beam, left, loads, w => w.Vx), Solve(beam, left, loads, w => w.Vy));
        if (n is null || vx is null || vy is null) return null;
        double Tilted(int s, Func<Wrench, double> part) => loads.Sum(l => Share(supports, s, l.At) * part(l.Load));
        return new([.. supports.Select((_, s) => new Wrench(n.Reactions[s], 0, Tilted(s, w => w.My), vx.Reactions[s], vy.Reactions[s], 0))], Worst(n), Worst(vy));
    }

    private static BeamAnswer? Solve(Beam beam, double left, IReadOnlyList<BearerLoad> loads, Func<Wrench, double> part) =>
        BeamSolver.Solve(beam, new([], [.. loads.Select(l => new PointLoad(l.At - left, part(l.Load)))]));

    private static double Worst(BeamAnswer a) => Math.Max(Math.Abs(a.MomentMax.Value), Math.Abs(a.MomentMin.Value));

    /// <summary>The share of a load at x that support s takes: by distance between neighbours, all of it beyond the ends.</summary>
    internal static double Share(IReadOnlyList<double> supports, int s, double x)
    {
        if (x <= supports[0]) return s == 0 ? 1 : 0;
        if (x >= supports[^1]) return s == supports.Count - 1 ? 1 : 0;
        if (s > 0 && x > supports[s - 1] && x <= supports[s]) return (x - supports[s - 1]) / (supports[s] - supports[s - 1]);
        return s < supports.Count - 1 && x >= supports[s] && x < supports[s + 1] ? (supports[s + 1] - x) / (supports[s + 1] - supports[s]) : 0;
    }
}
