using System.Text.Json;

namespace Pattress.Jobs.Doors;

/// <summary>An object with these fields and no others, save those whose name begins with <c>x_</c>, which are skipped.</summary>
public sealed class ObjectShape(params IReadOnlyList<Field> fields) : Shape
{
    private readonly Dictionary<string, Field> _byName = fields.ToDictionary(f => f.Name, StringComparer.Ordinal);

    public IReadOnlyList<Field> Fields => fields;

    public override string Allowed => "an object with " + string.Join(", ", fields.Select(f => f.Name)) + ", or names that begin with x_";

    internal override Entry? Read(JsonElement element, JsonPath path, ProblemList problems) => Read(element, path, problems, "unknown_field", null);

    /// <param name="otherCode">Code for a field that only <paramref name="others"/> know.</param>
    internal Entry? Read(JsonElement element, JsonPath path, ProblemList problems, string otherCode, IReadOnlySet<string>? others)
    {
        if (element.ValueKind != JsonValueKind.Object) return WrongType(element, path, problems);
        var found = new Dictionary<string, Entry>(StringComparer.Ordinal);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var property in element.EnumerateObject())
        {
            string name = JsonText.NameOf(property) ?? "?";
            if (!seen.Add(name)) problems.Add("duplicate_field", path.Field(name), property.Value, "each field once");
            else if (_byName.TryGetValue(name, out var field)) Keep(found, field, property.Value, path, problems);
            else if (!name.StartsWith("x_", StringComparison.Ordinal))
                problems.Add(others is not null && others.Contains(name) ? otherCode : "unknown_field", path.Field(name), property.Value, Allowed);
        }
        ReportMissing(seen, path, problems);
        return Entry.OfFields(path, found);
    }

    private static void Keep(Dictionary<string, Entry> found, Field field, JsonElement value, JsonPath path, ProblemList problems)
    {
        if (field.Shape.Read(value, path.Field(field.Name), problems) is { } entry) found[field.Name] = entry;
    }

    private void ReportMissing(HashSet<string> seen, JsonPath path, ProblemList problems)
    {
        foreach (var field in fields)
        {
            if (field.IsRequired && !seen.Contains(field.Name)) problems.Add("missing_field", path.Field(field.Name), "", field.Shape.Allowed);
        }
    }

    internal override void WriteKeywords(Utf8JsonWriter json)
    {
        json.WriteString("type", "object");
        json.WriteStartArray("required");
        foreach (var field in fields.Where(f => f.IsRequired)) json.WriteStringValue(field.Name);
        json.WriteEndArray();
        json.WriteStartObject("properties");
        foreach (var field in fields)
        {
            json.WritePropertyName(field.Name);
            field.Shape.WriteSchema(json, field.Note);
        }
        json.WriteEndObject();
        json.WriteStartObject("patternProperties");
        json.WriteBoolean("^x_", true);
        json.WriteEndObject();
        json.WriteBoolean("additionalProperties", false);
    }
}
