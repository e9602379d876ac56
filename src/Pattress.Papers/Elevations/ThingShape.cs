using Pattress.Jobs;

namespace Pattress.Papers.Elevations;

/// <summary>The outline that a thing covers on the wall, as far as its numbers say.</summary>
public static class ThingShape
{
    private static readonly string[] Widths = ["width_mm", "length_mm", "pole_mm"], Drops = ["drop_mm", "height_mm"];

    /// <summary>Its brackets are at the top of what hangs; without a height it is a line.</summary>
    public static Rect Of(Fixture fixture, ItemAnswer? answer)
    {
        var xs = Places(fixture, answer).Select(p => p.X).ToList();
        double left = xs.Min(), right = xs.Max();
        double width = Math.Max(Number(fixture, Widths), right - left), height = Number(fixture, Drops);
        double middle = fixture.At != default ? fixture.At.X : (left + right) / 2;
        double top = fixture.At != default ? fixture.At.Y : Places(fixture, answer).Max(p => p.Y);
        return new Rect(middle - width / 2, top - height, width, height);
    }

    private static IEnumerable<Point> Places(Fixture fixture, ItemAnswer? answer) =>
        answer is { Brackets.Count: > 0 } ? answer.Brackets.Select(b => b.At) : fixture.Brackets.Count > 0 ? fixture.Brackets : [fixture.At];

    private static double Number(Fixture fixture, string[] names) =>
        names.Where(fixture.Numbers.ContainsKey).Select(n => fixture.Numbers[n]).FirstOrDefault();
}
