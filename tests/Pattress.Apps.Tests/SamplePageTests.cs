using System.Text.RegularExpressions;
using Pattress.Apps.Tests.Cli;

namespace Pattress.Apps.Tests;

/// <summary>
/// Each sample has a page that says its lesson and shows what the program says of it today. With PATTRESS_GOLDEN=write a run
/// writes the output into the pages, to be read before it is committed; such a run fails, so that it cannot pass for a test.
/// </summary>
public partial class SamplePageTests
{
    private static readonly string Pages = Path.Combine(Samples.Root, "docs", "samples");

    public static TheoryData<string> Names =>
        [.. Directory.GetFiles(Path.Combine(Samples.Root, "samples"), "*.job.json").Select(f => Path.GetFileName(f)[..^".job.json".Length]).Order(StringComparer.Ordinal)];

    [Fact]
    public void There_are_ten_samples_and_no_page_without_one()
    {
        Assert.Equal(10, Names.Count);
        Assert.Equal(Names.Select(n => n.Data).Append("README").Order(StringComparer.Ordinal),
            Directory.GetFiles(Pages, "*.md").Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public async Task The_page_shows_what_the_program_says(string name)
    {
        string file = Path.Combine(Pages, name + ".md"), page = await File.ReadAllTextAsync(file);
        var shown = Output().Match(page);
        Assert.True(shown.Success, "no block of output in " + file);
        Assert.Equal($"./pattress plan samples/{name}.job.json", shown.Groups["command"].Value);
        var ran = await Ran.Pattress("plan", Path.Combine(Samples.Root, "samples", name + ".job.json"));
        Assert.True(ran.Exit == 0, ran.Error);
        string said = WithoutVersion(ran.Out);
        if (Environment.GetEnvironmentVariable("PATTRESS_GOLDEN") == "write")
        {
            await File.WriteAllTextAsync(file, page[..shown.Groups["output"].Index] + said + page[(shown.Groups["output"].Index + shown.Groups["output"].Length)..]);
            Assert.Fail($"wrote {file}; read it");
        }
        Assert.Equal(shown.Groups["output"].Value, said);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_page_says_that_it_is_invented_and_its_pictures_are_there(string name)
    {
        string page = File.ReadAllText(Path.Combine(Pages, name + ".md"));
        Assert.Contains("nvented", page, StringComparison.Ordinal);
        var pictures = Picture().Matches(page).Select(m => m.Groups[1].Value).ToList();
        Assert.NotEmpty(pictures);
        Assert.All(pictures, p => Assert.True(File.Exists(Path.Combine(Pages, p)), p));
    }

    /// <summary>The last line names the program's version and its data, which change more often than any verdict.</summary>
    private static string WithoutVersion(string output) =>
        string.Join('\n', output.TrimEnd('\n').Split('\n').Where(l => !l.StartsWith("Pattress ", StringComparison.Ordinal))).TrimEnd('\n') + "\n";

    [GeneratedRegex(@"```\n\$ (?<command>[^\n]*)\n(?<output>.*?)```", RegexOptions.Singleline)]
    private static partial Regex Output();

    [GeneratedRegex(@"!\[[^\]]*\]\(([^)]+)\)")]
    private static partial Regex Picture();
}
