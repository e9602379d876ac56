using Pattress.Jobs.Doors;

namespace Pattress.Jobs;

/// <summary>Shapes of the readings: each kind has its own fields and no others.</summary>
internal static class ReadingShapes
{
    private static readonly Field At = Field.Required("at_mm", JobShapes.Point, "Where, [x, y].");
    private static readonly Field Met = Field.Required("met", new WordShape("support", "void", "dab", "masonry", "foam", "metal", "laths"), "What the bit met behind the board.");

    public static VariantShape Reading { get; } = new("kind",
        [
            Field.Required("id", new IdShape(), "A UUID, or any short id that no other reading of the job has."),
            Field.Optional("withdrawn", JobShapes.YesNo, "Taken back: kept and not used."),
        ],
        [
            new Variant("tap", At, Word("sound", "hollow", "solid", "high", "dull")),
            new Variant("magnet",
                Field.Required("from_mm", JobShapes.Point, "Where the sweep began."),
                Field.Required("to_mm", JobShapes.Point, "Where it ended."),
                Field.Optional("hits_mm", new ListShape(JobShapes.Point, 0, JobShapes.MostHits), "What drew the magnet.")),
            new Variant("probe", At, Met),
            new Variant("hole", At, Met,
                Field.Optional("diameter_mm", JobShapes.Length(0.5, 150)),
                Field.Optional("solid_at_mm", JobShapes.Length(0, 1000), "Depth from the face at which something solid was met behind the board."),
                Field.Optional("depth_mm", JobShapes.Length(0, 1000), "Depth from the face to which the bit ran."),
                Field.Optional("swarf", new WordShape("white", "wood", "red", "grey", "grey_white", "foam", "bright", "black"))),
            new Variant("hooked_wire", At, Field.Required("thickness_mm", JobShapes.Length(1, 200), "Board with its skim.")),
            new Variant("stiff_wire", At, Field.Required("void_mm", JobShapes.Length(0, 2000), "Clear depth behind the board.")),
            new Variant("detector", At, Word("signal", "stud", "metal", "live", "none")),
            new Variant("outlet", At, Word("shows", "board_and_void", "masonry", "foam", "laths", "dab_gap")),
            new Variant("rattle", At, Word("found", "yes", "no")),
            new Variant("cold", At, Word("found", "yes", "no")),
            new Variant("told", Word("says", "timber_studs", "steel_studs", "dabs", "laminate", "lath", "masonry")),
        ]);

    private static Field Word(string name, params IReadOnlyList<string> words) => Field.Required(name, new WordShape(words));
}
