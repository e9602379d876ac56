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

    /// <summary>Puts one of the brackets that were placed by hand elsewhere.</summary>
    public static Fixture WithBracket(this Fixture fixture, int index, Point at) =>
        fixture with { Brackets = [.. fixture.Brackets.Select((b, i) => i == index ? at : b)] };

    /// <summary>One bracket more, halfway between the last two or a hand's breadth beside the last.</summary>
    public static Fixture MoreBrackets(this Fixture fixture, Wall wall)
    {
        var last = fixture.Brackets.Count > 0 ? fixture.Brackets[^1] : fixture.At;
        double beside = last.X + HandMm <= wall.WidthMm ? HandMm : -HandMm;
        var next = fixture.Brackets.Count < 2 ? last with { X = last.X + beside } : new Point((last.X + fixture.Brackets[^2].X) / 2, (last.Y + fixture.Brackets[^2].Y) / 2);
        return fixture with { Brackets = [.. fixture.Brackets, next] };
    }

    private const double HandMm = 100;

    /// <summary>Where the thing's place may be so that neither it nor a bracket placed by hand leaves the wall.</summary>
    public static Point Reach(this Fixture fixture, Wall wall, Point at)
    {
        double X(double x) => Math.Clamp(x, 0, wall.WidthMm);
        double Y(double y) => Math.Clamp(y, 0, wall.HeightMm);
        double dx = X(at.X) - fixture.At.X, dy = Y(at.Y) - fixture.At.Y;
        foreach (var b in fixture.Brackets) (dx, dy) = (X(b.X + dx) - b.X, Y(b.Y + dy) - b.Y);
        return new(fixture.At.X + dx, fixture.At.Y + dy);
    }

    /// <summary>Moves a thing; brackets that were placed by hand go with it.</summary>
    public static Fixture MovedTo(this Fixture fixture, Point at) => fixture with
    {
        At = at,
        Brackets = [.. fixture.Brackets.Select(b => new Point(b.X + at.X - fixture.At.X, b.Y + at.Y - fixture.At.Y))],
    };
}
