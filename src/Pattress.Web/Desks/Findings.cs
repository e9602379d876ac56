using Pattress.Jobs;

namespace Pattress.Web.Desks;

/// <summary>The possible findings of a check, each with the wall as it is recorded then.</summary>
internal static class Findings
{
    private static readonly string[] Hows = ["detector", "isolated", "looked_behind"];

    /// <summary>Name of the finding, and the wall with it; empty where a measure must be typed.</summary>
    public static IEnumerable<(string Words, Wall Wall)> Of(CheckToDo check, Wall wall, Point at, Func<string> newId) => check.Why.Code switch
    {
        "check_do_strip" or "check_do_band" => Hows.Select(how => ("how." + how, wall.Record(new StripCheck(newId(), check.Why.Values[0].Text, how)))),
        "check_do_sample" => [("sampled.clear", Sampled(wall, "clear")), ("sampled.found", Sampled(wall, "found"))],
        "check_do_dry" => [("moisture.dry", Moisture(wall, "dry")), ("moisture.damp", Moisture(wall, "damp"))],
        _ => Readings(check, wall, at, newId),
    };

    private static IEnumerable<(string, Wall)> Readings(CheckToDo check, Wall wall, Point at, Func<string> newId) =>
        ReadingKeys.Find(check.Kind) is { } kind
            ? kind.Words.Select(word => (kind.Field + "." + word, wall.Add(ReadingKeys.Make(newId(), kind, at, word, new Dictionary<string, double>()))))
            : [];

    private static Wall Sampled(Wall wall, string found) => wall with { Condition = wall.Condition with { Sampled = found } };

    private static Wall Moisture(Wall wall, string state) => wall with { Condition = wall.Condition with { Moisture = state } };
}
