using System.Diagnostics;
using Pattress.Jobs;
using Pattress.Papers.Documents;
using Pattress.Papers.Sheets;
using Pattress.Tests.Rules;

namespace Pattress.Tests.Papers;

/// <summary>Papers as poppler sees them: its text is ours, and each page has ink on it.</summary>
public class PictureTests
{
    [Theory]
    [MemberData(nameof(PaperSamples.Ids), MemberType = typeof(PaperSamples))]
    public async Task Poppler_reads_the_same_words_in_the_same_order(string id)
    {
        byte[] pdf = PaperSamples.Pdf(id, PaperSamples.Input(PaperSamples.DemoHouse));
        using var file = new PdfFile(pdf);
        string text = await Poppler(pdf, "pdftotext", "-raw", "{0}", "-");
        var ours = file.Pages.Select(p => Letters(PdfFile.TextOf(p))).ToList();
        var theirs = text.Split('\f').Where(p => p.Length > 0).Select(Letters).ToList();
        Assert.Equal(ours.Count, theirs.Count);
        // The order may differ where words stand upright or beside each other; the letters are the same. Where a template is cut
        // into parts poppler leaves out letters beyond the cut.
        foreach (var (ourPage, theirPage) in ours.Zip(theirs))
        {
            Assert.Equal("", Extra(theirPage, ourPage));
            if (id != "template") Assert.Equal("", Extra(ourPage, theirPage));
        }
    }

    [Fact]
    public async Task Every_page_has_ink_and_none_is_all_ink()
    {
        foreach (string id in PaperBook.Ids)
        {
            byte[] pdf = PaperSamples.Pdf(id, PaperSamples.Input(PaperSamples.DemoHouse));
            foreach (double dark in await Darkness(pdf)) Assert.InRange(dark, 0.001, 0.5);
        }
    }

    /// <summary>Takes the pictures of docs/papers when PATTRESS_SCREENS is set; they are looked at by people.</summary>
    [Fact]
    public async Task Pictures_of_the_papers()
    {
        if (Environment.GetEnvironmentVariable("PATTRESS_SCREENS") is null)
        {
            Assert.Skip("only on demand: PATTRESS_SCREENS=1");
            return;
        }
        string folder = Path.Combine(SourceTree.Root, "docs", "papers");
        Directory.CreateDirectory(folder);
        foreach (string old in Directory.GetFiles(folder, "*.png")) File.Delete(old);
        foreach (string id in PaperBook.Ids)
            await Poppler(PaperSamples.Pdf(id, PaperSamples.Input(PaperSamples.DemoHouse)), "pdftoppm", "-r", "50", "-f", "1", "-l", id == "job-sheet" ? "3" : "2", "-gray", "-png", "{0}", Path.Combine(folder, id));
        await Poppler(PaperSamples.Pdf("template", PaperSamples.Input(PaperSamples.Imperial(PaperSamples.DemoHouse), PaperSize.Letter)), "pdftoppm", "-r", "50", "-f", "2", "-l", "2", "-gray", "-png", "{0}", Path.Combine(folder, "template-imperial"));
        Assert.True(Directory.GetFiles(folder, "*.png").Length > 7);
    }

    /// <summary>Letters that the one has more of than the other.</summary>
    private static string Extra(string one, string other)
    {
        var counts = other.GroupBy(c => c).ToDictionary(g => g.Key, g => g.Count());
        return string.Concat(one.GroupBy(c => c).Select(g => new string(g.Key, Math.Max(0, g.Count() - counts.GetValueOrDefault(g.Key)))));
    }

    private static string Letters(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));

    /// <summary>Share of pixels that are not white of each page, from poppler's plain grey maps.</summary>
    private static async Task<IReadOnlyList<double>> Darkness(byte[] pdf)
    {
        string folder = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());
        Directory.CreateDirectory(folder);
        try
        {
            await Poppler(pdf, "pdftoppm", "-r", "30", "-gray", "{0}", Path.Combine(folder, "p"));
            return [.. Directory.GetFiles(folder, "*.pgm").Order(StringComparer.Ordinal).Select(f => File.ReadAllBytes(f)).Select(b => b.Skip(20).Count(v => v < 230) / (double)b.Length)];
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }

    private static async Task<string> Poppler(byte[] pdf, string program, params string[] words)
    {
        string file = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".pdf");
        await File.WriteAllBytesAsync(file, pdf);
        try
        {
            using var process = Process.Start(new ProcessStartInfo(program, words.Select(w => w == "{0}" ? file : w)) { RedirectStandardOutput = true, RedirectStandardError = true })!;
            string output = await process.StandardOutput.ReadToEndAsync();
            string error = await process.StandardError.ReadToEndAsync();
            await process.WaitForExitAsync();
            Assert.True(process.ExitCode == 0 && error.Length == 0, $"{program}: {error}");
            return output;
        }
        finally
        {
            File.Delete(file);
        }
    }
}
