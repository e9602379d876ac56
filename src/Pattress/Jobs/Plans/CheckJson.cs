using System.Text.Json;

namespace Pattress.Jobs.Plans;

/// <summary>A check to do first, as the plan's document has it.</summary>
internal static class CheckJson
{
    public static void Write(Utf8JsonWriter json, CheckToDo check, PlanWords says)
    {
        json.WriteString("kind", check.Kind);
        json.WriteString("wall", check.Wall);
        if (check.At is { } at) json.WritePoint("at_mm", at);
        says.Write(json, check.Why);
        json.WriteTexts("items", check.Items);
        json.WriteNumber("minutes", check.Minutes);
        json.WriteNumber("before", check.Before);
        json.WriteNumber("after", check.After);
    }
}
