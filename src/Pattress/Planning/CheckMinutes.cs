namespace Pattress.Planning;

/// <summary>Minutes that a check takes a fitter, from <c>data/planning/check_minutes.csv</c>; all assumed.</summary>
public static class CheckMinutes
{
    private static readonly Dictionary<string, double> Rows = CsvTable.FromEmbedded("data/planning/check_minutes.csv").Rows
        .ToDictionary(r => r["check"], r => r.Number("minutes"), StringComparer.Ordinal);

    public static double Of(string kind) => Rows.GetValueOrDefault(kind, Rows["other"]);
}
