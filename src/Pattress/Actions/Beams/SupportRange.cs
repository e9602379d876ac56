namespace Pattress.Actions.Beams;

/// <summary>The least and most a support's stiffness can be, N/mm; infinite for rigid.</summary>
public readonly record struct SupportStiffness(double Low, double High);

/// <summary>Reactions for any stiffness of the supports within ranges.</summary>
/// <param name="Exhaustive">False when there were too many ranges to look at every corner.</param>
public sealed record RangeAnswer(IReadOnlyList<double> Max, IReadOnlyList<double> Min, bool Exhaustive);

/// <summary>
/// Envelope over stiffness ranges. A reaction is a quotient of two linear functions of any one stiffness, hence monotone in
/// it for each position of the loads, so the extremes lie at corners of the box of stiffnesses.
/// </summary>
public static class SupportRange
{
    private const int CornersMax = 10;

    /// <summary>The envelope; null when the beam can move freely.</summary>
    public static RangeAnswer? Of(Beam beam, IReadOnlyList<SupportStiffness> ranges, BeamLoads standing, MovingLoads? moving)
    {
        int n = beam.Supports.Count;
        var open = Enumerable.Range(0, n).Where(i => ranges[i].Low < ranges[i].High).ToArray();
        bool all = open.Length <= CornersMax;
        var max = Enumerable.Repeat(double.NegativeInfinity, n).ToArray();
        var min = Enumerable.Repeat(double.PositiveInfinity, n).ToArray();
        foreach (var stiff in all ? Corners(open.Length) : Starts(open.Length))
            if (!Look(WithStiffness(beam, ranges, open, stiff), standing, moving, max, min)) return null;
        return new RangeAnswer(max, min, all);
    }

    private static bool Look(Beam beam, BeamLoads standing, MovingLoads? moving, double[] max, double[] min)
    {
        var reactions = moving is null
            ? BeamSolver.Solve(beam, standing)?.Reactions.Select(r => new ReactionRange(new(r, 0), new(r, 0))).ToList()
            : BeamEnvelope.Of(beam, standing, moving)?.Reactions;
        if (reactions is null) return false;
        for (int i = 0; i < max.Length; i++)
            (max[i], min[i]) = (Math.Max(max[i], reactions[i].Max.Value), Math.Min(min[i], reactions[i].Min.Value));
        return true;
    }

    private static Beam WithStiffness(Beam beam, IReadOnlyList<SupportStiffness> ranges, int[] open, bool[] stiff)
    {
        var supports = beam.Supports.ToArray();
        for (int k = 0; k < open.Length; k++)
            supports[open[k]] = supports[open[k]] with { Stiffness = stiff[k] ? ranges[open[k]].High : ranges[open[k]].Low };
        return beam with { Supports = supports };
    }

    private static IEnumerable<bool[]> Corners(int n) =>
        Enumerable.Range(0, 1 << n).Select(c => Enumerable.Range(0, n).Select(i => (c >> i & 1) == 1).ToArray());

    /// <summary>All alike, one unlike the rest, and every pattern of three neighbours within alike or alternating rest.</summary>
    private static IEnumerable<bool[]> Starts(int n)
    {
        for (int rest = 0; rest < 4; rest++)
            for (int at = 0; at < n; at++)
                for (int pattern = 0; pattern < 8; pattern++)
                    yield return [.. Enumerable.Range(0, n).Select(i =>
                        i >= at && i < at + 3 ? (pattern >> (i - at) & 1) == 1 : rest < 2 ? rest == 1 : (i + rest) % 2 == 0)];
    }
}
