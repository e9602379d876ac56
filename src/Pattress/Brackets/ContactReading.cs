namespace Pattress.Brackets;

/// <summary>What can be read off an energy once u is known, and the same energy about another origin.</summary>
internal static class ContactReading
{
    internal static double Tension(this in ContactEnergy e, int i, in Triple u)
    {
        ref readonly var f = ref e.Fixings[i];
        return Math.Clamp(f.K * (u.At(f.X, f.Y) - f.Gap), 0, f.Cap);
    }

    /// <summary>Sum of the pressure, crushing taken into account.</summary>
    internal static double Contact(this ref ContactEnergy e, in Triple u)
    {
        double press = -e.Bed * e.ZonePress(u);
        return e.CrushDepth < double.PositiveInfinity ? press + e.Bed * e.ZonePress(e.Crushed(u)) : press;
    }

    internal static Triple Crushed(this in ContactEnergy e, in Triple u) => new(u.A + e.CrushDepth, u.B, u.C);

    internal static double DepthMax(this in ContactEnergy e, in Triple u)
    {
        double deepest = 0;
        for (int i = 0; i < e.X.Length; i++) deepest = Math.Max(deepest, -e.Lift[i] - u.At(e.X[i], e.Y[i]));
        return Math.Min(deepest, e.CrushDepth);
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
    /// A certificate that the load is above the plastic limit: far out along u the load does more work than fixings at
    /// their caps and board at its crushing pressure can take up.
    /// </summary>
    internal static bool Yields(this ref ContactEnergy e, in Triple u)
    {
        double size = u.Norm, tiny = 1e-6;
        var v = new Triple(u.A / size, u.B / size, u.C / size);
        double resisted = 0;
        foreach (ref readonly var f in e.Fixings)
            if (v.At(f.X, f.Y) > tiny) resisted += f.Cap * v.At(f.X, f.Y);
        if (e.CrushDepth < double.PositiveInfinity) resisted -= e.Bed * e.CrushDepth * e.ZonePress(v);
        else if (e.DepthMax(v) > tiny) return false;
        return size > 1 / tiny && e.Load.Dot(v) > resisted;
    }

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
