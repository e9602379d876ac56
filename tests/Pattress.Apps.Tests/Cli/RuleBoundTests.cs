using System.Globalization;
using System.Text.Json;
using Pattress.Strength;

namespace Pattress.Apps.Tests.Cli;

/// <summary>pattress rule at and around each bound of every input of every rule: inside exit code 0, outside 3 with the input named.</summary>
public class RuleBoundTests
{
    public static TheoryData<string> Ids => [.. RuleBook.All.Where(r => r.Parameters.Any(p => p.Words.Count == 0)).Select(r => r.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public async Task Outside_its_range_a_rule_is_not_covered(string id)
    {
        var rule = RuleBook.Find(id)!;
        double[] x = Covered(rule);
        Assert.Equal(0, (await Run(rule, x)).Exit);
        for (int i = 0; i < x.Length; i++)
        {
            var p = rule.Parameters[i];
            if (p.Words.Count > 0) continue;
            foreach (double inside in new[] { p.Min, p.Max }) Assert.NotEqual(p.Symbol, Blamed(await Run(rule, With(x, i, inside))));
            double step = Math.Max(Math.Abs(p.Min), Math.Abs(p.Max)) * 1e-12;
            foreach (double outside in new[] { p.Min - Math.Max(Math.Abs(p.Min) * 1e-12, step * 1e-9), p.Max + Math.Abs(p.Max) * 1e-12 })
            {
                var ran = await Run(rule, With(x, i, outside));
                Assert.Equal(3, ran.Exit);
                Assert.Equal(p.Symbol, Blamed(ran));
            }
        }
    }

    private static Task<Ran> Run(Rule rule, double[] x) => Ran.Pattress(["rule", rule.Id, .. rule.Parameters.Select((p, i) => p.Symbol + "=" + (p.Words.Count > 0 ? p.Words[(int)x[i]] : Plain(x[i]))), "--json"]);

    // The second word of the sentence about a range is the input.
    private static string? Blamed(Ran ran)
    {
        using var json = JsonDocument.Parse(ran.Out);
        Assert.True(ran.Exit is 0 or 3, ran.Error);
        if (ran.Exit == 0) return null;
        Assert.True(json.RootElement.TryGetProperty("not_covered", out _));
        return json.RootElement.GetProperty("code").GetString() == "outside_range" ? json.RootElement.GetProperty("not_covered").GetString()!.Split("does not cover ")[1].Split(' ')[0] : "";
    }

    private static double[] With(double[] x, int i, double value)
    {
        double[] y = [.. x];
        y[i] = value;
        return y;
    }

    private static double[] Covered(Rule rule)
    {
        var random = new Random(5);
        for (int round = 0; round < 2000; round++)
        {
            double[] x = [.. rule.Parameters.Select(p => Draw(p, random))];
            if (rule.Evaluate(x).Covered) return x;
        }
        throw new InvalidOperationException("nothing is covered by " + rule.Id);
    }

    private static double Draw(Parameter p, Random random)
    {
        if (p.Words.Count > 0) return random.Next(p.Words.Count);
        double low = Math.Max(p.Min, p.Max * 1e-6), value = p.Max / low > 100 ? low * Math.Pow(p.Max / low, random.NextDouble()) : p.Min + random.NextDouble() * (p.Max - p.Min);
        return p.Symbol is "n" or "lot" or "failures" or "service_class" ? Math.Round(value) : value;
    }

    private static string Plain(double value)
    {
        string text = value.ToString("R", CultureInfo.InvariantCulture);
        return text.Contains('E') ? value.ToString("F25", CultureInfo.InvariantCulture) : text;
    }
}
