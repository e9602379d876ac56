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
        return Written.As(json => Write(json, plan.RootElement));
    }

    private static void Write(Utf8JsonWriter json, JsonElement plan)
    {
        json.WriteStartObject();
        foreach (string field in Fields)
        {
            json.WritePropertyName(field);
            plan.GetProperty(field).WriteTo(json);
        }
        json.WriteEndObject();
    }
}
