using System.Text.Json.Nodes;

namespace Pattress.Tests.Faults;

/// <summary>Small jobs cut from the samples: one wall with what hangs on it, at most two things at a time.</summary>
internal static class SmallJobs
{
    public static IReadOnlyList<JsonObject> All { get; } = [.. Embedded.Names("samples/").SelectMany(n => Cut(JsonNode.Parse(Embedded.Text(n))!.AsObject()))];

    private static IEnumerable<JsonObject> Cut(JsonObject job) =>
        job["walls"]!.AsArray().SelectMany(wall => On(job, (string)wall!["id"]!).Chunk(2).Select(things => Small(job, wall, things)));

    private static IEnumerable<JsonNode> On(JsonObject job, string wall) =>
        job["fixtures"]!.AsArray().Select(f => f!).Where(f => (string)f["wall"]! == wall);

    private static JsonObject Small(JsonObject job, JsonNode wall, JsonNode[] things)
    {
        var small = job.DeepClone().AsObject();
        small["walls"] = new JsonArray(wall.DeepClone());
        small["fixtures"] = new JsonArray([.. things.Select(t => t.DeepClone())]);
        return small;
    }
}
