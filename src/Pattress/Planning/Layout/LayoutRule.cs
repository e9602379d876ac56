namespace Pattress.Planning.Layout;

/// <summary>How freely the brackets of a kind may stand: a row of <c>data/planning/layout.csv</c>, mm.</summary>
public sealed record LayoutRule(string Kind, double EndMinMm, double EndMaxMm, double SpanMinMm, double SpanMaxMm, int Most)
{
    private static readonly Dictionary<string, LayoutRule> Rows = CsvTable.FromEmbedded("data/planning/layout.csv").Rows.ToDictionary(r => r["kind"],
        r => new LayoutRule(r["kind"], r.Number("end_min_mm"), r.Number("end_max_mm"), r.Number("span_min_mm"), r.Number("span_max_mm"), (int)r.Number("most")), StringComparer.Ordinal);

    /// <summary>The rule of a kind of fixture, or null when its brackets stay where they are.</summary>
    public static LayoutRule? Find(string kind) => Rows.GetValueOrDefault(kind);
}
