using System.Text.Json;
using Pattress.Jobs.Checks;
using Pattress.Jobs.Doors;
using Pattress.Jobs.Versions;

namespace Pattress.Jobs;

/// <summary>The way in for job documents: strict, every problem at once, older versions brought forward.</summary>
public static class JobReader
{
    /// <summary>Reads a job from a text.</summary>
    public static Outcome<Job> Read(string json)
    {
        var problems = new ProblemList();
        var bytes = Door.Bytes(json, DoorLimits.Usual, problems);
        return problems.IsEmpty ? Read(bytes) : Outcome<Job>.Refused(problems.Problems);
    }

    /// <summary>Reads a job from UTF-8.</summary>
    public static Outcome<Job> Read(ReadOnlyMemory<byte> json) => Read(json, JobMigrations.All);

    internal static Outcome<Job> Read(ReadOnlyMemory<byte> json, IReadOnlyList<JobMigration> migrations)
    {
        var problems = new ProblemList();
        using var document = Door.Parse(json, DoorLimits.Usual, problems);
        var job = document is null ? null : Read(document.RootElement, migrations, problems);
        return job is not null && problems.IsEmpty ? Outcome<Job>.Of(job) : Outcome<Job>.Refused(problems.Problems);
    }

    private static Job? Read(JsonElement root, IReadOnlyList<JobMigration> migrations, ProblemList problems)
    {
        if (!JobMigrations.NeedsOne(root)) return ReadCurrent(root, problems);
        using var migrated = JobMigrations.BringForward(root, migrations, problems);
        return migrated is null ? null : ReadCurrent(migrated.RootElement, problems);
    }

    private static Job? ReadCurrent(JsonElement root, ProblemList problems)
    {
        var entry = JobShapes.Document.Read(root, JsonPath.Root, problems);
        if (entry is null) return null;
        JobChecks.Run(entry, problems);
        return problems.IsEmpty ? JobBuilder.Build(entry) : null;
    }
}
