namespace Pattress.Actions.Fixtures;

/// <summary>Every kind of thing that can be hung, and what to enter for it (<c>data/fixtures/kinds.csv</c>, <c>fields.csv</c>).</summary>
public static class FixtureCatalogue
{
    private const string ForEvery = "any";

    private static readonly Lazy<IReadOnlyList<FixtureKind>> All = new(Read);
    private static readonly Lazy<Dictionary<string, FixtureKind>> ById = new(() => All.Value.ToDictionary(k => k.Id, StringComparer.Ordinal));

    /// <summary>The kinds in the order of the data file.</summary>
    public static IReadOnlyList<FixtureKind> Kinds => All.Value;

    /// <summary>The kind of that id, or null when there is none.</summary>
    public static FixtureKind? Find(string id) => ById.Value.GetValueOrDefault(id);

    private static List<FixtureKind> Read()
    {
        var fields = CsvTable.FromEmbedded("data/fixtures/fields.csv").Rows;
        return [.. CsvTable.FromEmbedded("data/fixtures/kinds.csv").Rows.Select(row => Kind(row, fields))];
    }

    private static FixtureKind Kind(CsvTable.Row row, IReadOnlyList<CsvTable.Row> fields)
    {
        string id = row["kind"], surface = row["surface"];
        return new(id, Class(row["class"]), (int)row.Number("min_brackets"), (int)row.Number("max_brackets"),
            surface is "wall" or "both", surface is "ceiling" or "both", row["plate"], row["trade"], row["source"], Fields(id, fields));
    }

    // The kind's own fields first, what holds for every kind after them.
    private static List<FixtureField> Fields(string id, IReadOnlyList<CsvTable.Row> rows) =>
        [.. rows.Where(r => r["kind"].Split(' ').Contains(id)).Select(Field), .. rows.Where(r => r["kind"] == ForEvery).Select(Field)];

    private static FixtureField Field(CsvTable.Row row)
    {
        var dimension = Enum.Parse<FieldDimension>(row["dimension"], ignoreCase: true);
        bool words = dimension == FieldDimension.Words;
        return new(row["field"], dimension, row.MaybeNumber("min"), row.MaybeNumber("max"),
            words ? null : row.MaybeNumber("default"), words ? row["default"] : "", row["required"] == "yes",
            words ? row["words"].Split('|') : [], row["source"], row["code"] is { Length: > 0 } code ? code : "measure." + row["field"]);
    }

    internal static ConsequenceClass Class(string word) => word switch
    {
        "nuisance" => ConsequenceClass.Nuisance,
        "hurts" => ConsequenceClass.Hurts,
        "overhead" => ConsequenceClass.Overhead,
        "holds_person" => ConsequenceClass.HoldsPerson,
        _ => throw new FormatException($"no class '{word}'"),
    };
}
