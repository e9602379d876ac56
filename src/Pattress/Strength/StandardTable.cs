namespace Pattress.Strength;

/// <summary>A column of one of the tables in <c>data/standards</c>, by the row's key; the rows' order is that of the choice's words.</summary>
internal sealed class StandardTable
{
    private readonly CsvTable _table;

    private StandardTable(string file) => _table = CsvTable.FromEmbedded("data/standards/" + file + ".csv");

    internal static StandardTable Read(string file) => new(file);

    /// <summary>The keys, which are the words of the choice.</summary>
    internal IReadOnlyList<string> Words => [.. _table.Rows.Select(r => r["key"])];

    /// <summary>A column with gaps.</summary>
    internal double?[] MaybeColumn(string name) => [.. _table.Rows.Select(r => r.MaybeNumber(name))];

    internal double[] Column(string name) => [.. _table.Rows.Select(r => r.Number(name))];
}
