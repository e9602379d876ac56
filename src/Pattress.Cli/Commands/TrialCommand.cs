using Pattress.Cli.Input;
using Pattress.Cli.Printing;
using Pattress.Pdf;
using Pattress.Server;

namespace Pattress.Cli.Commands;

/// <summary>Statistics of pull tests, their chart and the report of a bench series.</summary>
internal static class TrialCommand
{
    public static int Run(Call call)
    {
        var text = Documents.Read(call.File, call.Terminal);
        if (text.Value is not { } csv) return Answering.Refuse(call, text.Problems);
        var reply = Questions.Trial(csv);
        if (reply.Ending == Ending.Answered && Write(call, csv) is { Count: > 0 } problems) return Answering.Refuse(call, problems);
        return Answering.Finish(call, reply, json => TrialSheet.Text(json, call.Terminal));
    }

    private static IReadOnlyList<Problem> Write(Call call, string csv)
    {
        var papers = TrialPapers.Of(csv);
        var problems = new List<Problem>();
        if (call.Arguments.Given.TryGetValue("--svg", out string? file)) problems.AddRange(Documents.Write(file, papers.Single(p => p.Name == TrialPapers.Chart).Text));
        if (!call.Arguments.Given.TryGetValue("--report", out string? folder)) return problems;
        foreach (var (name, content) in papers) problems.AddRange(Documents.Write(Path.Combine(folder, name), content));
        if (TrialPapers.Paper(csv) is { } paper) problems.AddRange(Documents.Write(Path.Combine(folder, "report.pdf"), PdfPapers.Write(paper, call.Terminal.Clock.GetUtcNow())));
        return problems;
    }
}
