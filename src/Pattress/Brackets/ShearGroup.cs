namespace Pattress.Brackets;

/// <summary>How one fixing holds the plate sideways.</summary>
/// <param name="X">mm.</param>
/// <param name="Y">mm.</param>
/// <param name="Stiffness">N/mm against sideways movement; equal for all when nothing is known.</param>
/// <param name="Slot">Direction in which its slot lets it slide, degrees anticlockwise from x; null for a round hole.</param>
public readonly record struct ShearPoint(double X, double Y, double Stiffness = 1, double? Slot = null);

/// <summary>The force of one fixing on the plate's load, N, in the plate's axes.</summary>
public readonly record struct ShearForce(double X, double Y)
{
    /// <summary>Resultant, N.</summary>
    public double Size => Math.Sqrt(X * X + Y * Y);
}

/// <summary>
/// Shear of a group by the elastic vector method: the plate moves and turns about the group's centre of stiffness, and each
/// fixing takes force in proportion to its own movement (AISC Manual Part 7, elastic method, generalised to unequal fixings and to slots). Friction ignored.
/// </summary>
public static class ShearGroup
{
    /// <summary>
    /// Forces with the load at the origin. False when the plate can slide or turn freely, as on one fixing or along slots.
    /// </summary>
    public static bool TrySolve(ReadOnlySpan<ShearPoint> points, double vx, double vy, double tz, Span<ShearForce> forces)
    {
        if (points.Length == 0) return vx == 0 && vy == 0 && tz == 0;
        var (cx, cy, size) = Middle(points);
        var stiffness = new Stiffness3();
        foreach (var p in points) AddPoint(ref stiffness, p, cx, cy, size);
        var load = new Triple(-vx, -vy, -(tz - cx * vy + cy * vx) / size);
        if (!Moves(stiffness, load, points, (cx, cy, size), out var u)) return false;
        for (int i = 0; i < points.Length; i++) forces[i] = Force(points[i], u, cx, cy, size);
        return true;
    }

    /// <summary>
    /// With play in the holes the plate may bear on one fixing alone, steadied by one other against turning: the most that
    /// fixing i can get, N, over every such partner. All of the shear where there is no twist about it.
    /// </summary>
    public static double WithPlay(ReadOnlySpan<ShearPoint> points, int i, double vx, double vy, double tz)
    {
        double worst = Math.Sqrt(vx * vx + vy * vy);
        for (int j = 0; j < points.Length; j++)
        {
            if (j == i) continue;
            double dx = points[j].X - points[i].X, dy = points[j].Y - points[i].Y, r2 = dx * dx + dy * dy;
            if (r2 == 0) continue;
            double couple = (tz - points[i].X * vy + points[i].Y * vx) / r2;
            double fx = vx + couple * dy, fy = vy - couple * dx;
            worst = Math.Max(worst, Math.Max(Math.Sqrt(fx * fx + fy * fy), Math.Abs(couple) * Math.Sqrt(r2)));
        }
        return worst;
    }

    /// <summary>
    /// The group's movement; where it is not determined a little bilateral stiffness is added and taken out again by
    /// refinement, which succeeds only if the load does not work on the free movement.
    /// </summary>
    private static bool Moves(
        Stiffness3 stiffness, in Triple load, ReadOnlySpan<ShearPoint> points, (double X, double Y, double Size) middle, out Triple u)
    {
        if (stiffness.TryDescent(load, 0, out u) && Determined(stiffness)) return true;
        double little = 1e-6 * stiffness.Trace;
        (stiffness.AA, stiffness.BB, stiffness.CC) = (stiffness.AA + little, stiffness.BB + little, stiffness.CC + little);
        u = default;
        for (int round = 0; round < 4; round++)
        {
            if (!stiffness.TryDescent(Unbalanced(points, u, load, middle), 0, out var step)) return false;
            u = u.Plus(1, step);
        }
        return Unbalanced(points, u, load, middle).Norm <= 1e-9 * load.Norm;
    }

    private static Triple Unbalanced(ReadOnlySpan<ShearPoint> points, in Triple u, in Triple load, (double X, double Y, double Size) middle)
    {
        var rest = load;
        foreach (var p in points)
        {
            var f = Force(p, u, middle.X, middle.Y, middle.Size);
            double x = (p.X - middle.X) / middle.Size, y = (p.Y - middle.Y) / middle.Size;
            rest = rest.Plus(1, new Triple(f.X, f.Y, x * f.Y - y * f.X));
        }
        return rest;
    }

    /// <summary>False when a pivot is so small that the group hangs free in some direction.</summary>
    private static bool Determined(in Stiffness3 k)
    {
        double d1 = k.BB - k.AB * k.AB / k.AA, m = k.BC - k.AB * k.AC / k.AA;
        double d2 = k.CC - k.AC * k.AC / k.AA - m * m / d1;
        return d1 > 1e-9 * k.BB && d2 > 1e-9 * k.CC;
    }

    private static (double X, double Y, double Size) Middle(ReadOnlySpan<ShearPoint> points)
    {
        double x = 0, y = 0, size = 1;
        foreach (var p in points) (x, y) = (x + p.X / points.Length, y + p.Y / points.Length);
        foreach (var p in points) size = Math.Max(size, Math.Max(Math.Abs(p.X - x), Math.Abs(p.Y - y)));
        return (x, y, size);
    }

    private static (double XX, double XY, double YY) Sideways(in ShearPoint p)
    {
        if (p.Slot is not { } slot) return (p.Stiffness, 0, p.Stiffness);
        double c = Math.Cos(slot * Math.PI / 180), s = Math.Sin(slot * Math.PI / 180);
        return (p.Stiffness * s * s, -p.Stiffness * s * c, p.Stiffness * c * c);
    }

    private static void AddPoint(ref Stiffness3 k, in ShearPoint p, double cx, double cy, double size)
    {
        var (xx, xy, yy) = Sideways(p);
        double x = (p.X - cx) / size, y = (p.Y - cy) / size;
        k.AA += xx;
        k.AB += xy;
        k.BB += yy;
        k.AC += x * xy - y * xx;
        k.BC += x * yy - y * xy;
        k.CC += x * x * yy - 2 * x * y * xy + y * y * xx;
    }

    private static ShearForce Force(in ShearPoint p, in Triple u, double cx, double cy, double size)
    {
        var (xx, xy, yy) = Sideways(p);
        double dx = u.A - u.C * (p.Y - cy) / size, dy = u.B + u.C * (p.X - cx) / size;
        return new ShearForce(xx * dx + xy * dy, xy * dx + yy * dy);
    }
}
