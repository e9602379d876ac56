using Pattress.Jobs;
using Pattress.Trials.Proof;

namespace Pattress.Planning;

/// <summary>What pulls on site demand of an item: one that came away stops it until as many again have held, or it was taken back.</summary>
public static class ProofGate
{
    public static PlannedItem Apply(PlannedItem item, IReadOnlyList<ProofRecord> proofs)
    {
        ProofRecord[] own = [.. proofs.Where(p => p.Fixture == item.Answer.Id && !p.Withdrawn && SpeaksOf(p, item.Answer))];
        int last = Array.FindLastIndex(own, p => p.Result != "held"), failed = own.Count(p => p.Result != "held");
        if (last < 0 || item.Answer.Verdict == Verdict.NotHere) return item;
        var demands = ProofPlan.After(failed, own.Length);
        if (demands.Code == "proof_test_more" && own.Length - last - 1 > last) return item;
        return demands.Code == "proof_stop" ? Stopped(item) : More(item, last + 1);
    }

    /// <summary>A pull speaks for the fixing that it was made on: where the plan takes another by now, it no longer counts.</summary>
    public static bool SpeaksOf(ProofRecord proof, ItemAnswer item) =>
        proof.Fixing.Length == 0 || item.Brackets.All(b => b.Index != proof.Bracket || b.Fixing is null || b.Fixing == proof.Fixing);

    private static PlannedItem Stopped(PlannedItem item) =>
        item with { Answer = item.Answer with { Verdict = Verdict.NotHere, Why = new Reason("proof_stop"), Remedies = [new Reason("remedy_after_proof")] }, Needs = [] };

    private static PlannedItem More(PlannedItem item, int again)
    {
        var a = item.Answer;
        var check = new CheckToDo("proof", a.Wall, null, [a.Id], new Reason("check_proof_again", Said.Count(again)), CheckMinutes.Of("proof"), 0, 0);
        return item with { Answer = a with { Verdict = Verdict.CheckFirst, Why = new Reason("proof_test_more"), Remedies = [new Reason("check_proof_again", Said.Count(again)), .. a.Remedies] }, Checks = [check, .. item.Checks] };
    }
}
