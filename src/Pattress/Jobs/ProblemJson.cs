using System.Text.Json;
using Pattress.Jobs.Text;

namespace Pattress.Jobs;

/// <summary>Problems as documents: for the command line's stderr and batches, and as RFC 9457 problem details for the API.</summary>
public static class ProblemJson
{
    /// <summary>Media type of the API's form.</summary>
    public const string MediaType = "application/problem+json";

    /// <summary><c>{"problems":[{"code","path","value","allowed","why"}]}</c>.</summary>
    public static string Write(IReadOnlyList<Problem> problems, bool indented = true) => JsonOut.Text(json =>
    {
        json.WriteStartObject();
        json.WriteObjects("problems", problems, Write);
        json.WriteEndObject();
    }, indented);

    /// <summary>RFC 9457 problem details; every problem of the input stands in <c>problems</c>.</summary>
    /// <param name="status">HTTP status: 400 for bad input, 422 for not covered.</param>
    public static string Details(IReadOnlyList<Problem> problems, int status = 400) => JsonOut.Text(json =>
    {
        json.WriteStartObject();
        json.WriteString("type", "about:blank");
        json.WriteString("title", status == 422 ? "Not covered" : "Bad input");
        json.WriteNumber("status", status);
        json.WriteString("detail", problems.Count == 1 ? Texts.Sentence(problems[0]) : $"{problems.Count} problems in the input.");
        json.WriteObjects("problems", problems, Write);
        json.WriteEndObject();
    });

    /// <summary>One sentence a line, for people.</summary>
    public static string Lines(IReadOnlyList<Problem> problems) => string.Join("\n", problems.Select(Texts.Sentence)) + "\n";

    private static void Write(Utf8JsonWriter json, Problem problem)
    {
        json.WriteString("code", problem.Code);
        json.WriteString("path", problem.Path);
        json.WriteString("value", problem.Value);
        json.WriteString("allowed", problem.Allowed);
        json.WriteString("why", Texts.Sentence(problem));
    }
}
