using Pattress.Supports;
using Pattress.Walls;

namespace Pattress.Jobs.WallFile;

/// <summary>How much a reading moved an answer, in plain words. Bounds in natural log odds: e is 2.7 to one.</summary>
internal static class ChangeWords
{
    /// <summary>Below this a reading changed next to nothing; then a little, clearly, strongly.</summary>
    private const double Notable = 0.1, Clear = 1, Strong = 3;

    public static Reason OfWall(ReadingInfluence i) => Math.Abs(i.LogOdds) < Notable
        ? new("reading_wall_same", Said.Name(i.Family))
        : new(i.LogOdds > 0 ? "reading_wall_for" : "reading_wall_against", Said.Name(Word(i.LogOdds)), Said.Name(i.Family), Said.Percent(i.Without), Said.Percent(i.With));

    public static Reason OfSupport(LineInfluence i) => Math.Abs(i.LogOdds) < Notable
        ? new("reading_support_same", Said.Length(Math.Round(i.AtMm)))
        : new(i.LogOdds > 0 ? "reading_support_for" : "reading_support_against", Said.Name(Word(i.LogOdds)), Said.Length(Math.Round(i.AtMm)), Said.Percent(i.Without), Said.Percent(i.With));

    private static string Word(double logOdds) => Math.Abs(logOdds) switch { < Clear => "change.little", < Strong => "change.clear", _ => "change.strong" };
}
