namespace Pattress.Strength.Mechanisms;

/// <summary>What a resistance rests on; in JSON <c>rule</c>, <c>trial</c>, <c>mechanics</c>, <c>assumed</c>.</summary>
public enum Basis { Rule, Trial, Mechanics, Assumed }

/// <summary>What a resistance is to be set against: factored actions (design), or actions counted once (allowable stress design).</summary>
public enum Level { Design, Allowable }

/// <summary>One way in which a fixing can fail, and how much it takes.</summary>
/// <param name="Mechanism">Fixed code, e.g. <c>withdrawal</c>, <c>board_punching</c>.</param>
/// <param name="Design">Design resistance, N (MPa for <c>toe</c>), to set against the factored action; or why there is none.</param>
/// <param name="Clause">Clause of the rule, or what the mechanics rest on.</param>
/// <param name="MeanN">Estimated mean resistance under a short load, N: for the probability of failure.</param>
/// <param name="Variation">Coefficient of variation about it.</param>
/// <param name="Marks">Departures and notes as reason codes with values, e.g. an edge distance that is not met.</param>
public sealed record MechanismResult(
    string Mechanism, RuleResult Design, Basis Basis, string Clause, double MeanN, double Variation, params IReadOnlyList<Reason> Marks)
{
    /// <summary>Of <see cref="Design"/>: against factored actions, or allowable.</summary>
    public Level Level { get; init; }

    /// <summary>Mean over permitted load: all factors together, those on the action (1.5) included. The trade takes 4 to 5.</summary>
    public double MeanToPermitted => Design.Covered ? MeanN / (Level == Level.Allowable ? Design.Value : Design.Value / Factors.OnAction) : double.NaN;

    /// <summary>The basis as it stands in documents.</summary>
    public string BasisCode => Basis switch { Basis.Rule => "rule", Basis.Trial => "trial", Basis.Mechanics => "mechanics", _ => "assumed" };

    internal static MechanismResult None(string mechanism, NotCovered why) => new(mechanism, why, Basis.Rule, why.Clause, 0, 0);
}

/// <summary>Picking out of several mechanisms.</summary>
public static class Mechanism
{
    /// <summary>The covered mechanism with the least design resistance; null where none is covered. Ties go to the first.</summary>
    public static MechanismResult? Governing(IEnumerable<MechanismResult> results) =>
        results.Where(r => r.Design.Covered).MinBy(r => r.Design.Value);
}
