using Pattress.Jobs;

namespace Pattress.Server;

/// <summary>
/// The questions that command line and API share: a document in, a document out. Both hand the text on as it came and
/// show what comes back, so that they cannot differ.
/// </summary>
public static class Questions
{
    /// <summary>The invented demo job, as it ships with the program.</summary>
    public static string DemoJob => Embedded.Text("samples/demo-house.job.json");

    /// <summary>JSON Schema of the job document.</summary>
    public static string Schema => JobSchema.Text;
}
