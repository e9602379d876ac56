using Pattress.Jobs;

namespace Pattress.Web.Parts;

/// <summary>The parts of a wall as handles on its drawing, each at its lower left corner, and a wall with one of them moved.</summary>
internal static class WallParts
{
    public static IReadOnlyList<Handle> Of(Wall wall, Func<string, Point, string> label) =>
    [
        .. wall.Openings.Select(o => Of(o.Id, o.Area, label)),
        .. wall.Zones.Select(z => Of(z.Id, z.Area, label)),
        .. wall.Services.Select(s => Of(s.Id, s.Area, label)),
        .. wall.OldHoles.Select(h => new Handle(h.Id, h.At, "", label(h.Id, h.At), null)),
    ];

    /// <summary>The part of this id with its lower left corner there, or as near as its size allows.</summary>
    public static Wall Move(Wall wall, string id, Point at) => wall with
    {
        Openings = [.. wall.Openings.Select(o => o.Id == id ? o with { Area = To(o.Area, at, wall) } : o)],
        Zones = [.. wall.Zones.Select(z => z.Id == id ? z with { Area = To(z.Area, at, wall) } : z)],
        Services = [.. wall.Services.Select(s => s.Id == id ? s with { Area = To(s.Area, at, wall) } : s)],
        OldHoles = [.. wall.OldHoles.Select(h => h.Id == id ? h with { At = at } : h)],
    };

    private static Handle Of(string id, Rect area, Func<string, Point, string> label) => new(id, new(area.X, area.Y), "", label(id, new(area.X, area.Y)), area);

    private static Rect To(Rect area, Point at, Wall wall) =>
        area with { X = Math.Clamp(at.X, 0, Math.Max(0, wall.WidthMm - area.Width)), Y = Math.Clamp(at.Y, 0, Math.Max(0, wall.HeightMm - area.Height)) };
}
