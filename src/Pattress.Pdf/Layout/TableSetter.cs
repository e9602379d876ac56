using Pattress.Papers.Documents;

namespace Pattress.Pdf.Layout;

/// <summary>Sets tables. Rows are not broken over pages; the head stands again on each page.</summary>
internal sealed class TableSetter(Flow flow)
{
    private const double PadMm = 1.1, TallMm = 8.5, LineMm = 0.15;

    public void Set(Table table)
    {
        double[] widths = Widths(table, flow.Width);
        Caption(table);
        flow.Add(new Open(Role.Table));
        Head(table, widths, repeated: false);
        foreach (var row in table.Rows)
        {
            var cells = Lines(row, widths, Letters.Cell);
            if (flow.Need(Height(cells, Letters.Cell, table.Tall))) Head(table, widths, repeated: true);
            Row(cells, table, widths, Letters.Cell, Role.Cell, table.Tall);
            Line(LineMm);
        }
        flow.Add(new Close());
        flow.Y += 3;
    }

    /// <summary>Height of caption, head and first row, mm.</summary>
    public static double LeastMm(Table table, double width)
    {
        double[] widths = Widths(table, width);
        double first = table.Rows.Count == 0 ? 0 : Height(Lines(table.Rows[0], widths, Letters.Cell), Letters.Cell, table.Tall);
        return 8 + Height(Lines([.. table.Columns.Select(c => c.Head)], widths, Letters.CellHead), Letters.CellHead, false) + first;
    }

    private void Caption(Table table)
    {
        flow.Need(LeastMm(table, flow.Width));
        flow.Gap(1);
        flow.Add(new Open(Role.Paragraph));
        flow.Add(new Run(flow.Left, flow.Y + Letters.Strong.BaseMm, Letters.Strong.Face.Shown(table.Caption), Letters.Strong.Face, Letters.Strong.SizePt));
        flow.Add(new Close());
        flow.Y += Letters.Strong.LineMm + 0.6;
    }

    private void Head(Table table, double[] widths, bool repeated)
    {
        var cells = Lines([.. table.Columns.Select(c => c.Head)], widths, Letters.CellHead);
        if (repeated) flow.Add(new Open(Role.Aside));
        Row(cells, table, widths, Letters.CellHead, repeated ? null : Role.HeadCell, false);
        if (repeated) flow.Add(new Close());
        Line(0.35);
    }

    private void Row(IReadOnlyList<string>[] cells, Table table, double[] widths, Letters letters, Role? role, bool tall)
    {
        double x = flow.Left;
        if (role is not null) flow.Add(new Open(Role.Row));
        for (int i = 0; i < cells.Length; i++)
        {
            if (role is { } cell) flow.Add(new Open(cell));
            Cell(cells[i], x, widths[i], letters, table.Columns[i].Right);
            if (role is not null) flow.Add(new Close());
            x += widths[i];
        }
        if (role is not null) flow.Add(new Close());
        flow.Y += Height(cells, letters, tall);
    }

    private void Cell(IReadOnlyList<string> lines, double x, double width, Letters letters, bool right)
    {
        for (int i = 0; i < lines.Count; i++)
        {
            if (lines[i] == Table.Tick)
            {
                flow.Aside(new Frame(x + PadMm, flow.Y + PadMm * 0.7 + 0.3, 3, 3, 0.25));
                continue;
            }
            double at = right ? x + width - PadMm - letters.WidthMm(lines[i]) : x + PadMm;
            flow.Add(new Run(at, flow.Y + PadMm * 0.7 + i * letters.LineMm + letters.BaseMm, lines[i], letters.Face, letters.SizePt));
        }
    }

    private void Line(double width) => flow.Aside(new Rule(flow.Left, flow.Y, flow.Left + flow.Width, flow.Y, width));

    private static double[] Widths(Table table, double width)
    {
        double sum = table.Columns.Sum(c => c.Share);
        return [.. table.Columns.Select(c => c.Share / sum * width)];
    }

    private static IReadOnlyList<string>[] Lines(IReadOnlyList<string> row, double[] widths, Letters letters) =>
        [.. row.Select((text, i) => letters.Lines(text, widths[i] - 2 * PadMm))];

    private static double Height(IReadOnlyList<string>[] cells, Letters letters, bool tall) =>
        Math.Max(tall ? TallMm : 0, cells.Max(c => c.Count) * letters.LineMm + 1.6 * PadMm);
}
