using System.Globalization;
using Pattress.Jobs.Layouts;

namespace Pattress.Cli.Printing;

/// <summary>Layouts as people read them.</summary>
internal sealed class LayoutSheet(Sheet sheet, Say say)
{
    public void Write(LayoutAnswer answer)
    {
        if (answer.Items.Count == 0) sheet.Paragraph(sheet.T("layout.none"));
        foreach (var item in answer.Items)
        {
            sheet.Heading(sheet.T("item.on", Said.Words(item.Id), Said.Words(item.Wall), Said.Words(item.Name.Length > 0 ? item.Name : item.Id)));
            for (int i = 0; i < item.Layouts.Count; i++)
            {
                sheet.Item($"{i + 1}.", One(item.Layouts[i]));
                if (item.Layouts[i].Enter is { } enter) sheet.Paragraph(say.Sentence(enter), 3);
            }
        }

        foreach (var line in answer.Lines) sheet.Item("!", $"{say.Sentence(line.Why)} {string.Join("; ", line.Things.Select(t => sheet.T("layout.then", Said.Words(sheet.Verdict(t.Before)), Said.Words(sheet.Verdict(t.After)), Said.Words(t.Id))))}.");
        sheet.Gap();
        sheet.Paragraph(sheet.T("layout.caution"));
    }

    private string One(ItemLayout layout) =>
        $"{sheet.Verdict(layout.Verdict)}: {say.Sentence(layout.Why)} {sheet.T("layout.at", Said.Words(string.Join(", ", layout.Brackets.Select(b => b.X.ToString("0", CultureInfo.InvariantCulture)))))}";
}
