using System.Runtime.CompilerServices;

namespace Pattress.Brackets;

/// <summary>One fixing in scaled units.</summary>
internal struct ScaledFixing
{
    internal double X, Y, K, Gap, Cap;
}

/// <summary>
/// The energy 1/2 sum k (d - g)+^2 + 1/2 k_b integral (-d)+^2 dA - F.u of a plate, its gradient and second derivative, in
/// scaled units. Convex and once continuously differentiable. The contact zone is the outline cut by one straight line, so
/// its integrals are closed form: each side of the outline that lies in the zone makes one triangle with an apex on
/// that line (sides along the line then make none), whatever the outline's shape. <c>Lift</c> is a gap at each corner to
/// which u is added (see <see cref="ContactRescue"/>); as a rule 0.
/// </summary>
internal ref struct ContactEnergy
{
    internal ReadOnlySpan<double> X, Y, Lift;
    internal ReadOnlySpan<int> RingEnds;

    /// <summary>Room for the gap at each corner, as many as there are; worked out once an evaluation.</summary>
    internal Span<double> Gaps;
    internal ReadOnlySpan<ScaledFixing> Fixings;
    internal Triple Load;
    internal double Bed, CrushDepth;

    internal Triple Gradient;
    internal Stiffness3 Second;
    internal int Evaluations;

    /// <summary>Sides of the outline that the line d = 0 cut at the last u; where they are two, it does so from Start over Chord.</summary>
    internal int Cuts;
    internal double StartX, StartY, ChordX, ChordY;

    /// <summary>Area in contact at the last u.</summary>
    internal double Area;

    /// <summary>Sum of the tensions at the last u.</summary>
    internal double Pulled;

    /// <summary>Size of the gradient at the last u: what is out of balance.</summary>
    internal double Imbalance;

    /// <summary>What is out of balance, over the load or the tensions, whichever is larger.</summary>
    internal readonly double Residual => Imbalance / Math.Max(1, Pulled);

    /// <summary>Sum of the pressure at the last u.</summary>
    internal double Contact;

    /// <summary>Sets <see cref="Gradient"/>, <see cref="Second"/>, <see cref="Area"/> and <see cref="Contact"/> at u.</summary>
    internal void Evaluate(in Triple u)
    {
        Evaluations++;
        Gradient = new Triple(-Load.A, -Load.B, -Load.C);
        Cuts = 0;
        AddFixings(u);
        double pulled = Gradient.A;
        Pulled = Gradient.A + Load.A;
        Area = AddBed(u, Bed);
        if (CrushDepth < double.PositiveInfinity) AddBed(new Triple(u.A + CrushDepth, u.B, u.C), -Bed);
        Contact = pulled - Gradient.A;
        Imbalance = Gradient.Norm;
    }

    private void AddFixings(in Triple u)
    {
        Triple g = Gradient;
        Stiffness3 k = default;
        foreach (ref readonly var f in Fixings)
        {
            double pull = f.K * (u.At(f.X, f.Y) - f.Gap);
            if (pull <= 0) continue;
            g.AddPull(Math.Min(pull, f.Cap), f.X, f.Y);
            if (pull < f.Cap) k.AddSpring(f.K, f.X, f.Y);
        }
        Gradient = g;
        Second = k;
    }

    /// <summary>Adds a bed where d is negative (a negative one takes back what exceeds the crushing pressure); returns the area.</summary>
    private double AddBed(in Triple d, double bed)
    {
        double a = d.A, b = d.B, c = d.C, area = 0;
        var gaps = Gaps;
        for (int i = 0; i < gaps.Length; i++) gaps[i] = Lift[i] + (a + b * X[i] + c * Y[i]);
        int start = 0;
        foreach (int end in RingEnds)
        {
            area += AddRing(X[start..end], Y[start..end], gaps[start..end], bed);
            start = end;
        }
        return area;
    }

    /// <summary>One ring, closed, with the gap at each corner.</summary>
    private double AddRing(ReadOnlySpan<double> x, ReadOnlySpan<double> y, ReadOnlySpan<double> gap, double bed)
    {
        double da = gap[0];
        bool any = da < 0;
        for (int i = 1; i < gap.Length; i++)
        {
            double db = gap[i];
            if (da < 0 != db < 0)
            {
                double t = da / (da - db);
                return AddSides(x, y, gap, bed, x[i - 1] + t * (x[i] - x[i - 1]), y[i - 1] + t * (y[i] - y[i - 1]), 0);
            }
            da = db;
        }
        return any ? AddSides(x, y, gap, bed, x[0], y[0], gap[0]) : 0;
    }

    /// <summary>
    /// Every side of the ring that lies in the zone, about the apex (ox, oy) where the gap is od; the sums are local, since
    /// that is where the time goes.
    /// </summary>
    private double AddSides(ReadOnlySpan<double> cornersX, ReadOnlySpan<double> cornersY, ReadOnlySpan<double> gap, double bed, double ox, double oy, double od)
    {
        double a = 0, x = 0, y = 0, xx = 0, xy = 0, yy = 0, f = 0, fx = 0, fy = 0, chordX = 0, chordY = 0;
        int cuts = 0;
        double ax = cornersX[0], ay = cornersY[0], da = gap[0];
        for (int i = 1; i < gap.Length; i++)
        {
            double bx = cornersX[i], by = cornersY[i], db = gap[i];
            if (da < 0 || db < 0)
            {
                double px = ax - ox, py = ay - oy, pd = da, qx = bx - ox, qy = by - oy, qd = db;
                if (da >= 0)
                {
                    (px, py, pd) = Cut(ax, ay, da, bx, by, db, ox, oy);
                    (chordX, chordY, cuts) = (chordX + px, chordY + py, cuts + 1);
                }
                else if (db >= 0)
                {
                    (qx, qy, qd) = Cut(ax, ay, da, bx, by, db, ox, oy);
                    (chordX, chordY, cuts) = (chordX + qx, chordY + qy, cuts + 1);
                }
                double twice = px * qy - qx * py, sx = px + qx, sy = py + qy, sd = od + pd + qd;
                a += twice;
                x += twice * sx;
                y += twice * sy;
                xx += twice * (px * px + qx * qx + sx * sx);
                xy += twice * (px * py + qx * qy + sx * sy);
                yy += twice * (py * py + qy * qy + sy * sy);
                f += twice * sd;
                fx += twice * (pd * px + qd * qx + sd * sx);
                fy += twice * (pd * py + qd * qy + sd * sy);
            }
            (ax, ay, da) = (bx, by, db);
        }
        // One of two cuts is the apex itself, so their sum is the other.
        (Cuts, StartX, StartY, ChordX, ChordY) = (Cuts + cuts, ox, oy, chordX, chordY);
        var zone = new Moments { A = a / 2, X = x / 6, Y = y / 6, XX = xx / 24, XY = xy / 24, YY = yy / 24 };
        Second.Add(bed, zone.About(-ox, -oy));
        Gradient.A += bed * f / 6;
        Gradient.B += bed * (fx / 24 + f / 6 * ox);
        Gradient.C += bed * (fy / 24 + f / 6 * oy);
        return zone.A;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (double X, double Y, double D) Cut(double ax, double ay, double da, double bx, double by, double db, double ox, double oy)
    {
        double t = da / (da - db);
        return (ax + t * (bx - ax) - ox, ay + t * (by - ay) - oy, 0);
    }
}
