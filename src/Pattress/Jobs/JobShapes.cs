using Pattress.Jobs.Doors;
using Pattress.Quantities;

namespace Pattress.Jobs;

/// <summary>The shape of a job document, version 1. Bounds on counts and sizes are of what one house can hold.</summary>
internal static class JobShapes
{
    public const int MostWalls = 200, MostReadings = 2000, MostHits = 500, MostFixtures = 500, MostBrackets = 24;
    private const int MostParts = 200, MostStock = 500;

    /// <summary>Coordinates; whether they lie on their wall is checked afterwards, so that the message can name the wall.</summary>
    private static readonly Shape Coordinate = new QuantityShape(Dimension.LengthMm, -100_000, 100_000);

    internal static readonly Shape Point = new PointShape(Coordinate);

    internal static readonly Shape YesNo = new WordShape("yes", "no");

    private static readonly Field Id = Field.Required("id", new IdShape(), "Unique in the job.");

    /// <summary>One wall.</summary>
    internal static ObjectShape OneWall { get; } = Wall();

    /// <summary>The whole document.</summary>
    public static ObjectShape Document { get; } = new(
        Field.Required("pattress_job", new IntegerShape(Job.Version, Job.Version), "Version of the document."),
        Field.Optional("id", new IdShape(), "A UUID v7 made where the job was begun."),
        Field.Optional("title", new TextShape(200)),
        Field.Optional("settings", SettingsShapes.Settings),
        Field.Required("walls", new ListShape(OneWall, 0, MostWalls)),
        Field.Required("fixtures", new ListShape(FixtureShapes.Fixture, 0, MostFixtures), "What shall hang."),
        Field.Optional("stock", new ListShape(Stock(), 0, MostStock), "What is in the van."),
        Field.Optional("prices", new ListShape(MoneyShapes.Price, 0, MostStock), "The fitter's own prices."),
        Field.Optional("actuals", new ListShape(MoneyShapes.Actual, 0, MostReadings), "How long work took in truth."),
        Field.Optional("trials", new ListShape(TrialShapes.Test, 0, TrialShapes.Most), "The user's own tests of fixings."),
        Field.Optional("proofs", new ListShape(TrialShapes.Proof, 0, TrialShapes.Most), "Pulls on what hangs in this house."),
        Field.Optional("done", DoneShapes.Done, "What was done on site: only ever added to or withdrawn."));

    private static ObjectShape Wall() => new(
        Id,
        Field.Optional("name", new TextShape(100)),
        Field.Optional("kind", new WordShape("wall", "ceiling")),
        Field.Required("width_mm", Length(100, 50_000)),
        Field.Required("height_mm", Length(100, 20_000), "Of a ceiling: its size along y."),
        Field.Optional("thickness_mm", Length(20, 2000), "Whole thickness, where it was measured at a door or window."),
        Field.Optional("other_side", new WordShape("room", "outside", "neighbour", "loft", "unknown")),
        Field.Optional("readings", new ListShape(ReadingShapes.Reading, 0, MostReadings)),
        Field.Optional("openings", new ListShape(Opening(), 0, MostParts)),
        Field.Optional("services", new ListShape(Service(), 0, MostParts), "Sockets, switches, radiators and whatever else has cables or pipes."),
        Field.Optional("zones", new ListShape(Zone(), 0, MostParts), "Parts that are built otherwise."),
        Field.Optional("old_holes", new ListShape(OldHole(), 0, MostParts)),
        Field.Optional("strip_checks", new ListShape(StripCheck(), 0, MostParts), "Recorded checks for cables and pipes, a strip each."),
        Field.Optional("condition", SettingsShapes.Condition),
        Field.Optional("built_as", new WordShape([.. FurtherWalls.Ids.Prepend("usual")]), "A wall that is check first, with what to find out."));

    private static ObjectShape Opening() => new(
        [Id, Field.Required("kind", new WordShape("window", "door", "recess")), .. Area()]);

    private static ObjectShape Service() => new(
        [
            Id,
            Field.Required("kind", new WordShape("socket", "switch", "light", "spur", "radiator", "tap", "pipe")),
            .. Area(),
            Field.Optional("face", new WordShape("this", "other"), "Which face of the wall it is on."),
        ]);

    private static ObjectShape Zone() => new(
        [
            Id,
            Field.Required("kind", new WordShape("lintel", "reveal", "boxing", "chimney_breast", "bulkhead", "board_joint", "door_leaf", "panel", "coving", "noggin"), "noggin: a board or timber between the studs that was seen or put in."),
            .. Area(),
        ]);

    private static ObjectShape OldHole() => new(
        Id, Field.Required("at_mm", Point), Field.Required("diameter_mm", Length(1, 200)));

    private static ObjectShape StripCheck() => new(
        Id,
        Field.Required("strip", new IdShape(), "The strip's id as the plan names it."),
        Field.Required("how", new WordShape("detector", "isolated", "looked_behind")));

    private static ObjectShape Stock() => new(
        Field.Required("fixing", new IdShape(), "Kind and size of the catalogue, e.g. strap_toggle.medium; a bit, e.g. bit.masonry.5.5; or setting_tool."),
        Field.Required("count", new IntegerShape(0, 100_000)),
        Field.Optional("least", new IntegerShape(0, 100_000), "Below this many the stock is low."));

    /// <summary>A rectangle: lower left corner and size.</summary>
    private static IReadOnlyList<Field> Area() =>
    [
        Field.Required("x_mm", Coordinate, "Left edge."),
        Field.Required("y_mm", Coordinate, "Lower edge."),
        Field.Required("width_mm", Length(1, 50_000)),
        Field.Required("height_mm", Length(1, 20_000)),
    ];

    internal static QuantityShape Length(double min, double max) => new(Dimension.LengthMm, min, max);
}
