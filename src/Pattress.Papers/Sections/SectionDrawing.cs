using Pattress.Jobs;
using Pattress.Papers.Drawings;

namespace Pattress.Papers.Sections;

/// <summary>How a fixing looks: its measures from the catalogue, mm.</summary>
/// <param name="Kind">Kind id, e.g. <c>strap_toggle</c>.</param>
/// <param name="OpensMm">Width that bears behind; 0 when nothing opens.</param>
public sealed record FixingShape(string Kind, double HoleMm, double OpensMm, double ScrewMm, double HeadMm, double LengthMm);

/// <summary>Of a fixing that opens: on its way through the hole, or set.</summary>
public enum Stage { GoingIn, Set }

/// <summary>The wall cut through at a hole, to scale: room to the left, wall to the right, the fixing going in or set.</summary>
public static class SectionDrawing
{
    private const double MostDeepMm = 160, LeastDeepMm = 70, RoomMm = 16;

    /// <summary>What there is to see of a kind: two stages where something opens behind the face, else the fixing set.</summary>
    public static IReadOnlyList<Stage> Stages(string kind) => FoldedMarks.Opens(kind) ? [Stage.GoingIn, Stage.Set] : [Stage.Set];

    /// <param name="plateMm">Thickness of the bracket's plate on the face.</param>
    public static Drawing Of(string id, WallSection section, FixingShape? fixing, double plateMm, Sizing sizing, Say say, Stage stage = Stage.Set)
    {
        double deep = Math.Clamp(Math.Max(section.ScrewLengthMm + 12, Needed(section)), LeastDeepMm, MostDeepMm);
        double half = Math.Max(40, fixing is null ? 0 : fixing.OpensMm / 2 + 12);
        double scale = Math.Min(2.8, 0.62 * sizing.WidthPx / (deep + RoomMm));
        var sheet = new Sheet(scale, sizing.TextPx, say);
        var cut = SectionCut.Of(section, deep, half);
        double foot = sheet.TextMm * (1.45 * cut.Layers.Count + (fixing is null ? 0.6 : 2.0));
        sheet.Add("layers", "draw_layers", LayerMarks.Of(cut, sheet));
        if (fixing is not null) sheet.Add("fixing", "draw_fixing", stage == Stage.Set ? FixingMarks.Of(cut, section, fixing, plateMm, sheet) : FoldedMarks.Of(cut, fixing, sheet));
        sheet.Add("labels", "draw_layers", LayerLabels.Of(cut, sheet));
        var view = new Rect(-RoomMm, -half - foot, sizing.WidthPx / scale, 2 * half + foot + sheet.Px(4));
        return new Drawing(id, Title(section, stage, say), view, scale, sheet.Groups);
    }

    private static string Title(WallSection section, Stage stage, Say say) => section.Fixing is { } fixing
        ? say(new Reason(stage == Stage.Set ? "draw_section_title" : "draw_section_before_title", Said.Name(section.BuildUp), Said.Name(fixing)))
        : say(new Reason("draw_section_bare_title", Said.Name(section.BuildUp)));

    /// <summary>All layers with the last one cut short: what lies behind needs only be seen to be there.</summary>
    private static double Needed(WallSection section) =>
        section.Layers.Take(Math.Max(0, section.Layers.Count - 1)).Sum(l => l.ThicknessMm) + 25;
}

/// <summary>A layer where it lies: from and to in mm behind the face; cut short where the drawing ends.</summary>
internal sealed record CutLayer(SectionLayer Layer, double From, double To, bool CutShort);

/// <summary>The layers as far as they are drawn, and where the face's own thickness ends.</summary>
internal sealed record SectionCut(IReadOnlyList<CutLayer> Layers, double DeepMm, double HalfMm, double BackOfFaceMm)
{
    private static readonly string[] Facing = ["board", "skim", "laths", "plaster", "tile", "panel"];

    public static SectionCut Of(WallSection section, double deep, double half)
    {
        var layers = new List<CutLayer>();
        double at = 0, back = 0;
        bool facing = true;
        foreach (var layer in section.Layers)
        {
            if (at >= deep) break;
            facing &= Facing.Contains(layer.Material);
            double to = Math.Min(at + layer.ThicknessMm, deep);
            layers.Add(new(layer, at, to, at + layer.ThicknessMm > deep));
            at = to;
            if (facing) back = at;
        }

        return new(layers, deep, half, back);
    }
}
