namespace Pattress.Actions.Beams;

/// <summary>
/// One loaded beam: reactions, and the exact extremes of moment and deflection (between cuts the moment is a parabola and the
/// deflection a quartic, whose turning points are found in closed form or to rounding).
/// </summary>
public sealed class BeamAnswer
{
    private readonly BeamMesh _mesh;
    private readonly BeamState[] _states;
    private readonly double[] _uniform;

    internal BeamAnswer(BeamModel model, BeamState[] states, BeamAction action)
    {
        (_mesh, _states, _uniform) = (model.Mesh, states, action.Uniform);
        Reactions = [.. model.Beam.Supports.Select((s, i) => model.Active[i] ? Reaction(model.Mesh.Node(s.At), action) : 0)];
        (MomentMax, MomentMin) = Extremes(Moment, TurnOfMoment);
        (DeflectionMax, DeflectionMin) = Extremes(Deflection, TurnsOfDeflection);
    }

    /// <summary>Force of each support on the beam, upwards positive, N.</summary>
    public IReadOnlyList<double> Reactions { get; }

    /// <summary>Largest sagging moment (0 or more where nothing sags is possible only by hogging everywhere), Nmm.</summary>
    public Extreme MomentMax { get; }

    /// <summary>Largest hogging moment, negative, Nmm.</summary>
    public Extreme MomentMin { get; }

    /// <summary>Largest deflection down, mm.</summary>
    public Extreme DeflectionMax { get; }

    /// <summary>Largest deflection up, negative, mm.</summary>
    public Extreme DeflectionMin { get; }

    /// <summary>Bending moment at a place, sagging positive, Nmm.</summary>
    public double MomentAt(double at) => AtPlace(at, Moment);

    /// <summary>Deflection at a place, down positive, mm.</summary>
    public double DeflectionAt(double at) => AtPlace(at, Deflection);

    private double AtPlace(double at, Func<int, double, double> value)
    {
        int piece = _mesh.Piece(at);
        return value(piece, at - _mesh.At[piece]);
    }

    /// <summary>The step of the shear, and what the load takes of it.</summary>
    private double Reaction(int node, BeamAction action)
    {
        double left = node == 0 ? 0 : _states[node - 1].Shear - action.Uniform[node - 1] * _mesh.PieceLength(node - 1);
        return _states[node].Shear - left + action.Force[node];
    }

    private double Moment(int piece, double x)
    {
        var s = _states[piece];
        return s.Moment + x * (s.Shear - _uniform[piece] * x / 2);
    }

    private double Deflection(int piece, double x) =>
        Shape(_states[piece], _mesh.Ei[piece]).At(x) + _uniform[piece] * x * x * x * x / (24 * _mesh.Ei[piece]);

    internal static Cubic Shape(BeamState s, double ei) => new(s.Deflection, s.Slope, -s.Moment / (2 * ei), -s.Shear / (6 * ei));

    private int TurnOfMoment(int piece, Span<double> at)
    {
        if (_uniform[piece] == 0) return 0;
        at[0] = _states[piece].Shear / _uniform[piece];
        return at[0] > 0 && at[0] < _mesh.PieceLength(piece) ? 1 : 0;
    }

    private int TurnsOfDeflection(int piece, Span<double> at)
    {
        var s = Shape(_states[piece], _mesh.Ei[piece]).Derivative;
        return (s with { C3 = _uniform[piece] / (6 * _mesh.Ei[piece]) }).Roots(_mesh.PieceLength(piece), at);
    }

    private delegate int Turns(int piece, Span<double> at);

    private (Extreme Max, Extreme Min) Extremes(Func<int, double, double> value, Turns turns)
    {
        Extreme max = new(double.NegativeInfinity, 0), min = new(double.PositiveInfinity, 0);
        Span<double> at = stackalloc double[5];
        for (int piece = 0; piece < _uniform.Length; piece++)
        {
            int n = turns(piece, at);
            at[n++] = 0;
            at[n++] = _mesh.PieceLength(piece);
            for (int i = 0; i < n; i++) Take(value(piece, at[i]), _mesh.At[piece] + at[i], ref max, ref min);
        }
        return (max, min);
    }

    private static void Take(double value, double at, ref Extreme max, ref Extreme min)
    {
        if (value > max.Value) max = new(value, at);
        if (value < min.Value) min = new(value, at);
    }
}
