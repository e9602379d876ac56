using System.Text.Json;

namespace Pattress.Apps.Tests.Cli;

/// <summary>The smaller questions: bracket, beam and trial.</summary>
public class SmallDocumentTests
{
    private const string Trial = "kind,load_n\nplug,100\nplug,120\nplug,110\nplug,0.13 kN\n";

    [Fact]
    public async Task A_trial_gives_the_mean_of_its_tests()
    {
        using var answer = JsonDocument.Parse((await Ran.Reading(Trial, "trial", "-", "--json")).Out);
        // (100 + 120 + 110 + 130) / 4.
        Assert.Equal(115, answer.RootElement.GetProperty("kinds")[0].GetProperty("mean_n").GetDouble(), 9);
    }

    [Theory]
    [InlineData("trial", Trial)]
    public async Task Each_reads_well_as_text(string command, string document)
    {
        var ran = await Ran.Reading(document, command, "-");
        Assert.Equal(0, ran.Exit);
        Assert.Empty(ran.Error);
        Assert.DoesNotContain("_", ran.Out);
        Assert.All(ran.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    [Theory]
    [InlineData("trial")]
    [InlineData("plan")]
    public async Task Each_refuses_what_is_no_document(string command)
    {
        var ran = await Ran.Reading("{\"nonsense\": tru", command, "-");
        Assert.Equal(2, ran.Exit);
        Assert.Empty(ran.Out);
        Assert.NotEmpty(ran.Error);
    }
}
