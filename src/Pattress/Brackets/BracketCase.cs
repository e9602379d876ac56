namespace Pattress.Brackets;

/// <summary>A fixing of a bracket document.</summary>
/// <param name="Point">Place and axial behaviour.</param>
/// <param name="Range">Stiffness range, N/mm; null when one value was given.</param>
/// <param name="SlotDegrees">Direction of its slot, or null.</param>
public sealed record BracketFixing(FixingPoint Point, (double Low, double High)? Range, double? SlotDegrees);

/// <summary>A bracket document as read: everything checked.</summary>
public sealed record BracketCase(
    Plate Plate, IReadOnlyList<Corner> Outline, IReadOnlyList<BracketFixing> Fixings, Bed Bed, (double Low, double High)? BedRange,
    BracketLoad Load, double? PlateThickness, bool Play, IReadOnlyList<Reason> Assumed);

/// <summary>What one fixing gets.</summary>
/// <param name="Tension">N, for the stiffnesses given (or the middle of what is assumed).</param>
/// <param name="Shear">By the elastic vector method.</param>
/// <param name="TensionWorst">N, the most within the stiffness ranges; null without ranges.</param>
/// <param name="ShearWithPlay">N, the most when play in the holes lets one fixing take it all; null without play.</param>
/// <param name="TensionWithPrying">N, the larger tension times the assumed allowance; null when no plate thickness was given.</param>
public sealed record FixingForces(double Tension, ShearForce Shear, double? TensionWorst, double? ShearWithPlay, double? TensionWithPrying);

/// <summary>The answer to a bracket document.</summary>
public sealed record BracketReport(
    IReadOnlyList<FixingForces> Fixings, ContactAnswer Contact, double? PressureWorst,
    IReadOnlyList<Reason> Assumed, IReadOnlyList<Reason> Cautions);
