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
    public static IReadOnlyList<InfluenceLine>? OfReactions(Beam beam) => BeamModel.Of(beam, []) is { } model ? OfReactions(model) : null;

    internal static InfluenceLine[] OfReactions(BeamModel model) => Lines(model, model.ReactionShapes());

    /// <summary>The lines of the moments at every node of the beam.</summary>
    internal static InfluenceLine[] OfMoments(BeamModel model) => Lines(model, model.MomentShapes());

    private static InfluenceLine[] Lines(BeamModel model, Cubic[][] shapes)
    {
        var lines = new InfluenceLine[shapes.Length];
        for (int i = 0; i < lines.Length; i++) lines[i] = new(model.Mesh.At, shapes[i]);
        return lines;
    }

    /// <summary>The line of one reaction; null when the beam can move freely.</summary>
    public static InfluenceLine? OfReaction(Beam beam, int support) => OfReactions(beam)?[support];

    /// <summary>
    /// The line of the bending moment at a place (sagging positive, mm): the shape when the beam is kinked there by one. Null
    /// when the beam can move freely.
    /// </summary>
    public static InfluenceLine? OfMoment(Beam beam, double at) =>
        BeamModel.Of(beam, []) is { } model ? OfMoment(OfMoments(model), at) : null;

    /// <summary>
    /// The same from the lines at the nodes: within a piece the moment is what the moments at its ends give, in proportion, and that of a simple
    /// beam from end to end.
    /// </summary>
    internal static InfluenceLine OfMoment(InfluenceLine[] nodes, double at)
    {
        var cuts = nodes[0]._at;
        int p = nodes[0].Piece(at);
        double h = cuts[p + 1] - cuts[p], x = at - cuts[p], t = x / h;
        if (x <= 0 || x >= h) return nodes[x <= 0 ? p : p + 1];
        var pieces = new Cubic[cuts.Length];
        for (int i = 0; i < cuts.Length - 1; i++)
            pieces[i <= p ? i : i + 1] = new Cubic().Plus(1 - t, nodes[p]._pieces[i]).Plus(t, nodes[p + 1]._pieces[i]);
        pieces[p + 1] = pieces[p].Shifted(x).Plus(1, new(x * (1 - t), -t, 0, 0));
        pieces[p] = pieces[p].Plus(1, new(0, 1 - t, 0, 0));
        return new([.. cuts[..(p + 1)], at, .. cuts[(p + 1)..]], pieces);
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

    /// <summary>The value's integral within a piece.</summary>
    internal double Integral(int piece, double place) => _integrals[piece] + _pieces[piece].Integral(place - _at[piece]);

    /// <summary>A piece as a cubic whose origin is at a place.</summary>
    internal Cubic From(int piece, double place) => _pieces[piece].Shifted(place - _at[piece]);
}
