namespace Pattress.Brackets;

/// <summary>Area, first and second moments of a region.</summary>
internal struct Moments
{
    internal double A, X, Y, XX, XY, YY;

    /// <summary>Adds a triangle (subtracts it when clockwise); exact for any polynomial of degree two.</summary>
    internal void AddTriangle(double ax, double ay, double bx, double by, double cx, double cy)
    {
        double twice = (bx - ax) * (cy - ay) - (cx - ax) * (by - ay);
        double sx = ax + bx + cx, sy = ay + by + cy, w = twice / 24;
        A += twice / 2;
        X += twice / 6 * sx;
        Y += twice / 6 * sy;
        XX += w * (ax * ax + bx * bx + cx * cx + sx * sx);
        XY += w * (ax * ay + bx * by + cx * cy + sx * sy);
        YY += w * (ay * ay + by * by + cy * cy + sy * sy);
    }

    /// <summary>The same region about another origin.</summary>
    internal readonly Moments About(double x, double y) => new()
    {
        A = A,
        X = X - A * x,
        Y = Y - A * y,
        XX = XX - 2 * x * X + A * x * x,
        XY = XY - x * Y - y * X + A * x * y,
        YY = YY - 2 * y * Y + A * y * y,
    };
}
