using Pattress.Jobs;

namespace Pattress.Papers.Drawings;

/// <summary>The strokes of a hatch, clipped to a rectangle.</summary>
public static class Strokes
{
    /// <summary>Strokes at 45 degrees (slope 1 or -1), or level (slope 0), this far apart along x (level: along y).</summary>
    public static IEnumerable<(Point From, Point To)> Over(Rect area, double spacing, double slope)
    {
        if (!(spacing > 0) || !(area.Width > 0) || !(area.Height > 0)) return [];
        return slope == 0 ? Level(area, spacing) : Slanted(area, spacing, slope > 0);
    }

    private static IEnumerable<(Point, Point)> Level(Rect a, double spacing)
    {
        for (double y = a.Y + spacing / 2; y < a.Top; y += spacing) yield return (new(a.X, y), new(a.Right, y));
    }

    private static IEnumerable<(Point, Point)> Slanted(Rect a, double spacing, bool rising)
    {
        for (double start = spacing / 2; start < a.Width + a.Height; start += spacing)
        {
            // The stroke x - y = start - height, clipped to the rectangle; the falling one is its mirror image.
            double x0 = Math.Max(0, start - a.Height), y0 = Math.Max(0, a.Height - start);
            double run = Math.Min(a.Width - x0, a.Height - y0);
            if (run <= 0) continue;
            yield return rising
                ? (new(a.X + x0, a.Y + y0), new(a.X + x0 + run, a.Y + y0 + run))
                : (new(a.Right - x0, a.Y + y0), new(a.Right - x0 - run, a.Y + y0 + run));
        }
    }
}
