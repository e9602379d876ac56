using Pattress.Jobs;
using Pattress.Papers.Drawings;

namespace Pattress.Papers.Sections;

/// <summary>A set fixing, drawn by how it works: screw and head, then what bears, knots or bites behind.</summary>
internal static class FixingMarks
{
    public static IReadOnlyList<Mark> Of(SectionCut cut, WallSection section, FixingShape fixing, double plateMm, Sheet sheet)
    {
        double plate = Math.Clamp(plateMm, 1.5, 8), tip = Math.Min(Math.Max(section.ScrewLengthMm, cut.BackOfFaceMm + 4), cut.DeepMm - 2);
        double half = Math.Max(fixing.HoleMm, fixing.ScrewMm) / 2;
        var marks = new List<Mark>
        {
            new RectMark("plate", new Rect(-plate, -Math.Min(30, cut.HalfMm - 4), plate, 2 * Math.Min(30, cut.HalfMm - 4))),
            new RectMark("bore", new Rect(0, -half, Hole(cut, Shape(section, fixing), tip), 2 * half)),
        };
        marks.AddRange(Behind(cut.BackOfFaceMm, tip, Shape(section, fixing)));
        marks.AddRange(Screw(-plate, tip, fixing));
        marks[0] = marks[0] with { Fact = new(sheet.Name(fixing.Kind), sheet.Words("draw_to_depth", Said.Length(section.ScrewLengthMm)), Embedded(section, sheet)) };
        return marks;
    }

    /// <summary>What opens behind a board stays closed in masonry, and is a plug there.</summary>
    private static FixingShape Shape(WallSection section, FixingShape fixing) =>
        fixing.Kind is "knotting_plug" or "nylon_nut_plug" or "strap_clamp" && section.Layers.Count > 0 && section.Layers.All(l => l.Material is not ("void" or "board" or "foam" or "laths" or "panel"))
            ? fixing with { Kind = "plug_and_screw" } : fixing;

    private static string Embedded(WallSection section, Sheet sheet) =>
        section.EmbedmentMm > 0 ? sheet.Words("draw_embedded", Said.Length(section.EmbedmentMm)) : "";

    private static bool BitesDeep(string kind) => kind is "plug_and_screw" or "plug_in_dab" or "sleeved_through_fixing" or "wood_screw" or "steel_screw";

    public static double Hole(SectionCut cut, FixingShape fixing, double tip) => BitesDeep(fixing.Kind) ? tip : cut.BackOfFaceMm;

    public static IEnumerable<Mark> Screw(double face, double tip, FixingShape f)
    {
        double r = f.ScrewMm / 2, head = f.HeadMm / 2;
        yield return new PathMark("screw", [new(face, head), new(face - 2.5, head * .6), new(face - 2.5, -head * .6), new(face, -head)], true);
        yield return new PathMark("screw", [new(face, r), new(tip - 2 * r, r), new(tip, 0), new(tip - 2 * r, -r), new(face, -r)], true);
        for (double x = face + 6; x < tip - 3; x += 3) yield return new LineMark("thread", new(x, -r), new(x + 1.2, r));
    }

    public static IEnumerable<Mark> Behind(double back, double tip, FixingShape f)
    {
        double open = f.OpensMm / 2, hole = f.HoleMm / 2;
        return f.Kind switch
        {
            "knotting_plug" => [Body(0, back, hole), Knot(back, tip, hole, open)],
            "wing_driven_plug" => [Body(0, back + 2, hole), Wing(back, open, 1), Wing(back, open, -1)],
            "nylon_nut_plug" or "hollow_wall_anchor" => [Body(-1, back, hole), Leg(back, tip, open, 1), Leg(back, tip, open, -1)],
            "spring_toggle" => [Toggle(back, open, 1), Toggle(back, open, -1), Nut(back, f)],
            "small_wing_disc" or "wide_wing_plug" => [Body(0, back, hole), Wing(back, open, 1), Wing(back, open, -1), Nut(back, f)],
            "strap_toggle" or "strap_clamp" => [Body(-1, back, hole * .8), Bar(back, open, 4)],
            "bearer_plate" => [Bar(back, open, 9)],
            "pivot_bar" or "self_drilling_toggle" => [Bar(back, open, 5)],
            "plug_and_screw" or "plug_in_dab" => [Plug(Math.Max(0, tip - 45), tip, hole)],
            "sleeved_through_fixing" => [Plug(back, tip, hole), Body(0, tip, f.ScrewMm / 2 + 1)],
            "self_drive_plug" or "hammer_in" => [Plug(0, Math.Max(back + 6, tip - 4), Math.Max(hole, f.ScrewMm / 2 + 2))],
            _ => [],
        };
    }

    private static RectMark Body(double from, double to, double half) => new("body", new Rect(from, -half, Math.Max(0, to - from), 2 * half));

    private static RectMark Bar(double back, double open, double thick) => new("bearing", new Rect(back, -open, thick, 2 * open));

    private static PathMark Wing(double back, double open, int side) =>
        new("bearing", [new(back, 0), new(back, side * open), new(back + 3, side * open), new(back + 7, 0)], true);

    private static PathMark Toggle(double back, double open, int side) =>
        new("bearing", [new(back + 6, 0), new(back, side * open), new(back + 3, side * open), new(back + 12, 0)], true);

    private static PathMark Leg(double back, double tip, double open, int side)
    {
        double end = Math.Max(back + 8, Math.Min(tip - 4, back + 16));
        return new("bearing", [new(back, side * 2), new(back + 1, side * open), new(back + 3, side * open), new(end, side * 3), new(end, 0), new(back, 0)], true);
    }

    private static PathMark Knot(double back, double tip, double hole, double open)
    {
        double end = Math.Max(back + 10, Math.Min(tip, back + 22)), mid = (back + end) / 2;
        return new("bearing", [new(back, hole), new(back + 2, open), new(mid, open * .75), new(end - 2, open), new(end, hole), new(end, -hole), new(end - 2, -open), new(mid, -open * .75), new(back + 2, -open), new(back, -hole)], true);
    }

    private static RectMark Nut(double back, FixingShape f) => new("body", new Rect(back + 5, -f.ScrewMm, 5, 2 * f.ScrewMm));

    private static PathMark Plug(double from, double to, double half)
    {
        var top = new List<Point>();
        for (double x = from; x < to - 3; x += 6) top.AddRange([new(x, half), new(x + 4, half), new(x + 5, half * .8)]);
        top.Add(new(to, half * .5));
        return new("body", [.. top, .. Enumerable.Reverse(top).Select(p => new Point(p.X, -p.Y))], true);
    }
}
