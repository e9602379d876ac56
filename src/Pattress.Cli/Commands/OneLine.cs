using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Pattress.Cli.Commands;

/// <summary>A JSON document on one line, its numbers and texts as they were.</summary>
internal static class OneLine
{
    public static string Of(string json)
    {
        if (!json.Contains('\n')) return json;
        using var document = JsonDocument.Parse(json);
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream, new JsonWriterOptions { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
            document.WriteTo(writer);
        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
