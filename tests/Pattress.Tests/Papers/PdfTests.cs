using System.Text.RegularExpressions;
using Pattress.Jobs;
using Pattress.Papers.Documents;
using Pattress.Papers.Sheets;
using Pattress.Pdf.Fonts;

namespace Pattress.Tests.Papers;

/// <summary>Every paper as a file: tagged, selectable, its fonts inside, the same each time.</summary>
public partial class PdfTests
{
    public static TheoryData<string> Ids => PaperSamples.Ids;

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_same_job_gives_the_same_bytes(string id)
    {
        var input = PaperSamples.Input(PaperSamples.DemoHouse);
        byte[] first = PaperSamples.Pdf(id, input);
        Assert.Equal(first, PaperSamples.Pdf(id, PaperSamples.Input(PaperSamples.DemoHouse)));
        Assert.NotEqual(first, PaperSamples.Pdf(id, input with { Made = input.Made.AddDays(1) }));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void It_is_tagged_and_says_its_language_and_title(string id)
    {
        using var file = new PdfFile(PaperSamples.Pdf(id, PaperSamples.Input(PaperSamples.DemoHouse)));
        Assert.Contains("/Marked true", file.Raw, StringComparison.Ordinal);
        Assert.Contains("/StructTreeRoot", file.Raw, StringComparison.Ordinal);
        Assert.Contains("/Lang(en-GB)", file.Raw, StringComparison.Ordinal);
        Assert.Contains("/DisplayDocTitle true", file.Raw, StringComparison.Ordinal);
        Assert.Contains("/S/H1", file.Raw, StringComparison.Ordinal);
        Assert.Contains("Demo house (invented)", file.Document.Information.Title, StringComparison.Ordinal);
        Assert.Equal(Figure().Count(file.Raw), FigureWithAlt().Count(file.Raw));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_font_is_inside(string id)
    {
        using var file = new PdfFile(PaperSamples.Pdf(id, PaperSamples.Input(PaperSamples.DemoHouse)));
        int fonts = FontDescriptor().Count(file.Raw);
        Assert.InRange(fonts, 1, 2);
        Assert.Equal(fonts, EmbeddedFont().Count(file.Raw));
        Assert.All(file.Pages.SelectMany(p => p.Letters), l => Assert.Contains("PATTRE+", l.FontName!, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("a4", 210, 297)]
    [InlineData("letter", 215.9, 279.4)]
    public void Pages_are_as_large_as_the_paper(string size, double width, double height)
    {
        // ISO 216; ANSI/ASME Y14.1.
        using var file = new PdfFile(PaperSamples.Pdf("job-sheet", PaperSamples.Input(PaperSamples.DemoHouse, PaperSize.Find(size))));
        Assert.All(file.Pages, p =>
        {
            Assert.Equal(width, PdfFile.SizeMm(p).Width, 0.01);
            Assert.Equal(height, PdfFile.SizeMm(p).Height, 0.01);
        });
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void No_letter_lies_outside_the_paper_and_pages_are_numbered(string id)
    {
        foreach (var input in new[] { PaperSamples.Input(PaperSamples.DemoHouse), PaperSamples.Input(PaperSamples.Imperial(PaperSamples.Masonry)) })
        {
            using var file = new PdfFile(PaperSamples.Pdf(id, input));
            var pages = file.Pages;
            foreach (var page in pages)
            {
                Assert.Contains($"Page {page.Number} of {pages.Count}", PdfFile.TextOf(page), StringComparison.Ordinal);
                Assert.All(page.Letters, l => Assert.True(l.StartBaseLine.X > 20 && l.EndBaseLine.X < page.Width - 20 && l.StartBaseLine.Y > 15 && l.StartBaseLine.Y < page.Height - 20, $"{id} {page.Number}: {l.Value} at {l.StartBaseLine}"));
            }
        }
    }

    [Fact]
    public void What_the_font_does_not_have_is_seen_to_be_missing()
    {
        var input = PaperSamples.ByHand([SampleAnswer.Bracket(0, new(625, 2100), "strap_toggle.medium")]);
        using var file = new PdfFile(PaperSamples.Pdf("job-sheet", input with { Job = input.Job with { Title = "Łódź 家 house" } }));
        Assert.Contains("Łódź ? house", file.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_font_has_every_letter_of_every_text()
    {
        var texts = Embedded.Names("data/text/").SelectMany(n => CsvTable.FromEmbedded(n).Rows.Select(r => r["british"] + r["american"]));
        Assert.Equal([], texts.SelectMany(t => t).Distinct().Where(c => !Face.Regular.Has(c) || !Face.Bold.Has(c)));
    }

    [Fact]
    public void Words_and_widths_are_those_of_the_file()
    {
        // The layout's widths come from our own reading of the font; PdfPig reads them from the file that was written.
        using var file = new PdfFile(PaperSamples.Pdf("hand-over", PaperSamples.Input(PaperSamples.DemoHouse)));
        var word = file.Pages[0].GetWords().First(w => w.Text == "Handover");
        Assert.Equal(Face.Bold.WidthMm("Handover", 18), (word.Letters[^1].EndBaseLine.X - word.Letters[0].StartBaseLine.X) * 25.4 / 72, 0.05);
    }

    [GeneratedRegex("/S/Figure")]
    private static partial Regex Figure();

    [GeneratedRegex(@"/S/Figure[^\n]*/Alt\(.")]
    private static partial Regex FigureWithAlt();

    [GeneratedRegex("/Type/FontDescriptor")]
    private static partial Regex FontDescriptor();

    [GeneratedRegex("/Type/FontDescriptor[^\n]*/FontFile2")]
    private static partial Regex EmbeddedFont();
}
