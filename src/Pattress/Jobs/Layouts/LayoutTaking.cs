namespace Pattress.Jobs.Layouts;

/// <summary>Takes a layout over into the job.</summary>
public static class LayoutTaking
{
    /// <summary>Brackets go where the layout has them; timber behind the board stands in the wall from then on, as if it were there already.</summary>
    /// <param name="id">An id for the timber.</param>
    public static Job Of(Job job, Fixture fixture, ItemLayout layout, string id) => layout.Bearer is { } b
        ? job with { Walls = [.. job.Walls.Select(w => w.Id == fixture.Wall ? w with { Zones = [.. w.Zones, new WallZone(id, "noggin", new(b.FromMm, b.YMm - b.Rule.WidthMm / 2, b.ToMm - b.FromMm, b.Rule.WidthMm))] } : w)] }
        : job with { Fixtures = [.. job.Fixtures.Select(f => f.Id == fixture.Id ? f with { Brackets = layout.Brackets } : f)] };

    /// <summary>All things of a line hang at its height.</summary>
    public static Job Of(Job job, LevelLine line) =>
        job with { Fixtures = [.. job.Fixtures.Select(f => line.Things.Any(t => t.Id == f.Id) ? LevelLines.At(f, line.YMm) : f)] };
}
