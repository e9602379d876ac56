using Pattress.Actions.Beams;
using Pattress.Brackets;
using Pattress.Jobs;
using Pattress.Jobs.Certain;
using Pattress.Jobs.Buying;
using Pattress.Jobs.Layouts;
using Pattress.Jobs.Locate;
using Pattress.Jobs.WallFile;
using Pattress.Jobs.Proofs;
using Pattress.Jobs.Repairs;
using Pattress.Jobs.Text;
using Pattress.Trials.Documents;

namespace Pattress.Server;

/// <summary>
/// The questions that command line and API share: a document in, a document out. Both hand the text on as it came and
/// show what comes back, so that they cannot differ.
/// </summary>
public static class Questions
{
    /// <summary>The invented demo job, as it ships with the program.</summary>
    public static string DemoJob => Embedded.Text("samples/demo-house.job.json");

    /// <summary>JSON Schema of the job document.</summary>
    public static string Schema => JobSchema.Text;

    /// <summary>JSON Schema of a document by its name: <c>job</c>, <c>wall</c> or <c>locate</c>.</summary>
    public static Reply SchemaOf(string document) => document switch
    {
        "job" => Reply.Of(JobSchema.Text),
        "wall" => Reply.Of(WallDocument.Schema),
        "locate" => Reply.Of(LocateDocument.Schema),
        _ => Reply.Refused([new Problem("unknown_word", "schema", document, "job, wall, locate")]),
    };

    /// <summary>The plan of a job document.</summary>
    public static Reply Plan(string json, CancellationToken stop) =>
        Reply.Of(Planned.Of(json, stop), planned => PlanJson.Write(planned.Plan, planned.Settings));

    /// <summary>The buying list of a job document alone.</summary>
    public static async Task<Reply> Buy(string json, CancellationToken stop) =>
        Reply.Of(await Bought.Of(json, stop), bought => BuyJson.Write(bought.Answer, bought.Job.Settings));

    /// <summary>A quote for a job document.</summary>
    public static async Task<Reply> Quote(string json, CancellationToken stop) =>
        Reply.Of(await Bought.Of(json, stop), bought => QuoteJson.Write(bought.Quote, bought.Job.Settings));

    /// <summary>Where the brackets of a job could go.</summary>
    public static Reply Layout(string json, CancellationToken stop) => Reply.Of(LaidOut.Of(json, stop), laid => LayoutJson.Write(laid.Answer, laid.Settings));

    /// <summary>What to do where a fixing came away.</summary>
    public static Reply Repair(string json) => Reply.Of(RepairDocument.Answer(json), answer => answer);

    /// <summary>Where the supports are along one line.</summary>
    public static Reply Locate(string json, bool explain) => Reply.Of(LocateDocument.Answer(json, explain), answer => answer);

    /// <summary>What a wall is, and what to check next.</summary>
    public static Reply Wall(string json, bool explain) => Reply.Of(WallDocument.Answer(json, explain), answer => answer);

    /// <summary>Forces on the fixings of one bracket.</summary>
    public static Reply Bracket(string json) => Reply.Of(BracketDocument.Answer(json), report => BracketDocument.Json(report));

    /// <summary>Reactions of a rail on brackets.</summary>
    public static Reply Beam(string json) => Reply.Of(BeamDocument.Answer(json), report => BeamDocument.Json(report));

    /// <summary>Statistics of pull tests, from CSV.</summary>
    public static Reply Trial(string csv)
    {
        var tests = TrialDocument.Read(csv);
        return tests.Value is { } document ? Reply.Of(Analysis.Of(document, new()), a => TrialJson.Write(a, r => Texts.Sentence(r, new Settings()))) : Reply.Refused(tests.Problems);
    }

    /// <summary>Claims or kinds side by side.</summary>
    public static Reply Compare(string text) => Reply.Of(CompareDocument.Answer(text), answer => answer);

    /// <summary>How sure each item of a job is, and what would help.</summary>
    public static Reply Certainty(string json, CancellationToken stop) => Reply.Of(CertaintyDocument.Answer(json, stop), answer => answer);

    /// <summary>What to pull, how hard and with what, to prove each item of a job.</summary>
    public static Reply Proof(string json, CancellationToken stop) => Reply.Of(ProofDocument.Answer(json, stop), answer => answer);
}
