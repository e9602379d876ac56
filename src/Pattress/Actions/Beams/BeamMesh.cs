namespace Pattress.Actions.Beams;

/// <summary>
/// Where a beam is cut: at its ends, supports, hinges, changes of section, and wherever a load begins or ends, so that each
/// piece has one stiffness and one uniform load.
/// </summary>
internal sealed class BeamMesh
{
    private const double Together = 1e-9;

    internal readonly double[] At;
    internal readonly double[] Ei;
    internal readonly bool[] Hinged;

    internal BeamMesh(Beam beam, IEnumerable<double> places)
    {
        Length = beam.Length;
        var ends = beam.Stretches.Select((_, i) => beam.Stretches.Take(i + 1).Sum(s => s.Length)).ToList();
        At = Distinct([0, Length, .. ends, .. beam.Hinges, .. beam.Supports.Select(s => s.At), .. places]);
        Ei = [.. At.Skip(1).Select((x, i) => beam.Stretches[StretchAt(ends, (x + At[i]) / 2)].Ei)];
        Hinged = new bool[At.Length];
        foreach (double h in beam.Hinges) Hinged[Node(h)] = true;
    }

    internal double Length { get; }

    internal int Nodes => At.Length;

    internal int Pieces => Ei.Length;

    internal double PieceLength(int piece) => At[piece + 1] - At[piece];

    /// <summary>The node at a place that is known to be one.</summary>
    internal int Node(double at)
    {
        int i = Array.BinarySearch(At, at);
        if (i >= 0) return i;
        i = ~i;
        return i > 0 && (i == At.Length || at - At[i - 1] < At[i] - at) ? i - 1 : i;
    }

    /// <summary>The piece that holds a place.</summary>
    internal int Piece(double at)
    {
        int i = Array.BinarySearch(At, at);
        return Math.Clamp(i >= 0 ? i : ~i - 1, 0, At.Length - 2);
    }

    private double[] Distinct(List<double> places)
    {
        places.Sort();
        var kept = new List<double> { 0 };
        foreach (double x in places)
            if (x - kept[^1] > Together * Length && Length - x > Together * Length) kept.Add(x);
        return [.. kept, Length];
    }

    private static int StretchAt(List<double> ends, double x)
    {
        int i = ends.FindIndex(e => x < e);
        return i < 0 ? ends.Count - 1 : i;
    }
}
