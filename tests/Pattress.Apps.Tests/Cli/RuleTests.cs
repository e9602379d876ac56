using System.Text.Json;

namespace Pattress.Apps.Tests.Cli;

/// <summary>The published rules on the command line.</summary>
public class RuleTests
{
    [Fact]
    public async Task The_list_narrows_to_a_text()
    {
        int all = await Count(), timber = await Count("1995");
        Assert.InRange(timber, 1, all - 1);
    }

    [Fact]
    public async Task Each_rule_says_what_it_takes_within_80_columns()
    {
        var ran = await Ran.Pattress("rules");
        Assert.Equal(0, ran.Exit);
        Assert.All(ran.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    [Fact]
    public async Task An_unknown_rule_and_a_word_without_a_value_are_refused()
    {
        Assert.Equal(2, (await Ran.Pattress("rule", "no.such.rule")).Exit);
        Assert.Equal(2, (await Ran.Pattress("rule", "no.such.rule", "d")).Exit);
    }

    [Fact]
    public async Task Every_rule_names_its_missing_inputs_all_at_once()
    {
        using var list = JsonDocument.Parse((await Ran.Pattress("rules", "--json")).Out);
        foreach (var rule in list.RootElement.GetProperty("rules").EnumerateArray())
        {
            var needed = rule.GetProperty("inputs").EnumerateArray().Where(i => !i.TryGetProperty("default", out _)).Select(i => i.GetProperty("symbol").GetString()!).ToList();
            var ran = await Ran.Pattress("rule", rule.GetProperty("id").GetString()!);
            Assert.Equal(needed.Count > 0 ? 2 : 0, ran.Exit);
            Assert.All(needed, symbol => Assert.Contains("$." + symbol, ran.Error));
        }
    }

    /// <summary>EN 1995-1-1 8.7.2 covers screws of 6 to 12 mm: one of 5 mm is outside it, which is an answer (exit code 3) and no error.</summary>
    [Fact]
    public async Task Outside_the_range_of_a_rule_the_exit_code_is_3_and_the_document_says_why()
    {
        var ran = await Ran.Pattress("rule", "en1995_1_1.8_7_2.withdrawal", "d=5 mm", "l_ef=60 mm", "rho_k=350", "--json");
        Assert.Equal(3, ran.Exit);
        using var answer = JsonDocument.Parse(ran.Out);
        Assert.Equal("en1995_1_1.8_7_2.withdrawal", answer.RootElement.GetProperty("id").GetString());
        Assert.Equal("outside_range", answer.RootElement.GetProperty("code").GetString());
        Assert.Contains("from 6 to 12", answer.RootElement.GetProperty("not_covered").GetString());
        Assert.False(answer.RootElement.TryGetProperty("value", out _));
        Assert.Equal(0, (await Ran.Pattress("rule", "en1995_1_1.8_7_2.withdrawal", "d=6 mm", "l_ef=60 mm", "rho_k=350", "--json")).Exit);
    }

    /// <summary>A refusal never contradicts itself: just outside a bound all digits stand there, and the unit with them.</summary>
    [Theory]
    [InlineData("d = 12.0001 mm: it is valid from 6 to 12 mm.", "d=12.0001")]
    [InlineData("d = 5.99999999 mm: it is valid from 6 to 12 mm.", "d=5.99999999 mm")]
    [InlineData("d = 50.8 mm: it is valid from 6 to 12 mm.", "d=2 in")]
    public async Task Just_outside_a_bound_the_number_is_said_in_full(string said, string d)
    {
        using var answer = JsonDocument.Parse((await Ran.Pattress("rule", "en1995_1_1.8_7_2.withdrawal", d, "l_ef=80 mm", "rho_k=350", "--json")).Out);
        Assert.EndsWith(said, answer.RootElement.GetProperty("not_covered").GetString());
    }

    /// <summary>EN 1995-1-1:2004+A1:2008 8.7.2(4): screws of 6 to 12 mm, d_1/d of 0.6 to 0.75.</summary>
    [Theory]
    [InlineData("d", 6, 12, "mm")]
    [InlineData("d1_d", 0.6, 0.75, "")]
    public async Task The_list_names_document_edition_and_range(string symbol, double from, double to, string unit)
    {
        using var list = JsonDocument.Parse((await Ran.Pattress("rules", "en1995_1_1.8_7_2.withdrawal", "--json")).Out);
        var rule = list.RootElement.GetProperty("rules").EnumerateArray().Single(r => r.GetProperty("id").GetString() == "en1995_1_1.8_7_2.withdrawal");
        Assert.Equal(("EN 1995-1-1", "2004+A1:2008"), (rule.GetProperty("document").GetString(), rule.GetProperty("edition").GetString()));
        var input = rule.GetProperty("inputs").EnumerateArray().Single(i => i.GetProperty("symbol").GetString() == symbol);
        Assert.Equal((from, to, unit), (input.GetProperty("from").GetDouble(), input.GetProperty("to").GetDouble(), input.GetProperty("unit").GetString()));
        Assert.Contains($"{symbol} {from} to {to} {unit}".TrimEnd(), (await Ran.Pattress("rules", "en1995_1_1.8_7_2.withdrawal")).Out);
    }

    private static async Task<int> Count(params string[] words)
    {
        using var list = JsonDocument.Parse((await Ran.Pattress(["rules", .. words, "--json"])).Out);
        return list.RootElement.GetProperty("rules").GetArrayLength();
    }
}
