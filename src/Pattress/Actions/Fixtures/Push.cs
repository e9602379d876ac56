namespace Pattress.Actions.Fixtures;

/// <summary>A force in N: x to the right, y up the drawing, z out of the surface into the room.</summary>
internal readonly record struct Force(double X, double Y, double Z)
{
    public static Force operator *(double s, Force f) => new(s * f.X, s * f.Y, s * f.Z);
}

/// <summary>A force at a point in front of a surface; <c>Out</c> is its distance from the surface, mm.</summary>
internal readonly record struct Push(double X, double Y, double Out, Force Force)
{
    /// <summary>The load on a plate in the surface whose middle is at (x, y): the moments of the force about it.</summary>
    public Wrench About(double x, double y)
    {
        double dx = X - x, dy = Y - y;
        return new(Force.Z, Force.Z * dx - Force.X * Out, Force.Z * dy - Force.Y * Out,
            Force.X, Force.Y, dx * Force.Y - dy * Force.X);
    }
}

/// <summary>Which way is down, seen from the surface that the bracket is fixed to.</summary>
internal enum Surface
{
    /// <summary>A wall: down is along the surface.</summary>
    Wall,

    /// <summary>A ceiling, or the underside of a lintel: down is straight out of the surface.</summary>
    Ceiling,
}

/// <summary>Directions at a surface.</summary>
internal static class Directions
{
    public static Force Down(this Surface surface, double newton) => surface == Surface.Wall ? new(0, -newton, 0) : new(0, 0, newton);

    public static Force Up(this Surface surface, double newton) => surface.Down(-newton);

    /// <summary>Into the room, level.</summary>
    public static Force Outward(this Surface surface, double newton) => surface == Surface.Wall ? new(0, 0, newton) : new(0, newton, 0);

    /// <summary>Level along the line of brackets, to the right.</summary>
    public static Force Along(this Surface _, double newton) => new(newton, 0, 0);
}
