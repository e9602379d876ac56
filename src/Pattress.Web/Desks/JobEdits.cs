using Pattress.Jobs;

namespace Pattress.Web.Desks;

/// <summary>A job with one thing changed.</summary>
internal static class JobEdits
{
    public static Wall? Wall(this Job job, string id) => job.Walls.FirstOrDefault(w => w.Id == id);

    public static Fixture? Fixture(this Job job, string id) => job.Fixtures.FirstOrDefault(f => f.Id == id);

    /// <summary>Ids are unique in a job, whatever carries them.</summary>
    public static bool IsTaken(this Job job, string id) =>
        job.Fixture(id) is not null || job.Trials.Any(t => t.Id == id) || job.Proofs.Any(p => p.Id == id) || job.Walls.Any(w => w.Id == id || w.Openings.Any(o => o.Id == id) || w.Services.Any(s => s.Id == id)
            || w.Zones.Any(z => z.Id == id) || w.OldHoles.Any(h => h.Id == id) || w.Readings.Any(r => r.Id == id) || w.StripChecks.Any(c => c.Id == id));

    public static Job With(this Job job, Wall wall) => job with { Walls = [.. job.Walls.Select(w => w.Id == wall.Id ? wall : w)] };

    public static Job With(this Job job, Fixture fixture) => job with { Fixtures = [.. job.Fixtures.Select(f => f.Id == fixture.Id ? fixture : f)] };

    public static Job Without(this Job job, Fixture fixture) => job with { Fixtures = [.. job.Fixtures.Where(f => f.Id != fixture.Id)] };

    public static Job Without(this Job job, Wall wall) => job with
    {
        Walls = [.. job.Walls.Where(w => w.Id != wall.Id)],
        Fixtures = [.. job.Fixtures.Where(f => f.Wall != wall.Id)],
    };

    public static Wall Add(this Wall wall, Reading reading) => wall with { Readings = [.. wall.Readings, reading] };

    /// <summary>Readings are never edited: one that was wrong is withdrawn and kept.</summary>
    public static Wall Withdraw(this Wall wall, string reading, bool withdrawn = true) =>
        wall with { Readings = [.. wall.Readings.Select(r => r.Id == reading ? r with { Withdrawn = withdrawn } : r)] };

    public static Wall Record(this Wall wall, StripCheck check) =>
        wall with { StripChecks = [.. wall.StripChecks.Where(c => c.Strip != check.Strip), check] };

    public static Fixture Number(this Fixture fixture, string field, double? value)
    {
        var numbers = new SortedDictionary<string, double>(fixture.Numbers.ToDictionary(), StringComparer.Ordinal);
        if (value is { } v) numbers[field] = v;
        else numbers.Remove(field);
        return fixture with { Numbers = numbers };
    }

    public static Fixture Word(this Fixture fixture, string field, string value)
    {
        var words = new SortedDictionary<string, string>(fixture.Words.ToDictionary(), StringComparer.Ordinal);
        if (value.Length > 0) words[field] = value;
        else words.Remove(field);
        return fixture with { Words = words };
    }

    /// <summary>Moves a thing; brackets that were placed by hand go with it.</summary>
    public static Fixture MovedTo(this Fixture fixture, Point at) => fixture with
    {
        At = at,
        Brackets = [.. fixture.Brackets.Select(b => new Point(b.X + at.X - fixture.At.X, b.Y + at.Y - fixture.At.Y))],
    };
}
