namespace Pattress.Walls;

/// <summary>Tables of P(finding | family) and of what a hole feels like by what the bit met.</summary>
public static class Likelihoods
{
    private static readonly Lazy<Dictionary<(string Reading, string Finding, string Family), double>> Words = new(() =>
        CsvTable.FromEmbedded("data/walls/likelihoods.csv").Rows.ToDictionary(r => (r["reading"], r["finding"], r["family"]), r => r.Number("probability")));

    private static readonly Lazy<Dictionary<(string Sort, string Finding, string Really), double>> Feel = new(() =>
        CsvTable.FromEmbedded("data/walls/hole_feel.csv").Rows.ToDictionary(r => (r["sort"], r["finding"], r["really"]), r => r.Number("probability")));

    private static readonly Lazy<Dictionary<string, string[]>> FindingsOf = new(() =>
        Words.Value.Keys.GroupBy(k => k.Reading, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Select(k => k.Finding).Distinct().ToArray(), StringComparer.Ordinal));

    private static readonly Lazy<Dictionary<(string, string), double>> Means = new(() =>
        Words.Value.GroupBy(p => (p.Key.Reading, p.Key.Finding)).ToDictionary(g => g.Key, g => g.Average(p => p.Value)));

    /// <summary>P(finding | family) of a one-word reading; 1 for a reading or finding that the table does not hold.</summary>
    public static double Word(string reading, string finding, string family) =>
        Words.Value.TryGetValue((reading, finding, family), out double p) ? p : 1;

    /// <summary>The mean of a finding over all families: what it says in a wall whose sound tells nothing.</summary>
    public static double Mean(string reading, string finding) => Means.Value.GetValueOrDefault((reading, finding), 1);

    /// <summary>Findings that a reading can have.</summary>
    public static IReadOnlyList<string> Findings(string reading) => FindingsOf.Value.GetValueOrDefault(reading) ?? [];

    /// <summary>P(what is said of a hole | what the bit met); sort is <c>met</c> or <c>swarf</c>.</summary>
    public static double Hole(string sort, string finding, string really) =>
        Feel.Value.TryGetValue((sort, finding, really), out double p) ? p : 1;
}
