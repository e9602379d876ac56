namespace Pattress.Planning.Resisting;

/// <summary>Named numbers of <c>data/strength</c>, each with its source in the file.</summary>
public static class Named
{
    private static readonly Dictionary<string, double> Values = Table("named_values", "name", "value");
    private static readonly Dictionary<string, double> Plugs = Table("masonry_plugs", "base", "mean_n_per_mm");
    private static readonly Dictionary<string, double> Use = Table("use_of_bearing", "kind", "use");

    public static double Value(string name) => Values[name];

    /// <summary>Mean pull of a plug, N per mm of embedment at a 6 mm hole.</summary>
    public static double PlugMean(string baseMaterial) => Plugs.GetValueOrDefault(baseMaterial, Plugs["brick"]);

    /// <summary>Share of the punching strength that a kind can use.</summary>
    public static double UseOfBearing(string kind) => Use.GetValueOrDefault(kind, 0);

    private static Dictionary<string, double> Table(string file, string key, string value) =>
        CsvTable.FromEmbedded($"data/strength/{file}.csv").Rows.ToDictionary(r => r[key], r => r.Number(value), StringComparer.Ordinal);
}
