using Pattress.Apps.Tests.Cli;

namespace Pattress.Apps.Tests;

/// <summary>Each command of the tutorial runs, and prints the lines that the tutorial shows below it.</summary>
public class TutorialTests
{
    [Theory]
    [InlineData("tutorial.md")]
    [InlineData("reading-a-wall.md")]
    public async Task Every_command_prints_what_the_tutorial_shows(string page)
    {
        var examples = Examples(page).ToList();
        Assert.True(examples.Count >= 3, "the tutorial's commands were not found");
        foreach (var (command, shown) in examples) await Holds(command, shown);
    }

    private static async Task Holds(string command, IReadOnlyList<string> shown)
    {
        var ran = await Ran.Pattress([.. command["./pattress ".Length..].Split(' ').Select(InSamples)]);
        Assert.True(ran.Exit == 0, $"{command}: {ran.Error}");
        Assert.All(shown.Where(l => l != "..."), line => Assert.Contains(line, ran.Out.Split('\n')));
    }

    private static string InSamples(string word) => word.StartsWith("samples/", StringComparison.Ordinal) ? Path.Combine(Samples.Root, word) : word;

    /// <summary>Blocks that begin with a command; what follows in the block is its output, with ... for what is left out.</summary>
    private static IEnumerable<(string Command, IReadOnlyList<string> Shown)> Examples(string page) =>
        File.ReadAllText(Path.Combine(Samples.Root, "docs", page)).Split("```").Where((_, i) => i % 2 == 1)
            .Select(block => block.Split('\n').Skip(1).ToList()).Where(b => b.Count > 0 && b[0].StartsWith("$ ./pattress ", StringComparison.Ordinal))
            .Select(b => (b[0][2..], (IReadOnlyList<string>)[.. b.Skip(1).Where(l => l.Length > 0)]));
}
