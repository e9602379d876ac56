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

    private static async Task<int> Count(params string[] words)
    {
        using var list = JsonDocument.Parse((await Ran.Pattress(["rules", .. words, "--json"])).Out);
        return list.RootElement.GetProperty("rules").GetArrayLength();
    }
}
