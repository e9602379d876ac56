using Pattress.Papers.Documents;
using Pattress.Papers.Drawings;

namespace Pattress.Pdf.Layout;

/// <summary>Sets drawings at the size that they were made for, side by side as far as they fit, each with its title below.</summary>
internal sealed class PictureSetter(Flow flow)
{
    private const double BetweenMm = 4;

    public void Set(Pictures pictures)
    {
        foreach (var row in Rows(pictures, flow.Width)) Row(row);
    }

    /// <summary>Height of the first row, mm.</summary>
    public static double FirstRowMm(Pictures pictures, double width) => Rows(pictures, width).Select(HeightMm).FirstOrDefault();

    /// <summary>What a drawing says in words: its title and the facts of its marks.</summary>
    public static string Alt(Drawing drawing) => drawing.Title + ". " + string.Join(". ", drawing.Facts.Select(f => f.Fact)
        .Select(f => string.Join(", ", ((string[])[f.What, f.Where, f.Says]).Where(t => t.Length > 0))));

    private void Row(IReadOnlyList<Drawing> row)
    {
        flow.Need(HeightMm(row));
        double x = flow.Left, foot = flow.Y + row.Max(Height);
        foreach (var drawing in row)
        {
            double width = Width(drawing), height = Height(drawing);
            flow.Add(new Open(Role.Figure, Alt(drawing), x, flow.Y, width, height));
            flow.Add(new Drawn(drawing, x, flow.Y, x, flow.Y, width, height));
            flow.Add(new Close());
            Title(drawing, x, foot);
            x += width + BetweenMm;
        }
        flow.Y = foot + row.Max(TitleMm) + 2;
    }

    private void Title(Drawing drawing, double x, double foot)
    {
        flow.Add(new Open(Role.Paragraph));
        double y = foot;
        foreach (string line in Letters.Note.Lines(drawing.Title, Width(drawing)))
        {
            flow.Add(new Run(x, y + Letters.Note.BaseMm, line, Letters.Note.Face, Letters.Note.SizePt, true));
            y += Letters.Note.LineMm;
        }
        flow.Add(new Close());
    }

    private static IEnumerable<IReadOnlyList<Drawing>> Rows(Pictures pictures, double width)
    {
        var row = new List<Drawing>();
        foreach (var drawing in pictures.Drawings)
        {
            if (row.Count > 0 && row.Sum(d => Width(d) + BetweenMm) + Width(drawing) > width + 0.5) { yield return row; row = []; }
            row.Add(drawing);
        }
        if (row.Count > 0) yield return row;
    }

    private static double HeightMm(IReadOnlyList<Drawing> row) => row.Max(Height) + row.Max(TitleMm) + 2;

    private static double TitleMm(Drawing drawing) => Letters.Note.Lines(drawing.Title, Width(drawing)).Count * Letters.Note.LineMm;

    private static double Width(Drawing drawing) => drawing.View.Width * drawing.PxPerMm * Units.MmPerPx;

    private static double Height(Drawing drawing) => drawing.View.Height * drawing.PxPerMm * Units.MmPerPx;
}
