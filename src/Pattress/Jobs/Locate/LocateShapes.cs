using Pattress.Jobs.Doors;
using Pattress.Quantities;
using Pattress.Walls;

namespace Pattress.Jobs.Locate;

/// <summary>The shape of what <c>pattress locate</c> reads.</summary>
internal static class LocateShapes
{
    public const int MostReadings = 5000, MostHits = 500, MostZones = 50, MostOpenings = 50;

    /// <summary>Longest line, mm.</summary>
    public const double Longest = 50_000;

    private static readonly Shape Place = new QuantityShape(Dimension.LengthMm, -100_000, 100_000);

    private static readonly Shape YesNo = new WordShape("yes", "no");

    /// <summary>Rates that a scan may give.</summary>
    private static readonly string[] Learned = ["tap_solid_on", "tap_solid_off", "magnet_finds", "magnet_false_per_m", "hole_meets_on", "hole_meets_off"];

    private static readonly VariantShape Reading = new("kind",
        [Field.Optional("id", new IdShape(), "Else derived from kind and position."), Field.Optional("height_mm", Place, "Tells lines of one wall apart.")],
        [
            new Variant("tap", At(), Field.Required("sound", new WordShape("hollow", "solid", "high", "dull"))),
            new Variant("magnet", Field.Required("from_mm", Place), Field.Required("to_mm", Place),
                Field.Optional("hits_mm", new ListShape(Place, 0, MostHits), "What drew the magnet.")),
            new Variant("magnet_along", At(), Field.Required("length_mm", new QuantityShape(Dimension.LengthMm, 10, 10_000), "How far up or down it was drawn."),
                Field.Required("hits", new IntegerShape(0, 200))),
            new Variant("hole", At(), Field.Required("met", new WordShape("support", "void", "dab", "masonry", "metal", "foam", "laths", "other"))),
            new Variant("detector", At(), Field.Required("found", YesNo)),
            new Variant("board_joint", At()),
        ]);

    /// <summary>The whole document.</summary>
    public static ObjectShape Scan { get; } = new(
        Field.Required("length_mm", new QuantityShape(Dimension.LengthMm, 100, Longest), "Length of the wall along the line."),
        Field.Required("readings", new ListShape(Reading, 0, MostReadings)),
        Field.Optional("zones", new ListShape(new ObjectShape(Field.Required("from_mm", Place), Field.Required("to_mm", Place)), 0, MostZones), "Where a support is wanted."),
        Field.Optional("openings", new ListShape(new ObjectShape(Field.Required("from_mm", Place), Field.Required("to_mm", Place), Field.Optional("on_line", YesNo)), 0, MostOpenings)),
        Field.Optional("wall_height_mm", new QuantityShape(Dimension.LengthMm, 300, Longest), "With the height of its readings: what is solid at the height of a row of noggins may be one."),
        Field.Optional("rates", new ObjectShape([.. Learned.Select(Rate)]), "Rates in place of the assumed ones, as your own holes have taught them (pattress wall JOB --explain)."),
        Field.Optional("kind", new WordShape("wall", "ceiling")),
        Field.Optional("direction", new WordShape("across", "up"), "Up a wall: its supports are plates, noggins and battens, or one stud all along."));

    private static Field Rate(string name)
    {
        var rate = RateTable.All.First(r => r.Name == name);
        return Field.Optional(name, new NumberShape(rate.Low, rate.High), rate.What);
    }

    private static Field At() => Field.Required("at_mm", Place, "From the left end.");
}
