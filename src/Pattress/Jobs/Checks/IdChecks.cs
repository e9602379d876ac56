using Pattress.Jobs.Doors;

namespace Pattress.Jobs.Checks;

/// <summary>Every id is there once in a job, whatever carries it.</summary>
internal static class IdChecks
{
    private static readonly string[] PartsOfWalls = ["readings", "openings", "services", "zones", "old_holes", "strip_checks"];
    private static readonly string[] PartsOfDone = ["holes", "cautions_read", "signed"];

    public static void Run(Entry job, ProblemList problems) => Run(job.ItemsOf("walls"), [.. job.ItemsOf("fixtures"), .. job.ItemsOf("trials"), .. job.ItemsOf("proofs"), .. job.ItemsOf("actuals"), .. Done(job)], problems);

    public static void Run(IReadOnlyList<Entry> walls, IReadOnlyList<Entry> others, ProblemList problems)
    {
        var first = new Dictionary<string, JsonPath>(StringComparer.Ordinal);
        foreach (var id in Carriers(walls, others).Select(c => c["id"]).OfType<Entry>())
        {
            if (!first.TryAdd(id.Text, id.Path)) problems.Add("duplicate_id", id.Path, id.Text, $"an id that is not yet at {first[id.Text]}");
        }
    }

    private static IEnumerable<Entry> Done(Entry job) => job["done"] is { } done ? PartsOfDone.SelectMany(done.ItemsOf) : [];

    private static IEnumerable<Entry> Carriers(IReadOnlyList<Entry> walls, IReadOnlyList<Entry> others) =>
        walls.SelectMany(w => PartsOfWalls.SelectMany(w.ItemsOf).Prepend(w)).Concat(others);
}
