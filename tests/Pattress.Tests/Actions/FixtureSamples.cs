using Pattress.Actions;
using Pattress.Actions.Fixtures;
using Pattress.Jobs;

namespace Pattress.Tests.Actions;

/// <summary>Fixtures for the tests, and readings of their loads.</summary>
internal static class FixtureSamples
{
    public static readonly Wall Wall = new() { Id = "w", WidthMm = 6000, HeightMm = 2500 };

    public static readonly Wall Ceiling = new() { Id = "c", Kind = "ceiling", WidthMm = 6000, HeightMm = 4000 };

    /// <summary>A fixture at (3000, 1500) with every required entry at a middling value.</summary>
    public static Fixture Of(string what, params (string Name, double Value)[] numbers)
    {
        var kind = FixtureCatalogue.Find(what)!;
        var entered = kind.Fields.Where(f => f.Required).ToDictionary(f => f.Name, Middling);
        foreach (var (name, value) in numbers) entered[name] = value;
        return new() { Id = "f", Wall = "w", What = what, At = new(3000, 1500), Numbers = entered };
    }

    public static Fixture Words(this Fixture f, params (string Name, string Word)[] words) =>
        f with { Words = words.ToDictionary(w => w.Name, w => w.Word) };

    public static FixtureActions Load(this Fixture f, Wall? on = null) => FixtureLoads.Of(f, on ?? Wall, new Settings());

    public static LoadCase Case(this FixtureActions actions, int bracket, string code) =>
        actions.Brackets[bracket].Cases.Single(c => c.Code == code);

    private static double Middling(FixtureField f) => f.Name switch
    {
        "width_mm" => 1200,
        "height_mm" => 600,
        "drop_mm" => 1400,
        "depth_mm" => 250,
        "mass_kg" or "hang_kg" => 12,
        "cog_out_mm" => 120,
        _ => throw new ArgumentException(f.Name),
    };
}
