namespace Pattress.Actions.Beams;

/// <summary>The least and most a support's stiffness can be, N/mm; infinite for rigid.</summary>
public readonly record struct SupportStiffness(double Low, double High);

/// <summary>Reactions for any stiffness of the supports within ranges.</summary>
/// <param name="Exhaustive">False when there were too many ranges to look at every corner.</param>
public sealed record RangeAnswer(IReadOnlyList<double> Max, IReadOnlyList<double> Min, bool Exhaustive);

/// <summary>
/// Envelope over stiffness ranges. A reaction is a quotient of two linear functions of any one stiffness, hence monotone in
/// it for each position of the loads, so the extremes lie at corners of the box of stiffnesses. Up to twelve ranges every corner is looked at;
/// beyond, every pattern of the ranges nearest to each support, and from the best of each reaction one neighbour at a time until none helps.
/// </summary>
public static class SupportRange
{
    private const int CornersMax = 12;

    /// <summary>The envelope; null when the beam can move freely.</summary>
    public static RangeAnswer? Of(Beam beam, IReadOnlyList<SupportStiffness> ranges, BeamLoads standing, MovingLoads? moving)
    {
        var open = Enumerable.Range(0, beam.Supports.Count).Where(i => ranges[i].Low < ranges[i].High).ToArray();
        var box = new SupportBox(beam, ranges, open, standing, moving);
        bool all = open.Length <= CornersMax;
        if (all ? Corners(open.Length).Any(stiff => !box.Look(stiff)) : !(box.Windows() && box.Climb())) return null;
        return new RangeAnswer(box.Max, box.Min, all);
    }

    private static IEnumerable<bool[]> Corners(int n) =>
        Enumerable.Range(0, 1 << n).Select(c => Enumerable.Range(0, n).Select(i => (c >> i & 1) == 1).ToArray());
}
