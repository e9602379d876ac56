using System.Text.Json;

namespace Pattress.Jobs.Doors;

/// <summary>One kind of a <see cref="VariantShape"/> and the fields that only it has.</summary>
public sealed record Variant(string Word, params IReadOnlyList<Field> Fields);

/// <summary>An object whose further fields depend on one word, e.g. a reading on its <c>kind</c>.</summary>
public sealed class VariantShape : Shape
{
    private readonly string _by;
    private readonly WordShape _words;
    private readonly IReadOnlyList<(string Word, ObjectShape Shape)> _cases;
    private readonly HashSet<string> _allNames;

    /// <param name="by">The field that decides, e.g. <c>kind</c>.</param>
    /// <param name="common">Fields of every kind.</param>
    public VariantShape(string by, IReadOnlyList<Field> common, IReadOnlyList<Variant> variants)
    {
        _by = by;
        _words = new WordShape([.. variants.Select(v => v.Word)]);
        _cases = [.. variants.Select(v => (v.Word, new ObjectShape([Field.Required(by, new WordShape(v.Word)), .. common, .. v.Fields])))];
        _allNames = [.. _cases.SelectMany(c => c.Shape.Fields).Select(f => f.Name)];
    }

    public override string Allowed => $"an object whose {_by} is {_words.Allowed}";

    internal override Entry? Read(JsonElement element, JsonPath path, ProblemList problems)
    {
        if (element.ValueKind != JsonValueKind.Object) return WrongType(element, path, problems);
        if (!element.TryGetProperty(_by, out var word)) problems.Add("missing_field", path.Field(_by), "", _words.Allowed);
        else if (_words.Read(word, path.Field(_by), problems) is { } kind)
            return CaseOf(kind.Text).Read(element, path, problems, "field_of_another_kind", _allNames);
        return null;
    }

    private ObjectShape CaseOf(string word) => _cases.First(c => c.Word == word).Shape;

    internal override void WriteKeywords(Utf8JsonWriter json)
    {
        json.WriteStartArray("oneOf");
        foreach (var (_, shape) in _cases) shape.WriteSchema(json);
        json.WriteEndArray();
    }
}
