using System.Text.Json;
using Pattress.Jobs.Plans;
using Pattress.Jobs.Text;

namespace Pattress.Jobs;

/// <summary>The plan as a document. Numbers are written in full; <c>code</c> stands beside each <c>why</c>.</summary>
public static class PlanJson
{
    /// <summary>The document's text.</summary>
    /// <param name="settings">Of the job: units and English of the sentences.</param>
    /// <param name="indented">False for one line, as <c>--batch</c> wants it.</param>
    public static string Write(PlanAnswer plan, Settings settings, bool indented = true) =>
        JsonOut.Text(json => Write(json, plan, settings), indented);

    /// <summary>Writes the document as a value of another.</summary>
    public static void Write(Utf8JsonWriter json, PlanAnswer plan, Settings settings)
    {
        var says = new PlanWords(settings);
        json.WriteStartObject();
        json.WriteString("verdict", Words.Of(plan.Verdict));
        json.WriteString("title", plan.Title);
        json.WriteObjects("items", plan.Items, (j, item) => ItemJson.Write(j, item, says));
        json.WriteObjects("checks", plan.Checks, (j, check) => CheckJson.Write(j, check, says));
        json.WriteObjects("buy", plan.Buy, (j, line) => WriteBuy(j, line, says));
        json.WriteNumber("buy_total", plan.BuyTotal);
        json.WriteString("currency", plan.Currency);
        json.WriteObjects("order", plan.Order, (j, step) => WriteStep(j, step, says));
        json.WriteObjects("cautions", plan.Cautions, says.Write);
        json.WriteObjects("assumptions", plan.Assumptions, says.Write);
        json.WriteObjects("walls", plan.Walls, (j, wall) => WallJson.Write(j, wall, says));
        json.WriteString("program_version", plan.ProgramVersion);
        json.WriteString("data_hash", plan.DataHash);
        json.WriteEndObject();
    }

    internal static void WriteBuy(Utf8JsonWriter json, BuyLine line, PlanWords says)
    {
        json.WriteString("id", line.Id);
        json.WriteString("name", says.Name(line.Id));
        json.WriteString("sort", line.Sort);
        json.WriteNumber("needed", line.Needed);
        json.WriteNumber("from_van", line.FromVan);
        json.WriteNumber("packs", line.Packs);
        json.WriteNumber("pack_size", line.PackSize);
        json.WriteNumber("pack_price", line.PackPrice);
        json.WriteNumber("price", line.Price);
        json.WriteTexts("items", line.Items);
        if (line.Why is { } why) says.Write(json, why);
    }

    private static void WriteStep(Utf8JsonWriter json, WorkStep step, PlanWords says)
    {
        says.Write(json, step.What);
        json.WriteString("bit", step.Bit);
        json.WriteNumber("diameter_mm", step.DiameterMm);
        json.WriteNumber("stop_mm", step.StopMm);
        json.WriteNumber("holes", step.Holes);
        json.WriteTexts("items", step.Items);
    }
}
