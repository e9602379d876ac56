using System.Text.Json;
using Pattress.Jobs.Certain;
using Pattress.Jobs.Plans;
using Pattress.Jobs.Text;

namespace Pattress.Jobs.Proofs;

/// <summary>The document of <c>pattress proof</c>: a job in, what to pull, how hard, how long and with what out.</summary>
public static class ProofDocument
{
    private static readonly (string Way, Reason Can, Reason Cannot)[] Ways =
    [
        ("luggage_scale", new Reason("proof_can_luggage_scale"), new Reason("proof_cannot_luggage_scale")),
        ("spring_balance", new Reason("proof_can_spring_balance"), new Reason("proof_cannot_spring_balance")),
        ("bucket_on_arm", new Reason("proof_can_bucket_on_arm"), new Reason("proof_cannot_bucket_on_arm")),
    ];

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
        json.WriteObjects("items", ProofOf.All(plan, job), (j, i) => WriteItem(j, i, says));
        json.WriteObjects("ways", Ways, (j, way) => WriteWay(j, way, job.Settings));
        json.WriteObjects("changed_by_trials", TrialEffect.Of(job, plan, PlanData.Embedded, cancel), ChangedJson.Write);
        json.WriteObjects("cautions", plan.Cautions, says.Write);
        json.WriteEndObject();
    });

    private static void WriteItem(Utf8JsonWriter json, ItemProof item, PlanWords says)
    {
        json.WriteString("id", item.Item);
        json.WriteString("name", item.Name.Length > 0 ? item.Name : says.Name("fixture." + item.What));
        json.WriteString("wall", item.Wall);
        json.WriteString("verdict", Words.Of(item.Verdict));
        json.WriteString("class", Words.Of(item.Class));
        json.WriteString("scope", item.Scope);
        json.WriteNumber("count", item.Count);
        json.WriteObjects("pulls", item.Pulls, WritePull);
        json.WriteObjects("hangs", item.Hangs, WriteHang);
        json.WriteSome("samples", item.Samples, (j, s) =>
        {
            j.WriteString("rate", s.Rate);
            j.WriteNumber("count", s.Count);
            j.WriteNumber("load_n", s.LoadN);
        });
        WriteState(json, item.State, says);
        json.WriteObjects("reasons", item.Reasons, says.Write);
    }

    private static void WritePull(Utf8JsonWriter json, FixingPull pull)
    {
        json.WriteNumber("bracket", pull.Bracket);
        json.WriteNumber("hole", pull.Hole);
        json.WritePoint("at_mm", pull.At);
        json.WriteString("fixing", pull.Fixing);
        json.WriteNumber("action_n", pull.ActionN);
        json.WriteNumber("load_n", pull.LoadN);
        json.WriteNumber("damage_cap_n", pull.DamageCapN);
        json.WriteNumber("hold_s", pull.HoldSeconds);
        json.WriteNumber("movement_mm", pull.MovementMm);
        json.WriteTexts("ways", [.. pull.Ways.Where(w => w.Reaches).Select(w => w.Way)]);
    }

    private static void WriteHang(Utf8JsonWriter json, BracketHang hang)
    {
        json.WriteNumber("bracket", hang.Bracket);
        json.WriteNumber("arm_mm", hang.ArmMm);
        json.WriteNumber("weight_n", hang.WeightN);
        json.WriteNumber("litres", hang.Litres);
        json.WriteNumber("damage_cap_n", hang.DamageCapN);
        json.WriteNumber("hold_s", hang.HoldSeconds);
        json.WriteNumber("movement_mm", hang.MovementMm);
    }

    private static void WriteState(Utf8JsonWriter json, ProofState state, PlanWords says)
    {
        json.WriteStartObject("recorded");
        json.WriteNumber("held", state.Held);
        json.WriteNumber("failed", state.Failed);
        says.Write(json, state.Demands);
        json.WriteMaybe("probability_before", state.FailureBefore);
        json.WriteMaybe("probability_after", state.FailureAfter);
        json.WriteEndObject();
    }

    private static void WriteWay(Utf8JsonWriter json, (string Way, Reason Can, Reason Cannot) way, Settings settings)
    {
        json.WriteString("way", way.Way);
        json.WriteString("code", way.Can.Code);
        json.WriteString("why", Texts.Sentence(way.Can, settings));
        json.WriteString("cannot_code", way.Cannot.Code);
        json.WriteString("cannot", Texts.Sentence(way.Cannot, settings));
    }
}
