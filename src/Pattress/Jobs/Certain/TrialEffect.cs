namespace Pattress.Jobs.Certain;

/// <summary>Which answers of a plan the user's own tests and pulls changed.</summary>
public static class TrialEffect
{
    /// <summary>Plans the job again without them and sets the two beside each other; nothing to do where there are none.</summary>
    public static IReadOnlyList<ChangedItem> Of(Job job, PlanAnswer plan, PlanData data, CancellationToken cancel = default)
    {
        if (job.Trials.All(t => t.Withdrawn) && job.Proofs.All(p => p.Withdrawn)) return [];
        var without = Planner.Plan(job with { Trials = [], Proofs = [] }, data, cancel);
        return Between(without, plan);
    }

    /// <summary>The answers that differ between two plans of one job.</summary>
    public static IReadOnlyList<ChangedItem> Between(PlanAnswer before, PlanAnswer after) =>
        [.. before.Items.Zip(after.Items).Where(p => p.First.Verdict != p.Second.Verdict || Fixing(p.First) != Fixing(p.Second))
            .Select(p => new ChangedItem(p.Second.Id, p.Second.Name, p.First.Verdict, p.Second.Verdict, Fixing(p.First), Fixing(p.Second)))];

    private static string? Fixing(ItemAnswer item) => item.Brackets.Select(b => b.Fixing).FirstOrDefault(f => f is not null);
}
