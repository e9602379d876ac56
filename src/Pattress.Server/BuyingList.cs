using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Pattress.Jobs;

namespace Pattress.Server;

/// <summary>The buying list alone: the same fields as in the plan.</summary>
public static class BuyingList
{
    private static readonly string[] Fields = ["buy", "buy_total", "currency"];

    public static string Json(Planned planned)
    {
        using var plan = JsonDocument.Parse(PlanJson.Write(planned.Plan, planned.Settings));
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            foreach (string field in Fields)
            {
                json.WritePropertyName(field);
                plan.RootElement.GetProperty(field).WriteTo(json);
            }
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
