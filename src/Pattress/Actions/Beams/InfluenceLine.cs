namespace Pattress.Actions.Beams;

/// <summary>
/// What a unit load at a place gives to one reaction: by the reciprocal theorem the beam's deflected shape when that support
/// settles by one (rigid) or is loaded by its own stiffness (elastic). Without standing loads the shape is exactly a cubic in each piece.
/// </summary>
public sealed class InfluenceLine
{
    private readonly double[] _at;
    private readonly Cubic[] _pieces;
    private readonly double[] _integrals;

    private InfluenceLine(double[] at, Cubic[] pieces)
    {
        (_at, _pieces, _integrals) = (at, pieces, new double[at.Length]);
        for (int i = 0; i < pieces.Length; i++) _integrals[i + 1] = _integrals[i] + pieces[i].Integral(at[i + 1] - at[i]);
    }

    /// <summary>Length of the beam, mm.</summary>
    public double Length => _at[^1];

    internal ReadOnlySpan<double> Cuts => _at;

    /// <summary>The lines of all reactions; null when the beam can move freely.</summary>
    public static IReadOnlyList<InfluenceLine>? OfReactions(Beam beam) =>
        BeamModel.Of(beam, []) is { } model ? [.. beam.Supports.Select((_, i) => OfReaction(model, i))] : null;

    /// <summary>
    /// The line of the bending moment at a place (sagging positive, mm): null when the beam can move freely.
    /// </summary>
    public static InfluenceLine? OfMoment(Beam beam, double at)
    {
        if (BeamModel.Of(beam, [at]) is not { } model) return null;
        int node = model.Mesh.Node(at), piece = Math.Max(0, node - 1);
        bool fromLeft = node > 0;
        double h = model.Mesh.At[piece + 1] - model.Mesh.At[piece];
        var shape = Shape(model, MomentRow(model, piece, fromLeft), _ => 0);
        shape[piece] = shape[piece].Less(fromLeft ? new Cubic(0, 0, 1 / h, -1 / (h * h)) : new Cubic(0, 1, -2 / h, 1 / (h * h)));
        return new InfluenceLine(model.Mesh.At, shape);
    }

    /// <summary>The value for a unit load at a place.</summary>
    public double At(double place)
    {
        int i = Piece(place);
        return _pieces[i].At(place - _at[i]);
    }

    /// <summary>The value's integral from the left end to a place: a quartic in each piece.</summary>
    public double Integral(double place)
    {
        int i = Piece(place);
        return _integrals[i] + _pieces[i].Integral(place - _at[i]);
    }

    /// <summary>The line as a cubic whose origin is at a place, valid up to the next cut.</summary>
    internal Cubic From(double place)
    {
        int i = Piece(place);
        return _pieces[i].Shifted(place - _at[i]);
    }

    private int Piece(double place)
    {
        int i = Array.BinarySearch(_at, place);
        return Math.Clamp(i >= 0 ? i : ~i - 1, 0, _pieces.Length - 1);
    }

    private static InfluenceLine OfReaction(BeamModel model, int support)
    {
        var held = model.Beam.Supports[support];
        var forces = new double[model.Mesh.Unknowns];
        if (!held.Rigid) forces[model.Mesh.Deflection(model.SupportNode(support))] = held.Stiffness;
        return new InfluenceLine(model.Mesh.At, Shape(model, forces, s => held.Rigid && s == support ? 1 : 0));
    }

    private static Cubic[] Shape(BeamModel model, double[] forces, Func<int, double> settlement)
    {
        var u = model.Solve(forces, settlement);
        var place = new int[4];
        return [.. model.Mesh.Ei.Select((_, i) => Piece(model, u, i, place))];
    }

    private static Cubic Piece(BeamModel model, double[] u, int i, int[] place)
    {
        model.Places(i, place);
        double l = model.Mesh.Length;
        return Hermite.Shape(u[place[0]], u[place[1]] / l, u[place[2]], u[place[3]] / l, model.Mesh.At[i + 1] - model.Mesh.At[i]);
    }

    /// <summary>The moment at a piece's end as a combination of the unknowns.</summary>
    private static double[] MomentRow(BeamModel model, int piece, bool rightEnd)
    {
        var forces = new double[model.Mesh.Unknowns];
        var place = new int[4];
        model.Places(piece, place);
        double h = model.Mesh.At[piece + 1] - model.Mesh.At[piece], ei = model.Mesh.Ei[piece], l = model.Mesh.Length;
        double s = rightEnd ? 1 : -1;
        forces[place[0]] = s * -6 * ei / (h * h);
        forces[place[1]] = s * -(rightEnd ? 2 : 4) * ei / h / l;
        forces[place[2]] = s * 6 * ei / (h * h);
        forces[place[3]] = s * -(rightEnd ? 4 : 2) * ei / h / l;
        return forces;
    }
}
