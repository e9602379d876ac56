using Pattress.Jobs.Doors;

namespace Pattress.Jobs.WallFile;

/// <summary>The shape of what <c>pattress wall</c> reads: one wall as a job document has it, and what else is known of the house.</summary>
internal static class WallShapes
{
    private const int MostOthers = 50;

    public static ObjectShape Document { get; } = new(
        Field.Required("wall", JobShapes.OneWall, "The wall, as in a job document."),
        Field.Optional("settings", SettingsShapes.Settings, "As in a job document; house and units count here."),
        Field.Optional("other_walls", new ListShape(JobShapes.OneWall, 0, MostOthers), "Other walls of the house: what they are tells of this one."),
        Field.Optional("hidden", JobShapes.YesNo, "What will hang hides a thin hole, so that it needs no filling."));
}
