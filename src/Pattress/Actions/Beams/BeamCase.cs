namespace Pattress.Actions.Beams;

/// <summary>A beam document as read: everything checked.</summary>
public sealed record BeamCase(
    Beam Beam, BeamLoads Standing, MovingLoads? Moving, IReadOnlyList<SupportStiffness>? Ranges, double? CreepFactor);

/// <summary>The answer to a beam document.</summary>
/// <param name="Standing">Under the standing loads.</param>
/// <param name="Envelope">With the moving loads anywhere; null without.</param>
/// <param name="Range">For any stiffness within the ranges; null without.</param>
/// <param name="DeflectionLong">Largest deflection with creep, mm; null without a creep factor.</param>
public sealed record BeamReport(
    BeamAnswer Standing, EnvelopeAnswer? Envelope, RangeAnswer? Range, double? DeflectionLong, IReadOnlyList<Reason> Cautions)
{
    /// <summary>Bending moments with the moving loads anywhere; null without.</summary>
    public MomentRange? Moments { get; init; }

    /// <summary>The creep factor that was used; null without.</summary>
    public double? CreepFactor { get; init; }
}
