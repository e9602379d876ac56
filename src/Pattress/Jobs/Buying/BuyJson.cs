using System.Text.Json;
using Pattress.Jobs.Plans;

namespace Pattress.Jobs.Buying;

/// <summary>The shopping as a document.</summary>
public static class BuyJson
{
    public static string Write(BuyAnswer answer, Settings settings, bool indented = true) => JsonOut.Text(json => Write(json, answer, settings), indented);

    private static void Write(Utf8JsonWriter json, BuyAnswer answer, Settings settings)
    {
        var says = new PlanWords(settings);
        json.WriteStartObject();
        json.WriteObjects("buy", answer.Plan.Buy, (j, line) => PlanJson.WriteBuy(j, line, says));
        json.WriteNumber("buy_total", answer.Plan.BuyTotal);
        json.WriteString("currency", answer.Plan.Currency);
        json.WriteString("status", answer.Status);
        json.WriteString("solver", answer.Solver);
        json.WriteNumber("expected", answer.Expected);
        json.WriteNumber("bound", answer.Bound);
        json.WriteNumber("second_trip", answer.SecondTrip);
        json.WriteObjects("classes", answer.Classes, (j, c) => WriteClass(j, c, says));
        if (answer.Mix is { } mix) WriteMix(json, mix, says);
        json.WriteStartArray("give_up");
        foreach (var set in answer.GiveUp) WriteSet(json, set, says);
        json.WriteEndArray();
        json.WriteObjects("notes", answer.Notes, says.Write);
        json.WriteObjects("assumptions", answer.Assumptions, says.Write);
        json.WriteEndObject();
    }

    private static void WriteClass(Utf8JsonWriter json, BuyClassAnswer c, PlanWords says)
    {
        json.WriteTexts("items", c.Items);
        json.WriteNumber("brackets", c.Brackets);
        json.WriteString("fixing", c.Fixing);
        json.WriteString("name", says.Name(c.Fixing));
        json.WriteNumber("each", c.Each);
        json.WriteNumber("uncovered", c.Uncovered);
        json.WriteObjects("stand_ins", c.StandIns, (j, s) =>
        {
            j.WriteString("fixing", s.Fixing);
            j.WriteString("name", says.Name(s.Fixing));
            j.WriteNumber("probability", s.Probability);
        });
    }

    private static void WriteMix(Utf8JsonWriter json, MixAnswer mix, PlanWords says)
    {
        json.WriteStartObject("mix");
        json.WriteNumber("expected", mix.Expected);
        json.WriteNumber("saving", mix.Saving);
        json.WriteObjects("buy", mix.Lines, (j, line) => PlanJson.WriteBuy(j, line, says));
        json.WriteEndObject();
    }

    private static void WriteSet(Utf8JsonWriter json, IReadOnlyList<Reason> set, PlanWords says)
    {
        json.WriteStartArray();
        foreach (var reason in set)
        {
            json.WriteStartObject();
            says.Write(json, reason);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
