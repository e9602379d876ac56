using Pattress.Jobs;

namespace Pattress.Planning;

/// <summary>
/// Strips of a wall in which cables are allowed, BS 7671 522.6.202: within 150 mm of the top of the wall, within 150 mm of
/// an angle between two walls, and straight up, down and across from each accessory in its own width or height, on this
/// face and, where the wall is no thicker than 100 mm (or nobody measured it), on the other. A hole outside them is not
/// thereby safe. Things plumbed get caution bands, since pipes have no zones at all.
/// </summary>
public static class CableStrips
{
    /// <summary>Width of the strips at the top and at corners, mm (BS 7671 522.6.202).</summary>
    public const double EdgeMm = 150;

    /// <summary>Greatest thickness at which the other face's accessories count, mm (BS 7671 522.6.202).</summary>
    public const double ThinWallMm = 100;

    /// <summary>Margin of a caution band to each side of something plumbed, mm (assumed).</summary>
    public const double PipeMarginMm = 75;

    /// <summary>All strips of a wall in a fixed order; a ceiling has only those of its services.</summary>
    public static IReadOnlyList<CableStrip> Of(Wall wall)
    {
        var strips = new List<CableStrip>();
        if (wall.Kind == "wall") Edges(wall, strips);
        foreach (var service in wall.Services) Around(wall, service, strips);
        return strips;
    }

    /// <summary>Strips that a hole of this diameter touches.</summary>
    public static IEnumerable<CableStrip> Touching(IEnumerable<CableStrip> strips, Point hole, double diameterMm) =>
        strips.Where(s => hole.X > s.Area.X - diameterMm / 2 && hole.X < s.Area.Right + diameterMm / 2
            && hole.Y > s.Area.Y - diameterMm / 2 && hole.Y < s.Area.Top + diameterMm / 2);

    private static void Edges(Wall wall, List<CableStrip> strips)
    {
        double edge = Math.Min(EdgeMm, wall.HeightMm), side = Math.Min(EdgeMm, wall.WidthMm);
        strips.Add(Strip(wall, "ceiling", "cable", new Rect(0, wall.HeightMm - edge, wall.WidthMm, edge)));
        strips.Add(Strip(wall, "corner_left", "cable", new Rect(0, 0, side, wall.HeightMm)));
        strips.Add(Strip(wall, "corner_right", "cable", new Rect(wall.WidthMm - side, 0, side, wall.HeightMm)));
    }

    private static void Around(Wall wall, Service service, List<CableStrip> strips)
    {
        if (service.Face == "other" && wall.ThicknessMm > ThinWallMm) return;
        string kind = service.IsElectrical ? "cable" : "pipe";
        double margin = service.IsElectrical ? 0 : PipeMarginMm;
        var a = service.Area;
        strips.Add(Strip(wall, service.Id + "_vertical", kind, Clip(wall, new Rect(a.X - margin, 0, a.Width + 2 * margin, wall.HeightMm))));
        strips.Add(Strip(wall, service.Id + "_horizontal", kind, Clip(wall, new Rect(0, a.Y - margin, wall.WidthMm, a.Height + 2 * margin))));
    }

    private static CableStrip Strip(Wall wall, string id, string kind, Rect area) =>
        new(id, kind, area, wall.StripChecks.FirstOrDefault(c => c.Strip == id)?.How ?? "");

    private static Rect Clip(Wall wall, Rect r)
    {
        double x = Math.Max(0, r.X), y = Math.Max(0, r.Y);
        return new Rect(x, y, Math.Min(wall.WidthMm, r.Right) - x, Math.Min(wall.HeightMm, r.Top) - y);
    }
}
