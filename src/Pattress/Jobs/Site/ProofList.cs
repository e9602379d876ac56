using Pattress.Jobs.Proofs;

namespace Pattress.Jobs.Site;

/// <summary>One thing to do with a bracket and a clock: pull one fixing, or hang a weight on the whole bracket.</summary>
/// <param name="Bracket">Index in the item, from 0.</param>
/// <param name="Hole">Index of the fixing to pull, from 0; null for a weight on the bracket.</param>
/// <param name="At">Where, mm.</param>
/// <param name="LoadN">Pull or weight, N.</param>
/// <param name="CapN">Never above this, N.</param>
/// <param name="HoldS">How long, s.</param>
/// <param name="MovementMm">Movement against the pencil mark that still passes, mm.</param>
/// <param name="Last">The last record of this, with the fixing that is planned now, or null.</param>
public sealed record ProofTask(string Item, int Bracket, int? Hole, Point At, string Fixing, double LoadN, double CapN, double HoldS, double MovementMm, ProofRecord? Last)
{
    /// <summary>The weight that pulls so hard, kg; a litre of water is one.</summary>
    public double HangKg => LoadN / Quantities.Units.Gravity;

    public bool Held => Last is { Result: "held" };
}

/// <summary>What is pulled in a job, one after the other, and what there is to know of each thing.</summary>
/// <param name="Proofs">The proof of every item, in the job's order.</param>
public sealed record ProofList(IReadOnlyList<ItemProof> Proofs, IReadOnlyList<ProofTask> Tasks)
{
    public ProofTask? Next => Tasks.FirstOrDefault(t => t.Last is null);

    public int Held => Tasks.Count(t => t.Held);

    public int Failed => Tasks.Count(t => t.Last is not null && !t.Held);

    /// <summary>Things that are ready or wait for a pull again. A bracket whose fixings are not pulled out gets the weight alone.</summary>
    public static ProofList Of(Job job, PlanAnswer plan)
    {
        var proofs = ProofOf.All(plan, job);
        return new(proofs, [.. proofs.Where(p => p.Verdict == Verdict.Ready || p.State.Failed > 0).SelectMany(p => Each(job, plan, p))]);
    }

    /// <summary>The job with one more pull in it.</summary>
    public static Job Pulled(Job job, ProofTask task, double heldS, string result, string id, DateTimeOffset when) => job with
    {
        Proofs =
        [
            .. job.Proofs,
            new ProofRecord
            {
                Id = id, Fixture = task.Item, Bracket = task.Bracket, Hole = task.Hole, Fixing = task.Fixing, LoadN = task.LoadN, HeldS = heldS, Result = result,
                Way = task.Hole is null ? "bucket_on_arm" : "luggage_scale", On = Stamp.Text(when),
            },
        ],
    };

    private static IEnumerable<ProofTask> Each(Job job, PlanAnswer plan, ItemProof proof)
    {
        var item = plan.Items.First(i => i.Id == proof.Item);
        foreach (var bracket in item.Brackets.Where(b => b.Fixing is not null))
        {
            foreach (var pull in proof.Pulls.Where(p => p.Bracket == bracket.Index))
                yield return new(item.Id, bracket.Index, pull.Hole, pull.At, pull.Fixing, pull.LoadN, pull.DamageCapN, pull.HoldSeconds, pull.MovementMm, Last(job, item.Id, bracket, pull.Hole));
            if (proof.Pulls.Any(p => p.Bracket == bracket.Index)) continue;
            foreach (var hang in proof.Hangs.Where(h => h.Bracket == bracket.Index))
                yield return new(item.Id, bracket.Index, null, bracket.At, bracket.Fixing!, hang.WeightN, hang.DamageCapN, hang.HoldSeconds, hang.MovementMm, Last(job, item.Id, bracket, null));
        }
    }

    private static ProofRecord? Last(Job job, string item, BracketAnswer bracket, int? hole) => job.Proofs.LastOrDefault(p =>
        !p.Withdrawn && p.Fixture == item && p.Bracket == bracket.Index && p.Hole == hole && (p.Fixing.Length == 0 || p.Fixing == bracket.Fixing));
}
