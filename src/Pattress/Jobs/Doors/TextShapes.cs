using System.Globalization;
using System.Text.Json;

namespace Pattress.Jobs.Doors;

/// <summary>The user's own text, without control characters.</summary>
public sealed class TextShape(int longest) : Shape
{
    public override string Allowed => $"text of at most {longest} characters on one line";

    internal override Entry? Read(JsonElement element, JsonPath path, ProblemList problems)
    {
        if (element.ValueKind != JsonValueKind.String) return WrongType(element, path, problems);
        string? text = JsonText.Of(element);
        string? code = text is null || text.Any(char.IsControl) ? "broken_text" : text.Length > longest ? "text_too_long" : null;
        if (code is null) return Entry.OfText(path, text!);
        problems.Add(code, path, element, Allowed);
        return null;
    }

    internal override void WriteKeywords(Utf8JsonWriter json)
    {
        json.WriteString("type", "string");
        json.WriteNumber("maxLength", longest);
        json.WriteString("pattern", @"^[^\u0000-\u001f\u007f-\u009f]*$");
    }
}

/// <summary>A short id of letters, digits, hyphen, underscore and full stop; a UUID is one.</summary>
public sealed class IdShape : Shape
{
    private const int Longest = 64;

    public override string Allowed => $"an id of 1 to {Longest} letters, digits, '-', '_' or '.'";

    internal override Entry? Read(JsonElement element, JsonPath path, ProblemList problems)
    {
        if (element.ValueKind != JsonValueKind.String) return WrongType(element, path, problems);
        string text = JsonText.Of(element) ?? "";
        if (text.Length is > 0 and <= Longest && text.All(IsAllowed)) return Entry.OfText(path, text);
        problems.Add("not_an_id", path, element, Allowed);
        return null;
    }

    private static bool IsAllowed(char c) => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' or '.';

    internal override void WriteKeywords(Utf8JsonWriter json)
    {
        json.WriteString("type", "string");
        json.WriteString("pattern", $"^[A-Za-z0-9_.-]{{1,{Longest}}}$");
    }
}

/// <summary>One word of a list.</summary>
public sealed class WordShape(params IReadOnlyList<string> words) : Shape
{
    public IReadOnlyList<string> Words => words;

    public override string Allowed => words.Count == 1 ? words[0] : "one of " + string.Join(", ", words);

    internal override Entry? Read(JsonElement element, JsonPath path, ProblemList problems)
    {
        if (element.ValueKind != JsonValueKind.String) return WrongType(element, path, problems);
        string text = JsonText.Of(element) ?? "";
        if (words.Contains(text)) return Entry.OfText(path, text);
        problems.Add("unknown_word", path, element, Allowed);
        return null;
    }

    internal override void WriteKeywords(Utf8JsonWriter json)
    {
        json.WriteStartArray("enum");
        foreach (string word in words) json.WriteStringValue(word);
        json.WriteEndArray();
    }
}

/// <summary>A date, or a date and time in UTC, as ISO 8601 writes them.</summary>
public sealed class TimeShape : Shape
{
    private static readonly string[] Forms = ["yyyy-MM-dd", "yyyy-MM-dd'T'HH:mm'Z'", "yyyy-MM-dd'T'HH:mm:ss'Z'", "yyyy-MM-dd'T'HH:mm:ss.fff'Z'"];

    public override string Allowed => "a date such as 2025-03-14, or 2025-03-14T09:30:00Z";

    internal override Entry? Read(JsonElement element, JsonPath path, ProblemList problems)
    {
        if (element.ValueKind != JsonValueKind.String) return WrongType(element, path, problems);
        string text = JsonText.Of(element) ?? "";
        if (DateTime.TryParseExact(text, Forms, CultureInfo.InvariantCulture, DateTimeStyles.None, out _)) return Entry.OfText(path, text);
        problems.Add("not_a_time", path, element, Allowed);
        return null;
    }

    internal override void WriteKeywords(Utf8JsonWriter json)
    {
        json.WriteString("type", "string");
        json.WriteString("pattern", @"^\d{4}-\d{2}-\d{2}(T\d{2}:\d{2}(:\d{2}(\.\d{3})?)?Z)?$");
    }
}
