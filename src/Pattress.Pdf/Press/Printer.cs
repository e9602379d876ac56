using System.Globalization;
using Pattress.Papers.Documents;
using Pattress.Papers.Drawings;
using Pattress.Pdf.Fonts;
using Pattress.Pdf.Layout;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Structure;
using PdfSharp.UniversalAccessibility;

namespace Pattress.Pdf.Press;

/// <summary>Puts the ink of pages into a tagged file.</summary>
internal sealed class Printer
{
    private static readonly object Fonts = GlobalFontSettings.FontResolver = new Face.Resolver();
    private readonly Theme _theme = Theme.OfPages();
    private readonly PdfDocument _file = new();
    private readonly StructureBuilder _structure;
    private readonly Paper _paper;

    private Printer(Paper paper, DateTimeOffset made)
    {
        _paper = paper;
        _ = Fonts;
        _structure = UAManager.ForDocument(_file).StructureBuilder;
        UAManager.ForDocument(_file).SetDocumentLanguage(paper.Language);
        _file.Info.Title = paper.Title;
        _file.Info.CreationDate = _file.Info.ModificationDate = made.UtcDateTime;
        _file.Options.CompressContentStreams = true;
    }

    public static byte[] Print(Paper paper, IReadOnlyList<Leaf> pages, DateTimeOffset made)
    {
        var printer = new Printer(paper, made);
        for (int i = 0; i < pages.Count; i++) printer.Page(pages[i], i + 1, pages.Count);
        using var stream = new MemoryStream();
        printer._file.Save(stream, false);
        return stream.ToArray();
    }

    private void Page(Leaf leaf, int number, int of)
    {
        var page = _file.AddPage();
        page.Width = XUnit.FromMillimeter(_paper.Size.WidthMm);
        page.Height = XUnit.FromMillimeter(_paper.Size.HeightMm);
        using var pen = XGraphics.FromPdfPage(page);
        foreach (var ink in leaf.Ink) Put(ink, pen);
        Foot(pen, number, of);
    }

    private void Foot(XGraphics pen, int number, int of)
    {
        string page = string.Format(CultureInfo.InvariantCulture, _paper.PageOf, number, of);
        double y = _paper.Size.HeightMm - 9, right = _paper.Size.WidthMm - PaperSize.MarginMm;
        _structure.BeginArtifact();
        Put(new Run(PaperSize.MarginMm, y, Face.Regular.Shown(_paper.Foot), Face.Regular, 7.5, true), pen);
        Put(new Run(right - Face.Regular.WidthMm(page, 7.5), y, page, Face.Regular, 7.5, true), pen);
        _structure.End();
    }

    private void Put(Ink ink, XGraphics pen)
    {
        switch (ink)
        {
            case Open i: Begin(i); break;
            case Close: _structure.End(); break;
            case Run i: Write(i, pen); break;
            case Rule i: pen.DrawLine(Line(i.WidthMm, i.Dashed), Units.Pt(i.X1), Units.Pt(i.Y1), Units.Pt(i.X2), Units.Pt(i.Y2)); break;
            case Frame i: pen.DrawRectangle(Line(i.WidthMm, false), Units.Pt(i.X), Units.Pt(i.Y), Units.Pt(i.Width), Units.Pt(i.Height)); break;
            case Trail i: pen.DrawLines(Line(i.WidthMm, false), [.. i.Points.Select(p => new XPoint(Units.Pt(p.X), Units.Pt(p.Y)))]); break;
            case Drawn i: new DrawingPen(pen, _theme, i).Draw(); break;
            default: throw new ArgumentException($"no ink for {ink.GetType().Name}", nameof(ink));
        }
    }

    private void Write(Run run, XGraphics pen)
    {
        if (run.Text.Length > 0) pen.DrawString(run.Text, run.Face.At(run.SizePt), Brush(run.Faint ? "lead" : "pencil"), Units.Pt(run.X), Units.Pt(run.Base));
    }

    private XSolidBrush Brush(string name) => new(DrawingPen.Colour(_theme, name, 1));

    private XPen Line(double widthMm, bool dashed)
    {
        var pen = new XPen(DrawingPen.Colour(_theme, "pencil", 1), Units.Pt(widthMm));
        if (dashed) pen.DashPattern = [8, 6];
        return pen;
    }

    private void Begin(Open open)
    {
        switch (open.Role)
        {
            case Role.Aside: _structure.BeginArtifact(); break;
            case Role.Figure: _structure.BeginElement(PdfIllustrationElementTag.Figure, open.Alt, new XRect(Units.Pt(open.X), Units.Pt(open.Y), Units.Pt(open.Width), Units.Pt(open.Height))); break;
            default: _structure.BeginElement(Tag(open.Role)); break;
        }
    }

    private static PdfBlockLevelElementTag Tag(Role role) => role switch
    {
        Role.H1 => PdfBlockLevelElementTag.Heading1,
        Role.H2 => PdfBlockLevelElementTag.Heading2,
        Role.H3 => PdfBlockLevelElementTag.Heading3,
        Role.List => PdfBlockLevelElementTag.List,
        Role.Item => PdfBlockLevelElementTag.ListItem,
        Role.Label => PdfBlockLevelElementTag.Label,
        Role.Body => PdfBlockLevelElementTag.ListBody,
        Role.Table => PdfBlockLevelElementTag.Table,
        Role.Row => PdfBlockLevelElementTag.TableRow,
        Role.HeadCell => PdfBlockLevelElementTag.TableHeaderCell,
        Role.Cell => PdfBlockLevelElementTag.TableDataCell,
        _ => PdfBlockLevelElementTag.Paragraph,
    };
}
