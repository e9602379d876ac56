using Pattress.Jobs;
using Pattress.Papers.Drawings;
using Pattress.Pdf.Fonts;
using Pattress.Pdf.Layout;
using PdfSharp.Drawing;

namespace Pattress.Pdf.Press;

/// <summary>Draws the marks of a drawing with the look that they have on the pages.</summary>
internal sealed class DrawingPen(XGraphics pen, Theme theme, Drawn drawn)
{
    private readonly double _ptPerMm = drawn.Drawing.PxPerMm * Units.PtPerPx;

    public void Draw()
    {
        var state = pen.Save();
        pen.IntersectClip(new XRect(Units.Pt(drawn.WindowX), Units.Pt(drawn.WindowY), Units.Pt(drawn.WindowWidth), Units.Pt(drawn.WindowHeight)));
        foreach (var mark in drawn.Drawing.Groups.SelectMany(g => g.Marks).Where(IsSeen)) Draw(mark);
        pen.Restore(state);
    }

    /// <summary>A colour of the palette as it is on paper, where the board is white.</summary>
    public static XColor Colour(Theme theme, string name, double opacity)
    {
        var (r, g, b) = name is "board" or "sheet" ? (255, 255, 255) : theme.Colour(name);
        // Thin colour is mixed with the paper's white, so that no printer has to.
        int Mix(int c) => (int)Math.Round(c * opacity + 255 * (1 - opacity));
        return XColor.FromArgb(255, Mix(r), Mix(g), Mix(b));
    }

    // Words beyond the window would not be seen, but read out and found by a search.
    private bool IsSeen(Mark mark)
    {
        if (mark is not TextMark text) return true;
        var at = At(text.At);
        double x = Units.Pt(drawn.WindowX), y = Units.Pt(drawn.WindowY);
        return at.X >= x && at.X <= x + Units.Pt(drawn.WindowWidth) && at.Y >= y && at.Y <= y + Units.Pt(drawn.WindowHeight);
    }

    private void Draw(Mark mark)
    {
        var look = theme.Of(mark);
        switch (mark)
        {
            case LineMark m: if (Stroke(look) is { } line) pen.DrawLine(line, At(m.From), At(m.To)); break;
            case PathMark m: Path(m, look); break;
            case RectMark m: Box(m.Area, look, look.FillOpacity); break;
            case BandMark m: Band(m, look); break;
            case CircleMark m: Circle(m, look); break;
            case HatchMark m: Hatch(m, look); break;
            case TextMark m: Text(m, look); break;
            default: throw new ArgumentException($"no pen for {mark.GetType().Name}", nameof(mark));
        }
    }

    private XPoint At(Point p) => new(Units.Pt(drawn.X) + (p.X - drawn.Drawing.View.X) * _ptPerMm, Units.Pt(drawn.Y) + (drawn.Drawing.View.Top - p.Y) * _ptPerMm);

    private XPen? Stroke(Look look)
    {
        if (look.Stroke.Length == 0) return null;
        var stroke = new XPen(Colour(theme, look.Stroke, look.StrokeOpacity), look.WidthPx * Units.PtPerPx) { LineCap = XLineCap.Round, LineJoin = XLineJoin.Round };
        // PDFsharp measures dashes in widths of the line.
        if (look.Dash.Count > 0) stroke.DashPattern = [.. look.Dash.Select(d => d / look.WidthPx)];
        return stroke;
    }

    private XSolidBrush? Fill(Look look, double opacity) => look.Fill.Length == 0 ? null : new XSolidBrush(Colour(theme, look.Fill, opacity));

    private XRect Area(Rect r) => new(At(new(r.X, r.Top)), new XSize(Math.Max(0, r.Width * _ptPerMm), Math.Max(0, r.Height * _ptPerMm)));

    private void Box(Rect area, Look look, double opacity)
    {
        var (stroke, fill) = (Stroke(look), Fill(look, opacity));
        if (fill is not null) pen.DrawRectangle(fill, Area(area));
        if (stroke is not null) pen.DrawRectangle(stroke, Area(area));
    }

    // Bands lie over each other and darken each other: they are the one thing that has to be see-through.
    private void Band(BandMark mark, Look look)
    {
        var (r, g, b) = theme.Colour(look.Fill.Length > 0 ? look.Fill : "pencil");
        pen.DrawRectangle(new XSolidBrush(XColor.FromArgb((int)Math.Round(255 * Math.Clamp(mark.Strength, 0, 1)), r, g, b)), Area(mark.Area));
    }

    private void Circle(CircleMark mark, Look look)
    {
        double radius = mark.RadiusMm * _ptPerMm;
        var middle = At(mark.At);
        var box = new XRect(middle.X - radius, middle.Y - radius, 2 * radius, 2 * radius);
        if (Fill(look, look.FillOpacity) is { } fill) pen.DrawEllipse(fill, box);
        if (Stroke(look) is { } stroke) pen.DrawEllipse(stroke, box);
    }

    private void Path(PathMark mark, Look look)
    {
        if (mark.Points.Count < 2) return;
        XPoint[] points = [.. mark.Points.Select(At)];
        if (mark.Closed && Fill(look, look.FillOpacity) is { } fill) pen.DrawPolygon(fill, points, XFillMode.Winding);
        if (Stroke(look) is not { } stroke) return;
        if (mark.Closed) pen.DrawPolygon(stroke, points);
        else pen.DrawLines(stroke, points);
    }

    private void Hatch(HatchMark mark, Look look)
    {
        if (Stroke(look) is not { } stroke) return;
        foreach (var (from, to) in Strokes.Over(mark.Area, mark.SpacingMm, mark.Slope)) pen.DrawLine(stroke, At(from), At(to));
    }

    private void Text(TextMark mark, Look look)
    {
        if (mark.Text.Length == 0) return;
        var face = look.Bold ? Face.Bold : Face.Regular;
        double size = Pattress.Papers.Documents.PaperSize.TextPx * Units.PtPerPx * look.TextRem / Theme.TextRem;
        string text = face.Shown(mark.Text);
        double width = face.WidthMm(text, size) / Units.MmPerPt;
        double shift = mark.Anchor switch { Anchor.Start => 0, Anchor.Middle => -width / 2, _ => -width };
        var brush = new XSolidBrush(Colour(theme, look.Fill.Length > 0 ? look.Fill : "pencil", 1));
        var at = At(mark.At);
        if (!mark.Upright) { Haloed(text, face, size, at.X + shift, at.Y, width, look); pen.DrawString(text, face.At(size), brush, at.X + shift, at.Y); return; }
        var state = pen.Save();
        pen.RotateAtTransform(-90, at);
        pen.DrawString(text, face.At(size), brush, at.X + shift, at.Y);
        pen.Restore(state);
    }

    // On the pages such letters have a rim of the board's colour; on paper a white ground does the same.
    private void Haloed(string text, Face face, double size, double x, double y, double width, Look look)
    {
        _ = (text, face);
        if (look.Stroke.Length > 0) pen.DrawRectangle(XBrushes.White, x - 1, y - size * .78, width + 2, size * .86);
    }
}
