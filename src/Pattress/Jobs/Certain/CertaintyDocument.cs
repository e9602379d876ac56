using System.Text.Json;
using Pattress.Jobs.Plans;
using Pattress.Jobs.Text;

namespace Pattress.Jobs.Certain;

/// <summary>The document of <c>pattress certainty</c>: a job in, how sure each item is out.</summary>
public static class CertaintyDocument
{
    /// <summary>The answer as JSON, or the problems of the job.</summary>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public static Outcome<string> Answer(string json, CancellationToken cancel = default)
    {
        var read = JobReader.Read(json);
        return read.Value is { } job ? Outcome<string>.Of(Write(job, Planner.Plan(job, PlanData.Embedded, cancel), cancel)) : Outcome<string>.Refused(read.Problems);
    }

    private static string Write(Job job, PlanAnswer plan, CancellationToken cancel) => JsonOut.Text(json =>
    {
        var says = new PlanWords(job.Settings);
        json.WriteStartObject();
        json.WriteString("title", job.Title);
        json.WriteString("units", job.Settings.Units);
        json.WriteString("english", job.Settings.English);
        json.WriteNumber("life_years", job.Settings.LifeYears);
        json.WriteObjects("items", CertaintyOf.All(plan, job), (j, i) => WriteItem(j, i, says));
        json.WriteObjects("changed_by_trials", TrialEffect.Of(job, plan, PlanData.Embedded, cancel), ChangedJson.Write);
        json.WriteObjects("cautions", plan.Cautions, says.Write);
        json.WriteEndObject();
    });

    private static void WriteItem(Utf8JsonWriter json, ItemCertainty item, PlanWords says)
    {
        json.WriteString("id", item.Id);
        json.WriteString("name", item.Name.Length > 0 ? item.Name : says.Name("fixture." + item.What));
        json.WriteString("verdict", Words.Of(item.Verdict));
        json.WriteString("class", Words.Of(item.Class));
        json.WriteBoolean("planned", item.Planned);
        if (item.Planned) WriteNumbers(json, item);
        json.WriteNumber("target_probability", item.TargetProbability);
        json.WriteNumber("target_beta", item.TargetBeta);
        json.WriteString("target_source", item.TargetSource);
        json.WriteObjects("unknowns", item.Unknowns, (j, u) =>
        {
            j.WriteString("of", u.Of);
            says.Write(j, u.Says);
            j.WriteNumber("probability_if_known", u.IfKnown);
        });
        json.WriteObjects("helps", item.Helps, says.Write);
        json.WriteObjects("reasons", item.Reasons, says.Write);
    }

    private static void WriteNumbers(Utf8JsonWriter json, ItemCertainty item)
    {
        json.WriteNumber("probability_of_failure", item.ProbabilityOfFailure);
        json.WriteMaybe("beta", item.Beta);
        json.WriteNumber("probability_if_independent", item.IfIndependent);
        json.WriteMaybe("probability_if_proved", item.IfProved);
        json.WriteNumber("utilisation", item.Utilisation);
        json.WriteNumber("build_up_probability", item.BuildUpProbability);
    }
}
