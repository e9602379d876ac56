namespace Pattress.Actions.Beams;

/// <summary>
/// A beam's stiffness, factored once. Lengths are scaled by the beam's, stiffness by its largest, so that the numbers are
/// near 1. Rigid supports are taken out of the unknowns, not made of stiff springs.
/// </summary>
internal sealed class BeamModel
{
    private readonly BandedCholesky _matrix;
    private readonly bool[] _held;
    private readonly double[] _springs;
    private readonly int[] _supportNodes;

    private BeamModel(Beam beam, BeamMesh mesh, IReadOnlyList<bool> active)
    {
        (Beam, Mesh) = (beam, mesh);
        Active = active;
        Unit = mesh.Ei.Max() / (mesh.Length * mesh.Length * mesh.Length);
        _matrix = new BandedCholesky(mesh.Unknowns);
        _held = new bool[mesh.Unknowns];
        _springs = new double[mesh.Unknowns];
        _supportNodes = [.. beam.Supports.Select(s => mesh.Node(s.At))];
        Hold();
        for (int i = 0; i < mesh.Ei.Length; i++) AddPiece(i);
        for (int i = 0; i < mesh.Unknowns; i++) _matrix.Add(i, i, _held[i] ? 1 : _springs[i]);
    }

    internal Beam Beam { get; }

    internal BeamMesh Mesh { get; }

    internal IReadOnlyList<bool> Active { get; }

    /// <summary>N/mm of one unit of scaled stiffness.</summary>
    internal double Unit { get; }

    /// <summary>The factored model, or null when the beam can move freely.</summary>
    internal static BeamModel? Of(Beam beam, IEnumerable<double> places, IReadOnlyList<bool>? active = null)
    {
        var model = new BeamModel(beam, new BeamMesh(beam, places), active ?? [.. beam.Supports.Select(_ => true)]);
        return model._matrix.Factor() ? model : null;
    }

    internal int SupportNode(int support) => _supportNodes[support];

    /// <summary>Solves for nodal forces in N (moments in N per scaled slope), with the supports at the given settlements, mm.</summary>
    internal double[] Solve(double[] forces, Func<int, double> settlement)
    {
        var u = new double[forces.Length];
        for (int i = 0; i < u.Length; i++) u[i] = _held[i] ? 0 : forces[i] / Unit;
        for (int s = 0; s < Beam.Supports.Count; s++)
            if (Active[s] && settlement(s) is var d && d != 0) AddSettlement(u, s, d);
        _matrix.Solve(u);
        for (int s = 0; s < Beam.Supports.Count; s++)
            if (Active[s] && Beam.Supports[s].Rigid) u[Mesh.Deflection(_supportNodes[s])] = settlement(s);
        return u;
    }

    private void Hold()
    {
        for (int s = 0; s < Beam.Supports.Count; s++)
        {
            if (!Active[s]) continue;
            int node = _supportNodes[s];
            if (Beam.Supports[s].Rigid) _held[Mesh.Deflection(node)] = true;
            else _springs[Mesh.Deflection(node)] += Beam.Supports[s].Stiffness / Unit;
            if (Beam.Supports[s].Clamped) _held[Mesh.SlopeLeft[node]] = _held[Mesh.SlopeRight[node]] = true;
        }
    }

    private void AddSettlement(double[] u, int support, double settlement)
    {
        int node = _supportNodes[support], at = Mesh.Deflection(node);
        if (!Beam.Supports[support].Rigid) u[at] += _springs[at] * settlement;
        else
            for (int piece = Math.Max(0, node - 1); piece < Math.Min(node + 1, Mesh.Ei.Length); piece++)
                SubtractColumn(u, piece, at, settlement);
    }

    private void SubtractColumn(double[] u, int piece, int column, double value)
    {
        Span<int> place = stackalloc int[4];
        Places(piece, place);
        int j = place.IndexOf(column);
        for (int i = 0; i < 4; i++)
            if (!_held[place[i]]) u[place[i]] -= Hermite.Stiffness(i, j, ScaledLength(piece)) * ScaledEi(piece) * value;
    }

    /// <summary>A piece's force on one unknown, N.</summary>
    internal double Row(int piece, int row, double[] u)
    {
        Span<int> place = stackalloc int[4];
        Places(piece, place);
        int i = place.IndexOf(row);
        double sum = 0;
        for (int j = 0; j < 4; j++) sum += Hermite.Stiffness(i, j, ScaledLength(piece)) * u[place[j]];
        return sum * ScaledEi(piece) * Unit;
    }

    private void AddPiece(int piece)
    {
        Span<int> place = stackalloc int[4];
        Places(piece, place);
        for (int i = 0; i < 4; i++)
            for (int j = 0; j < 4; j++)
                if (!_held[place[i]] && !_held[place[j]])
                    _matrix.Add(place[i], place[j], Hermite.Stiffness(i, j, ScaledLength(piece)) * ScaledEi(piece));
    }

    internal void Places(int piece, Span<int> place)
    {
        place[0] = Mesh.Deflection(piece);
        place[1] = Mesh.SlopeRight[piece];
        place[2] = Mesh.Deflection(piece + 1);
        place[3] = Mesh.SlopeLeft[piece + 1];
    }

    internal double ScaledLength(int piece) => (Mesh.At[piece + 1] - Mesh.At[piece]) / Mesh.Length;

    private double ScaledEi(int piece) => Mesh.Ei[piece] / (Unit * Mesh.Length * Mesh.Length * Mesh.Length);
}
