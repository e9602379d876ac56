namespace Pattress.Trials.Claims;

/// <summary>What kind of load a claim is about.</summary>
public enum ClaimedLoad
{
    NotSaid,
    Tension,
    Shear,

    /// <summary>A weight on an arm: an order of merit unless arm and bracket are known.</summary>
    Cantilever,
}

/// <summary>What the claimed number is.</summary>
public enum ClaimBasis
{
    NotSaid,
    Ultimate,
    Mean,
    Characteristic,
    Recommended,
}

/// <summary>A load as a catalogue or a packet claims it.</summary>
/// <param name="Kind">Kind of fixing.</param>
/// <param name="LoadN">The number (N), above 0.</param>
/// <param name="Load">What load it is.</param>
/// <param name="Basis">What the number is.</param>
/// <param name="SafetyFactor">The factor already taken off, 1 or more; null when not said.</param>
/// <param name="Board">The board it holds for; null when not said.</param>
public sealed record Claim(string Kind, double LoadN, ClaimedLoad Load, ClaimBasis Basis, double? SafetyFactor = null, string? Board = null);

/// <summary>A claim as a lognormal law of the mean strength of one fixing, wider the less was said.</summary>
/// <param name="MedianN">Median (N).</param>
/// <param name="LogSd">Standard deviation of the logarithm.</param>
/// <param name="Reasons">Codes of what was not said and what was assumed.</param>
public sealed record CommonBasis(double MedianN, double LogSd, IReadOnlyList<Reason> Reasons);
