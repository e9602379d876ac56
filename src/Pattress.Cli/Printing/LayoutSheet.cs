using System.Globalization;
using Pattress.Jobs.Layouts;

namespace Pattress.Cli.Printing;

/// <summary>Layouts as people read them.</summary>
internal sealed class LayoutSheet(Sheet sheet, Say say)
{
    public void Write(LayoutAnswer answer)
    {
        if (answer.Items.Count == 0) sheet.Paragraph("No line of brackets that could be moved.");
        foreach (var item in answer.Items)
        {
            sheet.Heading($"{(item.Name.Length > 0 ? item.Name : item.Id)} ({item.Id}) on {item.Wall}");
            for (int i = 0; i < item.Layouts.Count; i++) sheet.Item($"{i + 1}.", One(item.Layouts[i]));
        }

        foreach (var line in answer.Lines) sheet.Item("!", $"{say.Sentence(line.Why)} {string.Join("; ", line.Things.Select(t => $"{t.Id}: {Say.Of(t.Before)} before, {Say.Of(t.After)} then"))}.");
        sheet.Gap();
        sheet.Paragraph("A support tells nothing of cables and pipes: detector and isolation come first all the same.");
    }

    private string One(ItemLayout layout) =>
        $"{Say.Of(layout.Verdict)}: {say.Sentence(layout.Why)} At {string.Join(", ", layout.Brackets.Select(b => b.X.ToString("0", CultureInfo.InvariantCulture)))} mm from the left.";
}
