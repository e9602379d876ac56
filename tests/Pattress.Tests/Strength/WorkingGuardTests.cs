using Pattress.Strength;
using Pattress.Tests.Working;
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

    /// <summary>A choice is a step of its own: its condition with yes or no, then the arm that was taken.</summary>
    [Fact]
    public void A_branch_is_a_step_of_its_own()
    {
        var trace = new Trace();
        double t = 3, d = 4;
        trace.Step("F", t <= 0.5 * d ? 1 : t >= d ? 2 : (t / d - 0.5) * 2, "N", "nowhere", [In.Of(t), In.Of(d)]);
        Assert.Equal(["t <= 0.5 * d", "t >= d", "(t / d - 0.5) * 2"], trace.Steps.Select(s => s.Formula));
        Assert.Equal([0.0, 0, 0.5], trace.Steps.Select(s => s.Value));
        Assert.Equal(["case", "case", "F"], trace.Steps.Select(s => s.Symbol));
        Assert.Equal("t ≥ d: 3 ≥ 4, so it is not, nowhere", FormulaText.Line(trace.Steps[1]));
        Assert.All(trace.Steps, Again);
    }

    internal static void Again(Step step)
    {
        double fromInputs = FormulaReader.Evaluate(step.Formula, step.Inputs), fromNumbers = FormulaReader.Evaluate(step.Numbers, []);
        double tolerance = 1e-12 * Math.Abs(step.Value);
        Assert.True(Math.Abs(fromInputs - step.Value) <= tolerance, $"{step.Symbol} = {step.Formula} gives {fromInputs:R}, printed {step.Value:R}");
        Assert.True(Math.Abs(fromNumbers - step.Value) <= tolerance, $"{step.Symbol} = {step.Numbers} gives {fromNumbers:R}, printed {step.Value:R}");
        double fromSet = SetBack.Value(FormulaSetting.Numbers(step.Numbers, FormulaNumbers.Text));
        Assert.True(Math.Abs(fromSet - step.Value) <= tolerance, $"{step.Symbol} as set gives {fromSet:R}, printed {step.Value:R}");
        Assert.Contains(step.Symbol == Step.Case ? "so it is" : FormulaText.Symbol(step.Symbol) + " = ", FormulaText.Line(step));
        Assert.DoesNotContain("?", step.Formula[..step.Formula.TakeWhile(c => c != '(').Count()]);
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
