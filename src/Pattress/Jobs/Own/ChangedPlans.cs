using Pattress.Jobs.Certain;

namespace Pattress.Jobs.Own;

/// <summary>A job whose plan the catalogue of own trials changed.</summary>
public sealed record ChangedPlan(string Job, string Title, IReadOnlyList<ChangedItem> Items);

/// <summary>Which plans changed because of what other jobs taught.</summary>
public static class ChangedPlans
{
    /// <summary>The answers of one job with the results of all other jobs, against those without; none where they are the same.</summary>
    public static ChangedPlan? Of(string id, Job job, TrialCatalogue before, TrialCatalogue after, PlanData data, CancellationToken cancel = default)
    {
        Job with = after.In(id, job), without = before.In(id, job);
        if (with.Trials.SequenceEqual(without.Trials)) return null;
        var changed = TrialEffect.Between(Planner.Plan(without, data, cancel), Planner.Plan(with, data, cancel));
        return changed.Count == 0 ? null : new(id, job.Title, changed);
    }
}
