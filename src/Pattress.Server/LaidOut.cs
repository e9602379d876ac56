using Pattress.Jobs;
using Pattress.Jobs.Layouts;

namespace Pattress.Server;

/// <summary>Layouts of a job with the settings that they are shown in.</summary>
public sealed record LaidOut(LayoutAnswer Answer, Settings Settings)
{
    /// <summary>Reads a job and lays it out, or gives every problem of the document.</summary>
    public static Outcome<LaidOut> Of(string json, CancellationToken stop)
    {
        var job = JobReader.Read(json);
        return job.Value is { } read ? Outcome<LaidOut>.Of(new(JobLayout.Of(read, PlanData.Embedded, stop), read.Settings)) : Outcome<LaidOut>.Refused(job.Problems);
    }
}
