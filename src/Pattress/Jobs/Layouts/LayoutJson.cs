using System.Text.Json;
using Pattress.Jobs.Plans;
using Pattress.Jobs.Text;

namespace Pattress.Jobs.Layouts;

/// <summary>The layouts as a document.</summary>
public static class LayoutJson
{
    public static string Write(LayoutAnswer answer, Settings settings, bool indented = true) => JsonOut.Text(json =>
    {
        var says = new PlanWords(settings);
        json.WriteStartObject();
        json.WriteObjects("items", answer.Items, (j, item) =>
        {
            j.WriteString("id", item.Id);
            j.WriteMaybe("name", item.Name);
            j.WriteString("wall", item.Wall);
            j.WriteObjects("layouts", item.Layouts, (k, layout) => WriteLayout(k, layout, says));
        });
        json.WriteObjects("level", answer.Level, says.Write);
        json.WriteEndObject();
    }, indented);

    private static void WriteLayout(Utf8JsonWriter json, ItemLayout layout, PlanWords says)
    {
        json.WriteString("kind", layout.Kind);
        json.WriteString("verdict", Words.Of(layout.Verdict));
        says.Write(json, layout.Why);
        json.WriteObjects("brackets", layout.Brackets, (j, at) => j.WritePoint("at_mm", at));
        json.WriteNumber("meeting", layout.Meeting);
        json.WriteMaybe("all_meet", layout.AllMeet);
        json.WriteNumber("off_even_mm", layout.OffEvenMm);
        json.WriteNumber("off_symmetric_mm", layout.OffSymmetricMm);
    }
}
