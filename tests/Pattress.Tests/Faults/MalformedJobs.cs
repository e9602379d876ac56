using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Pattress.Tests.Faults;

/// <summary>
/// One malformed job of <c>malformed.json</c>: either a text of its own (<c>raw</c>), or the base job with fields set or
/// removed at one place. Code and path are what the rule says; the message is golden text that was read.
/// </summary>
public sealed partial record MalformedJob(string Id, string Text, string Code, string Path, string Message)
{
    private static string Folder => System.IO.Path.Combine(AppContext.BaseDirectory, "Faults");

    public static string Base { get; } = File.ReadAllText(System.IO.Path.Combine(Folder, "base.job.json"));

    public static IReadOnlyList<MalformedJob> All { get; } =
        [.. JsonNode.Parse(File.ReadAllText(System.IO.Path.Combine(Folder, "malformed.json")))!.AsArray().Select(n => Of(n!))];

    private static MalformedJob Of(JsonNode node) =>
        new((string)node["id"]!, (string?)node["raw"] ?? Edited(node), (string)node["code"]!, (string)node["path"]!, (string)node["message"]!);

    private static string Edited(JsonNode node)
    {
        var job = JsonNode.Parse(Base)!;
        var place = Find(job, (string)node["at"]!).AsObject();
        foreach (var (name, value) in node["set"]?.AsObject() ?? []) place[name] = value?.DeepClone();
        foreach (var name in node["remove"]?.AsArray() ?? []) place.Remove((string)name!);
        return job.ToJsonString();
    }

    internal static JsonNode Find(JsonNode root, string path)
    {
        foreach (Match step in Steps().Matches(path))
            root = step.Groups[1].Success ? root[step.Groups[1].Value]! : root[int.Parse(step.Groups[2].Value, CultureInfo.InvariantCulture)]!;
        return root;
    }

    [GeneratedRegex(@"\.(\w+)|\[(\d+)\]")]
    private static partial Regex Steps();

    public override string ToString() => Id;
}
