using System.Runtime.CompilerServices;
using Pattress.Jobs;
using Pattress.Working;

namespace Pattress.Actions.Fixtures;

/// <summary>A fixture at its place: what was entered, which way is down, where its brackets may be.</summary>
internal sealed class Site(FixtureKind kind, Fixture fixture, Wall wall, Settings settings, Trace? trace)
{
    public FixtureKind Kind => kind;

    public Settings Settings => settings;

    public Entries Entries { get; } = new(kind, fixture, trace);

    public Surface Surface => wall.Kind == "ceiling" || Recessed ? Surface.Ceiling : Surface.Wall;

    /// <summary>Fixed up into a recess: to the underside of what is above.</summary>
    public bool Recessed => kind.Field("mount") != null && wall.Kind != "ceiling" && Entries.Word("mount") == "recess";

    /// <summary>Middle of the line of brackets; brackets that were placed without it have it in their midst.</summary>
    public Point Middle { get; } = fixture.At == default && fixture.Brackets.Count > 0
        ? new(fixture.Brackets.Average(b => b.X), fixture.Brackets.Average(b => b.Y)) : fixture.At;

    /// <summary>The brackets that the fitter placed, else those that the fixture asks for.</summary>
    public Stand Stand(Func<IEnumerable<Point>> otherwise) =>
        fixture.Brackets.Count > 0 ? new([.. fixture.Brackets], true) : new([.. otherwise()], false);

    /// <summary>An arm entered as a field, with the packing behind the bracket, mm.</summary>
    public double Arm(string field = "projection_mm") => Entries.Number(field) + Entries.Number("packing_mm");

    /// <summary>What a person does to it, N, with the dynamic factor.</summary>
    public double PersonN()
    {
        double pull_n = Entries.Number("pull_n"), dynamic_factor = Entries.Number("dynamic_factor");
        return Step("Q_person", pull_n * dynamic_factor, "N", "sudden load: at least twice the static one",
            [In.Of(pull_n), In.Of(dynamic_factor)]);
    }

    /// <summary>Weight of a mass, N.</summary>
    public double Weight(double mass_kg, string symbol = "W")
    {
        double g = Weights.Gravity;
        return Step(symbol, mass_kg * g, "N", "standard gravity 9.80665 m/s2", [In.Of(mass_kg), In.Of(g)]);
    }

    /// <summary>Passes a result through the working.</summary>
    public double Step(string symbol, double value, string unit, string clause, ReadOnlySpan<In> inputs,
        [CallerArgumentExpression(nameof(value))] string formula = "") => trace.Step(symbol, value, unit, clause, inputs, formula);

    /// <summary>A reason to take care, in words of the text layer.</summary>
    public static Reason Caution(string what, params IReadOnlyList<Said> values) => new("caution_" + what, values);
}
