namespace Pattress.Walls;

/// <summary>The catalogue of build-ups and faces.</summary>
public static class BuildUps
{
    private static readonly Lazy<IReadOnlyList<BuildUp>> Rows = new(() =>
        [.. CsvTable.FromEmbedded("data/walls/build_ups.csv").Rows.Select(Read)]);

    private static readonly Lazy<IReadOnlyList<FaceLayer>> FaceRows = new(() =>
        [.. CsvTable.FromEmbedded("data/walls/faces.csv").Rows.Select(r => new FaceLayer(r["id"], r.Number("mean_mm"), r.Number("sd_mm"), r["source"]))]);

    private static readonly Lazy<Dictionary<string, BuildUp>> ById = new(() => Rows.Value.ToDictionary(b => b.Id, StringComparer.Ordinal));

    private static readonly Lazy<Dictionary<string, IReadOnlyList<BuildUp>>> Kinds = new(() =>
        Rows.Value.GroupBy(b => b.Kind, StringComparer.Ordinal).ToDictionary(g => g.Key, g => (IReadOnlyList<BuildUp>)[.. g], StringComparer.Ordinal));

    public static IReadOnlyList<BuildUp> All => Rows.Value;

    public static IReadOnlyList<FaceLayer> Faces => FaceRows.Value;

    /// <summary>The build-up of an id, or null.</summary>
    public static BuildUp? Find(string id) => ById.Value.GetValueOrDefault(id);

    /// <summary>Rows of a kind, in the file's order; empty for a kind that is not there.</summary>
    public static IReadOnlyList<BuildUp> OfKind(string kind) => Kinds.Value.GetValueOrDefault(kind) ?? [];

    /// <summary>The face of an id; an unknown one is doubtful.</summary>
    public static FaceLayer Face(string id) => FaceRows.Value.FirstOrDefault(f => f.Id == id) ?? FaceRows.Value[^1];

    private static BuildUp Read(CsvTable.Row r) => new(
        r["id"], r["family"], r["kind"], r.Number("board_mm"), (int)r.Number("boards"), r.Number("skim_mm"), r.Number("insulation_mm"),
        r.Number("front_mm"), r.Number("front_sd_mm"), r.Number("void_mm"), r.Number("void_sd_mm"), r.Number("void_min_mm"), r.Number("void_max_mm"),
        r["base"], r["support"], r.Number("support_width_mm"), r.Number("support_share"), r.Number("prior"), r["source"]);
}
