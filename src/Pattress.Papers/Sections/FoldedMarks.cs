using Pattress.Jobs;
using Pattress.Papers.Drawings;

namespace Pattress.Papers.Sections;

/// <summary>A fixing on its way through the hole, before it opens: what will bear lies along the axis, no wider than the hole.</summary>
internal static class FoldedMarks
{
    /// <summary>True when something opens, knots or turns behind the face.</summary>
    public static bool Opens(string kind) => kind is "knotting_plug" or "wing_driven_plug" or "nylon_nut_plug" or "hollow_wall_anchor" or "spring_toggle"
        or "strap_toggle" or "strap_clamp" or "pivot_bar" or "self_drilling_toggle" or "small_wing_disc" or "wide_wing_plug";

    public static IReadOnlyList<Mark> Of(SectionCut cut, FixingShape fixing, Sheet sheet)
    {
        double half = Math.Max(fixing.HoleMm, fixing.ScrewMm) / 2, back = cut.BackOfFaceMm;
        // Laid along the axis a bar is as long as it spans; a knot is as long as its sleeve.
        double end = Math.Min(cut.DeepMm - 2, back + (KnotsOnly(fixing.Kind) ? Math.Max(10, fixing.LengthMm - back) : fixing.OpensMm));
        return
        [
            new RectMark("bore", new Rect(0, -half, back, 2 * half)) { Fact = new(sheet.Name(fixing.Kind), sheet.Words("draw_to_depth", Said.Length(end)), sheet.Words("draw_folded")) },
            new RectMark("body", new Rect(-6, -half * .55, back + 6, half * 1.1)),
            new LineMark("screw", new(-12, 0), new(back, 0)),
            new PathMark("bearing", [new(back, -half * .9), new(end - half, -half * .9), new(end, 0), new(end - half, half * .9), new(back, half * .9)], true),
            new LineMark("thread", new(back, 0), new(end - half, 0)),
        ];
    }

    private static bool KnotsOnly(string kind) => kind is "knotting_plug" or "nylon_nut_plug" or "hollow_wall_anchor";
}
