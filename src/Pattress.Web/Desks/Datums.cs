using Pattress.Jobs;
using Pattress.Papers.Elevations;

namespace Pattress.Web.Desks;

/// <summary>A datum that measures run from, and which way its numbers count: leftwards from a right edge, downwards from a ceiling.</summary>
/// <param name="Part">Id or letter of what it is an edge of, or empty.</param>
public sealed record Measured(Datum Datum, string Part = "", bool Leftwards = false, bool Downwards = false)
{
    public static Measured Corner { get; } = new(Datum.Corner);

    public double Along(Point p) => Leftwards ? Datum.At.X - p.X : p.X - Datum.At.X;

    public double Up(Point p) => Downwards ? Datum.At.Y - p.Y : p.Y - Datum.At.Y;

    /// <summary>The place on the wall that lies so far along.</summary>
    public double X(double along) => Leftwards ? Datum.At.X - along : Datum.At.X + along;

    public double Y(double up) => Downwards ? Datum.At.Y - up : Datum.At.Y + up;
}

/// <summary>What a tape can be held to on a wall: corners lie, so he may choose.</summary>
internal static class Datums
{
    /// <summary>Corners, ceiling, centre line, the edges of openings, then the brackets of what hangs there already.</summary>
    /// <param name="brackets">Letter and place of each bracket that may serve.</param>
    public static IReadOnlyList<Measured> Of(Wall wall, IEnumerable<(string Letter, Point At)> brackets) =>
    [
        Measured.Corner,
        new(new(new(wall.WidthMm, 0), "datum_right"), Leftwards: true),
        new(new(new(0, wall.HeightMm), "datum_ceiling"), Downwards: true),
        new(new(new(wall.WidthMm / 2, 0), "datum_middle")),
        .. wall.Openings.SelectMany(Edges),
        .. brackets.Select(b => new Measured(new(b.At, "datum_bracket"), b.Letter)),
    ];

    private static IEnumerable<Measured> Edges(Opening o) =>
    [
        new(new(new(o.Area.X, o.Area.Top), "datum_opening"), o.Id),
        new(new(new(o.Area.Right, o.Area.Top), "datum_opening_right"), o.Id),
        new(new(new(o.Area.X + o.Area.Width / 2, o.Area.Top), "datum_opening_middle"), o.Id),
    ];
}
