using Pattress.Quantities;
using Pattress.Working;

namespace Pattress.Strength;

/// <summary>A rule's arithmetic; the inputs come in the order of <see cref="Rule.Parameters"/> and lie in their ranges.</summary>
public delegate RuleResult RuleFunction(ReadOnlySpan<double> x, Trace? trace);

/// <summary>An input of a rule: the standard's symbol, its unit and the range in which the rule is valid.</summary>
/// <param name="Default">Taken where the input is left out; null where it must be given.</param>
/// <param name="Words">For a choice: its words in the order of their numbers 0, 1, 2 …</param>
public sealed record Parameter(
    string Symbol, Dimension Dimension, double Min, double Max, double? Default = null, params IReadOnlyList<string> Words)
{
    /// <summary>True for a count or a class: a fraction of one is not covered.</summary>
    public bool Whole { get; init; }

    public static Parameter Choice(string symbol, params IReadOnlyList<string> words) =>
        new(symbol, Dimension.Number, 0, words.Count - 1, null, words);

    /// <summary>What may be given, in plain words.</summary>
    public string Allowed => Words.Count > 0 ? "one of " + string.Join(", ", Words) : QuantityText.Allowed(Dimension) + FormattableString.Invariant($", from {Min} to {Max}");
}

/// <summary>One published rule: where it stands, what it takes, in what range, and its arithmetic.</summary>
/// <param name="Id">Fixed id, e.g. <c>en1995_1_1.8_7_2.withdrawal</c>.</param>
/// <param name="Clause">Document, edition and clause, as the working prints it.</param>
/// <param name="Unit">Unit of the result, empty for a pure number.</param>
public sealed record Rule(
    string Id, string Document, string Edition, string Clause, string Title, string Unit, RuleFunction Function, params IReadOnlyList<Parameter> Parameters)
{
    /// <summary>The value; or "not covered" where an input lies outside its range, is no number, or the clause says so.</summary>
    public RuleResult Evaluate(ReadOnlySpan<double> x, Trace? trace = null)
    {
        if (x.Length != Parameters.Count) throw new ArgumentException($"{Id} takes {Parameters.Count} inputs", nameof(x));
        for (int i = 0; i < x.Length; i++)
        {
            var p = Parameters[i];
            if (!(x[i] >= p.Min && x[i] <= p.Max)) return NotCovered.OutsideRange(Clause, p, x[i]);
            if (p.Whole && x[i] % 1 != 0) return new NotCovered(Clause, "whole_number", Said.Plain(x[i]));
        }
        return Function(x, trace);
    }
}
