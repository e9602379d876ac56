using Pattress.Jobs;

namespace Pattress.Web.Desks;

/// <summary>A measure to type for a reading: field, and its bounds in mm.</summary>
public sealed record ReadingMeasure(string Field, double Min, double Max, bool Needed);

/// <summary>What one can do to a wall and what one may find: the keys of the sheet.</summary>
/// <param name="Field">Field that the key fills, which is also the prefix of its words; empty when only a measure is taken.</param>
public sealed record ReadingKind(string Id, string Field, IReadOnlyList<string> Words, IReadOnlyList<ReadingMeasure> Measures)
{
    public bool NeedsPlace => Id != "told";
}

/// <summary>The kinds in the order of what they cost.</summary>
public static class ReadingKeys
{
    /// <summary>Half the sweep that a magnet is taken over when its place was touched, mm.</summary>
    private const double HalfSweepMm = 70;

    private static readonly string[] Met = ["support", "void", "dab", "masonry", "foam", "metal", "laths"];

    public static IReadOnlyList<ReadingKind> All { get; } =
    [
        new("tap", "sound", ["hollow", "solid", "high", "dull"], []),
        new("magnet", "drew", ["here", "nothing"], []),
        new("probe", "met", Met, []),
        new("hole", "met", Met, [new("diameter_mm", 0.5, 150, false), new("solid_at_mm", 0, 1000, false), new("depth_mm", 0, 1000, false)]),
        new("hooked_wire", "", [], [new("thickness_mm", 1, 200, true)]),
        new("stiff_wire", "", [], [new("void_mm", 0, 2000, true)]),
        new("detector", "signal", ["stud", "metal", "live", "none"], []),
        new("outlet", "shows", ["board_and_void", "masonry", "foam", "laths", "dab_gap"], []),
        new("rattle", "found", ["yes", "no"], []),
        new("cold", "found", ["yes", "no"], []),
        new("told", "says", ["timber_studs", "steel_studs", "dabs", "laminate", "lath", "masonry"], []),
    ];

    public static ReadingKind? Find(string id) => All.FirstOrDefault(k => k.Id == id);

    /// <summary>What may come out of a hole.</summary>
    public static IReadOnlyList<string> Swarf { get; } = ["white", "wood", "red", "grey", "grey_white", "foam", "bright", "black"];

    /// <summary>A sweep of the magnet from one place to another, and every place that drew it.</summary>
    public static Reading Sweep(string id, Point from, Point to, IReadOnlyList<Point> hits) => new() { Id = id, Kind = "magnet", From = from, To = to, Hits = hits };

    /// <summary>Where a sweep around a place begins and ends on a wall of this length.</summary>
    public static (double From, double To) Around(double at, double length) => (Math.Max(0, at - HalfSweepMm), Math.Min(length, at + HalfSweepMm));

    /// <summary>The reading that these keys make.</summary>
    public static Reading Make(string id, ReadingKind kind, Point at, string word, IReadOnlyDictionary<string, double> measures)
    {
        double? Measured(string field) => measures.TryGetValue(field, out double v) ? v : null;
        string? Word(string field) => kind.Field == field ? word : null;
        if (kind.Id == "magnet") return Magnet(id, at, word);
        return new()
        {
            Id = id, Kind = kind.Id, At = kind.NeedsPlace ? at : null,
            Sound = Word("sound"), Met = Word("met"), Signal = Word("signal"), Shows = Word("shows"), Found = Word("found"), Says = Word("says"),
            DiameterMm = Measured("diameter_mm"), SolidAtMm = Measured("solid_at_mm"), DepthMm = Measured("depth_mm"),
            ThicknessMm = Measured("thickness_mm"), VoidMm = Measured("void_mm"),
        };
    }

    private static Reading Magnet(string id, Point at, string word) => new()
    {
        Id = id, Kind = "magnet", From = at with { X = Math.Max(0, at.X - HalfSweepMm) }, To = at with { X = at.X + HalfSweepMm }, Hits = word == "here" ? [at] : [],
    };
}
