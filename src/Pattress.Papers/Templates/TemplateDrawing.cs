using Pattress.Jobs;
using Pattress.Papers.Documents;
using Pattress.Papers.Drawings;

namespace Pattress.Papers.Templates;

/// <summary>Brackets of a thing at their true size, as seen from the room: plates, hole centres, what to drill, and a level line.</summary>
public static class TemplateDrawing
{
    /// <summary>CSS defines an inch as 96 px, so that a drawing of this scale is as large as the thing.</summary>
    public const double TrueScale = 96 / 25.4;

    private const double CrossMm = 9, AboveMm = 14, BesideMm = 10, LabelMm = 62;

    /// <summary>True when all holes lie within a square of this side.</summary>
    public static bool IsWithin(IReadOnlyList<BracketAnswer> brackets, double sideMm)
    {
        var holes = brackets.SelectMany(b => b.Holes.Select(h => h.At)).ToList();
        return holes.Max(p => p.X) - holes.Min(p => p.X) <= sideMm && holes.Max(p => p.Y) - holes.Min(p => p.Y) <= sideMm;
    }

    public static Drawing Of(string id, string title, IReadOnlyList<BracketAnswer> brackets, Say say)
    {
        var sheet = new Sheet(TrueScale, PaperSize.TextPx, say);
        var box = Around(brackets);
        sheet.Add("level", "draw_level", [.. brackets.Select(b => b.At.Y).Distinct().SelectMany(y => Level(y, box, sheet))]);
        sheet.Add("plates", "draw_plate", [.. brackets.Select(b => Plate(b, sheet))]);
        sheet.Add("holes", "draw_holes", [.. brackets.SelectMany(b => Holes(b, sheet))]);
        return new Drawing(id, title, box, TrueScale, sheet.Groups);
    }

    private static Rect Around(IReadOnlyList<BracketAnswer> brackets)
    {
        var all = brackets.SelectMany(b => b.Holes.Select(h => h.At).Concat(b.Plate.Outline.Select(p => OnWall(p, b)))).ToList();
        double left = all.Min(p => p.X) - BesideMm, foot = all.Min(p => p.Y) - AboveMm;
        return new Rect(left, foot, all.Max(p => p.X) + LabelMm - left, all.Max(p => p.Y) + AboveMm - foot);
    }

    private static Point OnWall(Point p, BracketAnswer bracket) => new(bracket.At.X + p.X, bracket.At.Y + p.Y);

    private static IEnumerable<Mark> Level(double y, Rect box, Sheet sheet)
    {
        yield return new LineMark("level", new(box.X, y), new(box.Right, y)) { Fact = new(sheet.Words("draw_level"), sheet.Words("draw_up", Said.Length(y)), "") };
        yield return new TextMark("label", new(box.Right - 1, y + 1), sheet.Words("draw_level_label", Said.Length(y)), Anchor.End);
    }

    private static PathMark Plate(BracketAnswer bracket, Sheet sheet) => new("template-plate", [.. bracket.Plate.Outline.Select(p => OnWall(p, bracket))], true)
    {
        Fact = new(sheet.Words("draw_plate"), sheet.Place(bracket.At), bracket.Plate.Assumed ? sheet.Words("draw_plate_assumed") : ""),
    };

    private static IEnumerable<Mark> Holes(BracketAnswer bracket, Sheet sheet)
    {
        double right = bracket.Holes.Select(h => h.At.X).Concat(bracket.Plate.Outline.Select(p => OnWall(p, bracket).X)).Max() + 4;
        var order = bracket.Holes.Select((h, i) => (Hole: h, Index: i)).OrderBy(p => p.Hole.At.Y).ToList();
        var rows = Spread.Apart([.. order.Select(p => p.Hole.At.Y - sheet.TextMm)], sheet.TextMm * 3.6, double.MinValue, double.MaxValue);
        return order.SelectMany((p, row) => Hole(bracket, p.Hole, p.Index, new Point(right, rows[row]), sheet));
    }

    private static IEnumerable<Mark> Hole(BracketAnswer bracket, HoleAnswer hole, int index, Point label, Sheet sheet)
    {
        var at = hole.At;
        string says = sheet.Words("draw_hole", Said.Length(hole.DiameterMm), Said.Length(hole.DepthMm));
        yield return new CircleMark("template-hole", at, hole.DiameterMm / 2) { Fact = new(says, sheet.Place(at), sheet.Name("bit." + hole.Bit)) };
        yield return new LineMark("cross", new(at.X - CrossMm, at.Y), new(at.X + CrossMm, at.Y));
        yield return new LineMark("cross", new(at.X, at.Y - CrossMm), new(at.X, at.Y + CrossMm));
        yield return new PathMark("leader", [new(at.X + hole.DiameterMm / 2, at.Y), new(label.X - 1, label.Y + sheet.TextMm * .35)]);
        yield return new TextMark("label", label, $"{HoleMark.Of(bracket, index)}  {says}");
        yield return new TextMark("label", label with { Y = label.Y - sheet.TextMm * 1.2 }, sheet.Place(at));
    }
}
