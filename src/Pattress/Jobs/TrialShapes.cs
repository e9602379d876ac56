using Pattress.Jobs.Doors;
using Pattress.Quantities;

namespace Pattress.Jobs;

/// <summary>Shapes of the user's own tests and of the pulls that prove what hangs.</summary>
internal static class TrialShapes
{
    public const int Most = 2000;

    private static readonly Shape Force = new QuantityShape(Dimension.ForceN, 0.1, 1e6);

    private static readonly Field Id = Field.Required("id", new IdShape(), "A UUID, or any short id that nothing else in the job has.");
    private static readonly Field On = Field.Optional("on", new TimeShape(), "When.");
    private static readonly Field Note = Field.Optional("note", new TextShape(400));
    private static readonly Field Withdrawn = Field.Optional("withdrawn", JobShapes.YesNo, "Taken back: kept and not used.");

    public static ObjectShape Test { get; } = new(
        Id,
        Field.Required("fixing", new IdShape(), "Kind and size of the catalogue, e.g. strap_toggle.medium."),
        Field.Required("load", new WordShape("tension", "shear"), "What it was tested in, on one fixing."),
        Field.Required("load_n", Force, "Load at failure, or at which the test was stopped."),
        Field.Optional("outcome", new WordShape("failed", "stopped")),
        Field.Optional("board_mm", JobShapes.Length(3, 100), "Thickness of the board tested."),
        Field.Optional("moisture", new WordShape("dry", "damp", "fresh_plaster", "unknown"), "Of the board tested."),
        Field.Optional("into", new WordShape("board", "brick", "dense_block", "concrete", "aerated_block", "dab", "unknown"), "What it was set into."),
        Field.Optional("wall", new IdShape(), "The wall of this job that it was made on; five on the wall itself carry a plug there."),
        Field.Optional("from", new TextShape(200), "Title of the other job that it came from."),
        Field.Optional("where", new WordShape("bench", "site")),
        Field.Optional("mode", new WordShape("board", "slid", "fixing", "screw", "unknown"), "How it failed."),
        On, Note, Withdrawn);

    public static ObjectShape Proof { get; } = new(
        Id,
        Field.Required("fixture", new IdShape()),
        Field.Optional("bracket", new IntegerShape(0, JobShapes.MostBrackets), "Index of the bracket, from 0."),
        Field.Optional("hole", new IntegerShape(0, 50), "Index of the hole, from 0; left out for a pull on the whole bracket."),
        Field.Optional("fixing", new IdShape(), "What was set there: kind and size of the catalogue."),
        Field.Required("load_n", Force, "The pull; where it came away, the load at that moment."),
        Field.Optional("held_s", new NumberShape(0, 1e6), "How long it was held, in seconds."),
        Field.Optional("moved_mm", JobShapes.Length(0, 1000), "Movement against the pencil mark."),
        Field.Required("result", new WordShape("held", "moved", "came_away")),
        Field.Optional("way", new WordShape("luggage_scale", "spring_balance", "bucket_on_arm", "tester", "other"), "How it was pulled."),
        On, Note, Withdrawn);
}
