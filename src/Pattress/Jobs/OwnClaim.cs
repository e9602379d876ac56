namespace Pattress.Jobs;

/// <summary>Measures of the user's own fixing where they differ from the catalogue's size, mm; null keeps the catalogue's.</summary>
public sealed record OwnSize(double? HoleMm, double? LengthMm, double? GripMinMm, double? GripMaxMm, double? VoidMm, double? EmbedMm)
{
    public bool IsNothing => (HoleMm ?? LengthMm ?? GripMinMm ?? GripMaxMm ?? VoidMm ?? EmbedMm) is null;
}

/// <summary>What packet or page claims of it; it may lower what a plan counts on, never raise it.</summary>
/// <param name="LoadN">The number, N.</param>
/// <param name="Load"><c>tension</c>, <c>shear</c> or <c>not_said</c>.</param>
/// <param name="Basis"><c>ultimate</c>, <c>mean</c>, <c>characteristic</c>, <c>recommended</c> or <c>not_said</c>.</param>
/// <param name="Factor">The factor already taken off; null when not said.</param>
/// <param name="BoardMm">Board that it holds for; null when not said.</param>
public sealed record OwnClaim(double LoadN, string Load, string Basis, double? Factor, double? BoardMm);
