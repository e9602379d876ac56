using Pattress.Jobs;
using Pattress.Strength.Standards.BS_7671_2018;

namespace Pattress.Planning;

/// <summary>
/// Strips of a wall in which cables are allowed (BS 7671 522.6.202, <see cref="CableZones"/>), from the sockets, switches and corners drawn on
/// it, on this face and, where the wall is thin or nobody measured it, on the other. A hole outside them is not thereby safe. Things plumbed
/// get caution bands of the same shape, since pipes have no zones at all. The ids stay the same, so that one record serves all holes in a strip.
/// </summary>
public static class CableStrips
{
    /// <summary>Margin of a caution band to each side of something plumbed, mm (assumed).</summary>
    public const double PipeMarginMm = 75;

    /// <summary>All strips of a wall in a fixed order: edges, cables, pipes; a ceiling has only those of its services.</summary>
    public static IReadOnlyList<CableStrip> Of(Wall wall)
    {
        var counted = wall.Services.Where(s => s.Face != "other" || CableZones.OtherFaceCounts(wall.ThicknessMm)).ToLookup(s => s.IsElectrical);
        bool upright = wall.Kind == "wall";
        var cables = CableZones.Strips(Face(wall, counted[true], 0, upright ? [0, wall.WidthMm] : [])).Where(z => upright || z.Kind != "top");
        var pipes = CableZones.Strips(Face(wall, counted[false], PipeMarginMm, [])).Where(z => z.Kind != "top");
        return [.. cables.Select(z => Strip(wall, z, "cable")), .. pipes.Select(z => Strip(wall, z, "pipe"))];
    }

    /// <summary>Strips that a hole of this diameter touches.</summary>
    public static IEnumerable<CableStrip> Touching(IEnumerable<CableStrip> strips, Point hole, double diameterMm) =>
        strips.Where(s => new ZoneStrip(s.Id, s.Kind, s.Area.X, s.Area.Y, s.Area.Right, s.Area.Top).Touches(hole.X, hole.Y, diameterMm));

    /// <summary>How a sentence names a strip: how it lies, by what, on which wall.</summary>
    public static IReadOnlyList<Said> Words(Wall wall, CableStrip strip)
    {
        var on = Said.Words(wall.Name.Length > 0 ? wall.Name : wall.Id);
        return wall.Services.FirstOrDefault(s => strip.Id.StartsWith(s.Id + "_", StringComparison.Ordinal)) is { } service
            ? [Said.Name(strip.Id.EndsWith("_vertical", StringComparison.Ordinal) ? "strip.vertical" : "strip.horizontal"), Said.Name("service." + service.Kind), on]
            : [Said.Name("strip.along"), Said.Name("strip." + strip.Id), on];
    }

    private static WallFace Face(Wall wall, IEnumerable<Service> services, double marginMm, IReadOnlyList<double> corners) => new(
        wall.WidthMm, wall.HeightMm,
        [.. services.Select(s => new Accessory(s.Id, s.Area.X + s.Area.Width / 2, s.Area.Y + s.Area.Height / 2, s.Area.Width + 2 * marginMm, s.Area.Height + 2 * marginMm))],
        corners);

    private static CableStrip Strip(Wall wall, ZoneStrip zone, string kind)
    {
        string id = zone.Id switch { "top" => "ceiling", "corner_1" => "corner_left", "corner_2" => "corner_right", _ => zone.Id.Replace('.' + zone.Kind, '_' + zone.Kind, StringComparison.Ordinal) };
        double x = Math.Max(0, zone.X0), y = Math.Max(0, zone.Y0);
        var area = new Rect(x, y, Math.Min(wall.WidthMm, zone.X1) - x, Math.Min(wall.HeightMm, zone.Y1) - y);
        return new(id, kind, area, wall.StripChecks.FirstOrDefault(c => c.Strip == id)?.How ?? "");
    }
}
