using System.Globalization;
using Pattress.Quantities;

namespace Pattress.Strength;

/// <summary>Why a rule has no answer: it does not cover the case.</summary>
/// <param name="Clause">Document, edition and clause whose limit was met.</param>
/// <param name="Code">Reason code; its sentence is in <c>data/text/codes.strength.csv</c>.</param>
/// <param name="Values">Values of the sentence, in its order.</param>
public sealed record NotCovered(string Clause, string Code, params IReadOnlyList<Said> Values)
{
    /// <summary>The reason for the text layer; the clause is its first value.</summary>
    public Reason Reason => new(Code, [Said.Words(Clause), .. Values]);

    internal static NotCovered OutsideRange(string clause, Parameter p, double value)
    {
        string unit = QuantityText.OwnUnit(p.Dimension) is { Length: > 0 } own ? " " + own : "", near = value.ToString("G6", CultureInfo.InvariantCulture);
        // Just outside a bound all digits are shown: 12.0001 is not "12, valid to 12".
        bool hidden = double.Parse(near, CultureInfo.InvariantCulture) is var read && read >= p.Min && read <= p.Max;
        return new(clause, "outside_range", Said.Words(p.Symbol), Exactly(value, (hidden ? Exact(value) : near) + unit), Exactly(p.Min, Exact(p.Min)), Exactly(p.Max, Exact(p.Max) + unit));
    }

    private static string Exact(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    private static Said Exactly(double value, string text) => new(Shown.Text, value, text);
}

/// <summary>A rule's value, or why there is none. <c>default</c> is "not covered", never a zero.</summary>
public readonly record struct RuleResult
{
    private static readonly NotCovered Nothing = new("", "not_evaluated");
    private readonly double _value;
    private readonly NotCovered? _why;

    private RuleResult(double value, NotCovered? why, bool covered) => (_value, _why, Covered) = (value, why, covered);

    /// <summary>True when there is a value.</summary>
    public bool Covered { get; }

    /// <summary>The value; asking for it where the rule does not cover the case is a fault of the program.</summary>
    public double Value => Covered ? _value : throw new InvalidOperationException(Why!.Code);

    /// <summary>Why there is no value; null when there is one.</summary>
    public NotCovered? Why => Covered ? null : _why ?? Nothing;

    /// <summary>The value, unless it is no finite number: then the rule does not cover the case.</summary>
    public static implicit operator RuleResult(double value) =>
        double.IsFinite(value) ? new(value, null, true) : new(0, new NotCovered("", "not_finite"), false);

    public static implicit operator RuleResult(NotCovered why) => new(0, why, false);

    /// <summary>The value through a function; a refusal stays.</summary>
    public RuleResult Then(Func<double, double> next) => Covered ? next(_value) : this;
}
