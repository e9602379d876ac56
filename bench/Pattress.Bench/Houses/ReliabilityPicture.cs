using System.Globalization;
using System.Text;
using Pattress.Walls;

namespace Pattress.Bench;

/// <summary>Stated against found, a panel each: on the line what was stated came true; a dot is as wide as its bin is full.</summary>
internal static class ReliabilityPicture
{
    private const int Side = 220, Gap = 60, Top = 40;

    public static string Svg(IReadOnlyList<(string Title, LearningReport Report)> panels)
    {
        int width = (panels.Count * (Side + Gap)) + Gap, height = Top + Side + Gap;
        var text = new StringBuilder(string.Create(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {width} {height}\" font-family=\"sans-serif\" font-size=\"12\" role=\"img\" aria-label=\"Stated chances against what was found\">\n<rect width=\"{width}\" height=\"{height}\" fill=\"#fff\"/>\n"));
        for (int i = 0; i < panels.Count; i++) Panel(text, Gap + (i * (Side + Gap)), panels[i].Title, panels[i].Report);
        return text.Append("</svg>\n").ToString();
    }

    private static void Panel(StringBuilder text, int left, string title, LearningReport report)
    {
        string F(double v) => v.ToString("0.#", CultureInfo.InvariantCulture);
        double X(double p) => left + (p * Side);
        double Y(double p) => Top + ((1 - p) * Side);
        text.Append($"<text x=\"{left}\" y=\"{Top - 14}\">{title}, n = {report.Count}</text>\n<rect x=\"{left}\" y=\"{Top}\" width=\"{Side}\" height=\"{Side}\" fill=\"none\" stroke=\"#888\"/>\n");
        text.Append($"<line x1=\"{F(X(0))}\" y1=\"{F(Y(0))}\" x2=\"{F(X(1))}\" y2=\"{F(Y(1))}\" stroke=\"#888\" stroke-dasharray=\"4 3\"/>\n");
        foreach (var b in report.Bins)
        {
            double error = 2 * Math.Sqrt(Math.Max(b.ShareFound * (1 - b.ShareFound), 0.25 / b.Count) / b.Count);
            text.Append($"<line x1=\"{F(X(b.MeanPredicted))}\" y1=\"{F(Y(Math.Max(0, b.ShareFound - error)))}\" x2=\"{F(X(b.MeanPredicted))}\" y2=\"{F(Y(Math.Min(1, b.ShareFound + error)))}\" stroke=\"#999\"/>\n");
            text.Append($"<circle cx=\"{F(X(b.MeanPredicted))}\" cy=\"{F(Y(b.ShareFound))}\" r=\"{F(2 + (8 * Math.Sqrt((double)b.Count / report.Count)))}\" fill=\"#a4581f\" fill-opacity=\"0.8\"/>\n");
        }
        foreach (double p in new[] { 0, 0.5, 1 })
            text.Append($"<text x=\"{F(X(p))}\" y=\"{Top + Side + 16}\" text-anchor=\"middle\">{F(p)}</text><text x=\"{left - 6}\" y=\"{F(Y(p) + 4)}\" text-anchor=\"end\">{F(p)}</text>\n");
        text.Append($"<text x=\"{F(X(0.5))}\" y=\"{Top + Side + 34}\" text-anchor=\"middle\">stated</text>\n<text x=\"{left + 6}\" y=\"{Top + 16}\">found</text>\n");
    }
}
