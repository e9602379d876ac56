using System.Text.Json;
using Pattress.Jobs.Certain;

namespace Pattress.Jobs.Own;

/// <summary>A catalogue of own trials, and the plans that changed because of it, as a document.</summary>
public static class ChangedPlansJson
{
    public static string Write(TrialCatalogue catalogue, IReadOnlyList<ChangedPlan> changed) => JsonOut.Text(json =>
    {
        json.WriteStartObject();
        json.WriteObjects("tests", catalogue.Tests, (j, t) =>
        {
            j.WriteString("job", t.Job);
            j.WriteMaybe("title", t.Title);
            j.WriteBoolean("out", t.Out);
            TrialBuilder.Write(j, t.Test);
        });
        json.WriteObjects("changed", changed, WritePlan);
        json.WriteEndObject();
    });

    private static void WritePlan(Utf8JsonWriter json, ChangedPlan plan)
    {
        json.WriteString("job", plan.Job);
        json.WriteString("title", plan.Title);
        json.WriteObjects("items", plan.Items, ChangedJson.Write);
    }
}
