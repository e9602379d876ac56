using System.Globalization;

namespace Pattress;

/// <summary>
/// A small table of embedded data: first line the column names, <c>#</c> starts a comment line, fields may be quoted
/// (RFC 4180). For our own data files; user files go through the doors, which refuse rather than throw.
/// </summary>
public sealed class CsvTable
{
    private readonly Dictionary<string, int> _columns;

    private CsvTable(Dictionary<string, int> columns, IReadOnlyList<Row> rows) => (_columns, Rows) = (columns, rows);

    /// <summary>The rows in the file's order.</summary>
    public IReadOnlyList<Row> Rows { get; private set; }

    /// <summary>One row; fields are read by column name.</summary>
    public sealed class Row(CsvTable table, IReadOnlyList<string> fields)
    {
        /// <summary>The field's text; empty when the field is left out.</summary>
        public string this[string column] => table._columns.TryGetValue(column, out var i)
            ? i < fields.Count ? fields[i] : ""
            : throw new FormatException($"no column '{column}'");

        /// <summary>The field as an invariant number.</summary>
        public double Number(string column) => double.Parse(this[column], NumberStyles.Float, CultureInfo.InvariantCulture);

        /// <summary>The field as a number, or null when empty.</summary>
        public double? MaybeNumber(string column) => this[column].Length == 0 ? null : Number(column);
    }

    /// <summary>Parses a whole table.</summary>
    public static CsvTable Parse(string text)
    {
        var lines = Records(text).ToList();
        if (lines.Count == 0) throw new FormatException("a table needs a header line");
        var columns = lines[0].Select((name, i) => (name.Trim(), i)).ToDictionary(p => p.Item1, p => p.i, StringComparer.Ordinal);
        var table = new CsvTable(columns, []);
        table.Rows = [.. lines.Skip(1).Select(f => new Row(table, f))];
        return table;
    }

    /// <summary>Parses an embedded table, e.g. <c>data/kinds.csv</c>.</summary>
    public static CsvTable FromEmbedded(string name) => Parse(Embedded.Text(name));

    private static IEnumerable<IReadOnlyList<string>> Records(string text)
    {
        var fields = new List<string>();
        var field = new System.Text.StringBuilder();
        bool quoted = false, any = false;
        for (int i = 0; i <= text.Length; i++)
        {
            char c = i < text.Length ? text[i] : '\n';
            if (quoted)
            {
                if (c != '"') field.Append(c);
                else if (i + 1 < text.Length && text[i + 1] == '"') { field.Append('"'); i++; }
                else quoted = false;
                continue;
            }
            if (c == '"') { quoted = true; any = true; }
            else if (c == ',') { fields.Add(field.ToString().Trim()); field.Clear(); any = true; }
            else if (c == '#' && !any && field.Length == 0) { while (i < text.Length && text[i] != '\n') i++; }
            else if (c == '\n')
            {
                if (any || field.Length > 0) { fields.Add(field.ToString().Trim()); yield return fields; }
                fields = []; field.Clear(); any = false;
            }
            else if (c != '\r') field.Append(c);
        }
    }
}
