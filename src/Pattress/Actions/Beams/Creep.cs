namespace Pattress.Actions.Beams;

/// <summary>How much wood and boards go on sagging under a load that lasts: k_def of EN 1995-1-1:2004+A1:2008 Table 3.2 (from memory).</summary>
public static class Creep
{
    private static readonly CsvTable Table = CsvTable.FromEmbedded("data/standards/en1995_1_1_k_def.csv");
    private static readonly double?[][] Values = [.. Table.Rows.Select(r => new[] { 1, 2, 3 }.Select(c => r.MaybeNumber("service_class_" + c)).ToArray())];

    /// <summary>The materials, in the table's order.</summary>
    public static IReadOnlyList<string> Materials { get; } = [.. Table.Rows.Select(r => r["key"])];

    /// <summary>k_def; null for an unknown material, or one that may not stand in the service class (1, 2, 3).</summary>
    public static double? Factor(string material, int serviceClass)
    {
        for (int i = 0; i < Materials.Count; i++)
            if (Materials[i] == material) return serviceClass is >= 1 and <= 3 ? Values[i][serviceClass - 1] : null;
        return null;
    }
}
