using Pattress.Jobs;
using Pattress.Papers.Drawings;

namespace Pattress.Papers.Elevations;

/// <summary>A thing to hang with its answer and the letter it goes by on the drawings; the answer is null before there is a plan.</summary>
public sealed record Hung(string Letter, Fixture Fixture, ItemAnswer? Answer);

/// <summary>The point that running dimensions start from: a place on the wall and what marks it there.</summary>
/// <param name="Code">Code of its words, e.g. <c>datum_corner</c>.</param>
public sealed record Datum(Point At, string Code)
{
    /// <summary>The lower left corner.</summary>
    public static Datum Corner { get; } = new(new(0, 0), "datum_corner");
}

/// <summary>Everything the drawing of a wall or ceiling shows.</summary>
public sealed record ElevationInput(Wall Wall, WallAnswer? Answer, IReadOnlyList<Hung> Things, Datum Datum);

/// <summary>
/// A wall as seen from the room, or a ceiling as seen from below, to scale: what is known is dark, what is likely is grey
/// and as wide as the doubt, what is unknown stays white.
/// </summary>
public static class ElevationDrawing
{
    private const double LeftPx = 12;

    public static Drawing Of(ElevationInput input, Sizing sizing, Say say)
    {
        var wall = input.Wall;
        double rightPx = 20 + 5.4 * sizing.TextPx, feetPx = 24 + 5.4 * sizing.TextPx;
        double most = Math.Max(360, 0.6 * sizing.WidthPx);
        double scale = Math.Max(1e-4, Math.Min((sizing.WidthPx - LeftPx - rightPx) / wall.WidthMm, most / wall.HeightMm));
        var sheet = new Sheet(scale, sizing.TextPx, say);
        Draw(input, sheet);
        double left = LeftPx / scale, foot = feetPx / scale, head = 10 / scale;
        var view = new Rect(-left, -foot, sizing.WidthPx / scale, wall.HeightMm + foot + head);
        return new Drawing("wall-" + wall.Id, Title(wall, say), view, scale, sheet.Groups);
    }

    private static string Title(Wall wall, Say say) => say(new Reason(
        wall.Kind == "ceiling" ? "draw_ceiling_title" : "draw_wall_title",
        Said.Words(wall.Name.Length > 0 ? wall.Name : wall.Id), Said.Length(wall.WidthMm), Said.Length(wall.HeightMm)));

    private static void Draw(ElevationInput input, Sheet sheet)
    {
        if (input.Answer is { } answer)
        {
            sheet.Add("strips", "draw_strips", SupportMarks.Strips(answer, sheet));
            sheet.Add("supports", "draw_supports", SupportMarks.Bands(answer, sheet));
            sheet.Add("zones", "draw_zones", SupportMarks.Zones(answer, sheet));
        }

        sheet.Add("outline", "draw_outline", WallMarks.Outline(input.Wall, sheet));
        sheet.Add("openings", "draw_openings", WallMarks.Openings(input.Wall, sheet));
        sheet.Add("services", "draw_services", WallMarks.Services(input.Wall, sheet));
        sheet.Add("readings", "draw_readings", ReadingMarks.Of(input.Wall, sheet));
        sheet.Add("things", "draw_things", ThingMarks.Things(input.Things, input.Wall.Kind == "ceiling", sheet));
        sheet.Add("holes", "draw_holes", ThingMarks.Holes(input.Things, sheet));
        sheet.Add("dimensions", "draw_dimensions", RunningDimensions.Of(input, sheet));
    }
}
