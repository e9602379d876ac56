using System.Text.Json;
using Pattress.Jobs.Plans;
using Pattress.Jobs.Text;
using Pattress.Planning.Bearers;

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
        json.WriteObjects("level", [.. answer.Lines.Select(l => l.Why)], says.Write);
        json.WriteObjects("lines", answer.Lines, WriteLine);
        json.WriteEndObject();
    }, indented);

    private static void WriteLine(Utf8JsonWriter json, LevelLine line)
    {
        json.WriteString("wall", line.Wall);
        json.WriteNumber("y_mm", line.YMm);
        json.WriteObjects("things", line.Things, (j, t) =>
        {
            j.WriteString("id", t.Id);
            j.WriteNumber("moves_mm", t.MovesMm);
            j.WriteString("verdict_before", Words.Of(t.Before));
            j.WriteString("verdict_after", Words.Of(t.After));
        });
    }

    private static void WriteBearer(Utf8JsonWriter json, BearerPlan bearer)
    {
        json.WriteStartObject("bearer");
        json.WriteNumber("from_mm", bearer.FromMm);
        json.WriteNumber("to_mm", bearer.ToMm);
        json.WriteNumber("y_mm", bearer.YMm);
        json.WriteNumber("thickness_mm", bearer.Rule.ThicknessMm);
        json.WriteNumber("width_mm", bearer.Rule.WidthMm);
        json.WriteObjects("held", bearer.Held, (j, h) =>
        {
            j.WriteNumber("at_mm", h.At);
            j.WriteMaybe("fixing", h.Fixing);
            j.WriteNumber("count", h.Count);
            if (double.IsFinite(h.Utilisation)) j.WriteNumber("utilisation", h.Utilisation);
            j.WriteNumber("sure", h.Sure);
        });
        json.WriteMaybe("screw", bearer.Screw);
        if (double.IsFinite(bearer.ScrewUtilisation)) json.WriteNumber("screw_utilisation", bearer.ScrewUtilisation);
        json.WriteNumber("bending_utilisation", bearer.Bent);
        json.WriteNumber("minutes", bearer.Minutes);
        json.WriteNumber("wait_hours", bearer.Rule.WaitHours);
        json.WriteNumber("price", bearer.Price);
        json.WriteEndObject();
    }

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
        if (layout.Bearer is { } bearer) WriteBearer(json, bearer);
        if (layout.Enter is not { } enter) return;
        json.WriteStartObject("enter");
        says.Write(json, enter);
        json.WriteEndObject();
    }
}
