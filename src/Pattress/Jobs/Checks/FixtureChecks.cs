using System.Globalization;
using Pattress.Actions.Fixtures;
using Pattress.Jobs.Doors;

namespace Pattress.Jobs.Checks;

/// <summary>Fixtures hang on walls that are there, where they can hang, with their brackets on the wall.</summary>
internal static class FixtureChecks
{
    private const int ShownWalls = 8;

    // Nearer than this two brackets cannot be: the heads of their screws would touch (assumed), and what turns the thing would have no lever.
    private const double ApartMm = 10;

    public static void Run(Entry job, ProblemList problems)
    {
        var walls = job.ItemsOf("walls").Where(w => w["id"] is not null)
            .GroupBy(w => w.TextOf("id"), StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.First(), StringComparer.Ordinal);
        bool allKnown = job["walls"] is not null && walls.Count == job.ItemsOf("walls").Count;
        foreach (var fixture in job.ItemsOf("fixtures")) Check(fixture, walls, allKnown, problems);
    }

    /// <param name="allKnown">False when a wall has no good id of its own: then no fixture can be blamed.</param>
    private static void Check(Entry fixture, Dictionary<string, Entry> walls, bool allKnown, ProblemList problems)
    {
        CheckBrackets(fixture, problems);
        if (fixture["wall"] is not { } wall) return;
        if (walls.TryGetValue(wall.Text, out var found)) CheckOn(found, fixture, problems);
        else if (allKnown) problems.Add("unknown_wall", wall.Path, wall.Text, AllowedWalls(walls));
    }

    private static void CheckOn(Entry wall, Entry fixture, ProblemList problems)
    {
        CheckSurface(wall, fixture, problems);
        if (WallFace.Of(wall) is not { } face) return;
        face.Check(fixture["at_mm"], problems);
        foreach (var bracket in fixture.ItemsOf("brackets")) face.Check(bracket["at_mm"], problems);
    }

    private static void CheckSurface(Entry wall, Entry fixture, ProblemList problems)
    {
        if (KindOf(fixture) is not { } kind || fixture["wall"] is not { } field) return;
        bool fits = wall.TextOr("kind", "wall") == "ceiling" ? kind.OnCeiling : kind.OnWall;
        if (!fits) problems.Add("wrong_surface", field.Path, field.Text, kind.OnWall ? "a wall, not a ceiling" : "a ceiling, not a wall");
    }

    private static void CheckBrackets(Entry fixture, ProblemList problems)
    {
        if (fixture["brackets"] is not { Items.Count: > 0 } list) return;
        CheckCount(fixture, list, problems);
        var places = list.Items.Take(JobShapes.MostBrackets).Select(b => b["at_mm"]).OfType<Entry>().ToList();
        for (int i = 1; i < places.Count; i++)
        {
            double nearest = places.Take(i).Min(p => Apart(p.Point, places[i].Point));
            if (nearest == 0) problems.Add("brackets_coincide", places[i].Path, "", "each bracket at a place of its own");
            else if (nearest < ApartMm)
                problems.Add("brackets_nearly_coincide", places[i].Path, nearest.ToString("G3", CultureInfo.InvariantCulture), FormattableString.Invariant($"at least {ApartMm} mm from every other bracket"));
        }
    }

    private static double Apart(Point a, Point b) => Math.Sqrt((a.X - b.X) * (a.X - b.X) + (a.Y - b.Y) * (a.Y - b.Y));

    private static void CheckCount(Entry fixture, Entry list, ProblemList problems)
    {
        if (KindOf(fixture) is not { } kind || (list.Items.Count >= kind.MinBrackets && list.Items.Count <= kind.MaxBrackets)) return;
        string code = list.Items.Count < kind.MinBrackets ? "too_few_brackets" : "too_many_brackets";
        problems.Add(code, list.Path, list.Items.Count.ToString(CultureInfo.InvariantCulture), $"from {kind.MinBrackets} to {kind.MaxBrackets} brackets, or none");
    }

    private static FixtureKind? KindOf(Entry fixture) => fixture["what"] is { } what ? FixtureCatalogue.Find(what.Text) : null;

    private static string AllowedWalls(Dictionary<string, Entry> walls) =>
        walls.Count == 0 ? "the id of a wall of this job; it has none"
        : "the id of a wall of this job: " + string.Join(", ", walls.Keys.Take(ShownWalls)) + (walls.Count > ShownWalls ? " and others" : "");
}
