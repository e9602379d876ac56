using Pattress.Jobs;
using Pattress.Papers.Drawings;

namespace Pattress.Papers.Elevations;

/// <summary>What will hang, in thin line, its brackets and its holes.</summary>
internal static class ThingMarks
{
    public static IReadOnlyList<Mark> Things(IReadOnlyList<Hung> things, bool ceiling, Sheet sheet) => [.. things.SelectMany(t => Thing(t, ceiling, sheet))];

    public static IReadOnlyList<Mark> Holes(IReadOnlyList<Hung> things, Sheet sheet) =>
        [.. things.SelectMany(t => t.Answer?.Brackets.SelectMany(b => Bracket(t, b, sheet)) ?? [])];

    private static IEnumerable<Mark> Thing(Hung thing, bool ceiling, Sheet sheet)
    {
        var area = ThingShape.Of(thing.Fixture, thing.Answer, ceiling);
        string verdict = thing.Answer is { } a ? sheet.Words("verdict_" + Verdicts.Id(a.Verdict)) : sheet.Words("draw_not_planned");
        var fact = new Fact(thing.Letter + " " + Label(thing.Fixture, sheet), WallMarks.Extent(area, sheet), verdict);
        if (thing.Answer?.Verdict == Verdict.NotHere)
            yield return new HatchMark("not-here", new Rect(area.X, area.Y - sheet.Px(5), area.Width, area.Height + sheet.Px(10)), sheet.Px(6));
        yield return area.Height < sheet.Px(3)
            ? new LineMark("thing", new(area.X, area.Y), new(area.Right, area.Y)) { Fact = fact }
            : new RectMark("thing", area) { Fact = fact };
        yield return new TextMark("letter", new(area.X + area.Width / 2, area.Top + sheet.Px(7)), thing.Letter, Anchor.Middle);
    }

    private static string Label(Fixture fixture, Sheet sheet) => fixture.Name.Length > 0 ? fixture.Name : sheet.Name("fixture." + fixture.What);

    private static IEnumerable<Mark> Bracket(Hung thing, BracketAnswer bracket, Sheet sheet)
    {
        string verdict = Verdicts.Id(thing.Answer!.Verdict);
        double r = sheet.Px(5);
        var fact = new Fact(
            sheet.Words("draw_bracket", Said.Words(thing.Letter), Said.Count(bracket.Index + 1)), sheet.Place(bracket.At),
            bracket.Fixing is { } fixing ? sheet.Words("draw_fixings", Said.Count(bracket.Count), Said.Name(fixing)) : sheet.Words("draw_no_fixing"));
        yield return new RectMark("bracket " + verdict, new Rect(bracket.At.X - r, bracket.At.Y - r, 2 * r, 2 * r)) { Fact = fact };
        if (verdict == "not_here") yield return new LineMark("bracket not_here", new(bracket.At.X - r, bracket.At.Y - r), new(bracket.At.X + r, bracket.At.Y + r));
        foreach (var hole in bracket.Holes) yield return Hole(hole, bracket.IntoSupport, sheet);
    }

    private static CircleMark Hole(HoleAnswer hole, bool intoSupport, Sheet sheet) =>
        new("hole", hole.At, Math.Max(hole.DiameterMm / 2, sheet.Px(1.5)))
        {
            Fact = new(sheet.Words("draw_hole", Said.Length(hole.DiameterMm), Said.Length(hole.DepthMm)), sheet.Place(hole.At), intoSupport ? sheet.Words("draw_meets", Said.Percent(hole.SupportProbability)) : ""),
        };
}

/// <summary>Ids of the verdicts as documents and classes write them.</summary>
public static class Verdicts
{
    public static string Id(Verdict verdict) => verdict switch
    {
        Verdict.Ready => "ready",
        Verdict.CheckFirst => "check_first",
        _ => "not_here",
    };
}
