namespace Pattress.Jobs.Site;

/// <summary>How the signature of a job stands.</summary>
public enum SignedState { Not, Signed, ChangedSince }

/// <summary>Where a job stands, in numbers, and the one thing that is missing next.</summary>
/// <param name="Unsure">Walls that a check is still wanted on.</param>
/// <param name="Holes">Holes to drill in all; <paramref name="Drilled"/> are done.</param>
/// <param name="ToProve">Brackets to pull in all; <paramref name="Proven"/> held, <paramref name="Moved"/> moved.</param>
/// <param name="Missing">What is missing next, in the order of the work.</param>
public sealed record Standing(int Walls, int Unsure, int Things, int Ready, int CheckFirst, int NotHere, int Holes, int Drilled, int ToProve, int Proven, int Moved, SignedState Signed, Reason Missing)
{
    public static Standing Of(Job job, PlanAnswer plan)
    {
        var drill = DrillList.Of(job, plan);
        var proof = ProofList.Of(job, plan);
        var sheet = HandOverSheet.Of(job, plan);
        int unsure = plan.Walls.Count(w => w.Next is not null || plan.Checks.Any(c => c.Wall == w.Id));
        var standing = new Standing(
            job.Walls.Count, unsure, job.Fixtures.Count, Count(plan, Verdict.Ready), Count(plan, Verdict.CheckFirst), Count(plan, Verdict.NotHere),
            drill.Tasks.Count, drill.Tasks.Count - drill.ToDo.Count, proof.Tasks.Count, proof.Held, proof.Failed,
            sheet.SignedBy(job) is not null ? SignedState.Signed : sheet.ChangedSince(job) ? SignedState.ChangedSince : SignedState.Not, new Reason("missing_nothing"));
        return standing with { Missing = standing.First() };
    }

    private static int Count(PlanAnswer plan, Verdict verdict) => plan.Items.Count(i => i.Verdict == verdict);

    private Reason First() =>
        Walls == 0 ? new("missing_wall")
        : Things == 0 ? new("missing_thing")
        : CheckFirst > 0 ? new("missing_check", Said.Count(CheckFirst))
        : Ready == 0 ? new("missing_other_place", Said.Count(NotHere))
        : Drilled < Holes ? new("missing_hole", Said.Count(Holes - Drilled))
        : Moved > 0 ? new("missing_moved", Said.Count(Moved))
        : Proven < ToProve ? new("missing_pull", Said.Count(ToProve - Proven))
        : Signed != SignedState.Signed ? new("missing_signature")
        : new("missing_nothing");
}
