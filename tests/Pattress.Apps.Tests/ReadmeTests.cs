namespace Pattress.Apps.Tests;

/// <summary>The README begins with the job in a paragraph and the two commands that matter.</summary>
public class ReadmeTests
{
    private static readonly string[] Lines = File.ReadAllLines(Path.Combine(Samples.Root, "README.md"));

    [Fact]
    public void The_first_two_commands_are_serving_and_testing() =>
        Assert.Equal(["dotnet run --project src/Pattress.Server", "./test"], Commands().Take(2));

    [Fact]
    public void Every_file_it_points_at_is_there() =>
        Assert.All(Links(), link => Assert.True(Path.Exists(Path.Combine(Samples.Root, link)), link));

    private static IEnumerable<string> Commands()
    {
        bool inside = false;
        foreach (string line in Lines)
        {
            if (line.StartsWith("```", StringComparison.Ordinal)) inside = line == "```sh";
            else if (inside) yield return line;
        }
    }

    private static IEnumerable<string> Links() =>
        System.Text.RegularExpressions.Regex.Matches(string.Join('\n', Lines), @"\]\(([^):]+)\)").Select(m => m.Groups[1].Value);
}
