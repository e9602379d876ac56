using Pattress.Jobs;
using Pattress.Papers.Drawings;

namespace Pattress.Papers.Sections;

/// <summary>How a fixing is set, in four small sections to scale: the hole, in and not yet opened, drawn up and set, and how it goes wrong.</summary>
public static class SettingDrawing
{
    private const double DeepMm = 90, RoomMm = 14, HalfMm = 34;

    /// <summary><c>hole</c>, <c>in</c>, <c>up</c>, <c>wrong</c>.</summary>
    public static IReadOnlyList<string> Steps { get; } = ["hole", "in", "up", "wrong"];

    /// <param name="step">One of <see cref="Steps"/>.</param>
    public static Drawing Of(string id, string step, WallSection section, FixingShape fixing, Sizing sizing, Say say)
    {
        double half = Math.Max(HalfMm, fixing.OpensMm / 2 + 6), scale = sizing.WidthPx / (DeepMm + RoomMm);
        var sheet = new Sheet(scale, sizing.TextPx, say);
        var cut = SectionCut.Of(section, DeepMm, half);
        sheet.Add("layers", "draw_layers", LayerMarks.Of(cut, sheet));
        sheet.Add("fixing", "draw_fixing", [.. Step(step, cut, section, fixing, sheet)]);
        return new Drawing(id, say(new Reason("setting.step." + step)), new Rect(-RoomMm, -half - 2, DeepMm + RoomMm, 2 * half + 4), scale, sheet.Groups);
    }

    private static IEnumerable<Mark> Step(string step, SectionCut cut, WallSection section, FixingShape fixing, Sheet sheet) => step switch
    {
        "hole" => [Bore(cut, section, fixing)],
        "in" => [Bore(cut, section, fixing), .. FixingMarks.Behind(cut.BackOfFaceMm, Tip(cut, section), Folded(fixing)), .. FixingMarks.Screw(-10, Tip(cut, section) - 8, fixing)],
        "up" => FixingMarks.Of(cut, section, fixing, 3, sheet),
        _ => [.. Wrong(cut, section, fixing), new LineMark("not-here", new(-RoomMm + 2, -cut.HalfMm + 3), new(-RoomMm + 12, -cut.HalfMm + 13)), new LineMark("not-here", new(-RoomMm + 2, -cut.HalfMm + 13), new(-RoomMm + 12, -cut.HalfMm + 3))],
    };

    /// <summary>What should have opened behind is drawn back into its hole; what should bite is loose.</summary>
    private static IEnumerable<Mark> Wrong(SectionCut cut, WallSection section, FixingShape fixing) =>
        [Bore(cut, section, fixing), .. FixingMarks.Behind(Math.Max(2, cut.BackOfFaceMm - 9), Tip(cut, section) - 9, Folded(fixing)), .. FixingMarks.Screw(-9, Tip(cut, section) - 9, fixing)];

    private static RectMark Bore(SectionCut cut, WallSection section, FixingShape fixing)
    {
        double half = Math.Max(fixing.HoleMm, fixing.ScrewMm * 0.7) / 2;
        return new("bore", new Rect(0, -half, FixingMarks.Hole(cut, fixing, Tip(cut, section)), 2 * half));
    }

    private static FixingShape Folded(FixingShape fixing) => fixing with { OpensMm = Math.Max(fixing.HoleMm * 0.9, fixing.ScrewMm) };

    private static double Tip(SectionCut cut, WallSection section) => Math.Min(Math.Max(section.ScrewLengthMm, cut.BackOfFaceMm + 16), cut.DeepMm - 2);
}
