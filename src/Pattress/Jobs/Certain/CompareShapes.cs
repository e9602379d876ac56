using Pattress.Jobs.Doors;
using Pattress.Quantities;

namespace Pattress.Jobs.Certain;

/// <summary>The shape of the claims that <c>pattress compare</c> reads.</summary>
internal static class CompareShapes
{
    private const int Most = 60;

    private static readonly ObjectShape Plate = new(
        Field.Required("width_mm", JobShapes.Length(1, 5000)),
        Field.Required("height_mm", JobShapes.Length(1, 5000)),
        Field.Required("fixing_heights_mm", new ListShape(JobShapes.Length(0, 5000), 1, 20), "Heights of the fixings above the toe."));

    private static readonly ObjectShape Claim = new(
        Field.Required("kind", new TextShape(100), "What the claim calls it."),
        Field.Optional("load_n", new QuantityShape(Dimension.ForceN, 0.1, 1e6), "The number, as a force."),
        Field.Optional("load_kg", new QuantityShape(Dimension.MassKg, 0.01, 1e5), "The number, as a mass that hangs; one of the two."),
        Field.Optional("load", new WordShape("tension", "shear", "cantilever", "not_said")),
        Field.Optional("basis", new WordShape("ultimate", "mean", "characteristic", "recommended", "not_said"), "What the number is."),
        Field.Optional("safety_factor", new NumberShape(1, 20), "The factor already taken off."),
        Field.Optional("board", new TextShape(100), "The board it holds for."),
        Field.Optional("arm_mm", JobShapes.Length(1, 5000), "Cantilever: distance of the weight from the board."),
        Field.Optional("plate", Plate, "Cantilever: the bracket of the test."));

    /// <summary>The whole document.</summary>
    public static ObjectShape Document { get; } = new(Field.Required("claims", new ListShape(Claim, 2, Most)));
}
