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
        for (int at = 0; at < text.Length;)
        {
            if (text[at] == '#')
            {
                at = End(text, at) + 1;
                continue;
            }

            int start = at, end;
            var fields = new List<string>();
            do
            {
                fields.Add(Field(text, at, out end));
                at = end + 1;
            }
            while (end < text.Length && text[end] == ',');
            if (!text.AsSpan(start, end - start).IsWhiteSpace()) yield return fields;
        }
    }

    private static int End(string text, int at) => text.IndexOf('\n', at) is >= 0 and var end ? end : text.Length;

    /// <summary>The field that begins at a place, and the place of the comma or line end behind it. Most are one piece of the text.</summary>
    private static string Field(string text, int start, out int end)
    {
        int stop = text.AsSpan(start).IndexOfAny(',', '\n', '"');
        end = stop < 0 ? text.Length : start + stop;
        if (stop < 0 || text[end] != '"') return text.AsSpan(start, end - start).Trim().ToString();
        int close = stop == 0 ? text.IndexOf('"', start + 1) : -1;
        if (close < 0 || close + 1 < text.Length && text[close + 1] is not (',' or '\n')) return Pieced(text, start, out end);
        end = close + 1;
        return text.AsSpan(start + 1, close - start - 1).Trim().ToString();
    }

    private static string Pieced(string text, int start, out int end)
    {
        var field = new System.Text.StringBuilder();
        bool quoted = false;
        for (end = start; end < text.Length; end++)
        {
            char c = text[end];
            if (!quoted && c is (',' or '\n')) break;
            if (c == '"' && quoted && end + 1 < text.Length && text[end + 1] == '"') field.Append(text[end++]);
            else if (c == '"') quoted = !quoted;
            else field.Append(c);
        }

        return field.ToString().Trim();
    }
}
