using System.Globalization;
using System.Text.Json;
using Pattress.Quantities;

namespace Pattress.Jobs.Doors;

/// <summary>The one place where numbers are held against their bounds.</summary>
internal static class Bounds
{
    /// <summary>Beyond this no number of the trade lies; told apart from a number that is merely too big.</summary>
    private const double Absurd = 1e15;

    public static Entry? Check(double value, double min, double max, JsonElement found, JsonPath path, ProblemList problems, string allowed)
    {
        string? code = Fault(value, min, max);
        if (code is null) return Entry.OfNumber(path, value);
        problems.Add(code, path, found, allowed);
        return null;
    }

    private static string? Fault(double value, double min, double max) =>
        !(Math.Abs(value) < Absurd) ? "absurd_number"
        : value < 0 && min >= 0 ? "negative"
        : value < min ? "too_small"
        : value > max ? "too_big"
        : null;

    public static string Text(double number) => number.ToString("0.######", CultureInfo.InvariantCulture);

    public static void Write(Utf8JsonWriter json, string type, double min, double max)
    {
        json.WriteString("type", type);
        json.WriteNumber("minimum", min);
        json.WriteNumber("maximum", max);
    }
}

/// <summary>A length, mass, force and so on: a number in the unit that the field names, or text with a unit.</summary>
public sealed class QuantityShape(Dimension dimension, double min, double max) : Shape
{
    private const int LongestText = 40;

    public override string Allowed =>
        $"{QuantityText.Allowed(dimension)}; from {Bounds.Text(min)} to {Bounds.Text(max)} {OwnUnit}";

    private string OwnUnit
    {
        get
        {
            foreach (var unit in Units.Of(dimension)) if (unit.Factor == 1) return unit.Text;
            return "";
        }
    }

    internal override Entry? Read(JsonElement element, JsonPath path, ProblemList problems) => element.ValueKind switch
    {
        JsonValueKind.Number => Bounds.Check(element.GetDouble(), min, max, element, path, problems, Allowed),
        JsonValueKind.String => ReadText(element, path, problems),
        _ => WrongType(element, path, problems),
    };

    private Entry? ReadText(JsonElement element, JsonPath path, ProblemList problems)
    {
        string text = JsonText.Of(element) ?? "", code = "text_too_long";
        if (text.Length <= LongestText && QuantityText.TryParse(text, dimension, out double value, out code))
            return Bounds.Check(value, min, max, element, path, problems, Allowed);
        problems.Add(code, path, element, Allowed);
        return null;
    }

    internal override void WriteKeywords(Utf8JsonWriter json)
    {
        json.WriteStartArray("anyOf");
        json.WriteStartObject();
        Bounds.Write(json, "number", min, max);
        json.WriteEndObject();
        json.WriteStartObject();
        json.WriteString("type", "string");
        json.WriteNumber("maxLength", LongestText);
        json.WriteString("pattern", @"^\s*-?[0-9.][0-9./ -]*\s*[^0-9\s].*$");
        json.WriteEndObject();
        json.WriteEndArray();
    }
}

/// <summary>A number without a unit, e.g. a factor.</summary>
public sealed class NumberShape(double min, double max) : Shape
{
    public override string Allowed => $"a number from {Bounds.Text(min)} to {Bounds.Text(max)}";

    internal override Entry? Read(JsonElement element, JsonPath path, ProblemList problems) =>
        element.ValueKind == JsonValueKind.Number
            ? Bounds.Check(element.GetDouble(), min, max, element, path, problems, Allowed)
            : WrongType(element, path, problems);

    internal override void WriteKeywords(Utf8JsonWriter json) => Bounds.Write(json, "number", min, max);
}

/// <summary>A whole number.</summary>
public sealed class IntegerShape(int min, int max) : Shape
{
    public override string Allowed => min == max ? Bounds.Text(min) : $"a whole number from {min} to {max}";

    internal override Entry? Read(JsonElement element, JsonPath path, ProblemList problems)
    {
        if (element.ValueKind != JsonValueKind.Number) return WrongType(element, path, problems);
        double value = element.GetDouble();
        var entry = Bounds.Check(value, min, max, element, path, problems, Allowed);
        if (entry is null || value == Math.Floor(value)) return entry;
        problems.Add("not_whole", path, element, Allowed);
        return null;
    }

    internal override void WriteKeywords(Utf8JsonWriter json) => Bounds.Write(json, "integer", min, max);
}
