using Pattress.Papers.Documents;
using Pattress.Trials.Documents;

namespace Pattress.Papers.Trials;

/// <summary>The report of a bench series as a paper: the same words and figures as <see cref="TrialReport"/>.</summary>
public static class TrialPaper
{
    /// <summary>The paper.</summary>
    /// <param name="foot">At the foot of each page: program and date.</param>
    public static Paper Of(TrialAnswer answer, PaperSize size, string foot) => new("report", TrialReport.Text("report_title"), "en-GB", size, foot, TrialReport.Sentence(new Reason("report_page_of", Said.Words("{0}"), Said.Words("{1}"))), [.. Blocks(answer, size)]);

    private static IEnumerable<Block> Blocks(TrialAnswer answer, PaperSize size)
    {
        yield return new Heading(TrialReport.Text("report_title"), 1);
        foreach (string note in answer.Notes) yield return new Paragraph(note, Voice.Boxed);
        foreach (var block in Section("report_conditions", TrialReport.Conditions(answer))) yield return block;
        if (answer.Effects.Count > 0) foreach (var block in Section("report_effects", TrialReport.Effects(answer))) yield return block;
        foreach (var block in Section("report_method", TrialReport.Method(answer))) yield return block;
        yield return new Heading(TrialReport.Text("report_results"));
        yield return new Pictures([TrialDrawing.Of(answer, size.Wide)]);
        yield return Table("report_results", TrialReport.ResultHeads, answer.Kinds.Select(TrialReport.Row));
        yield return new Listing([.. TrialReport.Remarks(answer)]);
        if (answer.Comparisons.Count > 0) yield return Table("report_pairs", TrialReport.PairHeads, answer.Comparisons.Select(c => TrialReport.Pair(answer, c)));
        foreach (var block in Section("report_not", TrialReport.Not(answer))) yield return block;
        yield return Table("report_tests", [.. TrialReport.Heads(answer).Select(Head)], TrialReport.Tests(answer));
    }

    private static IEnumerable<Block> Section(string heading, IEnumerable<string> lines) => [new Heading(TrialReport.Text(heading)), new Listing([.. lines])];

    /// <summary>A column's name as people write it: load_n is "load, N".</summary>
    private static string Head(string name) => (name.EndsWith("_n", StringComparison.Ordinal) ? name[..^2] + ", N" : name).Replace('_', ' ');

    // The first column names a kind and gets more room.
    private static Table Table(string caption, IReadOnlyList<string> heads, IEnumerable<IReadOnlyList<string>> rows) =>
        new(TrialReport.Text(caption), [.. heads.Select(h => new Column(h.TrimStart('>'), h is "Kind" or "against" or "kind" or "board" ? 22 : h == ">characteristic, N" ? 15 : 11, h.StartsWith('>')))], [.. rows]);
}
