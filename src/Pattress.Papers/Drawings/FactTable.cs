using System.Text;

namespace Pattress.Papers.Drawings;

/// <summary>Renders the facts of a drawing as an HTML table.</summary>
public static class FactTable
{
    /// <summary>The table with its caption; one body a group.</summary>
    /// <param name="head">Headings of the three columns.</param>
    public static string Html(Drawing drawing, Fact head)
    {
        var text = new StringBuilder("<table class=\"facts\"><caption>").Append(SvgPen.Escape(drawing.Title)).Append("</caption><thead>");
        Row(text, head, "th scope=\"col\"", "th");
        text.Append("</thead>");
        foreach (var group in drawing.Facts.GroupBy(f => f.Group))
        {
            text.Append("<tbody><tr><th colspan=\"3\" scope=\"rowgroup\">").Append(SvgPen.Escape(group.Key)).Append("</th></tr>");
            foreach (var (_, fact) in group) Row(text, fact, "td", "td");
            text.Append("</tbody>");
        }

        return text.Append("</table>").ToString();
    }

    private static void Row(StringBuilder text, Fact fact, string open, string close)
    {
        text.Append("<tr>");
        foreach (string cell in (string[])[fact.What, fact.Where, fact.Says])
            text.Append('<').Append(open).Append('>').Append(SvgPen.Escape(cell)).Append("</").Append(close).Append('>');
        text.Append("</tr>");
    }
}
