using Pattress.Actions;
using Pattress.Strength.Mechanisms;
using Pattress.Working;

namespace Pattress.Planning;

/// <summary>Numbers that nobody measured, as an item's answer lists them.</summary>
internal static class AssumedNumbers
{
    /// <summary>Every number of a working whose clause says that it is assumed, once.</summary>
    public static IEnumerable<Assumption> In(IEnumerable<Step> working) =>
        working.Where(s => s.Clause.StartsWith(Factors.Assumed, StringComparison.Ordinal)).DistinctBy(s => (s.Clause, s.Value))
            .Select(s => Of(s.Clause[Factors.Assumed.Length..], s.Value, s.Unit));

    /// <summary>One of <c>data/strength/factors.csv</c> that stands in no working.</summary>
    public static Assumption Of(string key) => Of(key, Factors.Of(key), "");

    /// <summary>What departs from a rule, and how it was counted.</summary>
    public static Assumption Of(Reason mark) => new(mark.Code, mark.Values, "a departure from the rule or a note to it");

    private static Assumption Of(string key, double value, string unit) => key switch
    {
        "board_toe_mpa" => new("assume_toe", [Said.Plain(value)], Factors.Source(key)),
        "support_depth" => new("assume_stud_depth", [Said.Length(value)], Factors.Source(key)),
        _ => unit switch
        {
            "" => new("assume_number", [Said.Name("number." + key), Said.Plain(value)], Factors.Source(key)),
            "mm" => new("assume_number", [Said.Name("number." + key), Said.Length(value)], Factors.Source(key)),
            "N" => new("assume_number", [Said.Name("number." + key), Said.Force(value)], Factors.Source(key)),
            _ => new("assume_number_unit", [Said.Name("number." + key), Said.Plain(value), Said.Words(unit)], Factors.Source(key)),
        },
    };
}
