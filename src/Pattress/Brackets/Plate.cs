namespace Pattress.Brackets;

/// <summary>
/// A plate's outline, digested once and used for any number of loads: rings of corners (outer rings anticlockwise, holes
/// clockwise), moved to the centroid and divided by the plate's size so that every load case is well scaled.
/// </summary>
public sealed class Plate
{
    internal readonly double[] X;
    internal readonly double[] Y;
    internal readonly double[] Level;
    internal readonly int[] RingEnds;
    internal readonly double CentreX;
    internal readonly double CentreY;
    internal readonly double Size;
    internal readonly Moments Whole;

    private Plate(List<Corner[]> rings)
    {
        var raw = RingIntegrals(rings);
        Area = raw.A;
        CentreX = raw.X / raw.A;
        CentreY = raw.Y / raw.A;
        Size = rings.SelectMany(r => r).Max(c => Math.Max(Math.Abs(c.X - CentreX), Math.Abs(c.Y - CentreY)));
        var closed = rings.Select(Closed).ToList();
        X = [.. closed.SelectMany(r => r.Select(c => (c.X - CentreX) / Size))];
        Y = [.. closed.SelectMany(r => r.Select(c => (c.Y - CentreY) / Size))];
        Level = new double[X.Length];
        RingEnds = [.. closed.Select((_, i) => closed.Take(i + 1).Sum(r => r.Count))];
        Whole = RingIntegrals(closed.Select(r => r.Select(Scaled).ToArray()).ToList());
    }

    /// <summary>Area of the plate on the wall, mm².</summary>
    public double Area { get; }

    /// <summary>A plate from one outline, in either sense of turning; it must not cross itself.</summary>
    /// <exception cref="ArgumentException">The outline is no polygon with an area; doors refuse this first.</exception>
    public static Plate Of(IReadOnlyList<Corner> outline) => Of([outline], []);

    /// <summary>
    /// A plate of one or more outer outlines (a two-lobed plate, two feet) less holes or slots, which lie inside them and
    /// do not overlap.
    /// </summary>
    /// <exception cref="ArgumentException">A ring has no area, or the holes leave none.</exception>
    public static Plate Of(IReadOnlyList<IReadOnlyList<Corner>> outlines, IReadOnlyList<IReadOnlyList<Corner>> holes)
    {
        var rings = outlines.Select(r => Turned(r, anticlockwise: true)).Concat(holes.Select(r => Turned(r, anticlockwise: false))).ToList();
        if (rings.Count == 0 || rings.Any(r => !(Math.Abs(Outline.SignedArea(r)) > 0)) || !(RingIntegrals(rings).A > 0))
            throw new ArgumentException("a plate needs an outline with an area");
        return new Plate(rings);
    }

    /// <summary>A rectangle from its sides, mm.</summary>
    public static Plate Rectangle(double left, double right, double bottom, double top) =>
        Of([new(left, bottom), new(right, bottom), new(right, top), new(left, top)]);

    private Corner Scaled(Corner c) => new((c.X - CentreX) / Size, (c.Y - CentreY) / Size);

    private static List<Corner> Closed(Corner[] ring) => [.. ring, ring[0]];

    private static Corner[] Turned(IReadOnlyList<Corner> ring, bool anticlockwise) =>
        Outline.SignedArea(ring) > 0 == anticlockwise ? [.. ring] : [.. ring.Reverse()];

    private static Moments RingIntegrals(List<Corner[]> rings)
    {
        var sum = new Moments();
        foreach (var ring in rings)
            for (int i = 1; i + 1 < ring.Length; i++)
                sum.AddTriangle(ring[0].X, ring[0].Y, ring[i].X, ring[i].Y, ring[i + 1].X, ring[i + 1].Y);
        return sum;
    }
}
