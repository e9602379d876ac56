using Spectre.Console;

namespace Pattress.Cli.Printing;

/// <summary>A table without lines, two blanks between its columns.</summary>
internal static class Columns
{
    public static Table Of(params IReadOnlyList<string> heads)
    {
        var table = new Table { Border = TableBorder.None, ShowHeaders = true };
        foreach (string head in heads)
        {
            var column = new TableColumn(new Text(head.TrimStart('>'), new Style(decoration: Decoration.Underline))).Padding(0, 0, 2, 0);
            table.AddColumn(head.StartsWith('>') ? column.RightAligned() : column);
        }
        return table;
    }

    public static Table Row(this Table table, params IReadOnlyList<string> cells)
    {
        table.AddRow(cells.Select(c => new Text(Sheet.Clean(c))));
        return table;
    }

    public static Table Widths(this Table table, params IReadOnlyList<int> widths)
    {
        for (int i = 0; i < widths.Count; i++)
        {
            if (widths[i] > 0) table.Columns[i].Width(widths[i]);
        }
        return table;
    }
}
