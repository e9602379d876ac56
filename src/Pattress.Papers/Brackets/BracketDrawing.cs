using Pattress.Jobs;
using Pattress.Papers.Drawings;

namespace Pattress.Papers.Brackets;

/// <summary>
/// A bracket's plate from the front with the design forces on each fixing: a ring as large as it is pulled, an arrow as
/// long as it is sheared, and the toe where it presses.
/// </summary>
public static class BracketDrawing
{
    private const double RingPx = 17, ArrowPx = 40;

    public static Drawing Of(string id, BracketAnswer bracket, Sizing sizing, Say say)
    {
        var outline = bracket.Plate.Outline;
        double w = outline.Max(p => p.X) - outline.Min(p => p.X), h = outline.Max(p => p.Y) - outline.Min(p => p.Y);
        double scale = Math.Min(sizing.WidthPx * .42 / Math.Max(w, 1), 220 / Math.Max(h, 1));
        var sheet = new Sheet(scale, sizing.TextPx, say);
        sheet.Add("plate", "draw_plate", Plate(bracket, sheet));
        sheet.Add("forces", "draw_forces", Forces(bracket, sheet));
        double left = outline.Min(p => p.X) - sheet.Px(26), bottom = outline.Min(p => p.Y) - sheet.Px(46);
        var view = new Rect(left, bottom, sizing.WidthPx / scale, outline.Max(p => p.Y) + sheet.Px(22) - bottom);
        return new Drawing(id, say(new Reason("draw_bracket_title", Said.Count(bracket.Index + 1), Said.Name("case." + bracket.LoadCase))), view, scale, sheet.Groups);
    }

    private static IReadOnlyList<Mark> Plate(BracketAnswer bracket, Sheet sheet)
    {
        var outline = bracket.Plate.Outline;
        double foot = outline.Min(p => p.Y);
        var toe = outline.Where(p => p.Y < foot + 1e-6).ToList();
        return
        [
            new PathMark("plate", outline, true) { Fact = new(sheet.Words("draw_plate"), sheet.Words("draw_arm", Said.Length(bracket.Plate.ArmMm)), bracket.Plate.Assumed ? sheet.Words("draw_plate_assumed") : "") },
            new LineMark("toe", new(toe.Min(p => p.X), foot), new(toe.Max(p => p.X), foot))
            {
                Fact = new(sheet.Words("draw_toe"), "", sheet.Words("draw_toe_says", Said.Plain(bracket.ToePressureMpa), Said.Percent(bracket.ToeUtilisation))),
            },
        ];
    }

    private static IReadOnlyList<Mark> Forces(BracketAnswer bracket, Sheet sheet)
    {
        double most = bracket.Forces.Select(f => Math.Max(f.TensionN, f.ShearN)).DefaultIfEmpty(0).Max();
        double right = bracket.Plate.Outline.Max(p => p.X) + sheet.Px(14);
        var heights = bracket.Forces.Select((f, i) => (f, i)).OrderBy(p => p.f.At.Y).ToList();
        var text = Spread.Apart([.. heights.Select(p => Local(p.f, bracket).Y)], sheet.TextMm * 2.8, double.MinValue, double.MaxValue);
        return [.. heights.SelectMany((p, row) => Force(p.f, p.i, bracket, most, new Point(right, text[row]), sheet))];
    }

    private static Point Local(FixingForce f, BracketAnswer bracket) => new(f.At.X - bracket.At.X, f.At.Y - bracket.At.Y);

    private static IEnumerable<Mark> Force(FixingForce f, int index, BracketAnswer bracket, double most, Point text, Sheet sheet)
    {
        var at = Local(f, bracket);
        string tension = sheet.Words("draw_pull", Said.Force(f.TensionN)), shear = sheet.Words("draw_shear", Said.Force(f.ShearN));
        yield return new CircleMark("hole", at, sheet.Px(3)) { Fact = new(sheet.Words("draw_fixing_number", Said.Count(index + 1)), sheet.Place(f.At), tension + ", " + shear) };
        if (most > 0 && f.TensionN > 0) yield return new CircleMark("pull", at, sheet.Px(3 + RingPx * f.TensionN / most));
        if (most > 0 && f.ShearN > 0) foreach (var mark in Arrow(at, ArrowPx * f.ShearN / most, sheet)) yield return mark;
        yield return new PathMark("leader", [new(at.X + sheet.Px(4), at.Y), new(text.X - sheet.Px(4), text.Y)]);
        yield return new TextMark("label", text, tension);
        yield return new TextMark("label", text with { Y = text.Y - sheet.TextMm * 1.2 }, shear);
    }

    private static IEnumerable<Mark> Arrow(Point at, double lengthPx, Sheet sheet)
    {
        Point end = new(at.X, at.Y - sheet.Px(lengthPx + 5));
        double barb = sheet.Px(4);
        yield return new LineMark("shear", at, end);
        yield return new PathMark("shear", [new(end.X - barb, end.Y + barb), end, new(end.X + barb, end.Y + barb)]);
    }
}
