namespace Pattress.Walls;

/// <summary>One named number that the wall models assume; the user may change it.</summary>
/// <param name="Low">Least sensible value, <paramref name="High"/> the greatest.</param>
/// <param name="Source">Where it is from; mostly <c>assumed</c>.</param>
public sealed record Rate(string Name, string Group, double Value, string Unit, double Low, double High, string Source, string What);

/// <summary>The one table of every assumed rate, from <c>data/walls/rates.csv</c>.</summary>
public static class RateTable
{
    private static readonly Lazy<IReadOnlyList<Rate>> Rows = new(() =>
        [.. CsvTable.FromEmbedded("data/walls/rates.csv").Rows.Select(Read)]);

    private static readonly Lazy<Dictionary<string, double>> ByName = new(() =>
        Rows.Value.ToDictionary(r => r.Name, r => r.Value, StringComparer.Ordinal));

    /// <summary>Every rate in the file's order.</summary>
    public static IReadOnlyList<Rate> All => Rows.Value;

    /// <summary>A rate by name.</summary>
    public static double Value(string name) => ByName.Value.TryGetValue(name, out var v) ? v : throw new ArgumentException($"no rate '{name}'", nameof(name));

    private static Rate Read(CsvTable.Row r) =>
        new(r["name"], r["group"], r.Number("value"), r["unit"], r.Number("low"), r.Number("high"), r["source"], r["what"]);
}
