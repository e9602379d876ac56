using Pattress.Jobs;
using Pattress.Papers.Drawings;

namespace Pattress.Papers.Elevations;

/// <summary>Readings: a sign for what was done, filled where something was met. Withdrawn ones are not drawn.</summary>
internal static class ReadingMarks
{
    private const double SizePx = 4;

    public static IReadOnlyList<Mark> Of(Wall wall, Sheet sheet) => [.. wall.Readings.Where(r => !r.Withdrawn).SelectMany(r => Reading(r, sheet))];

    private static IEnumerable<Mark> Reading(Reading reading, Sheet sheet)
    {
        if (reading.Kind == "magnet") return Magnet(reading, sheet);
        return reading.At is { } at ? [Sign(reading, at, sheet)] : [];
    }

    private static Mark Sign(Reading reading, Point at, Sheet sheet)
    {
        double r = sheet.Px(SizePx);
        string look = "reading " + (Met(reading) ? "met" : "unmet");
        var fact = new Fact(sheet.Name("reading." + reading.Kind), sheet.Place(at), ReadingWords.Finding(reading, sheet.Say));
        return reading.Kind switch
        {
            "tap" => new CircleMark(look, at, r) { Fact = fact },
            "probe" or "hole" => new PathMark(look, [new(at.X, at.Y + r), new(at.X + r, at.Y), new(at.X, at.Y - r), new(at.X - r, at.Y)], true) { Fact = fact },
            "hooked_wire" or "stiff_wire" => new PathMark(look, [new(at.X - r, at.Y - r), new(at.X + r, at.Y - r), new(at.X, at.Y + r)], true) { Fact = fact },
            _ => new RectMark(look, new Rect(at.X - r, at.Y - r, 2 * r, 2 * r)) { Fact = fact },
        };
    }

    private static IEnumerable<Mark> Magnet(Reading reading, Sheet sheet)
    {
        if (reading.From is not { } from || reading.To is not { } to) yield break;
        double r = sheet.Px(SizePx);
        yield return new LineMark("sweep", from, to)
        {
            Fact = new(sheet.Name("reading.magnet"), sheet.Words("draw_from_to", Said.Length(from.X), Said.Length(to.X)), ReadingWords.Finding(reading, sheet.Say)),
        };
        foreach (var hit in reading.Hits)
        {
            yield return new LineMark("hit", new(hit.X - r, hit.Y - r), new(hit.X + r, hit.Y + r));
            yield return new LineMark("hit", new(hit.X - r, hit.Y + r), new(hit.X + r, hit.Y - r));
        }
    }

    private static bool Met(Reading reading) => reading.Kind switch
    {
        "tap" => reading.Sound is "solid" or "dull",
        "probe" or "hole" => reading.Met is not (null or "void"),
        "detector" => reading.Signal is not (null or "none"),
        "rattle" or "cold" => reading.Found == "yes",
        _ => true,
    };
}

/// <summary>What a reading found, in words.</summary>
public static class ReadingWords
{
    /// <summary>The finding alone, e.g. "hollow" or "12.5 mm".</summary>
    public static string Finding(Reading reading, Say say)
    {
        var parts = new List<Reason>();
        void Name(string field, string? id) { if (id is not null) parts.Add(new("draw_name", Said.Name(field + "." + id))); }
        void Length(string code, double? mm) { if (mm is { } v) parts.Add(new(code, Said.Length(v))); }
        Name("sound", reading.Sound);
        Name("met", reading.Met);
        Length("draw_solid_at", reading.SolidAtMm);
        Length("draw_ran_to", reading.DepthMm);
        Name("swarf", reading.Swarf);
        Length("draw_length", reading.ThicknessMm);
        Length("draw_void", reading.VoidMm);
        Name("signal", reading.Signal);
        Name("shows", reading.Shows);
        Name("found", reading.Found);
        Name("says", reading.Says);
        if (reading.Kind == "magnet") parts.Add(new("draw_hits", Said.Count(reading.Hits.Count)));
        return string.Join(", ", parts.Select(p => say(p)));
    }
}
