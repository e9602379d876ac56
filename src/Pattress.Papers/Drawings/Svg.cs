using System.Globalization;
using System.Text;
using Pattress.Jobs;

namespace Pattress.Papers.Drawings;

/// <summary>
/// Renders a drawing as SVG: classes for the look, plain attributes for the geometry, no style and no script.
/// The same drawing gives the same text, byte for byte.
/// </summary>
public static class Svg
{
    /// <summary>The whole element, hidden from screen readers, who get the table of the same facts.</summary>
    public static string Of(Drawing drawing) => Of(drawing, "", " aria-hidden=\"true\" focusable=\"false\"");

    /// <summary>A file of its own: with the pages' style for both themes, a title and what the marks say as its description.</summary>
    public static string Alone(Drawing drawing)
    {
        string facts = string.Join(". ", drawing.Facts.Select(f => string.Join(", ", ((string[])[f.Fact.What, f.Fact.Where, f.Fact.Says]).Where(t => t.Length > 0))));
        string inside = $"<title>{SvgPen.Escape(drawing.Title)}</title><desc>{SvgPen.Escape(facts)}</desc><style>{StyleSheet.Alone(StyleSheet.OfPages)}</style>";
        return Of(drawing, inside, " role=\"img\"") + "\n";
    }

    private static string Of(Drawing drawing, string inside, string attributes)
    {
        var pen = new SvgPen(drawing);
        double width = drawing.View.Width * drawing.PxPerMm, height = drawing.View.Height * drawing.PxPerMm;
        pen.Out.Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"drawing\" viewBox=\"0 0 {SvgPen.N(width)} {SvgPen.N(height)}\" width=\"{SvgPen.N(width)}\" height=\"{SvgPen.N(height)}\"{attributes}>{inside}");
        foreach (var group in drawing.Groups)
        {
            pen.Out.Append("<g class=\"").Append(SvgPen.Escape(group.Class)).Append("\">");
            foreach (var mark in group.Marks) pen.Draw(mark);
            pen.Out.Append("</g>");
        }

        return pen.Out.Append("</svg>").ToString();
    }
}

/// <summary>Writes marks in px, y down.</summary>
internal sealed class SvgPen(Drawing drawing)
{
    public StringBuilder Out { get; } = new();

    public static string N(double px) => Math.Round(px, 2).ToString("0.##", CultureInfo.InvariantCulture);

    public static string Escape(string text) =>
        text.Replace("&", "&amp;").Replace("<", "&lt;").Replace(">", "&gt;").Replace("\"", "&quot;");

    public void Draw(Mark mark)
    {
        switch (mark)
        {
            case LineMark m: Open("path", m).Append(" d=\"M").Append(At(m.From)).Append('L').Append(At(m.To)).Append("\"/>"); break;
            case PathMark m: Path(m); break;
            case RectMark m: Box(m, m.Area).Append("/>"); break;
            case BandMark m: Box(m, m.Area).Append(" fill-opacity=\"").Append(N(Math.Clamp(m.Strength, 0, 1))).Append("\"/>"); break;
            case CircleMark m: Open("circle", m).Append(" cx=\"").Append(N(X(m.At))).Append("\" cy=\"").Append(N(Y(m.At))).Append("\" r=\"").Append(N(m.RadiusMm * drawing.PxPerMm)).Append("\"/>"); break;
            case HatchMark m: Hatch(m); break;
            case TextMark m: Text(m); break;
            default: throw new ArgumentException($"no pen for {mark.GetType().Name}", nameof(mark));
        }
    }

    private double X(Point p) => (p.X - drawing.View.X) * drawing.PxPerMm;

    private double Y(Point p) => (drawing.View.Top - p.Y) * drawing.PxPerMm;

    private string At(Point p) => N(X(p)) + " " + N(Y(p));

    private StringBuilder Open(string element, Mark mark) => Out.Append('<').Append(element).Append(" class=\"").Append(Escape(mark.Class)).Append('"');

    private StringBuilder Box(Mark mark, Rect r) => Open("rect", mark)
        .Append(" x=\"").Append(N(X(new(r.X, r.Top)))).Append("\" y=\"").Append(N(Y(new(r.X, r.Top))))
        .Append("\" width=\"").Append(N(Math.Max(0, r.Width * drawing.PxPerMm))).Append("\" height=\"").Append(N(Math.Max(0, r.Height * drawing.PxPerMm))).Append('"');

    private void Path(PathMark mark)
    {
        if (mark.Points.Count == 0) return;
        Open("path", mark).Append(" d=\"M").AppendJoin('L', mark.Points.Select(At)).Append(mark.Closed ? "Z\"/>" : "\"/>");
    }

    private void Hatch(HatchMark mark)
    {
        Open("path", mark).Append(" d=\"");
        foreach (var (from, to) in Strokes.Over(mark.Area, mark.SpacingMm, mark.Slope)) Out.Append('M').Append(At(from)).Append('L').Append(At(to));
        Out.Append("\"/>");
    }

    private void Text(TextMark mark)
    {
        Open("text", mark).Append(" text-anchor=\"").Append(mark.Anchor switch { Anchor.Start => "start", Anchor.Middle => "middle", _ => "end" }).Append('"');
        if (mark.Upright) Out.Append(" transform=\"translate(").Append(At(mark.At)).Append(") rotate(-90)\">");
        else Out.Append(" x=\"").Append(N(X(mark.At))).Append("\" y=\"").Append(N(Y(mark.At))).Append("\">");
        Out.Append(Escape(mark.Text)).Append("</text>");
    }
}
