using Pattress.Jobs;

namespace Pattress.Server;

/// <summary>A plan with the settings that its words and numbers are shown in.</summary>
public sealed record Planned(PlanAnswer Plan, Settings Settings)
{
    /// <summary>Reads a job and plans it, or gives every problem of the document.</summary>
    public static Outcome<Planned> Of(string json, CancellationToken stop)
    {
        var job = JobReader.Read(json);
        return job.Value is { } read
            ? Outcome<Planned>.Of(new(Planner.Plan(read, PlanData.Embedded, stop), read.Settings))
            : Outcome<Planned>.Refused(job.Problems);
    }
}
