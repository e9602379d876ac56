namespace Pattress.Brackets;

/// <summary>
/// Forces on the fixings of a rigid plate on an elastic wall that can press but not pull. The plate's energy is convex, so
/// the balance found is the only one. Friction is ignored. Nothing is allocated. Proof that it ends, and the formulas:
/// docs/theory/brackets.md.
/// </summary>
public static class ContactSolver
{
    /// <summary>Residual above which numbers are no answer.</summary>
    public const double ResidualLimit = 1e-9;

    /// <summary>Most fixings of one plate.</summary>
    public const int FixingsMax = 256;

    /// <summary>The residual that is aimed at; above it the fallbacks are tried.</summary>
    internal const double Promised = 1e-11;

    /// <summary>Solves one load.</summary>
    /// <param name="plate">The plate's outline.</param>
    /// <param name="fixings">At most 256; none at all when the load presses the plate on.</param>
    /// <param name="bed">The wall.</param>
    /// <param name="load">Only the pull and its two moments are used; shear has its own methods.</param>
    /// <param name="tensions">Receives the tension of each fixing, N.</param>
    /// <exception cref="ArgumentException">More than 256 fixings, or too short a span.</exception>
    public static ContactAnswer Solve(
        Plate plate, ReadOnlySpan<FixingPoint> fixings, Bed bed, in BracketLoad load, Span<double> tensions)
    {
        if (fixings.Length > FixingsMax || tensions.Length < fixings.Length)
            throw new ArgumentException("at most 256 fixings, and a tension for each");
        var raw = ContactScale.AboutCentre(plate, load);
        var scale = ContactScale.Of(plate, fixings, bed, raw);
        if (scale.Force == 0) return Unloaded(tensions[..fixings.Length]);
        Span<ScaledFixing> scaled = stackalloc ScaledFixing[fixings.Length];
        scale.Scale(fixings, scaled);
        Span<double> room = stackalloc double[plate.X.Length];
        var energy = scale.Energy(plate, scaled, bed, raw, room);
        var whole = energy.WholePlate(plate.Whole);
        Triple u = ContactDescent.Descend(ref energy, whole, energy.Glued(whole));
        return energy.Imbalance <= Promised && !energy.Blurred(u)
            ? scale.Answer(ref energy, default, u, ContactStatus.Balanced, tensions)
            : ContactRescue.Settle(scale, ref energy, whole, u, tensions);
    }

    private static ContactAnswer Unloaded(Span<double> tensions)
    {
        tensions.Clear();
        return new ContactAnswer(ContactStatus.Balanced, 0, 0, 0, 0, 0, 0, 0, 0);
    }
}
