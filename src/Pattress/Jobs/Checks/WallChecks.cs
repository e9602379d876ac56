using System.Globalization;
using Pattress.Jobs.Doors;

namespace Pattress.Jobs.Checks;

/// <summary>What is drawn on a wall lies on it, and readings do not contradict themselves.</summary>
internal static class WallChecks
{
    private static readonly string[] Areas = ["openings", "services", "zones"];

    public static void Run(Entry wall, ProblemList problems)
    {
        if (WallFace.Of(wall) is { } face)
        {
            foreach (var part in Areas.SelectMany(wall.ItemsOf)) face.CheckArea(part, problems);
            foreach (var hole in wall.ItemsOf("old_holes")) face.Check(hole["at_mm"], problems);
            foreach (var reading in wall.ItemsOf("readings")) CheckPlaces(reading, face, problems);
        }
        foreach (var reading in wall.ItemsOf("readings")) CheckReading(reading, problems);
    }

    private static void CheckPlaces(Entry reading, WallFace face, ProblemList problems)
    {
        face.Check(reading["at_mm"], problems);
        face.Check(reading["from_mm"], problems);
        face.Check(reading["to_mm"], problems);
        foreach (var hit in reading.ItemsOf("hits_mm")) face.Check(hit, problems);
    }

    private static void CheckReading(Entry reading, ProblemList problems)
    {
        if (reading["from_mm"] is { } from && reading["to_mm"] is { } to) new Sweep(from.Point, to.Point).Check(reading, problems);
        if (reading["solid_at_mm"] is { } solid && reading.MaybeNumber("depth_mm") is { } depth && solid.Number > depth)
            problems.Add("solid_beyond_depth", solid.Path, Bounds.Text(solid.Number), string.Create(CultureInfo.InvariantCulture, $"at most the depth to which the bit ran, {depth:0.##}"));
    }
}
