using System.Text;
using Pattress.Jobs;

namespace Pattress.Server.Api;

/// <summary>The HTTP API: the same documents as the command line's.</summary>
internal static class Endpoints
{
    /// <summary>What there is, as a refusal says it.</summary>
    public const string Addresses =
        "POST /api/plan, POST /api/buy, POST /api/quote, POST /api/layout, POST /api/repair, POST /api/wall, POST /api/locate, POST /api/bracket, POST /api/beam, POST /api/trial, POST /api/compare, POST /api/certainty, POST /api/proof, POST /api/rule, GET /api/rules, GET /api/schema, GET /api/demo, GET /api/demo/plan";

    public static void Map(WebApplication app)
    {
        app.MapGet("/api/schema", (string? document) => Schema(Questions.SchemaOf(document ?? "job")));
        app.MapGet("/api/demo", () => Json(Questions.DemoJob));
        app.MapGet("/api/demo/plan", (CancellationToken stop) => Answer(Questions.Plan(Questions.DemoJob, stop)));
        Ask(app, "/api/plan", Questions.Plan);
        Await(app, "/api/buy", Questions.Buy);
        Await(app, "/api/quote", Questions.Quote);
        Ask(app, "/api/layout", Questions.Layout);
        Ask(app, "/api/repair", (json, _) => Questions.Repair(json));
        Explain(app, "/api/wall", Questions.Wall);
        Explain(app, "/api/locate", Questions.Locate);
        Ask(app, "/api/bracket", (json, _) => Questions.Bracket(json));
        Ask(app, "/api/beam", (json, _) => Questions.Beam(json));
        Ask(app, "/api/trial", (csv, _) => Questions.Trial(csv));
        Ask(app, "/api/compare", (text, _) => Questions.Compare(text));
        Ask(app, "/api/certainty", Questions.Certainty);
        Ask(app, "/api/proof", Questions.Proof);
        app.MapGet("/api/rules", (string? text) => Answer(RuleQuestions.List(text ?? "")));
        Ask(app, "/api/rule", (json, _) => RuleBodies.Answer(json));
        app.Map("/api/{**rest}", Refuse);
    }

    private static void Ask(WebApplication app, string address, Func<string, CancellationToken, Reply> ask) =>
        Await(app, address, (body, stop) => Task.FromResult(ask(body, stop)));

    private static void Await(WebApplication app, string address, Func<string, CancellationToken, Task<Reply>> ask) =>
        app.MapPost(address, async (HttpRequest request, CancellationToken stop) =>
        {
            var text = await Bodies.Read(request, stop);
            return Answer(text.Value is { } body ? await ask(body, stop) : Reply.Refused(text.Problems));
        });

    /// <summary>With <c>?explain=yes</c> each reading says what it moved.</summary>
    private static void Explain(WebApplication app, string address, Func<string, bool, Reply> ask) =>
        app.MapPost(address, async (HttpRequest request, string? explain, CancellationToken stop) =>
        {
            var text = await Bodies.Read(request, stop);
            return Answer(text.Value is { } body ? ask(body, explain == "yes") : Reply.Refused(text.Problems));
        });

    private static IResult Schema(Reply reply) => reply.Ending == Ending.Answered ? Json(reply.Json, "application/schema+json") : Answer(reply);

    /// <summary>A reply as HTTP: 200, 400 with problem details, or 422 with the document that says what is not covered.</summary>
    public static IResult Answer(Reply reply) => reply.Ending switch
    {
        Ending.Answered => Json(reply.Json),
        Ending.NotCovered => Results.Text(reply.Json, "application/json", Encoding.UTF8, 422),
        _ => Results.Text(ProblemJson.Details(reply.Problems), ProblemJson.MediaType, Encoding.UTF8, 400),
    };

    private static IResult Json(string json, string type = "application/json") => Results.Text(json, type, Encoding.UTF8);

    // What no other address took: the address is there but for another method, or it is not there.
    private static void Refuse(HttpContext http) => http.Response.StatusCode = IsKnown(http.Request.Path) ? 405 : 404;

    private static bool IsKnown(PathString path) => Addresses.Split(", ").Any(a => a.EndsWith($" {path}", StringComparison.Ordinal));
}
