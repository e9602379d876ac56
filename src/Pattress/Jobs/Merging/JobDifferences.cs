using System.Text.Json;

namespace Pattress.Jobs.Merging;

/// <summary>One place in which two versions of a job differ.</summary>
/// <param name="Part"><c>job</c>, <c>settings</c>, <c>walls</c>, <c>fixtures</c> or <c>stock</c>.</param>
/// <param name="Id">Id of the wall or thing, or empty.</param>
/// <param name="Field">Name of the field as the document has it, with dots into parts; empty when the whole part is there only once.</param>
/// <param name="Ours">As it is here; empty when it is not there.</param>
/// <param name="Theirs">As it is in the other.</param>
public sealed record JobDifference(string Part, string Id, string Field, string Ours, string Theirs);

/// <summary>Where two versions of a job differ in what is not only ever added.</summary>
public static class JobDifferences
{
    /// <summary>Every difference in the document's order; none when their records can simply be put together.</summary>
    public static IReadOnlyList<JobDifference> Between(Job ours, Job theirs)
    {
        using JsonDocument a = Parse(ours), b = Parse(theirs);
        var found = new List<JobDifference>();
        Objects(a.RootElement, b.RootElement, new Place("job", "", ""), found);
        return found;
    }

    private static JsonDocument Parse(Job job) => JsonDocument.Parse(JobWriter.Write(job.WithoutRecords()));

    private readonly record struct Place(string Part, string Id, string Field)
    {
        public Place In(string name) => this switch
        {
            { Part: "job", Field: "" } when name is "settings" or "walls" or "fixtures" or "stock" => new(name, "", ""),
            { Field: "" } => this with { Field = name },
            _ => this with { Field = Field + "." + name },
        };

        public JobDifference Differs(string ours, string theirs) => new(Part, Id, Field, ours, theirs);
    }

    private static void Objects(JsonElement a, JsonElement b, Place place, List<JobDifference> found)
    {
        foreach (string name in a.EnumerateObject().Select(p => p.Name).Union(b.EnumerateObject().Select(p => p.Name)))
            Values(Of(a, name), Of(b, name), place.In(name), found);
    }

    private static void Values(JsonElement? a, JsonElement? b, Place place, List<JobDifference> found)
    {
        if (a is { ValueKind: JsonValueKind.Object } x && b is { ValueKind: JsonValueKind.Object } y) Objects(x, y, place, found);
        else if (HasIds(a) || HasIds(b)) ById(a, b, place, found);
        else if (Text(a) != Text(b)) found.Add(place.Differs(Text(a), Text(b)));
    }

    private static void ById(JsonElement? a, JsonElement? b, Place place, List<JobDifference> found)
    {
        foreach (string id in Ids(a).Union(Ids(b)))
        {
            var here = place.Id.Length == 0 ? place with { Id = id } : place.In(id);
            if (Find(a, id) is { } x && Find(b, id) is { } y) Objects(x, y, here, found);
            else found.Add(here.Differs(Find(a, id) is null ? "" : id, Find(b, id) is null ? "" : id));
        }
    }

    private static JsonElement? Of(JsonElement element, string name) => element.TryGetProperty(name, out var value) ? value : null;

    private static bool HasIds(JsonElement? list) =>
        list is { ValueKind: JsonValueKind.Array } l && l.GetArrayLength() > 0 && l[0].ValueKind == JsonValueKind.Object && l[0].TryGetProperty("id", out _);

    private static IEnumerable<string> Ids(JsonElement? list) => list is { } l ? l.EnumerateArray().Select(e => e.GetProperty("id").GetString()!) : [];

    private static JsonElement? Find(JsonElement? list, string id)
    {
        if (list is not { } l) return null;
        foreach (var item in l.EnumerateArray()) if (item.GetProperty("id").GetString() == id) return item;
        return null;
    }

    private static string Text(JsonElement? value) => value is { } v ? v.ToString() : "";
}
