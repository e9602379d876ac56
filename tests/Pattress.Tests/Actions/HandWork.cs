using Pattress.Actions;
using Pattress.Actions.Fixtures;
using Pattress.Jobs;
using Pattress.Working;

namespace Pattress.Tests.Actions;

/// <summary>What the tests by hand share.</summary>
internal static class HandWork
{
    /// <summary>Standard gravity, m/s2 (third CGPM, 1901).</summary>
    public const double G = 9.80665;

    public static void Same(Wrench expected, Wrench actual)
    {
        (double, double)[] parts = [(expected.N, actual.N), (expected.Mx, actual.Mx), (expected.My, actual.My), (expected.Vx, actual.Vx), (expected.Vy, actual.Vy), (expected.Tz, actual.Tz)];
        double size = 1 + parts.Max(p => Math.Abs(p.Item1));
        Assert.All(parts, p => Assert.True(Math.Abs(p.Item1 - p.Item2) <= 1e-11 * size, $"{expected} but {actual}"));
    }

    /// <summary>Brackets are at these places relative to (3000, 1500).</summary>
    public static void At(FixtureActions actions, params (double X, double Y)[] places)
    {
        Assert.Equal(places.Length, actions.Brackets.Count);
        for (int i = 0; i < places.Length; i++)
        {
            Assert.Equal(3000 + places[i].X, actions.Brackets[i].At.X, 1e-9);
            Assert.Equal(1500 + places[i].Y, actions.Brackets[i].At.Y, 1e-9);
        }
    }

    public static Fixture Placed(this Fixture f, params (double X, double Y)[] places) =>
        f with { Brackets = [.. places.Select(p => new Point(3000 + p.X, 1500 + p.Y))] };

    /// <summary>A result of the working.</summary>
    public static double Step(this Fixture f, string symbol, Settings? settings = null)
    {
        var trace = new Trace();
        FixtureLoads.Of(f, FixtureSamples.Wall, settings ?? new(), trace);
        return trace.Steps.Single(s => s.Symbol == symbol).Value;
    }

    public static string[] Codes(this FixtureActions a) => [.. a.Brackets[0].Cases.Select(c => c.Code)];

    public static bool Warns(this FixtureActions a, string what) => a.Cautions.Any(c => c.Code == "caution_" + what);
}
