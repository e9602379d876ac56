using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Pattress.Server;

/// <summary>JSON as every document is written: indented, line feeds, characters as they are.</summary>
internal static class Written
{
    private static readonly JsonWriterOptions Options = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string As(Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Options)) write(json);
        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
