using Pattress.Actions;

namespace Pattress.Jobs.Certain;

/// <summary>What the chance of failure would be were one unknown known exactly.</summary>
/// <param name="Of">Code of the unknown: <c>load</c>, <c>batch</c> or <c>own_resistance</c>.</param>
/// <param name="Says">The same as a sentence.</param>
/// <param name="IfKnown">Chance of failure with it at its mean.</param>
public sealed record UnknownCounts(string Of, Reason Says, double IfKnown);

/// <summary>How sure an item's fixings are, given the build-up planned for.</summary>
/// <param name="Years">Reference period of the chance, from the job's settings.</param>
/// <param name="ProbabilityOfFailure">Chance that any bracket fails, load and batch shared.</param>
/// <param name="IfIndependent">The same were each bracket a case of its own: shown because it is wrong.</param>
/// <param name="Beta">Reliability index of <paramref name="ProbabilityOfFailure"/>; null when that is 0 or 1.</param>
/// <param name="TargetProbability">Greatest chance that the class allows.</param>
/// <param name="TargetBeta">Its reliability index.</param>
/// <param name="TargetSource">Where the target stands, with its own reference period.</param>
/// <param name="Utilisation">Greatest design action over design resistance: this decides the verdict.</param>
/// <param name="BuildUpProbability">How sure the build-up is, at the bracket where it is least sure.</param>
/// <param name="Unknowns">The unknown that matters most first; empty when nothing acts or no fixing is planned.</param>
/// <param name="IfProved">Chance of failure of the weakest bracket after a pull at the proof load that held; null without one.</param>
/// <param name="Helps">Which check or test would help, best first.</param>
/// <param name="Reasons">What the numbers mean and do not mean.</param>
public sealed record ItemCertainty(
    string Id, string Name, string What, Verdict Verdict, ConsequenceClass Class, double Years, bool Planned, double ProbabilityOfFailure, double IfIndependent, double? Beta,
    double TargetProbability, double TargetBeta, string TargetSource, double Utilisation, double BuildUpProbability,
    IReadOnlyList<UnknownCounts> Unknowns, double? IfProved, IReadOnlyList<Reason> Helps, IReadOnlyList<Reason> Reasons);

/// <summary>An item whose answer the user's own tests and pulls changed.</summary>
/// <param name="FixingBefore">Fixing of its first bracket without them; null when none would do.</param>
/// <param name="FixingAfter">The same with them.</param>
public sealed record ChangedItem(string Id, string Name, Verdict Before, Verdict After, string? FixingBefore, string? FixingAfter);
