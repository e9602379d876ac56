using Pattress.Jobs;

namespace Pattress.Actions;

/// <summary>
/// A load on a bracket, at the middle of its plate in the plane of the wall's face: forces in N, moments in Nmm.
/// z points out of the wall into the room. <c>N</c> pulls the bracket off the wall; <c>Vx</c> acts to the right and
/// <c>Vy</c> up. <c>Mx</c> and <c>My</c> are conjugate to the gap field u0 + u1 x + u2 y: a weight W hung at an arm a in front
/// of the wall has <c>Vy = -W</c>, <c>My = +W a</c> (the top is pulled). <c>Tz</c> turns anticlockwise as seen from the room.
/// </summary>
public readonly record struct Wrench(double N, double Mx, double My, double Vx, double Vy, double Tz)
{
    public static Wrench operator +(Wrench a, Wrench b) =>
        new(a.N + b.N, a.Mx + b.Mx, a.My + b.My, a.Vx + b.Vx, a.Vy + b.Vy, a.Tz + b.Tz);

    public static Wrench operator *(double s, Wrench a) => new(s * a.N, s * a.Mx, s * a.My, s * a.Vx, s * a.Vy, s * a.Tz);
}

/// <summary>What happens when it comes down; decides the target and what may carry it. Ordered by severity.</summary>
public enum ConsequenceClass { Nuisance, Hurts, Overhead, HoldsPerson }

/// <summary>Load duration classes of EN 1995-1-1 Table 2.1.</summary>
public enum LoadDuration { Permanent, LongTerm, MediumTerm, ShortTerm, Instantaneous }

/// <summary>One case of load on one bracket. The design value is factored by EN 1990 (6.10).</summary>
/// <param name="Code">Which case, e.g. <c>curtain_open</c>, <c>curtain_left</c>, <c>person_pulls</c>.</param>
/// <param name="Duration">Shortest duration in the case: governs k_mod and the like.</param>
/// <param name="Permanent">Characteristic permanent part.</param>
/// <param name="Variable">Characteristic variable part, dynamic factor included.</param>
/// <param name="Design">Factored sum.</param>
/// <param name="VariableCov">Coefficient of variation of the variable part over the reference period (assumed).</param>
public sealed record LoadCase(
    string Code, LoadDuration Duration, Wrench Permanent, Wrench Variable, Wrench Design, double VariableCov);

/// <summary>A bracket's plate: outline and holes in mm relative to its middle, x right, y up.</summary>
/// <param name="ArmMm">How far in front of the wall the load acts; shown to the fitter.</param>
/// <param name="Assumed">True when the size was not measured.</param>
public sealed record BracketPlate(
    IReadOnlyList<Point> Outline, IReadOnlyList<Point> Holes, double ThicknessMm, double ArmMm, bool Assumed);

/// <summary>Everything that one bracket has to carry.</summary>
public sealed record BracketActions(int Index, Point At, BracketPlate Plate, IReadOnlyList<LoadCase> Cases);

/// <summary>A number that was assumed or taken from the fixture's defaults.</summary>
/// <param name="Code">Reason code of the text layer.</param>
/// <param name="Values">Values of its sentence.</param>
/// <param name="Source">Document and clause, or "assumed", or "common practice, no source".</param>
public sealed record Assumption(string Code, IReadOnlyList<Said> Values, string Source);

/// <summary>A fixture turned into loads.</summary>
public sealed record FixtureActions(
    string FixtureId, ConsequenceClass Class, double MassKg, IReadOnlyList<BracketActions> Brackets,
    IReadOnlyList<Assumption> Assumptions, IReadOnlyList<Reason> Cautions);
