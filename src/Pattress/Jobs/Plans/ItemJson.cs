using System.Text.Json;
using Pattress.Jobs.Text;

namespace Pattress.Jobs.Plans;

/// <summary>One thing to hang, as the plan's document has it.</summary>
internal static class ItemJson
{
    public static void Write(Utf8JsonWriter json, ItemAnswer item, PlanWords says)
    {
        json.WriteString("id", item.Id);
        json.WriteString("verdict", Words.Of(item.Verdict));
        says.Write(json, item.Why);
        json.WriteString("what", item.What);
        json.WriteString("name", item.Name);
        json.WriteString("wall", item.Wall);
        json.WriteNumber("mass_kg", item.MassKg);
        json.WriteString("class", Words.Of(item.Class));
        json.WriteNumber("probability_of_failure", item.ProbabilityOfFailure);
        json.WriteNumber("target_probability", item.TargetProbability);
        json.WriteObjects("remedies", item.Remedies, says.Write);
        json.WriteObjects("brackets", item.Brackets, (j, bracket) => BracketJson.Write(j, bracket, says));
        json.WriteObjects("cautions", item.Cautions, says.Write);
        json.WriteObjects("assumptions", item.Assumptions, says.Write);
    }
}
