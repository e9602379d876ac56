using System.Text.Json;
using System.Text.Json.Nodes;
using Pattress.Jobs.Doors;

namespace Pattress.Jobs.Versions;

/// <summary>One step forward: changes a document of version <paramref name="From"/> into one of the next.</summary>
/// <param name="Forward">Changes the document in place; the version field is raised afterwards.</param>
internal sealed record JobMigration(int From, Action<JsonObject> Forward);

/// <summary>Brings older documents forward, one version at a time; newer ones are left alone.</summary>
internal static class JobMigrations
{
    private const string Field = "pattress_job";

    /// <summary>Every step there is. Version 1 is the first, so there is none yet; add one with each new version, and keep a sample of the old one.</summary>
    public static IReadOnlyList<JobMigration> All { get; } = [];

    /// <summary>True when the document states a version other than the current one.</summary>
    public static bool NeedsOne(JsonElement root) => VersionOf(root) is { } version && version != Job.Version;

    /// <summary>The document in the current version, or null and one problem.</summary>
    public static JsonDocument? BringForward(JsonElement root, IReadOnlyList<JobMigration> migrations, ProblemList problems)
    {
        int version = VersionOf(root)!.Value;
        if (version > Job.Version) return Refuse("newer_version", version, problems);
        if (HasDuplicates(root)) return Refuse("duplicate_field", version, problems);
        var document = JsonObject.Create(root.Clone())!;
        for (; version < Job.Version; version++)
        {
            var step = migrations.FirstOrDefault(m => m.From == version);
            if (step is null) return Refuse("unknown_version", version, problems);
            step.Forward(document);
            document[Field] = version + 1;
        }
        return JsonDocument.Parse(document.ToJsonString());
    }

    private static int? VersionOf(JsonElement root) =>
        root.ValueKind == JsonValueKind.Object && root.TryGetProperty(Field, out var field)
        && field.ValueKind == JsonValueKind.Number && field.TryGetInt32(out int version) ? version : null;

    private static JsonDocument? Refuse(string code, int version, ProblemList problems)
    {
        problems.Add(code, JsonPath.Root.Field(Field), version.ToString(System.Globalization.CultureInfo.InvariantCulture), $"version {Job.Version} or an older one");
        return null;
    }

    // A document tree cannot hold a field twice; the strict reader would name the place, here the version is enough.
    private static bool HasDuplicates(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().GroupBy(p => JsonText.NameOf(p)).Any(g => g.Key is null || g.Count() > 1)
            || element.EnumerateObject().Any(p => HasDuplicates(p.Value)),
        JsonValueKind.Array => element.EnumerateArray().Any(HasDuplicates),
        _ => false,
    };
}
