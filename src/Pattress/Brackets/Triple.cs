using System.Runtime.CompilerServices;

namespace Pattress.Brackets;

/// <summary>Three numbers that belong to 1, x and y: a gap field, or a force with its two moments.</summary>
internal struct Triple(double a, double b, double c)
{
    internal double A = a, B = b, C = c;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal readonly double At(double x, double y) => A + B * x + C * y;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal readonly double Dot(in Triple o) => A * o.A + B * o.B + C * o.C;

    internal readonly double Norm => Math.Sqrt(A * A + B * B + C * C);

    internal readonly double Largest => Math.Max(Math.Abs(A), Math.Max(Math.Abs(B), Math.Abs(C)));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal readonly Triple Plus(double t, in Triple o) => new(A + t * o.A, B + t * o.B, C + t * o.C);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void AddPull(double force, double x, double y)
    {
        A += force;
        B += force * x;
        C += force * y;
    }

    internal static Triple Cross(in Triple p, in Triple q) =>
        new(p.B * q.C - p.C * q.B, p.C * q.A - p.A * q.C, p.A * q.B - p.B * q.A);
}

/// <summary>A symmetric 3 x 3 matrix.</summary>
internal struct Stiffness3
{
    internal double AA, AB, AC, BB, BC, CC;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void AddSpring(double k, double x, double y)
    {
        double kx = k * x, ky = k * y;
        AA += k;
        AB += kx;
        AC += ky;
        BB += kx * x;
        BC += kx * y;
        CC += ky * y;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void Add(double k, in Moments m)
    {
        AA += k * m.A;
        AB += k * m.X;
        AC += k * m.Y;
        BB += k * m.XX;
        BC += k * m.XY;
        CC += k * m.YY;
    }

    internal void Add(double k, in Stiffness3 m)
    {
        AA += k * m.AA;
        AB += k * m.AB;
        AC += k * m.AC;
        BB += k * m.BB;
        BC += k * m.BC;
        CC += k * m.CC;
    }

    internal readonly double Trace => AA + BB + CC;

    /// <summary>Solves for -g by Cholesky; false when the matrix is not safely positive.</summary>
    internal readonly bool TryDescent(in Triple g, double floor, out Triple p)
    {
        p = default;
        double d0 = AA + floor;
        if (!(d0 > floor)) return false;
        double i0 = 1 / d0, l1 = AB * i0, l2 = AC * i0;
        double d1 = BB + floor - l1 * AB;
        if (!(d1 > Lost * (BB + floor))) return false;
        double i1 = 1 / d1, m = BC - l2 * AB, l3 = m * i1;
        double d2 = CC + floor - l2 * AC - l3 * m;
        if (!(d2 > Lost * (CC + floor))) return false;
        double y1 = g.B - l1 * g.A, y2 = g.C - l2 * g.A - l3 * y1;
        double z2 = -y2 / d2, z1 = -y1 * i1 - l3 * z2;
        p = new Triple(-g.A * i0 - l1 * z1 - l2 * z2, z1, z2);
        return true;
    }

    /// <summary>Share of a pivot below which rounding has eaten it.</summary>
    private const double Lost = 1e-14;
}
