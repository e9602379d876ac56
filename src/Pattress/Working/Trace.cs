using System.Runtime.CompilerServices;

namespace Pattress.Working;

/// <summary>One numbered step of a calculation: symbol = formula = numbers = value unit, clause.</summary>
/// <param name="Symbol">The result's symbol, as the standard writes it, e.g. <c>f_ax_k</c>.</param>
/// <param name="Formula">The formula as source text, e.g. <c>0.52 * Pow(d, -0.5) * Pow(l_ef, -0.1) * Pow(rho_k, 0.8)</c>.</param>
/// <param name="Numbers">The formula with the recorded numbers put in.</param>
/// <param name="Value">The result.</param>
/// <param name="Unit">Unit of the result, empty for a pure number.</param>
/// <param name="Clause">Document, edition and clause.</param>
/// <param name="Inputs">Every symbol of the formula with its value.</param>
public sealed record Step(
    string Symbol, string Formula, string Numbers, double Value, string Unit, string Clause,
    IReadOnlyList<KeyValuePair<string, double>> Inputs)
{
    /// <summary>The formula with its numbers written as whoever shows them wants.</summary>
    public string NumbersAs(Func<double, string> show) => FormulaNumbers.PutIn(Formula, [.. Inputs], show);

    /// <summary>The symbol of a branch: its formula is the condition, its value 1 where it holds and 0 where not.</summary>
    public const string Case = "case";
}

/// <summary>An input of a formula: its symbol is taken from the source text.</summary>
public readonly record struct In(string Symbol, double Value)
{
    public static In Of(double value, [CallerArgumentExpression(nameof(value))] string symbol = "") => new(symbol, value);
}

/// <summary>
/// The working of a calculation. It is the last parameter of whatever it traces, may be null, and is never ambient;
/// the code never branches on it. Rounding belongs to whoever shows it.
/// </summary>
public sealed class Trace
{
    private readonly List<Step> _steps = [];

    /// <summary>The steps so far, in the order of the calculation.</summary>
    public IReadOnlyList<Step> Steps => _steps;

    internal void Add(Step step) => _steps.Add(step);
}
