using System.Text;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.DocumentLayoutAnalysis.TextExtractor;

namespace Pattress.Tests.Papers;

/// <summary>A line, a circle or a cross found on a page, mm from its lower left corner.</summary>
internal readonly record struct Place(double X, double Y)
{
    public double To(Place other) => double.Hypot(X - other.X, Y - other.Y);
}

/// <summary>What stands in a PDF, read back by a library that had no part in writing it.</summary>
internal sealed class PdfFile(byte[] bytes) : IDisposable
{
    // ISO 32000-1 8.3.2.3: a unit of the page is 1/72 in.
    private const double MmPerPt = 25.4 / 72;

    private readonly PdfDocument _document = PdfDocument.Open(bytes);

    public byte[] Bytes => bytes;

    /// <summary>The file's own words, streams aside.</summary>
    public string Raw { get; } = Encoding.Latin1.GetString(bytes);

    public IReadOnlyList<Page> Pages => [.. _document.GetPages()];

    public PdfDocument Document => _document;

    /// <summary>Text of all pages, in the order of the file, which is the order that a screen reader reads.</summary>
    public string Text => string.Join(' ', Pages.Select(TextOf));

    public static string TextOf(Page page) => ContentOrderTextExtractor.GetText(page).ReplaceLineEndings(" ");

    public static (double Width, double Height) SizeMm(Page page) => (page.Width * MmPerPt, page.Height * MmPerPt);

    /// <summary>Every straight piece that is drawn.</summary>
    public static IReadOnlyList<(Place From, Place To)> Lines(Page page) =>
        [.. page.Paths.Where(p => p.IsStroked).SelectMany(p => p).SelectMany(s => s.Commands).OfType<PdfSubpath.Line>().Select(l => (Mm(l.From), Mm(l.To)))];

    /// <summary>Closed curves as wide as high, by their middle and diameter.</summary>
    public static IReadOnlyList<(Place Middle, double Diameter)> Circles(Page page) =>
        [.. page.Paths.Where(p => p.IsStroked).SelectMany(p => p).Where(s => s.Commands.OfType<PdfSubpath.CubicBezierCurve>().Count() == 4)
            .Select(s => s.GetBoundingRectangle()).OfType<PdfRectangle>().Where(r => Math.Abs(r.Width - r.Height) < 0.01)
            .Select(r => (Mm(r.Centroid), r.Width * MmPerPt))];

    public void Dispose() => _document.Dispose();

    private static Place Mm(PdfPoint p) => new(p.X * MmPerPt, p.Y * MmPerPt);
}
