namespace Pattress.Brackets;

/// <summary>
/// The fallback that cannot fail: three nested searches for a sign change. The energy is convex, so with u2 and u1 held the
/// slope along u0 rises, and by the envelope theorem so do the slopes of the minima along u1 and u2. Each search halves a
/// bracket of doubles and therefore ends (docs/theory/brackets.md).
/// </summary>
internal static class ContactBracketing
{
    private const int Halvings = 100;
    private const double FarAway = 1e12;

    /// <summary>The energy's minimum from u; the energy is left evaluated there.</summary>
    internal static Triple Minimise(ref ContactEnergy energy, Triple u)
    {
        AlongThird(ref energy, ref u);
        energy.Evaluate(u);
        return u;
    }

    private static double AlongThird(ref ContactEnergy energy, ref Triple u) => Search(ref energy, ref u, 2);

    private static double Slope(ref ContactEnergy energy, ref Triple u, int axis)
    {
        if (axis > 0) return Search(ref energy, ref u, axis - 1);
        energy.Evaluate(u);
        return energy.Gradient.A;
    }

    /// <summary>Puts u at the root of the slope along an axis, the lower axes minimised; returns the slope of the next axis.</summary>
    private static double Search(ref ContactEnergy energy, ref Triple u, int axis)
    {
        double start = Get(u, axis), low = start, high = start;
        double atLow = Slope(ref energy, ref u, axis), atHigh = atLow;
        for (double w = 1e-3 + 1e-3 * Math.Abs(start); atLow > 0 && w < FarAway; w *= 4) { Set(ref u, axis, low = start - w); atLow = Slope(ref energy, ref u, axis); }
        for (double w = 1e-3 + 1e-3 * Math.Abs(start); atHigh < 0 && w < FarAway; w *= 4) { Set(ref u, axis, high = start + w); atHigh = Slope(ref energy, ref u, axis); }
        for (int i = 0; i < Halvings && atLow < 0 && atHigh > 0; i++)
        {
            double t = i % 2 == 0 ? low + (high - low) * (atLow / (atLow - atHigh)) : (low + high) / 2;
            if (!(t > low && t < high)) t = (low + high) / 2;
            if (!(t > low && t < high)) break;
            Set(ref u, axis, t);
            double there = Slope(ref energy, ref u, axis);
            if (there < 0) (low, atLow) = (t, there);
            else if (there > 0) (high, atHigh) = (t, there);
            else break;
            if (Math.Abs(there) < Small) break;
        }
        return axis == 0 ? energy.Gradient.B : energy.Gradient.C;
    }

    private const double Small = 1e-14;

    private static double Get(in Triple u, int axis) => axis == 0 ? u.A : axis == 1 ? u.B : u.C;

    private static void Set(ref Triple u, int axis, double value)
    {
        if (axis == 0) u.A = value;
        else if (axis == 1) u.B = value;
        else u.C = value;
    }
}
