using Pattress.Strength;
using Pattress.Working;

namespace Pattress.Tests.Strength;

/// <summary>Every printed formula, evaluated again from its printed inputs, gives the printed result; for every rule at many points.</summary>
public class WorkingGuardTests
{
    public static TheoryData<string> Ids => [.. RuleBook.All.Select(r => r.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Printed_formulas_give_the_printed_results(string id)
    {
        var rule = RuleBook.Find(id)!;
        int covered = 0;
        foreach (double[] x in Samples.Of(rule, 200))
        {
            var trace = new Trace();
            var result = rule.Evaluate(x, trace);
            if (!result.Covered) continue;
            covered++;
            Assert.Equal(rule.Evaluate(x).Value, result.Value);
            Assert.NotEmpty(trace.Steps);
            Assert.Equal(result.Value, trace.Steps[^1].Value);
            foreach (var step in trace.Steps) Again(step);
        }
        Assert.True(covered >= 5, $"only {covered} of the samples were covered");
    }

    internal static void Again(Step step)
    {
        double fromInputs = FormulaReader.Evaluate(step.Formula, step.Inputs), fromNumbers = FormulaReader.Evaluate(step.Numbers, []);
        double tolerance = 1e-12 * Math.Abs(step.Value);
        Assert.True(Math.Abs(fromInputs - step.Value) <= tolerance, $"{step.Symbol} = {step.Formula} gives {fromInputs:R}, printed {step.Value:R}");
        Assert.True(Math.Abs(fromNumbers - step.Value) <= tolerance, $"{step.Symbol} = {step.Numbers} gives {fromNumbers:R}, printed {step.Value:R}");
        Assert.Contains(FormulaText.Symbol(step.Symbol) + " = ", FormulaText.Line(step));
        Assert.NotEqual("", step.Clause);
    }

    [Fact]
    public void The_guard_sees_a_wrong_formula()
    {
        var trace = new Trace();
        double a = 2;
        trace.Step("b", 3 * a, "mm", "nowhere", [In.Of(a)], "4 * a");
        Assert.ThrowsAny<Exception>(() => Again(trace.Steps[0]));
    }
}
