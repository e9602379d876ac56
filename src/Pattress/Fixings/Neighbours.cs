using Pattress.Jobs;

namespace Pattress.Fixings;

/// <summary>Rules between holes: two fixings side by side must not foul each other, nor an old hole.</summary>
public static class Neighbours
{
    /// <summary>Whether the wings of two fixings foul each other: a bar may be turned, so its short side counts, but plates with long bars want the room of both.</summary>
    public static Reason? Foul(FixingSize size, IReadOnlyList<Point> holes)
    {
        double least = LeastSpacing(size);
        for (int i = 0; i < holes.Count; i++)
        {
            for (int j = i + 1; j < holes.Count; j++)
            {
                double apart = Distance(holes[i], holes[j]);
                if (apart < least) return new Reason("fixings_foul", Said.Length(apart), Said.Length(least));
            }
        }
        return null;
    }

    /// <summary>Sound face that a new hole leaves to an old one, mm (assumed).</summary>
    public const double SoundMm = 10;

    /// <summary>An old hole within the bearing of a new one, or nearer than its own width and so much sound face.</summary>
    public static Reason? OldHole(FixingSize size, Point hole, IReadOnlyList<OldHole> old)
    {
        foreach (var o in old)
        {
            double least = Math.Max(size.HoleMm, size.ScrewMm) / 2 + o.DiameterMm / 2 + SoundMm;
            if (Distance(hole, o.At) < least && !Bridges(size)) return new Reason("old_hole", Said.Words(o.Id), Said.Length(Distance(hole, o.At)), Said.Length(least));
        }
        return null;
    }

    /// <summary>Spacing below which two fixings foul, mm: turned side by side the short sides must clear, and their holes too.</summary>
    public static double LeastSpacing(FixingSize size) => size.Kind.HoldsBy is HoldsBy.Wings or HoldsBy.Plug
        ? Math.Max(size.BearsWideMm, size.HoleMm) + 4
        : Math.Max(2 * size.HoleMm, 3 * size.ScrewMm);

    /// <summary>A bearer plate bridges a damaged hole (common practice, no source).</summary>
    private static bool Bridges(FixingSize size) => size.Kind.Id == "bearer_plate";

    private static double Distance(Point a, Point b) => Math.Sqrt((a.X - b.X) * (a.X - b.X) + (a.Y - b.Y) * (a.Y - b.Y));
}
