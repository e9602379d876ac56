using Pattress.Cli;
using Pattress.Cli.Printing;
using Pattress.Jobs;

namespace Pattress.Apps.Tests.Cli;

/// <summary>The plan as text: what a fitter reads at 80 columns.</summary>
public class PlanSheetTests
{
    private static string Text(bool working = false, bool colour = false, int width = 80) =>
        PlanSheet.Text(HandMade.Plan, new Settings(), new Terminal(Stream.Null, TextWriter.Null, TextWriter.Null, width, colour), working);

    [Fact]
    public void It_reads_as_the_golden_text() => Golden.Is("plan.txt", Text());

    [Fact]
    public void The_working_unfolds() => Golden.Is("plan-working.txt", Text(working: true));

    [Theory]
    [InlineData(80)]
    [InlineData(60)]
    public void No_line_is_wider_than_the_terminal(int width) =>
        Assert.All(Text(working: true, width: width).Split('\n'), line => Assert.True(line.Length <= width, line));

    [Fact]
    public void Without_colour_there_is_no_escape_and_nothing_a_title_could_smuggle_in() => Assert.DoesNotContain('\u001b', Text());

    [Fact]
    public void With_colour_the_words_are_the_same() =>
        Assert.Equal(Text().Trim(), System.Text.RegularExpressions.Regex.Replace(Text(colour: true), "\u001b\\[[0-9;]*m", "").Trim().Replace(" \n", "\n"));

    [Fact]
    public void Every_verdict_is_said_in_a_word()
    {
        string text = Text();
        foreach (string verdict in new[] { "READY", "CHECK FIRST", "NOT HERE" }) Assert.Contains(verdict, text);
    }
}
