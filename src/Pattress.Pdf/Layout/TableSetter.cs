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
        for (int i = 0; i < table.Rows.Count; i++)
        {
            var cells = Cells(table, i, widths);
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
        double first = table.Rows.Count == 0 ? 0 : Height(Cells(table, 0, widths), Letters.Cell, table.Tall);
        return 8 + Height(Heads(table, widths), Letters.CellHead, false) + first;
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
        var cells = Heads(table, widths);
        if (repeated) flow.Add(new Open(Role.Aside));
        Row(cells, table, widths, Letters.CellHead, repeated ? null : Role.HeadCell, false);
        if (repeated) flow.Add(new Close());
        Line(0.35);
    }

    private void Row(Filling[] cells, Table table, double[] widths, Letters letters, Role? role, bool tall)
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

    private void Cell(Filling cell, double x, double width, Letters letters, bool right)
    {
        if (cell.Formula is { } formula)
        {
            double at = right ? x + width - PadMm - formula.Width : x + PadMm;
            foreach (var ink in formula.At(at, flow.Y + PadMm * 0.7 + Math.Max(letters.BaseMm, formula.Up))) flow.Add(ink);
            return;
        }
        for (int i = 0; i < cell.Lines.Count; i++) Text(cell.Lines[i], x, width, i * letters.LineMm, letters, right);
    }

    private void Text(string line, double x, double width, double down, Letters letters, bool right)
    {
        if (line == Table.Tick)
        {
            flow.Aside(new Frame(x + PadMm, flow.Y + PadMm * 0.7 + 0.3, 3, 3, 0.25));
            return;
        }
        double at = right ? x + width - PadMm - letters.WidthMm(line) : x + PadMm;
        flow.Add(new Run(at, flow.Y + PadMm * 0.7 + down + letters.BaseMm, line, letters.Face, letters.SizePt));
    }

    private void Line(double width) => flow.Aside(new Rule(flow.Left, flow.Y, flow.Left + flow.Width, flow.Y, width));

    private static double[] Widths(Table table, double width)
    {
        double sum = table.Columns.Sum(c => c.Share);
        return [.. table.Columns.Select(c => c.Share / sum * width)];
    }

    private static Filling[] Heads(Table table, double[] widths) =>
        [.. table.Columns.Select((c, i) => new Filling(Letters.CellHead.Lines(c.Head, widths[i] - 2 * PadMm)))];

    private static Filling[] Cells(Table table, int row, double[] widths) => [.. table.Rows[row].Select((text, i) =>
        table.Formulas.TryGetValue((row, i), out var formula)
            ? new Filling([text], MathSetter.Lines(formula, widths[i] - 2 * PadMm, Letters.Cell.SizePt))
            : new Filling(Letters.Cell.Lines(text, widths[i] - 2 * PadMm)))];

    private static double Height(Filling[] cells, Letters letters, bool tall) =>
        Math.Max(tall ? TallMm : 0, cells.Max(c => c.HeightMm(letters)) + 1.6 * PadMm);

    /// <summary>What stands in a cell: lines of text, or a formula.</summary>
    private sealed record Filling(IReadOnlyList<string> Lines, MathBox? Formula = null)
    {
        public double HeightMm(Letters letters) => Formula is { } f ? Math.Max(letters.LineMm, Math.Max(letters.BaseMm, f.Up) + f.Down) : Lines.Count * letters.LineMm;
    }
}
