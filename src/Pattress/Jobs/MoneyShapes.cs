using Pattress.Jobs.Doors;

namespace Pattress.Jobs;

/// <summary>Shapes of the shopping, the quote, the user's own prices and what work took.</summary>
internal static class MoneyShapes
{
    private const double MostMoney = 1_000_000, MostMinutes = 10_000;

    /// <summary>Steps of the work that minutes are counted by; see data/planning/work_minutes.csv.</summary>
    public static readonly string[] Steps = ["set_up", "mark", "explore", "drill_and_set", "hang", "prove", "fill", "clean", "travel", "stairs"];

    private static readonly WordShape YesNo = new("yes", "no");

    public static ObjectShape Buying { get; } = new(
        Field.Optional("budget", new NumberShape(0, MostMoney), "Most that may be spent in the shop."),
        Field.Optional("most_kinds", new IntegerShape(1, 100), "Most sizes of fixing to carry."),
        Field.Optional("most_bits", new IntegerShape(0, 100), "Most bits to carry."),
        Field.Optional("van_only", YesNo, "No shop is open."),
        Field.Optional("no_second_trip", YesNo, "Whatever the wall turns out to be, what holds there must be in hand."),
        Field.Optional("avoid", new ListShape(new IdShape(), 0, 100), "Kinds or sizes that are not wanted."),
        Field.Optional("spare_percent", new IntegerShape(0, 100), "Fixings spoilt in setting, of a hundred."),
        Field.Optional("trip_price", new NumberShape(0, MostMoney), "What it costs to go and fetch something."));

    public static ObjectShape Quote { get; } = new(
        Field.Optional("mark_up_percent", new NumberShape(0, 1000), "Put on materials."),
        Field.Optional("tax_percent", new NumberShape(0, 100), "Put on the sum."),
        Field.Optional("visits", new IntegerShape(1, 100)),
        Field.Optional("travel_minutes", new NumberShape(0, MostMinutes), "There and back, a visit."),
        Field.Optional("parking_price", new NumberShape(0, MostMoney), "A visit."),
        Field.Optional("floors", new IntegerShape(0, 100), "Without a lift."),
        Field.Optional("round_to", new WordShape("0.01", "0.05", "1"), "The total is rounded to a multiple of this, half up."));

    private static readonly ObjectShape Size = new(
        Field.Optional("hole_mm", JobShapes.Length(0, 100)), Field.Optional("length_mm", JobShapes.Length(1, 500)), Field.Optional("grip_min_mm", JobShapes.Length(0, 500)),
        Field.Optional("grip_max_mm", JobShapes.Length(0, 500)), Field.Optional("void_mm", JobShapes.Length(0, 500)), Field.Optional("embed_mm", JobShapes.Length(0, 500)));

    private static readonly ObjectShape Claim = new(
        Field.Required("load_n", new Doors.QuantityShape(Quantities.Dimension.ForceN, 0.1, 1e6)),
        Field.Optional("load", new WordShape("tension", "shear", "not_said")),
        Field.Optional("basis", new WordShape("ultimate", "mean", "characteristic", "recommended", "not_said")),
        Field.Optional("factor", new NumberShape(1, 20), "The factor already taken off."),
        Field.Optional("board_mm", JobShapes.Length(3, 100)));

    public static ObjectShape Price { get; } = new(
        Field.Required("fixing", new IdShape(), "Kind and size of the catalogue."),
        Field.Optional("name", new TextShape(100), "What the shop calls it."),
        Field.Required("pack", new IntegerShape(1, 100_000), "Fixings in a pack."),
        Field.Required("pack_price", new NumberShape(0, MostMoney), "Price of a pack."),
        Field.Optional("minutes", new NumberShape(0, MostMinutes), "To drill and set one."),
        Field.Optional("size", Size, "Its measures where they are not the catalogue's."),
        Field.Optional("claim", Claim, "What packet or page claims of it: it may lower, never raise."));

    public static ObjectShape Actual { get; } = new(
        Field.Required("id", new IdShape(), "Unique in the job."),
        Field.Required("step", new WordShape(Steps)),
        Field.Required("count", new NumberShape(1e-3, 100_000), "How many of it."),
        Field.Required("minutes", new NumberShape(0, 100_000), "How long all of them took."));
}
