using Pattress.Actions;

namespace Pattress.Jobs.Proofs;

/// <summary>One way to make a pull with what a fitter has.</summary>
/// <param name="Way"><c>luggage_scale</c> or <c>spring_balance</c>: straight out of the wall; what each shows is in the texts <c>proof_can_…</c> and <c>proof_cannot_…</c>.</param>
/// <param name="MostN">What it reads up to (N).</param>
/// <param name="Reaches">True when that is enough for this pull.</param>
public sealed record PullWay(string Way, double MostN, bool Reaches);

/// <summary>One fixing to be pulled straight out of the wall.</summary>
/// <param name="Bracket">Index of its bracket, from 0.</param>
/// <param name="Hole">Index of its hole among the bracket's holes in use, from 0.</param>
/// <param name="At">Where it is on the wall, mm.</param>
/// <param name="Fixing">Kind and size id.</param>
/// <param name="ActionN">Characteristic pull that it must carry in service (N); assumed no higher than the plan's.</param>
/// <param name="LoadN">The proof pull (N): a factor times the action, never above the cap.</param>
/// <param name="DamageCapN">Never pull above this (N): its design resistance.</param>
/// <param name="HoldSeconds">Hold for so long, s; assumed.</param>
/// <param name="MovementMm">More movement than this against the pencil mark is a failure; assumed.</param>
/// <param name="Ways">How to pull, in the order of <c>data/trials/proof_ways.csv</c>.</param>
public sealed record FixingPull(
    int Bracket, int Hole, Point At, string Fixing, double ActionN, double LoadN, double DamageCapN, double HoldSeconds, double MovementMm, IReadOnlyList<PullWay> Ways);

/// <summary>A whole bracket proved with a weight on its arm: a bucket of water hung where the load hangs.</summary>
/// <param name="ArmMm">Distance of the weight from the wall's face, mm.</param>
/// <param name="WeightN">Weight to hang (N); 9.81 N are a litre of water.</param>
/// <param name="Litres">The same as water; the bucket's own weight counts as well.</param>
/// <param name="DamageCapN">Never hang more than this (N).</param>
/// <param name="HoldSeconds">Leave it for so long, s; assumed.</param>
/// <param name="MovementMm">More movement than this at the top of the plate is a failure; assumed.</param>
public sealed record BracketHang(int Bracket, double ArmMm, double WeightN, double Litres, double DamageCapN, double HoldSeconds, double MovementMm);

/// <summary>A sample in place of every fixing, for base materials that BS 8539 speaks of (concrete and masonry).</summary>
/// <param name="Rate"><c>few_hard</c> (2.5 % at 1.5 times) or <c>more_gentle</c> (5 % at 1.25 times); at least 3 of an area.</param>
/// <param name="Count">How many.</param>
/// <param name="LoadN">Pull on each (N).</param>
public sealed record ProofSample(string Rate, int Count, double LoadN);

/// <summary>What the records on an item say.</summary>
/// <param name="Held">Pulls that held.</param>
/// <param name="Failed">Pulls under which it moved or came away.</param>
/// <param name="Demands"><c>proof_none_yet</c>, <c>proof_passed</c>, <c>proof_test_more</c> or <c>proof_stop</c>.</param>
/// <param name="FailureBefore">Chance of failure before any pull, of the bracket with the greatest; null when it is not known.</param>
/// <param name="FailureAfter">The same given that every pull on that bracket held; null without one.</param>
public sealed record ProofState(int Held, int Failed, Reason Demands, double? FailureBefore, double? FailureAfter);

/// <summary>How one thing that hangs is proved: every accessible fixing pulled to a factor times its action, never above a cap.</summary>
/// <param name="Scope"><c>each</c> (pull each fixing, hang a weight on each bracket), <c>competent</c> (people rely on it: a competent tester) or <c>nothing</c> (not here: no fixing is planned, or pulls have failed).</param>
/// <param name="Count">Number of fixings.</param>
/// <param name="Pulls">Fixings with a pull out of the wall; empty where none is pulled in service.</param>
/// <param name="Hangs">Brackets that carry a weight.</param>
/// <param name="Samples">What a sample would be; empty unless every fixing sits in masonry or concrete and the sample is fewer than all, its pull no more than may be pulled.</param>
/// <param name="Reasons">What the proof rests on and cannot show, as codes.</param>
public sealed record ItemProof(
    string Item, string Name, string What, string Wall, Verdict Verdict, ConsequenceClass Class, string Scope, int Count, IReadOnlyList<FixingPull> Pulls,
    IReadOnlyList<BracketHang> Hangs, IReadOnlyList<ProofSample> Samples, ProofState State, IReadOnlyList<Reason> Reasons);
