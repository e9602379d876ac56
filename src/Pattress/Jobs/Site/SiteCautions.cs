namespace Pattress.Jobs.Site;

/// <summary>The cautions that fit a wall, and which of them nobody has ticked yet.</summary>
public static class SiteCautions
{
    /// <summary>Those of the job and of what hangs on the wall, each once, in that order.</summary>
    public static IReadOnlyList<Reason> Of(PlanAnswer plan, string wall) =>
        [.. plan.Cautions.Concat(plan.Items.Where(i => i.Wall == wall).SelectMany(i => i.Cautions)).DistinctBy(c => c.Code)];

    /// <summary>Those still to be ticked before a hole is drilled in the wall.</summary>
    public static IReadOnlyList<Reason> Unread(Job job, PlanAnswer plan, string wall)
    {
        var read = job.Done.Read.Where(r => r.Wall == wall).SelectMany(r => r.Codes).ToHashSet(StringComparer.Ordinal);
        return [.. Of(plan, wall).Where(c => !read.Contains(c.Code))];
    }
}
