namespace Pattress.Brackets;

/// <summary>What is done when Newton's method has not reached the promised residual.</summary>
internal static class ContactRescue
{
    private const int Rounds = 4;

    /// <summary>
    /// Tries again with u measured from where it stands (with a soft fixing on a stiff bed, or a gap a million times the
    /// board's give, the gap in the contact zone is a small difference of large numbers); then names why there is no
    /// balance, or finds it by bracketing.
    /// </summary>
    internal static ContactAnswer Settle(
        ContactScale scale, ref ContactEnergy energy, in Stiffness3 whole, in Triple start, Span<double> tensions)
    {
        Triple reference = start;
        Span<double> lift = stackalloc double[energy.X.Length];
        Span<ScaledFixing> fixings = stackalloc ScaledFixing[energy.Fixings.Length];
        for (int round = 1; ; round++)
        {
            var local = energy.From(reference, lift, fixings);
            local.Evaluations = energy.Evaluations;
            Triple u = ContactDescent.Descend(ref local, whole, default);
            if (Done(local, u)) return scale.Answer(ref local, reference, u, ContactStatus.Balanced, tensions);
            if (Refusal(ref energy, reference.Plus(1, u)) is { } refusal) return scale.Answer(ref local, reference, u, refusal, tensions);
            u = ContactBracketing.Minimise(ref local, u);
            if (!Done(local, u) && energy.Yields(reference.Plus(1, u))) return scale.Answer(ref local, reference, u, ContactStatus.Overloaded, tensions);
            if (Done(local, u) || round == Rounds) return scale.Answer(ref local, reference, u, ContactStatus.Balanced, tensions);
            energy.Evaluations = local.Evaluations;
            reference = reference.Plus(1, u);
        }
    }

    private static bool Done(in ContactEnergy energy, in Triple u) =>
        energy.Residual <= ContactSolver.Promised && !energy.Blurred(u);

    private static ContactStatus? Refusal(ref ContactEnergy energy, in Triple u) =>
        Mechanism.Lifts(energy) ? ContactStatus.Mechanism : energy.Yields(u) ? ContactStatus.Overloaded : null;
}
