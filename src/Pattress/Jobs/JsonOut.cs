using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Pattress.Jobs;

/// <summary>The one way out for JSON: indented, line feeds, characters as they are.</summary>
internal static class JsonOut
{
    // Quotes, dashes and fractions of a sentence stay readable; the text is JSON, never put into HTML unescaped.
    private static readonly JsonWriterOptions Indented = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
    private static readonly JsonWriterOptions OneLine = Indented with { Indented = false };

    /// <summary>What <paramref name="write"/> wrote, as text.</summary>
    public static string Text(Action<Utf8JsonWriter> write, bool indented = true)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, indented ? Indented : OneLine)) write(json);
        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
    }

    public static void WritePoint(this Utf8JsonWriter json, string name, Point point)
    {
        json.WritePropertyName(name);
        json.WritePoint(point);
    }

    public static void WritePoint(this Utf8JsonWriter json, Point point)
    {
        json.WriteStartArray();
        json.WriteNumberValue(point.X);
        json.WriteNumberValue(point.Y);
        json.WriteEndArray();
    }

    public static void WriteArea(this Utf8JsonWriter json, Rect area)
    {
        json.WriteNumber("x_mm", area.X);
        json.WriteNumber("y_mm", area.Y);
        json.WriteNumber("width_mm", area.Width);
        json.WriteNumber("height_mm", area.Height);
    }

    /// <summary>A text field, left out when there is nothing to say.</summary>
    public static void WriteMaybe(this Utf8JsonWriter json, string name, string? text)
    {
        if (!string.IsNullOrEmpty(text)) json.WriteString(name, text);
    }

    public static void WriteMaybe(this Utf8JsonWriter json, string name, double? number)
    {
        if (number is { } value) json.WriteNumber(name, value);
    }

    /// <summary><c>yes</c>, or left out.</summary>
    public static void WriteIfYes(this Utf8JsonWriter json, string name, bool yes)
    {
        if (yes) json.WriteString(name, "yes");
    }

    /// <summary>A list of objects.</summary>
    public static void WriteObjects<T>(this Utf8JsonWriter json, string name, IReadOnlyList<T> items, Action<Utf8JsonWriter, T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            write(json, item);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    /// <summary>A list of objects, left out when it is empty.</summary>
    public static void WriteSome<T>(this Utf8JsonWriter json, string name, IReadOnlyList<T> items, Action<Utf8JsonWriter, T> write)
    {
        if (items.Count > 0) json.WriteObjects(name, items, write);
    }

    public static void WriteTexts(this Utf8JsonWriter json, string name, IReadOnlyList<string> texts)
    {
        json.WriteStartArray(name);
        foreach (string text in texts) json.WriteStringValue(text);
        json.WriteEndArray();
    }
}
