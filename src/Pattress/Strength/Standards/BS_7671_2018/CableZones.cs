namespace Pattress.Strength.Standards.BS_7671_2018;

/// <summary>A socket, switch or the like on one face of a wall: its middle and size, mm.</summary>
public readonly record struct Accessory(string Id, double X, double Y, double Width, double Height);

/// <summary>One face of a wall; a corner is an x at which another wall meets it.</summary>
public sealed record WallFace(double Width, double Height, IReadOnlyList<Accessory> Accessories, IReadOnlyList<double> Corners);

/// <summary>A strip in which a cable may run unprotected, mm. Its id stays the same, so that one recorded check serves every hole in it.</summary>
/// <param name="Kind"><c>top</c>, <c>corner</c>, <c>vertical</c> or <c>horizontal</c>.</param>
public readonly record struct ZoneStrip(string Id, string Kind, double X0, double Y0, double X1, double Y1)
{
    /// <summary>True when a hole of this diameter at (x, y) touches the strip.</summary>
    public bool Touches(double x, double y, double diameter = 0)
    {
        double r = diameter / 2;
        return x + r >= X0 && x - r <= X1 && y + r >= Y0 && y - r <= Y1;
    }
}

/// <summary>
/// BS 7671:2018 522.6.202: zones in which cables less than 50 mm deep are allowed: within 150 mm of the top of the wall and of an
/// angle between two walls, and straight up, down and sideways from each accessory, as wide as it. A zone is where a cable is
/// <em>allowed</em>: outside every zone is not "safe", and pipes have no zones at all.
/// </summary>
public static class CableZones
{
    /// <summary>522.6.202(i): width of the strip along the top and along an angle, mm.</summary>
    public const double Band = 150;

    /// <summary>522.6.202(i): a cable at this depth or more needs no zone, mm.</summary>
    public const double Depth = 50;

    /// <summary>522.6.202: up to this thickness the zones of the other face count too, mm.</summary>
    public const double ThinWall = 100;

    /// <summary>True when the zones of the other face count: the wall is thin, or nobody knows how thick it is.</summary>
    public static bool OtherFaceCounts(double? thickness) => !(thickness > ThinWall);

    /// <summary>True when a cable at this depth must run in a zone.</summary>
    public static bool NeedsZone(double depth) => depth < Depth;

    /// <summary>The strips of a face, in a fixed order: top, corners, accessories.</summary>
    public static IReadOnlyList<ZoneStrip> Strips(WallFace face)
    {
        var strips = new List<ZoneStrip> { new("top", "top", 0, face.Height - Band, face.Width, face.Height) };
        for (int i = 0; i < face.Corners.Count; i++)
            strips.Add(new($"corner_{i + 1}", "corner", face.Corners[i] - Band, 0, face.Corners[i] + Band, face.Height));
        foreach (var a in face.Accessories)
        {
            strips.Add(new(a.Id + ".vertical", "vertical", a.X - a.Width / 2, 0, a.X + a.Width / 2, face.Height));
            strips.Add(new(a.Id + ".horizontal", "horizontal", 0, a.Y - a.Height / 2, face.Width, a.Y + a.Height / 2));
        }
        return strips;
    }

    /// <summary>The other face seen from this one: x runs the other way.</summary>
    public static WallFace Mirrored(WallFace other) => new(
        other.Width, other.Height, [.. other.Accessories.Select(a => a with { X = other.Width - a.X })], [.. other.Corners.Select(c => other.Width - c)]);

    /// <summary>The strips that a hole touches; empty means "in no zone", never "safe".</summary>
    public static IReadOnlyList<ZoneStrip> At(IReadOnlyList<ZoneStrip> strips, double x, double y, double diameter = 0) =>
        [.. strips.Where(s => s.Touches(x, y, diameter))];
}
