namespace Pattress.Brackets;

/// <summary>What can be read off an energy once u is known, and the same energy about another origin.</summary>
internal static class ContactReading
{
    internal static double Tension(this in ContactEnergy e, int i, in Triple u)
    {
        ref readonly var f = ref e.Fixings[i];
        return Math.Clamp(f.K * (u.At(f.X, f.Y) - f.Gap), 0, f.Cap);
    }

    /// <summary>How far the plate's deepest corner is pressed in, crushed or not.</summary>
    internal static double Deepest(this in ContactEnergy e, in Triple u)
    {
        double deepest = 0;
        for (int i = 0; i < e.X.Length; i++) deepest = Math.Max(deepest, -e.Lift[i] - u.At(e.X[i], e.Y[i]));
        return deepest;
    }

    /// <summary>Second derivative with every fixing pulling and the whole plate glued to its bed: no other is above it.</summary>
    internal static Stiffness3 WholePlate(this in ContactEnergy e, in Moments outline)
    {
        var whole = new Stiffness3();
        whole.Add(e.Bed, outline);
        foreach (ref readonly var f in e.Fixings) whole.AddSpring(f.K, f.X, f.Y);
        return whole;
    }

    /// <summary>Balance of the glued plate: where the search starts.</summary>
    internal static Triple Glued(this in ContactEnergy e, in Stiffness3 whole)
    {
        var g = new Triple(-e.Load.A, -e.Load.B, -e.Load.C);
        foreach (ref readonly var f in e.Fixings)
            if (f.Gap < 0) g.AddPull(-f.K * f.Gap, f.X, f.Y);
        whole.TryDescent(g, 0, out var u);
        return u;
    }

    /// <summary>
    /// True when the plate is crushed in so far that the crushed and the pressed zone can no longer be told apart to 1e-11 of
    /// the load: no trust is put in a residual there.
    /// </summary>
    internal static bool Blurred(this in ContactEnergy e, in Triple u) =>
        e.CrushDepth < double.PositiveInfinity && e.Deepest(u) is var deepest && deepest > e.CrushDepth && 4e-16 * e.Bed * deepest > ContactSolver.Promised;

    /// <summary>True when something can yield and u has run away: the load is above the plastic limit, or within 1e-6 of it.</summary>
    internal static bool Yields(this in ContactEnergy e, in Triple u)
    {
        bool yielding = e.CrushDepth < double.PositiveInfinity;
        double slack = 1;
        foreach (ref readonly var f in e.Fixings)
        {
            yielding |= f.Cap < double.PositiveInfinity;
            slack = Math.Max(slack, f.Gap);
        }
        return yielding && (e.Blurred(u) || u.Largest > RunAway * slack);
    }

    private const double RunAway = 1e9;

    /// <summary>The same energy measured from a reference, in arrays that are lent.</summary>
    internal static ContactEnergy From(this in ContactEnergy e, in Triple reference, Span<double> lift, Span<ScaledFixing> fixings)
    {
        for (int i = 0; i < lift.Length; i++) lift[i] = Exact.At(reference, e.X[i], e.Y[i], 0);
        for (int i = 0; i < fixings.Length; i++)
        {
            fixings[i] = e.Fixings[i];
            fixings[i].Gap = -Exact.At(reference, fixings[i].X, fixings[i].Y, -fixings[i].Gap);
        }
        return e with { Lift = lift, Fixings = fixings };
    }
}
