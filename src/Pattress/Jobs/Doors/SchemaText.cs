using System.Text;
using System.Text.Json;

namespace Pattress.Jobs.Doors;

/// <summary>Writes a shape as a JSON Schema, draft 2020-12.</summary>
public static class SchemaText
{
    /// <summary>The schema's text, indented.</summary>
    /// <param name="title">What the document is.</param>
    /// <param name="note">Its description.</param>
    public static string Of(Shape shape, string title, string note)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
            json.WriteString("title", title);
            json.WriteString("description", note);
            shape.WriteKeywords(json);
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }
}
