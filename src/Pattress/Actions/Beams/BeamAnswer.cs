namespace Pattress.Actions.Beams;

/// <summary>
/// One loaded beam: reactions, and the exact extremes of moment and deflection (between cuts the moment is a parabola and the
/// deflection a quartic, whose turning points are found in closed form or to rounding).
/// </summary>
public sealed class BeamAnswer
{
    private readonly BeamModel _model;
    private readonly double[] _u;
    private readonly double[] _uniform;

    internal BeamAnswer(BeamModel model, double[] u, double[] uniform, double[] reactions)
    {
        (_model, _u, _uniform, Reactions) = (model, u, uniform, reactions);
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
        int piece = _model.Mesh.Piece(at);
        return value(piece, at - _model.Mesh.At[piece]);
    }

    private double Length(int piece) => _model.Mesh.At[piece + 1] - _model.Mesh.At[piece];

    private Cubic Shape(int piece)
    {
        Span<int> p = stackalloc int[4];
        _model.Places(piece, p);
        double l = _model.Mesh.Length;
        return Hermite.Shape(_u[p[0]], _u[p[1]] / l, _u[p[2]], _u[p[3]] / l, Length(piece));
    }

    private double Moment(int piece, double x)
    {
        double h = Length(piece);
        var s = Shape(piece);
        return -_model.Mesh.Ei[piece] * (2 * s.C2 + 6 * s.C3 * x) - _uniform[piece] * (h * h - 6 * h * x + 6 * x * x) / 12;
    }

    private double Deflection(int piece, double x)
    {
        double h = Length(piece);
        return Shape(piece).At(x) + _uniform[piece] * x * x * (h - x) * (h - x) / (24 * _model.Mesh.Ei[piece]);
    }

    private int TurnOfMoment(int piece, Span<double> at)
    {
        double shear = -6 * _model.Mesh.Ei[piece] * Shape(piece).C3, q = _uniform[piece], h = Length(piece);
        if (q == 0) return 0;
        at[0] = h / 2 + shear / q;
        return at[0] > 0 && at[0] < h ? 1 : 0;
    }

    private int TurnsOfDeflection(int piece, Span<double> at)
    {
        double h = Length(piece), a = _uniform[piece] / (24 * _model.Mesh.Ei[piece]);
        var s = Shape(piece);
        return new Cubic(s.C1, 2 * s.C2 + 2 * a * h * h, 3 * s.C3 - 6 * a * h, 4 * a).Roots(h, at);
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
            at[n++] = Length(piece);
            for (int i = 0; i < n; i++) Take(value(piece, at[i]), _model.Mesh.At[piece] + at[i], ref max, ref min);
        }
        return (max, min);
    }

    private static void Take(double value, double at, ref Extreme max, ref Extreme min)
    {
        if (value > max.Value) max = new(value, at);
        if (value < min.Value) min = new(value, at);
    }
}
