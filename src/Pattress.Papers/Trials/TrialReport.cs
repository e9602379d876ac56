using System.Globalization;
using System.Net;
using System.Text;
using Pattress.Jobs;
using Pattress.Jobs.Text;
using Pattress.Trials.Documents;

namespace Pattress.Papers.Trials;

/// <summary>A bench series fit to be published: conditions, method, every test, results, and what may not be concluded.</summary>
public static class TrialReport
{
    private static readonly Settings Usual = new();

    /// <summary>One self-contained page without script, to be read or printed.</summary>
    public static string Html(TrialAnswer answer)
    {
        var page = new StringBuilder("<!DOCTYPE html>\n<html lang=\"en-GB\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width\">");
        page.Append("<title>").Append(Text("report_title")).Append("</title><style>body{font:16px/1.45 sans-serif;max-width:50rem;margin:1rem auto;padding:0 1rem;color:#222}");
        page.Append("table{border-collapse:collapse;display:block;overflow-x:auto}td,th{padding:.2rem .7rem .2rem 0;text-align:left;border-bottom:1px solid #ccc}td.n,th.n{text-align:right}svg{max-width:100%;height:auto}.note{font-weight:bold}</style></head><body>\n");
        Say(page, "h1", Text("report_title"));
        foreach (string note in answer.Notes) page.Append("<p class=\"note\">").Append(Escaped(note)).Append("</p>\n");
        Section(page, "report_conditions", Conditions(answer));
        if (answer.Effects.Count > 0) Section(page, "report_effects", Effects(answer));
        Section(page, "report_method", Method(answer));
        Say(page, "h2", Text("report_results"));
        page.Append("<figure role=\"img\" aria-label=\"").Append(Escaped(Text("chart_title"))).Append("\">").Append(Inline(TrialChart.Svg(answer))).Append("</figure>\n");
        Table(page, ResultHeads, answer.Kinds.Select(Row));
        page.Append("<ul>");
        foreach (string remark in Remarks(answer)) Say(page, "li", remark);
        page.Append("</ul>\n");
        Pairs(page, answer);
        Section(page, "report_not", Not(answer));
        Say(page, "h2", Text("report_tests"));
        Table(page, [.. Heads(answer)], Tests(answer));
        return page.Append("</body></html>\n").ToString();
    }

    /// <summary>Every test with what was worked out of it, as CSV; its notes stand before the header.</summary>
    public static string Csv(TrialAnswer answer)
    {
        var csv = new StringBuilder();
        foreach (string note in answer.Notes) csv.Append("# ").Append(note).Append('\n');
        csv.AppendJoin(',', Heads(answer).Select(h => Cell(h.TrimStart('>')))).Append('\n');
        foreach (var row in Tests(answer)) csv.AppendJoin(',', row.Select(Cell)).Append('\n');
        return csv.ToString();
    }

    // What all tests share is a condition; what differs stands in the table.
    internal static IEnumerable<string> Conditions(TrialAnswer answer)
    {
        var tests = answer.Kinds.SelectMany(k => k.Tests).ToList();
        var shared = answer.FurtherColumns.Select((c, i) => (Name: c, Value: tests[0].Further[i], All: tests.All(t => t.Further[i] == tests[0].Further[i]))).Where(c => c.All && c.Value.Length > 0).ToList();
        return shared.Count == 0 ? [Text("report_conditions_none")] : shared.Select(c => $"{c.Name.Replace('_', ' ')}: {c.Value}");
    }

    /// <summary>What conditions that differ do to the load.</summary>
    internal static IEnumerable<string> Effects(TrialAnswer answer) => answer.Effects.Select(e => Sentence(new Reason("report_effect", Said.Words(e.Column.Replace('_', ' ')), Said.Words(e.Effect.Level),
        Said.Plain(e.Effect.Ratio(0.5)), Said.Words(e.Effect.Against), Said.Plain(e.Effect.Ratio(0.05)), Said.Plain(e.Effect.Ratio(0.95)))));

    /// <summary>What limits the figures of single kinds, and the tests that stand apart.</summary>
    internal static IEnumerable<string> Remarks(TrialAnswer answer)
    {
        foreach (var (kind, reason) in answer.Kinds.SelectMany(k => k.Reasons.Select(r => (k.Kind, r)))) yield return $"{Texts.Name(kind)}: {Sentence(reason)}";
        foreach (var suspect in answer.Kinds.SelectMany(k => k.Suspects))
            yield return string.Create(CultureInfo.InvariantCulture, $"{Texts.Name(suspect.Test.Kind)}, line {suspect.Test.Line}: {N(suspect.Test.CountedN)} N stands apart ({suspect.By} {suspect.Statistic:0.000}, critical {suspect.Critical:0.000})");
    }

    internal static readonly string[] ResultHeads = ["Kind", ">n", ">mean, N", ">s, N", ">V", ">characteristic, N", ">one more test: middle, N", ">5 %, N", ">95 %, N"];

    internal static readonly string[] PairHeads = ["Kind", "against", ">chance that it is stronger", ">ratio, 5 %", ">ratio, 95 %", "decided", ">tests of each that would settle it"];

    internal static IReadOnlyList<string> Pair(TrialAnswer answer, KindComparison c) =>
        [Texts.Name(c.Kind), Texts.Name(c.Other), Shows.Percent(c.Chance), R(c.RatioLow), R(c.RatioHigh), c.Decided ? "yes" : "no", c.Decided ? "" : PairSettling.More(answer, c)?.ToString(CultureInfo.InvariantCulture) ?? ""];

    internal static IEnumerable<string> Method(TrialAnswer answer)
    {
        yield return Text("report_m_mean");
        yield return Sentence(new Reason("report_m_characteristic", Said.Percent(answer.Settings.Fractile), Said.Percent(answer.Settings.Confidence)));
        yield return Text("report_m_suspects");
        yield return Text("report_m_together");
        foreach (var reason in answer.Reasons) yield return Sentence(reason);
    }

    internal static IEnumerable<string> Not(TrialAnswer answer)
    {
        foreach (string code in (string[])["report_n_permitted", "report_n_boards", "report_n_creep", "report_n_left_out"]) yield return Text(code);
        yield return Sentence(new Reason("report_n_order", Said.Count(answer.Comparisons.Count(c => c.Decided)), Said.Count(answer.Comparisons.Count)));
        yield return Text("report_n_makers");
    }

    private static void Pairs(StringBuilder page, TrialAnswer answer)
    {
        if (answer.Comparisons.Count == 0) return;
        Say(page, "h2", Text("report_pairs"));
        Table(page, PairHeads, answer.Comparisons.Select(c => Pair(answer, c)));
    }

    internal static IReadOnlyList<string> Row(KindResult k) =>
    [
        Texts.Name(k.Kind), k.Tests.Count.ToString(CultureInfo.InvariantCulture), N(k.MeanN), N(k.StandardDeviationN), k.Cov is { } v ? R(v) : "", N(k.Characteristic?.ValueN),
        N(k.Expected?.MedianN), N(k.Expected?.FractileN), N(k.Expected?.UpperN),
    ];

    internal static IEnumerable<string> Heads(TrialAnswer answer) => [">line", "kind", ">load_n", ">load_high_n", "outcome", .. answer.FurtherColumns];

    internal static IEnumerable<IReadOnlyList<string>> Tests(TrialAnswer answer) => answer.Kinds.SelectMany(k => k.Tests).OrderBy(t => t.Line).Select(t => (IReadOnlyList<string>)
        [t.Line.ToString(CultureInfo.InvariantCulture), t.Kind, Exact(t.LoadN), t.HighN is { } high ? Exact(high) : "", t.Failed ? "failed" : "stopped", .. t.Further]);

    private static void Section(StringBuilder page, string heading, IEnumerable<string> lines)
    {
        Say(page, "h2", Text(heading));
        page.Append("<ul>");
        foreach (string line in lines) Say(page, "li", line);
        page.Append("</ul>\n");
    }

    private static void Table(StringBuilder page, IReadOnlyList<string> heads, IEnumerable<IReadOnlyList<string>> rows)
    {
        page.Append("<table tabindex=\"0\"><thead><tr>");
        foreach (string head in heads) page.Append(head.StartsWith('>') ? "<th class=\"n\" scope=\"col\">" : "<th scope=\"col\">").Append(Escaped(head.TrimStart('>').Replace('_', ' '))).Append("</th>");
        page.Append("</tr></thead><tbody>\n");
        foreach (var row in rows)
        {
            page.Append("<tr>");
            for (int i = 0; i < row.Count; i++) page.Append(heads[i].StartsWith('>') ? "<td class=\"n\">" : "<td>").Append(Escaped(row[i])).Append("</td>");
            page.Append("</tr>\n");
        }
        page.Append("</tbody></table>\n");
    }

    private static void Say(StringBuilder page, string element, string text) => page.Append('<').Append(element).Append('>').Append(Escaped(text)).Append("</").Append(element).Append(">\n");

    private static string Inline(string svg) => svg[Math.Max(0, svg.IndexOf("<svg", StringComparison.Ordinal))..];

    private static string Cell(string text) => text.AsSpan().IndexOfAny(",\"\n\r") < 0 ? text : $"\"{text.Replace("\"", "\"\"")}\"";

    private static string Escaped(string text) => WebUtility.HtmlEncode(text);

    private static string Exact(double n) => n.ToString("R", CultureInfo.InvariantCulture);

    private static string N(double? n) => n is { } value ? Shows.ThreeFigures(value) : "";

    private static string R(double ratio) => ratio.ToString("0.00", CultureInfo.InvariantCulture);

    internal static string Text(string code) => Sentence(new Reason(code));

    internal static string Sentence(Reason reason) => Texts.Sentence(reason, Usual);
}
