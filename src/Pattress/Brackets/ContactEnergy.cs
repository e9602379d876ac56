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
    internal ReadOnlySpan<ScaledFixing> Fixings;
    internal Triple Load;
    internal double Bed, CrushDepth;

    internal Triple Gradient;
    internal Stiffness3 Second;
    internal int Evaluations;

    private Moments _zone;
    private Triple _press;

    /// <summary>Sets <see cref="Gradient"/> and <see cref="Second"/> at u.</summary>
    internal void Evaluate(in Triple u)
    {
        Evaluations++;
        Gradient = new Triple(-Load.A, -Load.B, -Load.C);
        Second = default;
        AddFixings(u);
        AddBed(u, 1);
        if (CrushDepth < double.PositiveInfinity) AddBed(new Triple(u.A + CrushDepth, u.B, u.C), -1);
    }

    private void AddFixings(in Triple u)
    {
        foreach (ref readonly var f in Fixings)
        {
            double pull = f.K * (u.At(f.X, f.Y) - f.Gap);
            if (pull <= 0) continue;
            Gradient.AddPull(Math.Min(pull, f.Cap), f.X, f.Y);
            if (pull < f.Cap) Second.AddSpring(f.K, f.X, f.Y);
        }
    }

    /// <summary>Adds the bed's pressure where d is negative; with sign -1 takes back what exceeds the crushing pressure.</summary>
    private void AddBed(in Triple d, double sign)
    {
        if (!Zone(d)) return;
        double k = sign * Bed;
        Second.Add(k, _zone);
        Gradient.A += k * _press.A;
        Gradient.B += k * _press.B;
        Gradient.C += k * _press.C;
    }

    /// <summary>Area in contact in scaled units.</summary>
    internal double ZoneArea(in Triple d) => Zone(d) ? _zone.A : 0;

    /// <summary>Integral of d over the contact zone (negative) in scaled units.</summary>
    internal double ZonePress(in Triple d) => Zone(d) ? _press.A : 0;

    private bool Zone(in Triple d)
    {
        _zone = default;
        _press = default;
        int start = 0;
        bool any = false;
        foreach (int end in RingEnds)
        {
            any |= AddRing(d, start, end);
            start = end;
        }
        return any;
    }

    private bool AddRing(in Triple d, int start, int end)
    {
        double ax = X[start], ay = Y[start], da = Lift[start] + d.At(ax, ay);
        double ox = ax, oy = ay, od = da;
        bool any = da < 0, cut = false;
        for (int i = start + 1; i < end && !cut; i++)
        {
            double bx = X[i], by = Y[i], db = Lift[i] + d.At(bx, by);
            any |= db < 0;
            if (da < 0 != db < 0)
            {
                double t = da / (da - db);
                ox = ax + t * (bx - ax);
                oy = ay + t * (by - ay);
                od = 0;
                cut = true;
            }
            ax = bx;
            ay = by;
            da = db;
        }
        if (any) AddSides(d, start, end, ox, oy, od);
        return any;
    }

    private void AddSides(in Triple d, int start, int end, double ox, double oy, double od)
    {
        double ax = X[start], ay = Y[start], da = Lift[start] + d.At(ax, ay);
        for (int i = start + 1; i < end; i++)
        {
            double bx = X[i], by = Y[i], db = Lift[i] + d.At(bx, by);
            if (da < 0)
            {
                if (db <= 0) AddTriangle(ox, oy, od, ax, ay, da, bx, by, db);
                else
                {
                    double t = da / (da - db);
                    AddTriangle(ox, oy, od, ax, ay, da, ax + t * (bx - ax), ay + t * (by - ay), 0);
                }
            }
            else if (db < 0)
            {
                double t = da / (da - db);
                AddTriangle(ox, oy, od, ax + t * (bx - ax), ay + t * (by - ay), 0, bx, by, db);
            }
            ax = bx;
            ay = by;
            da = db;
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void AddTriangle(double ox, double oy, double od, double ax, double ay, double da, double bx, double by, double db)
    {
        double twice = (ax - ox) * (by - oy) - (bx - ox) * (ay - oy);
        double sx = ox + ax + bx, sy = oy + ay + by, sd = od + da + db, sixth = twice / 6, w = twice / 24;
        _zone.A += twice / 2;
        _zone.X += sixth * sx;
        _zone.Y += sixth * sy;
        _zone.XX += w * (ox * ox + ax * ax + bx * bx + sx * sx);
        _zone.XY += w * (ox * oy + ax * ay + bx * by + sx * sy);
        _zone.YY += w * (oy * oy + ay * ay + by * by + sy * sy);
        _press.A += sixth * sd;
        _press.B += w * (od * ox + da * ax + db * bx + sd * sx);
        _press.C += w * (od * oy + da * ay + db * by + sd * sy);
    }
}
