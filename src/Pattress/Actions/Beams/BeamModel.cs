namespace Pattress.Actions.Beams;

/// <summary>What acts on a cut beam.</summary>
/// <param name="Force">Down at each node, N.</param>
/// <param name="Uniform">Down on each piece, N/mm.</param>
/// <param name="Settlement">Of each support, mm.</param>
internal sealed record BeamAction(double[] Force, double[] Uniform, double[] Settlement);

/// <summary>Deflection, slope, moment and shear just right of a node; N, mm.</summary>
internal readonly record struct BeamState(double Deflection, double Slope, double Moment, double Shear);

/// <summary>
/// A beam factored once. Unknown are deflection, slope, moment and shear at each node, tied by the exact transfer from node to
/// node: unlike a matrix of bending stiffnesses, whose entries grow with 1/h³, this stays well conditioned when a load or a
/// joint lies close beside a support. Scaled to forces: w EI/L³, slope EI/L², M/L, V. Rigid supports are equations w = settlement, not stiff springs.
/// </summary>
internal sealed class BeamModel
{
    private readonly BandedSystem _system;
    private readonly int[] _supportAt;
    private readonly double _ei;

    private BeamModel(Beam beam, BeamMesh mesh, IReadOnlyList<bool> active)
    {
        (Beam, Mesh, Active) = (beam, mesh, active);
        _ei = mesh.Ei.Max();
        _system = new BandedSystem(4 * mesh.Nodes);
        _supportAt = new int[mesh.Nodes];
        Array.Fill(_supportAt, -1);
        for (int s = 0; s < beam.Supports.Count; s++)
            if (active[s]) _supportAt[mesh.Node(beam.Supports[s].At)] = s;
        Left();
        for (int i = 0; i < mesh.Pieces; i++) Piece(i);
        int last = 4 * (mesh.Nodes - 1);
        _system.Set(last + 2, last + 2, 1);
        _system.Set(last + 3, last + 3, 1);
    }

    internal Beam Beam { get; }

    internal BeamMesh Mesh { get; }

    internal IReadOnlyList<bool> Active { get; }

    /// <summary>The factored model, or null when the beam can move freely.</summary>
    internal static BeamModel? Of(Beam beam, IEnumerable<double> places, IReadOnlyList<bool>? active = null)
    {
        var model = new BeamModel(beam, new BeamMesh(beam, places), active ?? [.. beam.Supports.Select(_ => true)]);
        return model._system.Factor() ? model : null;
    }

    /// <summary>No load at all, to be filled in.</summary>
    internal BeamAction NoAction() => new(new double[Mesh.Nodes], new double[Mesh.Pieces], new double[Beam.Supports.Count]);

    /// <summary>
    /// The shapes when each support in turn settles by one (rigid) or is loaded by its own stiffness (elastic), without any load: a cubic in each
    /// piece. By the reciprocal theorem they are the influence lines of the reactions.
    /// </summary>
    internal Cubic[][] ReactionShapes()
    {
        int n = Beam.Supports.Count;
        var b = new double[_system.Size * n];
        for (int s = 0; s < n; s++)
            b[(4 * Mesh.Node(Beam.Supports[s].At) + 1) * n + s] = Beam.Supports[s] is { Rigid: false, Stiffness: var k } ? -k : 1 / Deflection;
        return Shapes(b, n);
    }

    /// <summary>The shapes when the beam is kinked by one at each node in turn: the influence lines of the moments there. At hinges and free ends they are nothing.</summary>
    internal Cubic[][] MomentShapes()
    {
        int n = Mesh.Nodes;
        var b = new double[_system.Size * n];
        if (SupportAt(0) is { Clamped: true }) b[0] = -1 / Slope;
        for (int node = 1; node < n; node++)
            if (!Mesh.Hinged[node]) b[(4 * node - 1) * n + node] = -1 / Slope;
        return Shapes(b, n);
    }

    private Cubic[][] Shapes(double[] b, int n)
    {
        _system.Solve(b, n);
        var shapes = new Cubic[n][];
        for (int side = 0; side < n; side++)
        {
            var pieces = new Cubic[Mesh.Pieces];
            for (int i = 0; i < pieces.Length; i++) pieces[i] = BeamAnswer.Shape(State(b, i, n, side), Mesh.Ei[i]);
            shapes[side] = pieces;
        }
        return shapes;
    }

    private BeamState State(double[] b, int node, int n, int side)
    {
        int at = 4 * node * n + side;
        return new(b[at] * Deflection, b[at + n] * Slope, b[at + 2 * n] * Mesh.Length, b[at + 3 * n]);
    }

    // Scales of deflection and slope.
    private double Deflection => Slope * Mesh.Length;

    private double Slope => Mesh.Length * Mesh.Length / _ei;

    internal BeamState[] Solve(BeamAction a)
    {
        var b = new double[_system.Size];
        b[1] = Push(0, a);
        for (int i = 0; i < Mesh.Pieces; i++) Right(b, i, a);
        _system.Solve(b);
        var states = new BeamState[Mesh.Nodes];
        for (int i = 0; i < states.Length; i++) states[i] = State(b, i, 1, 0);
        return states;
    }

    private double ScaledLength(int piece) => Mesh.PieceLength(piece) / Mesh.Length;

    private BeamSupport? SupportAt(int node) => _supportAt[node] is var s && s >= 0 ? Beam.Supports[s] : null;

    private double ScaledSpring(BeamSupport s) => s.Stiffness * Mesh.Length * Mesh.Length * Mesh.Length / _ei;

    private void Left()
    {
        _system.Set(0, SupportAt(0) is { Clamped: true } ? 1 : 2, 1);
        NodeForce(1, 0);
    }

    /// <summary>Either w = settlement, or shear right - shear left - k w = -force.</summary>
    private void NodeForce(int row, int node)
    {
        int at = 4 * node;
        if (SupportAt(node) is { Rigid: true })
        {
            _system.Set(row, at, 1);
            return;
        }
        _system.Set(row, at + 3, 1);
        if (SupportAt(node) is { } spring) _system.Set(row, at, -ScaledSpring(spring));
    }

    /// <summary>Four rows that carry the state across a piece to the right of its right node.</summary>
    private void Piece(int i)
    {
        int row = 2 + 4 * i, from = 4 * i, to = from + 4;
        double h = ScaledLength(i), f = _ei / Mesh.Ei[i];
        Transfer(row, from, [-1, -h, h * h * f / 2, h * h * h * f / 6], to, 1);
        if (Mesh.Hinged[i + 1]) _system.Set(row + 1, to + 2, 1);
        else Transfer(row + 1, from, [0, -1, h * f, h * h * f / 2], to + 1, 1);
        if (SupportAt(i + 1) is { Clamped: true }) _system.Set(row + 2, to + 1, 1);
        else Transfer(row + 2, from, [0, 0, -1, -h], to + 2, 1);
        NodeForce(row + 3, i + 1);
        if (SupportAt(i + 1) is not { Rigid: true }) _system.Set(row + 3, from + 3, -1);
    }

    private void Transfer(int row, int from, ReadOnlySpan<double> terms, int to, double one)
    {
        for (int j = 0; j < 4; j++)
            if (terms[j] != 0) _system.Set(row, from + j, terms[j]);
        _system.Set(row, to, one);
    }

    private void Right(double[] b, int i, BeamAction a)
    {
        int row = 2 + 4 * i;
        double h = ScaledLength(i), q = a.Uniform[i] * Mesh.Length, f = _ei / Mesh.Ei[i];
        b[row] = q * h * h * h * h * f / 24;
        b[row + 1] = Mesh.Hinged[i + 1] ? 0 : q * h * h * h * f / 6;
        b[row + 2] = SupportAt(i + 1) is { Clamped: true } ? 0 : -q * h * h / 2;
        b[row + 3] = Push(i + 1, a) - (SupportAt(i + 1) is { Rigid: true } ? 0 : q * h);
    }

    private double Push(int node, BeamAction a)
    {
        if (SupportAt(node) is not { } s) return -a.Force[node];
        double settled = a.Settlement[_supportAt[node]] / Deflection;
        return s.Rigid ? settled : -a.Force[node] - ScaledSpring(s) * settled;
    }
}
