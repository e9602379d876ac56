using System.Text;
using Microsoft.Playwright;

namespace Pattress.Browser.Tests;

/// <summary>Papers made in the browser, without a server.</summary>
public class PapersTests(Chromium chromium, PublishedApp app)
{
    private static readonly string[] Titles = ["Job sheet", "Buying list", "Quote", "Drilling template", "Working for the engineer", "Record of pull tests", "Handover", "Labels"];

    [Fact]
    public async Task With_the_network_gone_every_paper_is_made_here()
    {
        await using var visit = await Visit.To(chromium, app, "/", 360);
        Assert.DoesNotContain(visit.Requests, Late);
        await visit.Turn("/papers");
        await visit.Page.WaitForFunctionAsync("() => performance.getEntriesByType('resource').some(r => r.name.includes('/js/papers.js'))");
        await visit.Page.WaitForLoadStateAsync(LoadState.NetworkIdle);
        Assert.Contains(visit.Requests, Late);
        await visit.Page.Context.SetOfflineAsync(true);
        int before = visit.Requests.Count;
        foreach (string title in Titles)
        {
            byte[] pdf = await Make(visit, title);
            Assert.Equal("%PDF-1.7", Encoding.ASCII.GetString(pdf, 0, 8));
            string raw = Encoding.Latin1.GetString(pdf);
            Assert.EndsWith("%%EOF", raw.TrimEnd(), StringComparison.Ordinal);
            Assert.Contains("/StructTreeRoot", raw, StringComparison.Ordinal);
            Assert.Contains("/FontFile2", raw, StringComparison.Ordinal);
            Assert.Contains("/MediaBox[0 0 595.276 841.89]", raw, StringComparison.Ordinal);
        }
        Assert.Equal(before, visit.Requests.Count(r => !r.StartsWith("blob:", StringComparison.Ordinal)));
        Assert.Empty(visit.Errors);
    }

    [Fact]
    public async Task The_papers_of_browser_and_command_line_say_the_same()
    {
        string folder = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());
        await PublishedApp.Run("dotnet", PublishedApp.CommandLine, "papers", Path.Combine(PublishedApp.Root, "samples", "demo-house.job.json"), "--out", folder);
        await using var visit = await Visit.Back(chromium, app, "/papers", 1280);
        try
        {
            // Numbers may differ in the last digit, and with them the ids; the words on each page may not.
            foreach (var (title, file) in new[] { ("Handover", "hand-over"), ("Buying list", "buying-list"), ("Labels", "labels") })
                Assert.Equal(await Text(await File.ReadAllBytesAsync(Path.Combine(folder, file + ".pdf"))), await Text(await Make(visit, title)));
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }

    [Fact]
    public async Task Size_of_what_is_fetched_for_papers()
    {
        var files = Directory.GetFiles(Path.Combine(PublishedApp.Server, "wwwroot", "_framework"), "*.br").Where(Late).ToList();
        Assert.NotEmpty(files);
        Console.WriteLine(FormattableString.Invariant($"papers, brotli: {files.Sum(f => new FileInfo(f).Length) / 1e6:0.00} MB: {string.Join(", ", files.Select(f => $"{Path.GetFileName(f)} {new FileInfo(f).Length / 1000} kB"))}"));
        await Task.CompletedTask;
    }

    private static bool Late(string address) => address.Contains("Pattress.Pdf", StringComparison.Ordinal) || address.Contains("PdfSharp", StringComparison.Ordinal);

    private static async Task<byte[]> Make(Visit visit, string title)
    {
        var download = await visit.Page.RunAndWaitForDownloadAsync(() => visit.Page.Locator("main .papers button", new() { HasTextString = title }).First.ClickAsync());
        using var bytes = new MemoryStream();
        await using var stream = await download.CreateReadStreamAsync();
        await stream.CopyToAsync(bytes);
        await Assertions.Expect(visit.Page.Locator("main [role=status]")).ToContainTextAsync(title + " is made");
        return bytes.ToArray();
    }

    private static async Task<string> Text(byte[] pdf)
    {
        string file = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".pdf");
        await File.WriteAllBytesAsync(file, pdf);
        try { return await PublishedApp.Run("pdftotext", file, "-"); }
        finally { File.Delete(file); }
    }
}
