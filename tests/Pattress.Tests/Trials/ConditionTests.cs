using Pattress.Trials.Documents;
using Pattress.Trials.Statistics;

namespace Pattress.Tests.Trials;

/// <summary>Board, damp and void as effects where the tests can tell them apart.</summary>
public class ConditionTests
{
    private static IReadOnlyList<UnderCondition> Tests(double[] arguments) =>
        [.. arguments.Skip(1).Chunk(3).Select(t => new UnderCondition($"kind{t[0]}", $"level{t[1]}", t[2]))];

    [Fact]
    public void Agrees_with_least_squares_of_numpy()
    {
        foreach (var (value, error) in ScipyReferences.Of("effect").Zip(ScipyReferences.Of("effect_error")))
        {
            var effect = Conditions.Effects(Tests(value.Arguments)).Single(e => e.Level == $"level{value.Arguments[0]}");
            Assert.Equal(value.Expected, effect.LogRatio, 1e-10);
            Assert.Equal(error.Expected, effect.StandardError, 1e-10);
        }
    }

    [Fact]
    public void A_condition_that_no_kind_met_both_ways_says_nothing() =>
        Assert.Empty(Conditions.Effects([new("a", "dry", 1), new("a", "dry", 1.1), new("a", "dry", 1.2), new("b", "damp", 2), new("b", "damp", 2.1), new("b", "damp", 2.3)]));

    /// <summary>Damp board at half the load (invented): the effect is seen, and the kinds are compared as if all had been dry.</summary>
    [Fact]
    public void Damp_is_seen_and_taken_off()
    {
        double[] loads = [500, 520, 480, 510, 490, 505, 495];
        string csv = "kind,load_n,moisture\n" + string.Concat(loads.SelectMany((l, i) => (string[])[$"a,{l},dry\n", $"b,{1.3 * l},dry\n", i < 4 ? $"a,{0.5 * l + i},damp\n" : $"b,{0.65 * l + i},damp\n"]));
        var answer = Analysis.Of(TrialDocument.Read(csv).Value!, new()).Value!;
        var effect = Assert.Single(answer.Effects);
        Assert.True(effect.Counts && effect.Effect.Decided);
        Assert.InRange(effect.Effect.Ratio(0.5), 0.48, 0.52);
        Assert.Contains(answer.Reasons, r => r.Code == "trial_freed_of_condition");
        // The middle of one more dry test of a is about 500, not pulled down by its damp ones.
        Assert.InRange(answer.Kinds.Single(k => k.Kind == "a").Expected!.MedianN, 480, 520);
    }
}
