using Pattress.Quantities;
using Pattress.Strength.Standards;
using Pattress.Working;

namespace Pattress.Strength;

/// <summary>A rule's answer: the rule, the inputs it took (defaults included) and its value or why there is none.</summary>
public sealed record RuleAnswer(Rule Rule, IReadOnlyList<double> Inputs, RuleResult Result);

/// <summary>Every published rule in the program, by its fixed id.</summary>
public static class RuleBook
{
    /// <summary>All rules in the order of their ids.</summary>
    public static IReadOnlyList<Rule> All { get; } = [.. AllStandards.Rules().OrderBy(r => r.Id, StringComparer.Ordinal)];

    private static readonly Dictionary<string, Rule> ById = All.ToDictionary(r => r.Id, StringComparer.Ordinal);

    /// <summary>The rule of this id, or null.</summary>
    public static Rule? Find(string id) => ById.GetValueOrDefault(id);

    /// <summary>Rules whose id, document, clause or title holds the text; all where it is empty.</summary>
    public static IReadOnlyList<Rule> Search(string text) =>
        [.. All.Where(r => $"{r.Id} {r.Document} {r.Edition} {r.Clause} {r.Title}".Contains(text, StringComparison.OrdinalIgnoreCase))];

    /// <summary>
    /// One rule from named texts (<c>d=5 mm</c>, a bare number in the rule's own unit, or a choice's word). Refused, with every
    /// problem at once: unknown rule, unknown or missing input, text that is no quantity of the input's kind. Outside its range
    /// the answer is "not covered".
    /// </summary>
    public static Outcome<RuleAnswer> Evaluate(string id, IReadOnlyDictionary<string, string> inputs, Trace? trace = null)
    {
        if (Find(id) is not { } rule) return Outcome<RuleAnswer>.Refused(new Problem("unknown_rule", "$.id", Short(id), "an id from the list of rules"));
        var problems = UnknownNames(rule, inputs);
        var values = new double[rule.Parameters.Count];
        for (int i = 0; i < values.Length; i++) values[i] = Read(rule.Parameters[i], inputs, problems);
        return problems.Count > 0 ? Outcome<RuleAnswer>.Refused(problems) : Outcome<RuleAnswer>.Of(new RuleAnswer(rule, values, rule.Evaluate(values, trace)));
    }

    private static List<Problem> UnknownNames(Rule rule, IReadOnlyDictionary<string, string> inputs)
    {
        string allowed = string.Join(", ", rule.Parameters.Select(p => p.Symbol));
        return [.. inputs.Where(i => rule.Parameters.All(p => p.Symbol != i.Key)).OrderBy(i => i.Key, StringComparer.Ordinal)
            .Select(i => new Problem("unknown_input", "$." + Short(i.Key), Short(i.Value), allowed))];
    }

    private static double Read(Parameter parameter, IReadOnlyDictionary<string, string> inputs, List<Problem> problems)
    {
        string path = "$." + parameter.Symbol;
        if (!inputs.TryGetValue(parameter.Symbol, out string? text))
        {
            if (parameter.Default is { } value) return value;
            problems.Add(new Problem("missing_input", path, "", parameter.Allowed));
            return 0;
        }
        return parameter.Words.Count > 0 ? Word(parameter, path, text, problems) : Quantity(parameter, path, text, problems);
    }

    private static double Word(Parameter parameter, string path, string text, List<Problem> problems)
    {
        for (int i = 0; i < parameter.Words.Count; i++) if (parameter.Words[i] == text.Trim()) return i;
        problems.Add(new Problem("unknown_choice", path, Short(text), parameter.Allowed));
        return 0;
    }

    private static double Quantity(Parameter parameter, string path, string text, List<Problem> problems)
    {
        if (!QuantityText.TryParseOrBare(text, parameter.Dimension, out double value, out string code)) problems.Add(new Problem(code, path, Short(text), parameter.Allowed));
        return value;
    }

    private static string Short(string text) => text.Length > 80 ? text[..80] : text;
}
