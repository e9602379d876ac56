using Pattress.Actions;

namespace Pattress.Jobs.Buying;

/// <summary>The shopping for a whole job: the list, what proves it cheapest, and the plan with the kinds that it chose.</summary>
/// <param name="Plan">The plan with the chosen kinds; its buying list is this one.</param>
/// <param name="Status"><c>optimal</c>, <c>feasible</c> (time ran out), <c>infeasible</c> or <c>nothing</c> (nothing to fix).</param>
/// <param name="Solver">Who solved it.</param>
/// <param name="Expected">Packs, tools, van stock, minutes and risked trips together, over what the walls may be.</param>
/// <param name="Bound">Nothing can be expected to cost less than this.</param>
/// <param name="SecondTrip">Chance that something must be fetched.</param>
/// <param name="Classes">What was chosen for brackets that are alike.</param>
/// <param name="Mix">The cheaper mix of kinds, or null where it is no cheaper.</param>
/// <param name="GiveUp">Where the rules leave nothing: the smallest sets of rules, any one of which is enough to give up.</param>
public sealed record BuyAnswer(
    PlanAnswer Plan, string Status, string Solver, decimal Expected, decimal Bound, double SecondTrip, IReadOnlyList<BuyClassAnswer> Classes,
    MixAnswer? Mix, IReadOnlyList<IReadOnlyList<Reason>> GiveUp, IReadOnlyList<Reason> Notes, IReadOnlyList<Assumption> Assumptions);

/// <summary>What was chosen for brackets that are alike, and what is carried for when the wall is otherwise.</summary>
public sealed record BuyClassAnswer(IReadOnlyList<string> Items, int Brackets, string Fixing, int Each, IReadOnlyList<StandInAnswer> StandIns, double Uncovered);

/// <summary>A kind carried for a state of the wall in which the chosen one does not hold.</summary>
public sealed record StandInAnswer(string Fixing, double Probability);

/// <summary>The cheaper mix, beside the list: fewer pence, more kinds.</summary>
public sealed record MixAnswer(decimal Expected, decimal Saving, IReadOnlyList<BuyLine> Lines);
