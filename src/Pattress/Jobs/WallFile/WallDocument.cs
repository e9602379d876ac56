using System.Text.Json;
using Pattress.Jobs.Checks;
using Pattress.Jobs.Doors;

namespace Pattress.Jobs.WallFile;

/// <summary>The documents of <c>pattress wall</c>: a wall (or a whole job) in, what it is and what to check next out.</summary>
public static class WallDocument
{
    /// <summary>JSON Schema of the wall document, draft 2020-12.</summary>
    public static string Schema { get; } = SchemaText.Of(WallShapes.Document, "Pattress wall",
        "One wall with what was heard, felt and measured on it, and what else is known of the house. A job document is taken too: then every wall is answered.");

    /// <summary>What was asked: the house, the walls of it to answer, and how.</summary>
    /// <param name="One">True for a wall document, whose answer is one object; a job's is <c>walls</c>, a list.</param>
    public sealed record Asked(Job House, IReadOnlyList<string> Walls, bool Hidden, bool One);

    /// <summary>Reads a wall document or a job strictly; every problem is reported at once.</summary>
    public static Outcome<Asked> Read(string json)
    {
        var problems = new ProblemList();
        var bytes = Door.Bytes(json, DoorLimits.Usual, problems);
        using var document = problems.IsEmpty ? Door.Parse(bytes, DoorLimits.Usual, problems) : null;
        if (document is null) return Outcome<Asked>.Refused(problems.Problems);
        return IsJob(document.RootElement) ? OfJob(JobReader.Read(bytes)) : OfWall(document.RootElement, problems);
    }

    /// <summary>The answer as JSON, or the problems of the input.</summary>
    /// <param name="explain">Adds what each reading moved.</param>
    /// <param name="indented">False: one line, for batches.</param>
    public static Outcome<string> Answer(string json, bool explain = false, bool indented = true)
    {
        var read = Read(json);
        if (read.Value is not { } asked) return Outcome<string>.Refused(read.Problems);
        var reports = WallReport.Of(asked.House, asked.Walls, asked.Hidden, explain);
        return Outcome<string>.Of(WallReportJson.Write(reports, explain ? HoleLog.Of(asked.House, asked.Walls) : null, asked.House.Settings, asked.One, indented));
    }

    private static bool IsJob(JsonElement root) => root.ValueKind == JsonValueKind.Object && root.TryGetProperty("pattress_job", out _);

    private static Outcome<Asked> OfJob(Outcome<Job> read) => read.Value is { } job
        ? Outcome<Asked>.Of(new(job, [.. job.Walls.Select(w => w.Id)], false, false)) : Outcome<Asked>.Refused(read.Problems);

    private static Outcome<Asked> OfWall(JsonElement root, ProblemList problems)
    {
        var entry = WallShapes.Document.Read(root, JsonPath.Root, problems);
        if (entry is not null) JobChecks.OfWalls(Walls(entry), problems);
        if (entry is null || !problems.IsEmpty) return Outcome<Asked>.Refused(problems.Problems);
        var house = new Job { Settings = JobBuilder.SettingsOf(entry), Walls = [.. Walls(entry).Select(WallBuilder.Build)] };
        return Outcome<Asked>.Of(new(house, [house.Walls[0].Id], JobBuilder.IsYes(entry, "hidden"), true));
    }

    private static IEnumerable<Entry> Walls(Entry document)
    {
        if (document["wall"] is { } wall) yield return wall;
        foreach (var other in document.ItemsOf("other_walls")) yield return other;
    }
}
