using System.Text.Json;

namespace Pattress.Actions;

/// <summary>Writes a reason as code and values; the sentence is the text layer's.</summary>
internal static class ReasonJson
{
    internal static void Write(Utf8JsonWriter json, Reason reason)
    {
        json.WriteString("code", reason.Code);
        if (reason.Values.Count == 0) return;
        json.WriteStartArray("values");
        foreach (var v in reason.Values) json.WriteNumberValue(v.Number);
        json.WriteEndArray();
    }
}
