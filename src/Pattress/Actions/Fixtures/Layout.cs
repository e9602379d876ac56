using Pattress.Jobs;

namespace Pattress.Actions.Fixtures;

/// <summary>Where brackets go when nobody has placed them.</summary>
internal static class Layout
{
    /// <summary>A level line of brackets from end to end, evenly spaced, no further apart than that.</summary>
    public static IEnumerable<Point> Line(Point middle, double lengthMm, double endMm, double spacingMm) =>
        Line(middle, lengthMm, endMm, Math.Max(2, 1 + (int)Math.Ceiling(Span(lengthMm, endMm) / spacingMm - 1e-9)));

    /// <summary>A level line of that many brackets.</summary>
    public static IEnumerable<Point> Line(Point middle, double lengthMm, double endMm, int n)
    {
        double span = Span(lengthMm, endMm);
        if (n == 1) return [middle];
        return Enumerable.Range(0, n).Select(i => middle with { X = middle.X - span / 2 + span * i / (n - 1) });
    }

    /// <summary>An upright line.</summary>
    public static IEnumerable<Point> Column(Point middle, double heightMm, int n) =>
        Enumerable.Range(0, n).Select(i => middle with { Y = middle.Y - heightMm / 2 + heightMm * i / (n - 1) });

    // Ends that would overlap leave half of the length.
    private static double Span(double lengthMm, double endMm) => lengthMm - 2 * Math.Min(endMm, lengthMm / 4);
}
