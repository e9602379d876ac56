using Pattress.Jobs.Doors;

namespace Pattress.Jobs;

/// <summary>Shapes of what was done on site. Bounds on counts are of what one house can hold.</summary>
internal static class DoneShapes
{
    public const int MostHoles = 5000, MostRead = 2000, MostSigned = 50, MostStrokes = 200, MostPoints = 500;

    private static readonly Field Id = Field.Required("id", new IdShape(), "A UUID v7: two devices may both add.");
    private static readonly Field FixtureId = Field.Required("fixture", new IdShape(), "The thing; it may have been taken off the job since.");
    private static readonly Field Bracket = Field.Required("bracket", new IntegerShape(0, JobShapes.MostBrackets - 1), "Index of the bracket, from 0.");
    private static readonly Field At = Field.Required("at_mm", JobShapes.Point, "Where, [x, y].");
    private static readonly Field On = Field.Required("on", new TimeShape(), "UTC.");
    private static readonly Field Withdrawn = Field.Optional("withdrawn", JobShapes.YesNo, "Taken back: kept and not used.");

    public static ObjectShape Done { get; } = new(
        Field.Optional("holes", new ListShape(Hole(), 0, MostHoles), "Holes drilled to their full width."),
        Field.Optional("cautions_read", new ListShape(Read(), 0, MostRead), "Cautions ticked before the first hole in a wall."),
        Field.Optional("signed", new ListShape(Signed(), 0, MostSigned), "Handover sheets signed on the glass."));

    private static ObjectShape Hole() => new(
        Id, FixtureId, Bracket, At,
        Field.Required("diameter_mm", JobShapes.Length(0.5, 200)),
        Field.Required("depth_mm", JobShapes.Length(0, 1000), "From the face."),
        On, Withdrawn);

    private static ObjectShape Read() => new(
        Id, Field.Required("wall", new IdShape()), Field.Required("codes", new ListShape(new IdShape(), 1, 50), "Codes of the cautions."), On);

    private static ObjectShape Signed() => new(
        Id,
        Field.Optional("name", new TextShape(100)),
        Field.Required("sheet", new IdShape(), "Fingerprint of the sheet that was signed."),
        Field.Required("strokes", new ListShape(new ListShape(new PointShape(new NumberShape(0, 1000)), 1, MostPoints), 1, MostStrokes), "Lines of the finger; [across, down], each 0 to 1000."),
        On, Withdrawn);
}
