using System.Globalization;
using System.Runtime.CompilerServices;

namespace Pattress.Working;

/// <summary>The one helper through which every numbered result passes.</summary>
public static class Steps
{
    /// <summary>Records a step where a trace is wanted and hands the value on. Nothing is done without a trace.</summary>
    public static double Step(
        this Trace? trace, string symbol, double value, string unit, string clause, scoped ReadOnlySpan<In> inputs = default,
        [CallerArgumentExpression(nameof(value))] string formula = "")
    {
        trace?.Add(new(symbol, formula, formula, value, unit, clause, [.. inputs.ToArray().Select(i => KeyValuePair.Create(i.Symbol, i.Value))]));
        return value;
    }
}
