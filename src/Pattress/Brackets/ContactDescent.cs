namespace Pattress.Brackets;

/// <summary>
/// Newton's method on the contact energy with a line search on the directional derivative. Why it ends is proved in
/// docs/theory/brackets.md: a step is taken only if it halves the smallest residual so far, or if it surely lowers the
/// energy by a fixed share of what the slope promises.
/// </summary>
internal static class ContactDescent
{
    /// <summary>Residual at which the search stops: a hundred times below what is promised.</summary>
    internal const double Tolerance = 1e-12;

    private const int Steps = 60;
    private const int Trials = 80;
    private const double FarAway = 1e15;

    /// <summary>Below this Newton's own step, which squares the residual, ends the search.</summary>
    private const double Near = 1e-7;

    /// <summary>From u to the point of smallest residual found; the energy is left evaluated there.</summary>
    internal static Triple Descend(ref ContactEnergy energy, in Stiffness3 whole, Triple u)
    {
        energy.Evaluate(u);
        double now = energy.Imbalance, best = now;
        Triple bestAt = u;
        for (int step = 0; step < Steps && best > Tolerance; step++)
        {
            Triple p = Direction(energy, whole, out var factors);
            double slope = energy.Gradient.Dot(p);
            if (best > Near && energy.Cuts == 2 && factors is { } f && Bent(ref energy, u, p, f) is var bent && energy.Imbalance <= 0.5 * best) u = bent;
            else u = Step(ref energy, u, p, slope, best);
            now = energy.Imbalance;
            if (now < best) (best, bestAt) = (now, u);
            if (!(u.Largest < FarAway)) break;
        }
        if (now > best) energy.Evaluate(bestAt);
        return bestAt;
    }

    /// <summary>
    /// The end of Newton's step bent by the third derivative, which is -k_b times the integral of a aᵀ a over the line where the plate
    /// leaves the wall, by the slope there: the zone's edge moves as the plate turns (Chebyshev's method). The energy is evaluated there.
    /// </summary>
    internal static Triple Bent(ref ContactEnergy energy, in Triple u, in Triple p, in Factors3 factors)
    {
        double endX = energy.StartX + energy.ChordX, endY = energy.StartY + energy.ChordY;
        double atStart = p.At(energy.StartX, energy.StartY), atEnd = p.At(endX, endY), atMiddle = atStart + atEnd;
        double weight = energy.Bed / 12 * Math.Sqrt((energy.ChordX * energy.ChordX + energy.ChordY * energy.ChordY) / (u.B * u.B + u.C * u.C));
        // Simpson's rule is exact: the integrand is a cubic.
        double w0 = weight * atStart * atStart, w1 = weight * atMiddle * atMiddle, w2 = weight * atEnd * atEnd;
        Triple curve = default;
        curve.AddPull(-w0 - 0.5 * w1, energy.StartX, energy.StartY);
        curve.AddPull(-w2 - 0.5 * w1, endX, endY);
        Triple next = u.Plus(1, p).Plus(1, factors.Descent(curve));
        energy.Evaluate(next);
        return next;
    }

    /// <summary>Newton's step; where rank is lost the whole plate on its bed, glued, holds the rest.</summary>
    private static Triple Direction(in ContactEnergy energy, in Stiffness3 whole, out Factors3? factors)
    {
        double floor = Floor * whole.Trace;
        bool safe = Factors3.TryOf(energy.Second, floor, out var own);
        factors = safe ? own : null;
        if (safe) return own.Descent(energy.Gradient);
        var held = energy.Second;
        held.Add(Held, whole);
        if (held.TryDescent(energy.Gradient, floor, out var p)) return p;
        whole.TryDescent(energy.Gradient, floor, out p);
        return p;
    }

    private static Triple Step(ref ContactEnergy energy, in Triple u, in Triple p, double slope, double best)
    {
        Triple next = u.Plus(1, p);
        energy.Evaluate(next);
        double there = energy.Gradient.Dot(p);
        if (Good(energy, there, 0.9 * slope, best)) return next;
        return there > 0 ? Between(ref energy, u, p, slope, best, 0, slope, 1, there) : Beyond(ref energy, u, p, slope, best);
    }

    /// <summary>The residual has halved, or the slope has risen far enough without turning.</summary>
    private static bool Good(in ContactEnergy energy, double there, double wanted, double best) =>
        (there <= 0 && there >= wanted) || energy.Imbalance <= 0.5 * best;

    private static Triple Beyond(ref ContactEnergy energy, in Triple u, in Triple p, double slope, double best)
    {
        double low = 1, atLow = slope;
        for (double t = 4; t * p.Largest < 4 * FarAway; t *= 4)
        {
            Triple next = u.Plus(t, p);
            energy.Evaluate(next);
            double there = energy.Gradient.Dot(p);
            if (Good(energy, there, 0.5 * slope, best)) return next;
            if (there > 0) return Between(ref energy, u, p, slope, best, low, atLow, t, there);
            (low, atLow) = (t, there);
        }
        return u.Plus(low, p);
    }

    /// <summary>Illinois' regula falsi for the slope's root, ending early once the slope is small and not yet turned.</summary>
    private static Triple Between(
        ref ContactEnergy energy, in Triple u, in Triple p, double slope, double best,
        double low, double atLow, double high, double atHigh)
    {
        for (int trial = 0; trial < Trials; trial++)
        {
            double t = trial % 3 == 2 ? (low + high) / 2 : low + (high - low) * (atLow / (atLow - atHigh));
            if (!(t > low && t < high)) t = (low + high) / 2;
            Triple next = u.Plus(t, p);
            energy.Evaluate(next);
            double there = energy.Gradient.Dot(p);
            if (Good(energy, there, 0.5 * slope, best)) return next;
            if (there > 0) { high = t; atHigh = there; atLow /= 2; }
            else { low = t; atLow = there; atHigh /= 2; }
        }
        Triple last = u.Plus(low, p);
        energy.Evaluate(last);
        return last;
    }

    private const double Floor = 1e-15;
    private const double Held = 1e-2;
}
