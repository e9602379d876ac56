using System.Text.Json;

namespace Pattress.Jobs.Doors;

/// <summary>A list with bounds on its length; a list that is too long is refused unread.</summary>
public sealed class ListShape(Shape item, int fewest, int most) : Shape
{
    public override string Allowed => $"a list of {fewest} to {most}";

    internal override Entry? Read(JsonElement element, JsonPath path, ProblemList problems)
    {
        if (element.ValueKind != JsonValueKind.Array) return WrongType(element, path, problems);
        int length = element.GetArrayLength();
        if (length >= fewest && length <= most) return ReadItems(element, path, problems);
        problems.Add(length > most ? "list_too_long" : "list_too_short", path, element, Allowed);
        return null;
    }

    private Entry ReadItems(JsonElement element, JsonPath path, ProblemList problems)
    {
        var items = new List<Entry>(element.GetArrayLength());
        int i = 0;
        foreach (var child in element.EnumerateArray())
        {
            if (item.Read(child, path.Item(i++), problems) is { } entry) items.Add(entry);
        }
        return Entry.OfList(path, items);
    }

    internal override void WriteKeywords(Utf8JsonWriter json)
    {
        json.WriteString("type", "array");
        if (fewest > 0) json.WriteNumber("minItems", fewest);
        json.WriteNumber("maxItems", most);
        json.WritePropertyName("items");
        item.WriteSchema(json);
    }
}

/// <summary>A point <c>[x, y]</c>, each a number or text with a unit.</summary>
public sealed class PointShape(Shape coordinate) : Shape
{
    public override string Allowed => $"a point [x, y], each {coordinate.Allowed}";

    internal override Entry? Read(JsonElement element, JsonPath path, ProblemList problems)
    {
        if (element.ValueKind != JsonValueKind.Array) return WrongType(element, path, problems);
        if (element.GetArrayLength() == 2) return ReadBoth(element, path, problems);
        problems.Add("not_a_point", path, element, Allowed);
        return null;
    }

    private Entry? ReadBoth(JsonElement element, JsonPath path, ProblemList problems)
    {
        var x = coordinate.Read(element[0], path.Item(0), problems);
        var y = coordinate.Read(element[1], path.Item(1), problems);
        return x is null || y is null ? null : Entry.OfPoint(path, new Point(x.Number, y.Number));
    }

    internal override void WriteKeywords(Utf8JsonWriter json)
    {
        json.WriteString("type", "array");
        json.WriteNumber("minItems", 2);
        json.WriteNumber("maxItems", 2);
        json.WritePropertyName("items");
        coordinate.WriteSchema(json);
    }
}
