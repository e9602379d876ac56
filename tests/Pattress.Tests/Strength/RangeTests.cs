using Pattress.Strength;

namespace Pattress.Tests.Strength;

/// <summary>Outside its range every rule answers "not covered", at and around each bound; never 0 or NaN.</summary>
public class RangeTests
{
    public static TheoryData<string> Ids => [.. RuleBook.All.Select(r => r.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Bounds(string id)
    {
        var rule = RuleBook.Find(id)!;
        double[] x = Samples.Covered(rule)!;
        for (int i = 0; i < x.Length; i++)
        {
            var p = rule.Parameters[i];
            Assert.False(Blames(rule, x, i, p.Min), p.Symbol + " at its least");
            Assert.False(Blames(rule, x, i, p.Max), p.Symbol + " at its most");
            foreach (double bad in new[] { Math.BitDecrement(p.Min), Math.BitIncrement(p.Max), double.NaN, double.PositiveInfinity, double.NegativeInfinity, 1e308, -1e308 })
                Assert.True(Blames(rule, x, i, bad), $"{p.Symbol} = {bad:R}");
        }
    }

    private static bool Blames(Rule rule, double[] x, int i, double value)
    {
        double[] changed = [.. x];
        changed[i] = value;
        var result = rule.Evaluate(changed);
        if (result.Covered) Assert.True(double.IsFinite(result.Value));
        return result.Why is { Code: "outside_range" } why && why.Values[0].Text == rule.Parameters[i].Symbol;
    }

    [Fact]
    public void Default_is_not_covered()
    {
        Assert.False(default(RuleResult).Covered);
        Assert.Equal("not_evaluated", default(RuleResult).Why!.Code);
        Assert.Equal("not_finite", ((RuleResult)double.NaN).Why!.Code);
        Assert.Throws<InvalidOperationException>(() => default(RuleResult).Value);
    }
}
