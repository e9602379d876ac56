namespace Pattress.Actions.Fixtures;

/// <summary>Weights and other tabulated values of <c>data/fixtures/weights.csv</c>.</summary>
internal static class Weights
{
    /// <summary>Standard gravity, m/s² (third CGPM, 1901).</summary>
    public const double Gravity = Quantities.Units.Gravity;

    private static readonly Lazy<Dictionary<string, WeightRow>> Rows = new(() => CsvTable.FromEmbedded("data/fixtures/weights.csv").Rows
        .ToDictionary(r => r["id"], r => new WeightRow(r["id"], r.Number("value"), r["unit"], r["source"]), StringComparer.Ordinal));

    private static readonly Lazy<Dictionary<string, RailRow>> RailRows = new(() => CsvTable.FromEmbedded("data/fixtures/rails.csv").Rows
        .ToDictionary(r => r["id"], r => new RailRow(r["id"], r.Number("mass_kg_m"), r.Number("ei_nmm2"), r["source"]), StringComparer.Ordinal));

    /// <summary>The row of that id, in its own unit.</summary>
    public static WeightRow Of(string id) => Rows.Value[id];

    /// <summary>The rail of that id.</summary>
    public static RailRow Rail(string id) => RailRows.Value[id];
}

/// <summary>One tabulated value with its unit and source.</summary>
internal sealed record WeightRow(string Id, double Value, string Unit, string Source);

/// <summary>A rail: mass in kg/m and bending stiffness in Nmm².</summary>
internal sealed record RailRow(string Id, double MassKgM, double EiNmm2, string Source);
