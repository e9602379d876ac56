using System.Text.Json;
using Pattress.Jobs.Plans;

namespace Pattress.Jobs.Buying;

/// <summary>What to load in the van for several jobs: fixings added up, each bit and tool once.</summary>
/// <param name="Count">To load.</param>
/// <param name="Jobs">Titles of the jobs that want it, in the order they are driven to.</param>
public sealed record LoadLine(string Id, string Sort, int Count, IReadOnlyList<string> Jobs);

/// <summary>Makes load lists.</summary>
public static class LoadList
{
    /// <summary>The lines in the order fixings, bits, tools; each by id.</summary>
    public static IReadOnlyList<LoadLine> Of(IReadOnlyList<PlanAnswer> bought) =>
        [.. bought.SelectMany((p, i) => p.Buy.Select(l => (Line: l, Job: p.Title.Length > 0 ? p.Title : $"job {i + 1}"))).GroupBy(l => (l.Line.Sort, l.Line.Id))
            .Select(g => new LoadLine(g.Key.Id, g.Key.Sort, g.Key.Sort == "fixing" ? g.Sum(l => l.Line.Needed) : 1, [.. g.Select(l => l.Job).Distinct(StringComparer.Ordinal)]))
            .OrderBy(l => l.Sort == "fixing" ? 0 : l.Sort == "bit" ? 1 : 2).ThenBy(l => l.Id, StringComparer.Ordinal)];

    /// <summary>The list as a document.</summary>
    public static string Json(IReadOnlyList<LoadLine> lines, Settings settings) => JsonOut.Text(json =>
    {
        var says = new PlanWords(settings);
        json.WriteStartObject();
        json.WriteObjects("load", lines, (j, line) =>
        {
            j.WriteString("id", line.Id);
            j.WriteString("name", says.Name(line.Id));
            j.WriteString("sort", line.Sort);
            j.WriteNumber("count", line.Count);
            j.WriteTexts("jobs", line.Jobs);
        });
        json.WriteEndObject();
    });
}
