using System.Globalization;
using Pattress.Jobs;
using Pattress.Papers.Documents;
using Pattress.Pdf.Fonts;

namespace Pattress.Pdf.Layout;

/// <summary>Sets a drawing at true size on pages of its own: frame and cut marks, register crosses, lines of 100 mm to check the print.</summary>
internal sealed class TileSetter(Flow flow, PaperSize size)
{
    private const double HeadMm = 30, FootMm = 22, HundredMm = 100, FourInchesMm = 101.6, TickMm = 3, CrossMm = 5, CutMm = 5;

    public void Set(TrueSize part)
    {
        var view = part.Drawing.View;
        var tiles = Tiles.Of(view, flow.Width, size.HeightMm - HeadMm - FootMm - Flow.TopMm);
        for (int row = 0; row < tiles.Down; row++)
            for (int column = 0; column < tiles.Across; column++) Tile(part, tiles, column, row);
    }

    private void Tile(TrueSize part, Tiles tiles, int column, int row)
    {
        if (flow.Page.Ink.Count > 0) flow.Turn();
        var area = tiles.Area(column, row);
        double x = flow.Left, y = Flow.TopMm + HeadMm;
        Head(part, tiles, column, row);
        Scales(part.Says, y);
        var view = part.Drawing.View;
        flow.Add(new Open(Role.Figure, PictureSetter.Alt(part.Drawing), x, y, tiles.Width, tiles.Height));
        flow.Add(new Drawn(part.Drawing, x + view.X - area.X, y + area.Top - view.Top, x, y, tiles.Width, tiles.Height));
        flow.Add(new Close());
        flow.Aside([new Frame(x, y, tiles.Width, tiles.Height, 0.1), .. CutMarks(x, y, tiles.Width, tiles.Height), .. Register(tiles, area, x, y)]);
        flow.Y = flow.Bottom;
    }

    private void Head(TrueSize part, Tiles tiles, int column, int row)
    {
        var title = new Letters(Face.Bold, 12);
        flow.Y = Flow.TopMm;
        Text(part.Heading, title, Role.H2);
        if (tiles.Across * tiles.Down == 1) return;
        string tile = string.Format(CultureInfo.InvariantCulture, part.Says.Tile, column + 1, tiles.Across, tiles.Down - row, tiles.Down);
        Text($"{tile}. {part.Says.Join}", Letters.Note, Role.Paragraph);
    }

    private void Text(string text, Letters letters, Role role)
    {
        flow.Add(new Open(role));
        foreach (string line in letters.Lines(text, flow.Width))
        {
            flow.Add(new Run(flow.Left, flow.Y + letters.BaseMm, line, letters.Face, letters.SizePt));
            flow.Y += letters.LineMm;
        }
        flow.Add(new Close());
    }

    private void Scales(TrueSizeWords says, double top)
    {
        double y = top - 7, x = flow.Left, side = 9, words = x + HundredMm + 4;
        flow.Aside([.. Across(x, y, HundredMm), .. Up(side, top, HundredMm), .. says.Inches.Length > 0 ? Across(x, y - 5.5, FourInchesMm) : []]);
        flow.Y = y - 3.4;
        flow.Add(new Open(Role.Paragraph));
        foreach (string line in Letters.Note.Lines($"{says.HundredMm}. {says.Check}", flow.Width - HundredMm - 4))
        {
            flow.Add(new Run(words, flow.Y + Letters.Note.BaseMm, line, Letters.Note.Face, Letters.Note.SizePt));
            flow.Y += Letters.Note.LineMm;
        }
        if (says.Inches.Length > 0) flow.Add(new Run(words, y - 4.5, says.Inches, Letters.Note.Face, Letters.Note.SizePt));
        flow.Add(new Close());
    }

    private static IReadOnlyList<Ink> Across(double x, double y, double length) =>
        [new Rule(x, y, x + length, y, 0.25), new Rule(x, y - TickMm / 2, x, y + TickMm / 2, 0.25), new Rule(x + length, y - TickMm / 2, x + length, y + TickMm / 2, 0.25)];

    private static IReadOnlyList<Ink> Up(double x, double y, double length) =>
        [new Rule(x, y, x, y + length, 0.25), new Rule(x - TickMm / 2, y, x + TickMm / 2, y, 0.25), new Rule(x - TickMm / 2, y + length, x + TickMm / 2, y + length, 0.25)];

    private static IEnumerable<Ink> CutMarks(double x, double y, double width, double height)
    {
        foreach (var (cx, sx) in ((double, int)[])[(x, -1), (x + width, 1)])
            foreach (var (cy, sy) in ((double, int)[])[(y, -1), (y + height, 1)])
            {
                yield return new Rule(cx, cy + sy, cx, cy + sy * CutMm, 0.2);
                yield return new Rule(cx + sx, cy, cx + sx * CutMm, cy, 0.2);
            }
    }

    private static IEnumerable<Ink> Register(Tiles tiles, Rect area, double x, double y)
    {
        foreach (var cross in tiles.Crosses().Where(area.Contains))
        {
            double cx = x + cross.X - area.X, cy = y + area.Top - cross.Y;
            yield return new Rule(cx - CrossMm, cy, cx + CrossMm, cy, 0.15);
            yield return new Rule(cx, cy - CrossMm, cx, cy + CrossMm, 0.15);
            yield return new Trail([.. Enumerable.Range(0, 25).Select(i => (cx + 2.5 * Math.Cos(i * Math.PI / 12), cy + 2.5 * Math.Sin(i * Math.PI / 12)))], 0.15);
        }
    }
}
