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

    /// <summary>The line of one reaction; null when the beam can move freely.</summary>
    public static InfluenceLine? OfReaction(Beam beam, int support) =>
        BeamModel.Of(beam, []) is { } model ? OfReaction(model, support) : null;

    /// <summary>
    /// The line of the bending moment at a place (sagging positive, mm): the shape when the beam is kinked there by one. Null
    /// when the beam can move freely.
    /// </summary>
    public static InfluenceLine? OfMoment(Beam beam, double at)
    {
        if (BeamModel.Of(beam, [at]) is not { } model) return null;
        var action = model.NoAction();
        action.Kink[model.Mesh.Node(at)] = -1;
        return Shape(model, action);
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

    /// <summary>The piece of the line at a place, as a cubic whose origin is back to the left of it.</summary>
    internal Cubic From(double place, double back)
    {
        int i = Piece(place);
        return _pieces[i].Shifted(place - back - _at[i]);
    }

    private int Piece(double place)
    {
        int i = Array.BinarySearch(_at, place);
        return Math.Clamp(i >= 0 ? i : ~i - 1, 0, _pieces.Length - 1);
    }

    private static InfluenceLine OfReaction(BeamModel model, int support)
    {
        var held = model.Beam.Supports[support];
        var action = model.NoAction();
        if (held.Rigid) action.Settlement[support] = 1;
        else action.Force[model.Mesh.Node(held.At)] = held.Stiffness;
        return Shape(model, action);
    }

    private static InfluenceLine Shape(BeamModel model, BeamAction action)
    {
        var states = model.Solve(action);
        return new InfluenceLine(model.Mesh.At, [.. model.Mesh.Ei.Select((ei, i) => BeamAnswer.Shape(states[i], ei))]);
    }
}
