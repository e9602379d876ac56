using System.Runtime.CompilerServices;

namespace Pattress.Working;

/// <summary>How a formula enters the working: it is written once, as C#, and the compiler hands over its text.</summary>
public static class TraceSteps
{
    /// <summary>
    /// Hands <paramref name="value"/> through and, where a working is kept, records it with its formula.
    /// Every name in the formula must be among <paramref name="inputs"/>; a guard test evaluates the printed formula.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Step(
        this Trace? trace, string symbol, double value, string unit, string clause,
        scoped ReadOnlySpan<In> inputs = default, [CallerArgumentExpression(nameof(value))] string formula = "")
    {
        if (trace is not null) Record(trace, symbol, value, unit, clause, inputs, formula);
        return value;
    }

    /// <summary>A number read from a table: a step of its own, whose clause names the table and whose symbol the row.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double LookUp(this Trace? trace, string symbol, double value, string unit, string clause)
    {
        if (trace is not null) Record(trace, symbol, value, unit, clause, [], FormulaNumbers.Text(value));
        return value;
    }

    /// <summary>A branch is a step of its own; what stays of the formula is the arm that was taken.</summary>
    private static string Taken(Trace trace, Branch branch, string clause, KeyValuePair<string, double>[] named)
    {
        double holds = FormulaReader.Evaluate(branch.If, named);
        trace.Add(new Step(global::Pattress.Working.Step.Case, branch.If, FormulaNumbers.PutIn(branch.If, named), holds, "", clause, named));
        return holds != 0 ? branch.Then : branch.Else;
    }

    private static void Record(
        Trace trace, string symbol, double value, string unit, string clause, scoped ReadOnlySpan<In> inputs, string formula)
    {
        var named = new KeyValuePair<string, double>[inputs.Length];
        for (int i = 0; i < inputs.Length; i++) named[i] = new(inputs[i].Symbol, inputs[i].Value);
        string text = FormulaNumbers.OneLine(formula);
        while (Branch.Of(text) is { } branch) text = Taken(trace, branch, clause, named);
        trace.Add(new Step(symbol, text, FormulaNumbers.PutIn(text, named), value, unit, clause, named));
    }
}
