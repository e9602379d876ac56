using Pattress.Jobs;
using Pattress.Papers.Documents;
using Pattress.Papers.Trials;
using Pattress.Trials.Documents;

namespace Pattress.Server;

/// <summary>The files of a bench series' report: what is published of it.</summary>
public static class TrialPapers
{
    /// <summary>Name of the chart among them.</summary>
    public const string Chart = "tests.svg";

    /// <summary>Name and text of each file; none when the series cannot be read.</summary>
    public static IReadOnlyList<(string Name, string Text)> Of(string csv) =>
        Answer(csv) is { } answer
            ? [("report.html", TrialReport.Html(answer)), (Chart, TrialChart.Svg(answer)), ("tests.csv", TrialReport.Csv(answer)), ("answer.json", Questions.Trial(csv).Json)]
            : [];

    /// <summary>The report as a paper, to be set as PDF; null when the series cannot be read.</summary>
    public static Paper? Paper(string csv) => Answer(csv) is { } answer ? TrialPaper.Of(answer, PaperSize.A4, $"Pattress {Planner.ProgramVersion}") : null;

    private static TrialAnswer? Answer(string csv) => TrialDocument.Read(csv).Value is { } document ? Analysis.Of(document, new()).Value : null;
}
