using Pattress.Jobs;

namespace Pattress.Papers.Elevations;

/// <summary>The outline that a thing covers on the wall, as far as its numbers say; without a height it is a line.</summary>
public static class ThingShape
{
    /// <summary>Hooks and hangers sit about this far below the top edge, mm (common practice, no source).</summary>
    private const double BelowTopMm = 50;

    private enum Hangs { Down, FromHooks, AboutMiddle, AsLine }

    /// <param name="ceiling">Seen from below, what hangs down is a line.</param>
    public static Rect Of(Fixture fixture, ItemAnswer? answer, bool ceiling = false)
    {
        var places = Places(fixture, answer).ToList();
        double left = places.Min(p => p.X), right = places.Max(p => p.X);
        double width = Math.Max(Number(fixture, "width_mm"), right - left), height = ceiling && How(fixture.What) == Hangs.Down ? 0 : HeightOf(fixture);
        double middle = fixture.At != default ? fixture.At.X : (left + right) / 2;
        double line = fixture.At != default ? fixture.At.Y : places.Max(p => p.Y);
        return new Rect(middle - width / 2, Foot(How(fixture.What), line, height), width, height);
    }

    private static double Foot(Hangs how, double line, double height) => how switch
    {
        Hangs.Down => line - height,
        Hangs.FromHooks => line + Math.Min(BelowTopMm, height / 2) - height,
        Hangs.AboutMiddle => line - height / 2,
        _ => line,
    };

    private static Hangs How(string what) => what switch
    {
        "curtain_pole" or "curtain_track" or "roller_blind" or "roman_blind" or "venetian_blind" or "vertical_blind" or "pelmet" => Hangs.Down,
        "picture" or "mirror" or "cabinet" => Hangs.FromHooks,
        "screen" or "shutter" or "radiator" or "towel_rail" => Hangs.AboutMiddle,
        _ => Hangs.AsLine,
    };

    private static double HeightOf(Fixture fixture) => How(fixture.What) == Hangs.AsLine ? 0
        : fixture.Numbers.ContainsKey("drop_mm") ? Number(fixture, "drop_mm") : Number(fixture, "height_mm");

    private static IEnumerable<Point> Places(Fixture fixture, ItemAnswer? answer) =>
        answer is { Brackets.Count: > 0 } ? answer.Brackets.Select(b => b.At) : fixture.Brackets.Count > 0 ? fixture.Brackets : [fixture.At];

    private static double Number(Fixture fixture, string name) => fixture.Numbers.TryGetValue(name, out double value) ? value : 0;
}
