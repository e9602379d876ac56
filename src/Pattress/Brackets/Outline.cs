namespace Pattress.Brackets;

/// <summary>Geometry of one ring of corners.</summary>
public static class Outline
{
    /// <summary>Area, mm²; negative when the corners run clockwise.</summary>
    public static double SignedArea(IReadOnlyList<Corner> ring)
    {
        double twice = 0;
        for (int i = 1; i + 1 < ring.Count; i++) twice += Cross(ring[0], ring[i], ring[i + 1]);
        return twice / 2;
    }

    /// <summary>The first pair of sides that cross or touch without being neighbours, or null.</summary>
    public static (int First, int Second)? Crossing(IReadOnlyList<Corner> ring)
    {
        int n = ring.Count;
        for (int i = 0; i < n; i++)
            for (int j = i + 2; j < n; j++)
                if ((i > 0 || j < n - 1) && Meet(ring[i], ring[(i + 1) % n], ring[j], ring[(j + 1) % n]))
                    return (i, j);
        return null;
    }

    /// <summary>True when the point lies strictly inside the ring.</summary>
    public static bool Holds(IReadOnlyList<Corner> ring, double x, double y)
    {
        bool inside = false;
        for (int i = 0, j = ring.Count - 1; i < ring.Count; j = i++)
        {
            Corner a = ring[j], b = ring[i];
            if (OnSide(a, b, new(x, y))) return false;
            if (a.Y > y != b.Y > y && x < a.X + (y - a.Y) / (b.Y - a.Y) * (b.X - a.X)) inside = !inside;
        }
        return inside;
    }

    /// <summary>True when a side of one ring meets a side of the other.</summary>
    public static bool Cross(IReadOnlyList<Corner> a, IReadOnlyList<Corner> b)
    {
        for (int i = 0; i < a.Count; i++)
            for (int j = 0; j < b.Count; j++)
                if (Meet(a[i], a[(i + 1) % a.Count], b[j], b[(j + 1) % b.Count])) return true;
        return false;
    }

    private static bool Meet(Corner a, Corner b, Corner c, Corner d)
    {
        double abc = Cross(a, b, c), abd = Cross(a, b, d), cda = Cross(c, d, a), cdb = Cross(c, d, b);
        if (abc * abd < 0 && cda * cdb < 0) return true;
        return (abc == 0 && Between(a, b, c)) || (abd == 0 && Between(a, b, d))
            || (cda == 0 && Between(c, d, a)) || (cdb == 0 && Between(c, d, b));
    }

    private static bool OnSide(Corner a, Corner b, Corner p) => Cross(a, b, p) == 0 && Between(a, b, p);

    private static bool Between(Corner a, Corner b, Corner p) =>
        p.X >= Math.Min(a.X, b.X) && p.X <= Math.Max(a.X, b.X) && p.Y >= Math.Min(a.Y, b.Y) && p.Y <= Math.Max(a.Y, b.Y);

    private static double Cross(Corner a, Corner b, Corner c) => (b.X - a.X) * (c.Y - a.Y) - (c.X - a.X) * (b.Y - a.Y);
}
