using System.Text.Json;

namespace Pattress.Apps.Tests.Cli;

/// <summary>The main job on the command line.</summary>
public class PlanTests
{
    private const string Broken = """{"pattress_job":1,"title":"x","walls":[{"id":"a","kind":"wall","width_mm":-5,"heigth_mm":2500}],"fixtures":[]}""";

    [Fact]
    public async Task The_demo_house_is_planned_as_text_within_80_columns()
    {
        var ran = await Ran.Pattress("plan", Samples.DemoHouse);
        Assert.Equal(0, ran.Exit);
        Assert.Empty(ran.Error);
        foreach (string heading in new[] { "Before you drill", "Checks to do first", "To hang", "To buy", "Order of work", "The walls" }) Assert.Contains(heading, ran.Out);
        Assert.All(ran.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    [Fact]
    public async Task With_json_stdout_is_one_document_and_nothing_else()
    {
        var ran = await Ran.Pattress("plan", Samples.DemoHouse, "--json");
        using var plan = JsonDocument.Parse(ran.Out);
        Assert.Equal(0, ran.Exit);
        Assert.Empty(ran.Error);
        foreach (string field in new[] { "verdict", "items", "checks", "buy", "cautions", "assumptions" }) Assert.True(plan.RootElement.TryGetProperty(field, out _), field);
    }

    [Fact]
    public async Task Standard_input_answers_as_the_file_does()
    {
        string json = await File.ReadAllTextAsync(Samples.DemoHouse);
        Assert.Equal((await Ran.Pattress("plan", Samples.DemoHouse, "--json")).Out, (await Ran.Reading(json, "plan", "-", "--json")).Out);
    }

    [Fact]
    public async Task Every_problem_of_a_job_stands_on_stderr_with_path_value_and_what_is_allowed()
    {
        var ran = await Ran.Reading(Broken, "plan", "-");
        Assert.Equal(2, ran.Exit);
        Assert.Empty(ran.Out);
        Assert.Contains("$.walls[0].width_mm", ran.Error);
        Assert.Contains("-5", ran.Error);
        Assert.Contains("$.walls[0].heigth_mm", ran.Error);
        Assert.Contains("Allowed:", ran.Error);
    }

    [Fact]
    public async Task The_working_unfolds_to_a_clause()
    {
        var folded = await Ran.Pattress("plan", Samples.DemoHouse);
        var unfolded = await Ran.Pattress("plan", Samples.DemoHouse, "--working");
        Assert.Contains("EN 199", unfolded.Out);
        Assert.True(unfolded.Out.Length > folded.Out.Length);
        Assert.All(unfolded.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    [Fact]
    public async Task The_buying_list_is_proven_cheapest_and_adds_up()
    {
        using var buy = JsonDocument.Parse((await Ran.Pattress("buy", Samples.DemoHouse, "--json")).Out);
        Assert.Equal("optimal", buy.RootElement.GetProperty("status").GetString());
        Assert.True(buy.RootElement.GetProperty("bound").GetDecimal() <= buy.RootElement.GetProperty("expected").GetDecimal());
        Assert.Equal(buy.RootElement.GetProperty("buy_total").GetDecimal(), buy.RootElement.GetProperty("buy").EnumerateArray().Sum(l => l.GetProperty("price").GetDecimal()));
        Assert.All(buy.RootElement.GetProperty("buy").EnumerateArray(), l => Assert.NotEmpty(l.GetProperty("why").GetString()!));
        Assert.Contains("nothing costs less", (await Ran.Pattress("buy", Samples.DemoHouse)).Out.ReplaceLineEndings(" "));
    }

    [Fact]
    public async Task A_quote_adds_up_to_the_penny()
    {
        using var quote = JsonDocument.Parse((await Ran.Pattress("quote", Samples.DemoHouse, "--json")).Out);
        decimal Of(string name) => quote.RootElement.GetProperty(name).GetDecimal();
        Assert.Equal(Of("net"), quote.RootElement.GetProperty("lines").EnumerateArray().Sum(l => l.GetProperty("amount").GetDecimal()));
        Assert.Equal(Of("total"), Of("net") + Of("tax") + Of("rounding"));
        string text = (await Ran.Pattress("quote", Samples.DemoHouse)).Out;
        foreach (string heading in new[] { "Quote:", "How it is rounded", "Not included", "Assumed" }) Assert.Contains(heading, text);
    }

    [Fact]
    public async Task A_batch_answers_a_line_for_a_line_and_ends_with_2_for_a_bad_one()
    {
        string good = OneLine(await File.ReadAllTextAsync(Samples.DemoHouse));
        var ran = await Ran.Reading($"{good}\n{Broken}\n{good}\n", "plan", "-", "--batch");
        string[] lines = ran.Out.TrimEnd('\n').Split('\n');
        Assert.Equal(2, ran.Exit);
        Assert.Equal(3, lines.Length);
        Assert.Equal(lines[0], lines[2]);
        using var refused = JsonDocument.Parse(lines[1]);
        Assert.True(refused.RootElement.TryGetProperty("problems", out _));
    }

    private static string OneLine(string json)
    {
        using var document = JsonDocument.Parse(json);
        return JsonSerializer.Serialize(document.RootElement);
    }
}
