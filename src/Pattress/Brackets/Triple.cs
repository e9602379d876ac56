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
        bool safe = Factors3.TryOf(this, floor, out var factors);
        p = safe ? factors.Descent(g) : default;
        return safe;
    }
}

/// <summary>A symmetric positive 3 x 3 matrix as L D Lᵀ, for several right sides.</summary>
internal struct Factors3
{
    private double _i0, _i1, _d2, _l1, _l2, _l3;

    /// <summary>Factors a matrix with a floor added to its diagonal; false when it is not safely positive.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static bool TryOf(in Stiffness3 k, double floor, out Factors3 f)
    {
        f = default;
        double d0 = k.AA + floor;
        if (!(d0 > floor)) return false;
        double i0 = 1 / d0, l1 = k.AB * i0, l2 = k.AC * i0;
        double d1 = k.BB + floor - l1 * k.AB;
        if (!(d1 > Lost * (k.BB + floor))) return false;
        double i1 = 1 / d1, m = k.BC - l2 * k.AB, l3 = m * i1;
        double d2 = k.CC + floor - l2 * k.AC - l3 * m;
        if (!(d2 > Lost * (k.CC + floor))) return false;
        (f._i0, f._i1, f._d2, f._l1, f._l2, f._l3) = (i0, i1, d2, l1, l2, l3);
        return true;
    }

    /// <summary>Solves for -g.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal readonly Triple Descent(in Triple g)
    {
        double y1 = g.B - _l1 * g.A, y2 = g.C - _l2 * g.A - _l3 * y1;
        double z2 = -y2 / _d2, z1 = -y1 * _i1 - _l3 * z2;
        return new Triple(-g.A * _i0 - _l1 * z1 - _l2 * z2, z1, z2);
    }

    /// <summary>Share of a pivot below which rounding has eaten it.</summary>
    private const double Lost = 1e-14;
}
