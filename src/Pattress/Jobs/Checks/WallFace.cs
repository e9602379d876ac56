using System.Globalization;
using Pattress.Jobs.Doors;

namespace Pattress.Jobs.Checks;

/// <summary>The face of a wall, to see whether things lie on it.</summary>
internal readonly record struct WallFace(double Width, double Height)
{
    /// <summary>Corners lie and tapes sag: a millimetre over the edge is still on the wall.</summary>
    private const double Slack = 1;

    /// <summary>The face of a wall, or null when its size was refused.</summary>
    public static WallFace? Of(Entry? wall) =>
        wall?.MaybeNumber("width_mm") is { } width && wall.MaybeNumber("height_mm") is { } height ? new WallFace(width, height) : null;

    public void Check(Entry? point, ProblemList problems)
    {
        if (point is not null && !Holds(point.Point)) problems.Add("off_wall", point.Path, Text(point.Point), Allowed);
    }

    public void CheckArea(Entry part, ProblemList problems)
    {
        if (!HasArea(part)) return;
        var area = WallBuilder.AreaOf(part);
        if (!Holds(new Point(area.X, area.Y)) || !Holds(new Point(area.Right, area.Top)))
            problems.Add("off_wall", part.Path, $"{Text(new Point(area.X, area.Y))} to {Text(new Point(area.Right, area.Top))}", Allowed);
    }

    private static bool HasArea(Entry part) => part["x_mm"] is not null && part["y_mm"] is not null && part["width_mm"] is not null && part["height_mm"] is not null;

    private bool Holds(Point p) => p.X >= -Slack && p.Y >= -Slack && p.X <= Width + Slack && p.Y <= Height + Slack;

    private string Allowed => string.Create(CultureInfo.InvariantCulture, $"on the wall: x from 0 to {Width:0.#}, y from 0 to {Height:0.#}");

    private static string Text(Point p) => string.Create(CultureInfo.InvariantCulture, $"[{p.X:0.##}, {p.Y:0.##}]");
}
