using Pattress.Papers.Documents;
using Pattress.Papers.Sheets;
using Pattress.Pdf;
using UglyToad.PdfPig.Content;

namespace Pattress.Tests.Papers;

/// <summary>What is signed together stands together: no line to sign is left alone on the next page. Common practice, no source.</summary>
public class SignatureTests
{
    private static readonly string[] Labels = ["Workedby", "Handedover", "Signedbythefitter", "Signedbythecustomer"];

    [Theory]
    [InlineData("a4"), InlineData("letter")]
    public void However_much_stands_before_it(string size)
    {
        for (int lines = 24; lines < 46; lines++)
        {
            IReadOnlyList<Block> blocks = [.. Enumerable.Repeat(new Paragraph("A line of the paper."), lines), new WriteOn(Labels[0]), new WriteOn(Labels[1]), new SignHere(Labels[2], []), new SignHere(Labels[3], [])];
            using var file = new PdfFile(PdfPapers.Write(new Paper("test", "Test", "en-GB", PaperSize.Find(size)!, "Test", "Page {0} of {1}", blocks), PaperSamples.Made));
            Assert.Single(Labels.Select(l => PageOf(file, l).Number).Distinct());
        }
    }

    [Theory]
    [InlineData("quote"), InlineData("hand-over"), InlineData("proof-record")]
    public void On_the_papers_that_are_signed(string id)
    {
        var input = PaperSamples.Input(PaperSamples.DemoHouse);
        string[] labels = [.. PaperBook.Of(id, input).Blocks.Select(b => b switch { WriteOn w => w.Label, SignHere s => s.Label, _ => "" }).Where(l => l.Length > 0).Select(Pressed)];
        Assert.True(labels.Length > 1, "nothing is signed");
        using var file = new PdfFile(PaperSamples.Pdf(id, input));
        Assert.Single(labels.Select(l => PageOf(file, l).Number).Distinct());
    }

    /// <summary>The last page that has it: words of a label may stand in the text before as well.</summary>
    private static Page PageOf(PdfFile file, string label) => file.Pages.Last(p => Pressed(PdfFile.TextOf(p)).Contains(label, StringComparison.Ordinal));

    private static string Pressed(string text) => text.Replace(" ", "", StringComparison.Ordinal);
}
