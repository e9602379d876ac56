using Pattress.Actions.Fixtures;
using Pattress.Jobs.Doors;
using Pattress.Quantities;

namespace Pattress.Jobs;

/// <summary>Shapes of the fixtures, made from the catalogue: each kind has its own fields and no others.</summary>
internal static class FixtureShapes
{
    public static VariantShape Fixture { get; } = new("what", Common(), [.. FixtureCatalogue.Kinds.Select(Kind)]);

    /// <summary>The field's name in the document; a count of brackets must not hide the list of brackets.</summary>
    public static string NameOf(FixtureField field) => field.Name == "brackets" ? "bracket_count" : field.Name;

    private static IReadOnlyList<Field> Common() =>
    [
        Field.Required("id", new IdShape(), "Unique in the job."),
        Field.Required("wall", new IdShape(), "Id of the wall it hangs on."),
        Field.Optional("name", new TextShape(100)),
        Field.Required("at_mm", JobShapes.Point, "Middle of its line of brackets, or its middle where it has no such line."),
        Field.Optional("brackets", new ListShape(Bracket(), 0, JobShapes.MostBrackets), "Placed by hand; left out, the fixture places them itself."),
        Field.Optional("removable", JobShapes.YesNo, "The fixing must come out again."),
        Field.Optional("over_bed", JobShapes.YesNo),
        Field.Optional("toe_strip", JobShapes.YesNo, "A strip under the bracket keeps its toe from cutting into the board."),
    ];

    private static ObjectShape Bracket() => new(Field.Required("at_mm", JobShapes.Point));

    private static Variant Kind(FixtureKind kind) => new(kind.Id, [.. kind.Fields.Select(Of)]);

    private static Field Of(FixtureField field) => new(NameOf(field), Shape(field), field.Required, Note(field));

    private static Shape Shape(FixtureField field) => field.Dimension switch
    {
        FieldDimension.Length => new QuantityShape(Dimension.LengthMm, field.Min!.Value, field.Max!.Value),
        FieldDimension.Mass => new QuantityShape(Dimension.MassKg, field.Min!.Value, field.Max!.Value),
        FieldDimension.Force => new QuantityShape(Dimension.ForceN, field.Min!.Value, field.Max!.Value),
        FieldDimension.Count => new IntegerShape((int)field.Min!.Value, (int)field.Max!.Value),
        FieldDimension.Words => new WordShape(field.Words),
        _ => new NumberShape(field.Min!.Value, field.Max!.Value),
    };

    private static string Note(FixtureField field) =>
        field.DefaultWord.Length > 0 ? $"Left out: {field.DefaultWord} ({field.Source})."
        : field.Default is { } number ? FormattableString.Invariant($"Left out: {number} ({field.Source}).")
        : "";
}
