namespace Pattress.Brackets;

/// <summary>How the shear of a fixing grows with its slip: R = R_ult (1 - exp(-rate slip))^power, up to the last slip.</summary>
/// <param name="Rate">Per mm.</param>
/// <param name="Power">Exponent.</param>
/// <param name="LastSlip">Slip at failure, mm.</param>
public readonly record struct SlipCurve(double Rate, double Power, double LastSlip)
{
    /// <summary>AISC Manual Part 7 (Crawford and Kulak's curve): 10 per inch, 0.55, 0.34 in; for bolts in steel plates.</summary>
    public static readonly SlipCurve Aisc = new(10 / 25.4, 0.55, 0.34 * 25.4);

    /// <summary>Share of the ultimate shear at a slip in mm.</summary>
    public double Share(double slip) => Math.Pow(1 - Math.Exp(-Rate * slip), Power);
}

/// <summary>
/// Ultimate strength of a group in eccentric shear: the group turns about a centre that balances the load, the fixing
/// farthest from it at its last slip (AISC Manual Part 7, instantaneous centre of rotation method).
/// </summary>
public static class InstantaneousCentre
{
    private const int Rounds = 200;

    /// <summary>
    /// The load a group carries, in single fixings' strengths, under a force through <paramref name="at"/> in a direction.
    /// Null when there is no fixing.
    /// </summary>
    public static double? Coefficient(ReadOnlySpan<Corner> fixings, Corner at, double directionDegrees, SlipCurve curve)
    {
        if (fixings.Length == 0) return null;
        double c = Math.Cos(directionDegrees * Math.PI / 180), s = Math.Sin(directionDegrees * Math.PI / 180);
        double size = Spread(fixings, at);
        var load = new Triple(c, s, 0);
        double low = 0, high = fixings.Length;
        for (int round = 0; round < Rounds && high - low > 1e-12 * fixings.Length; round++)
        {
            double share = (low + high) / 2;
            if (Turned(fixings, at, size, curve, share, load) > curve.LastSlip) high = share;
            else low = share;
        }
        return (low + high) / 2;
    }

    private static double Spread(ReadOnlySpan<Corner> fixings, Corner at)
    {
        double size = 1;
        foreach (var f in fixings) size = Math.Max(size, Math.Max(Math.Abs(f.X - at.X), Math.Abs(f.Y - at.Y)));
        return size;
    }

    /// <summary>
    /// Largest slip under a share of load: the least of a convex energy whose gradient is out of balance, by Newton's method
    /// with halving; infinite when the group cannot carry it, or no balance was found.
    /// </summary>
    private static double Turned(ReadOnlySpan<Corner> fixings, Corner at, double size, SlipCurve curve, double share, in Triple load)
    {
        var u = new Triple(1e-3 * load.A, 1e-3 * load.B, 0);
        for (int step = 0; step < Rounds; step++)
        {
            var (g, k) = Unbalance(fixings, at, size, curve, share, load, u);
            double largest = Largest(fixings, at, size, u);
            if (g.Norm < 1e-11) return largest;
            if (largest > 4 * curve.LastSlip) return double.PositiveInfinity;
            if (!k.TryDescent(g, 1e-9 * k.Trace, out var p)) return double.PositiveInfinity;
            u = Shortened(fixings, at, size, curve, share, load, u, p, g);
        }
        // Not balanced is not carried: the answer errs downwards.
        return double.PositiveInfinity;
    }

    private static Triple Shortened(
        ReadOnlySpan<Corner> fixings, Corner at, double size, SlipCurve curve, double share, in Triple load, in Triple u, in Triple p, in Triple g)
    {
        double slope = g.Dot(p), low = 0, high = double.NaN, t = 1;
        for (int i = 0; i < 60; i++)
        {
            double there = Unbalance(fixings, at, size, curve, share, load, u.Plus(t, p)).G.Dot(p);
            if (Math.Abs(there) <= 0.5 * Math.Abs(slope)) break;
            if (there > 0) high = t;
            else low = t;
            t = double.IsNaN(high) ? 2 * t : (low + high) / 2;
            if (t > 1e6) break;
        }
        return u.Plus(t, p);
    }

    private static double Largest(ReadOnlySpan<Corner> fixings, Corner at, double size, in Triple u)
    {
        double largest = 0;
        foreach (var f in fixings)
        {
            double x = (f.X - at.X) / size, y = (f.Y - at.Y) / size, dx = u.A - u.C * y, dy = u.B + u.C * x;
            largest = Math.Max(largest, Math.Sqrt(dx * dx + dy * dy));
        }
        return largest;
    }

    private static (Triple G, Stiffness3 K) Unbalance(
        ReadOnlySpan<Corner> fixings, Corner at, double size, SlipCurve curve, double share, in Triple load, in Triple u)
    {
        var g = new Triple(-share * load.A, -share * load.B, -share * load.C);
        var k = new Stiffness3();
        foreach (var f in fixings)
        {
            double x = (f.X - at.X) / size, y = (f.Y - at.Y) / size, dx = u.A - u.C * y, dy = u.B + u.C * x;
            double slip = Math.Max(Math.Sqrt(dx * dx + dy * dy), 1e-12), force = curve.Share(slip);
            double grow = curve.Rate * curve.Power * force * Math.Exp(-curve.Rate * slip) / (1 - Math.Exp(-curve.Rate * slip));
            double ex = dx / slip, ey = dy / slip, lever = x * ey - y * ex, across = -x * ex - y * ey, side = force / slip;
            g = g.Plus(force, new Triple(ex, ey, lever));
            Rank(ref k, grow, ex, ey, lever);
            Rank(ref k, side, -ey, ex, -across);
        }
        return (g, k);
    }

    private static void Rank(ref Stiffness3 k, double w, double a, double b, double c)
    {
        k.AA += w * a * a;
        k.AB += w * a * b;
        k.AC += w * a * c;
        k.BB += w * b * b;
        k.BC += w * b * c;
        k.CC += w * c * c;
    }
}
