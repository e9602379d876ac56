using System.Text.Json;

namespace Pattress.Apps.Tests.Cli;

/// <summary>Commands, switches and files that are not there: 2, and a sentence that helps.</summary>
public class WordsTests
{
    [Theory]
    [InlineData("frobnicate")]
    [InlineData("schema", "--frobnicate")]
    [InlineData("schema", "one-word-too-many")]
    [InlineData("plan")]
    [InlineData("plan", "no-such.job.json")]
    public async Task Wrong_words_end_with_2_and_say_why(params string[] words)
    {
        var ran = await Ran.Pattress(words);
        Assert.Equal(2, ran.Exit);
        Assert.Empty(ran.Out);
        Assert.EndsWith(".\n", ran.Error);
        Assert.DoesNotContain("   at ", ran.Error);
    }

    [Fact]
    public async Task An_unknown_command_names_the_ones_there_are()
    {
        var ran = await Ran.Pattress("frobnicate");
        Assert.Contains("frobnicate", ran.Error);
        Assert.Contains("plan", ran.Error);
    }

    [Fact]
    public async Task A_missing_file_is_named_as_it_was_written() =>
        Assert.Contains("no-such.job.json", (await Ran.Pattress("plan", "no-such.job.json")).Error);

    [Fact]
    public async Task With_json_a_refusal_is_a_document_too()
    {
        var ran = await Ran.Pattress("plan", "no-such.job.json", "--json");
        using var document = JsonDocument.Parse(ran.Out);
        Assert.Equal("file_missing", document.RootElement.GetProperty("problems")[0].GetProperty("code").GetString());
        Assert.NotEmpty(ran.Error);
    }

    [Theory]
    [InlineData]
    [InlineData("--help")]
    [InlineData("help")]
    [InlineData("plan", "-h")]
    public async Task Help_names_every_command_within_80_columns(params string[] words)
    {
        var ran = await Ran.Pattress(words);
        Assert.Equal(0, ran.Exit);
        foreach (string command in new[] { "plan", "layout", "buy", "quote", "stock", "load", "repair", "wall", "locate", "bracket", "beam", "rules", "rule", "trial", "compare", "certainty", "proof", "schema", "serve" })
            Assert.Contains($"pattress {command}", ran.Out);
        Assert.All(ran.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    [Fact]
    public async Task The_schema_is_one_document()
    {
        var ran = await Ran.Pattress("schema", "--json");
        using var schema = JsonDocument.Parse(ran.Out);
        Assert.Equal(0, ran.Exit);
        Assert.Equal("object", schema.RootElement.GetProperty("type").GetString());
    }
}
