using System.Text;
using System.Text.Json;
using System.Xml.Linq;
using Pattress.Cli;

namespace Pattress.Apps.Tests.Cli;

/// <summary><c>pattress papers</c>: files in a folder, the same each time for the same clock.</summary>
public sealed class PapersTests : IDisposable
{
    private readonly string _folder = Path.Combine(Path.GetTempPath(), "pattress-" + Path.GetRandomFileName());

    public void Dispose()
    {
        if (Directory.Exists(_folder)) Directory.Delete(_folder, true);
    }

    [Fact]
    public async Task It_writes_each_paper_and_each_drawing_and_says_so()
    {
        var (exit, output, _) = await Run("papers", Samples.DemoHouse, "--out", _folder, "--json");
        Assert.Equal(0, exit);
        using var answer = JsonDocument.Parse(output);
        Assert.Equal("a4", answer.RootElement.GetProperty("paper").GetString());
        var files = answer.RootElement.GetProperty("files").EnumerateArray().ToList();
        Assert.Equal(Directory.GetFiles(_folder).Select(Path.GetFileName).Order(StringComparer.Ordinal), files.Select(f => f.GetProperty("name").GetString()).Order(StringComparer.Ordinal));
        foreach (string paper in new[] { "job-sheet", "buying-list", "quote", "template", "working", "proof-record", "hand-over", "labels" })
        {
            byte[] pdf = await File.ReadAllBytesAsync(Path.Combine(_folder, paper + ".pdf"));
            Assert.Equal("%PDF-1.7", Encoding.ASCII.GetString(pdf, 0, 8));
        }
        foreach (string svg in Directory.GetFiles(_folder, "*.svg")) Assert.Equal("svg", XDocument.Load(svg).Root!.Name.LocalName);
        Assert.True(files.Count(f => f.GetProperty("kind").GetString() == "drawing") > 8, "walls, sections, brackets");
    }

    [Fact]
    public async Task The_same_clock_gives_the_same_files()
    {
        await Run("papers", Samples.DemoHouse, "--out", _folder);
        var first = Directory.GetFiles(_folder).ToDictionary(f => f, File.ReadAllBytes);
        await Run("papers", Samples.DemoHouse, "--out", _folder);
        Assert.All(first, f => Assert.Equal(f.Value, File.ReadAllBytes(f.Key)));
    }

    [Theory]
    [InlineData("a3")]
    public async Task A_size_that_is_not_there_is_refused_with_what_is(string size)
    {
        var (exit, output, error) = await Run("papers", Samples.DemoHouse, "--paper", size, "--out", _folder);
        Assert.Equal(2, exit);
        Assert.Empty(output);
        Assert.Contains("a4, letter", error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(_folder));
    }

    [Fact]
    public async Task Letter_can_be_asked_for()
    {
        var (exit, output, _) = await Run("papers", Samples.DemoHouse, "--paper", "letter", "--out", _folder);
        Assert.Equal(0, exit);
        Assert.Contains("job-sheet.pdf", output, StringComparison.Ordinal);
        // 8.5 in by 11 in at 72 to the inch.
        Assert.Contains("/MediaBox[0 0 612 792]", Encoding.Latin1.GetString(await File.ReadAllBytesAsync(Path.Combine(_folder, "job-sheet.pdf"))), StringComparison.Ordinal);
    }

    private static async Task<(int Exit, string Out, string Error)> Run(params string[] words)
    {
        var (output, error) = (new StringWriter(), new StringWriter());
        int exit = await CommandLine.Run(words, new Terminal(Stream.Null, output, error) { Clock = new Stopped() }, CancellationToken.None);
        return (exit, output.ToString(), error.ToString());
    }

    private sealed class Stopped : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => new(2026, 1, 2, 3, 4, 5, TimeSpan.Zero);
    }
}
