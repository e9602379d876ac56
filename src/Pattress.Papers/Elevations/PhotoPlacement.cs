using Pattress.Jobs;
using Pattress.Papers.Drawings;

namespace Pattress.Papers.Elevations;

/// <summary>A point of a photo (px from its upper left corner) and where it is on the wall, mm.</summary>
public readonly record struct PhotoMark(double XPx, double YPx, Point At);

/// <summary>
/// How a photo lies under a drawing: turned, scaled and moved so that two marked points fall on their places. The photo was
/// taken square to the wall, or lines run off towards its edges: it is a background, and nothing is measured from it.
/// </summary>
/// <param name="A">With <paramref name="B"/>, scale and turn: x' = A x - B y + E, y' = B x + A y + F, in px of the drawing, y down.</param>
public readonly record struct PhotoPlacement(double A, double B, double E, double F)
{
    private const double LeastApartPx = 2;

    /// <summary>The placement, or null when the two points are too near to each other on the photo or on the wall.</summary>
    public static PhotoPlacement? Of(Drawing drawing, PhotoMark first, PhotoMark second)
    {
        double dx = second.XPx - first.XPx, dy = second.YPx - first.YPx, apart = dx * dx + dy * dy;
        var (p, q) = (ToPx(drawing, first.At), ToPx(drawing, second.At));
        double ux = q.X - p.X, uy = q.Y - p.Y;
        if (apart < LeastApartPx * LeastApartPx || ux * ux + uy * uy < LeastApartPx * LeastApartPx) return null;
        double a = (ux * dx + uy * dy) / apart, b = (uy * dx - ux * dy) / apart;
        return new(a, b, p.X - a * first.XPx + b * first.YPx, p.Y - b * first.XPx - a * first.YPx);
    }

    /// <summary>Where a point of the photo falls on the drawing, px.</summary>
    public Point On(double xPx, double yPx) => new(A * xPx - B * yPx + E, B * xPx + A * yPx + F);

    private static Point ToPx(Drawing drawing, Point at) => new((at.X - drawing.View.X) * drawing.PxPerMm, (drawing.View.Top - at.Y) * drawing.PxPerMm);
}
