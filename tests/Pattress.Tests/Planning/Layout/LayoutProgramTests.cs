using Pattress.Planning.Layout;
using Pattress.Supports;

namespace Pattress.Tests.Planning.Layout;

/// <summary>The layout program against trying every set of places, written apart from it, and the joint chance by another way.</summary>
public class LayoutProgramTests
{
    private static LayoutCase Wall(int seed)
    {
        var random = new Random(seed);
        int places = 2 * random.Next(4, 8) + 1, n = random.Next(1, 5), spanMin = random.Next(1, 4);
        return new(
            [.. Enumerable.Range(0, places).Select(_ => random.Next(0, 100) / 100.0)], [.. Enumerable.Range(0, places).Select(_ => random.Next(6) == 0)],
            n, random.Next(0, 2), random.Next(2, 6), spanMin, spanMin + random.Next(1, 7), random.Next(0, 4) / 100.0, seed % 2 == 0) { EvenEnd = 1 };
    }

    /// <summary>Best worth over all increasing sets of places.</summary>
    private static double Tried(LayoutCase wall, List<int> chosen)
    {
        if (chosen.Count == wall.Brackets) return wall.Of(chosen);
        double best = double.NegativeInfinity;
        for (int x = chosen.Count == 0 ? 0 : chosen[^1] + 1; x <= wall.Last; x++)
        {
            chosen.Add(x);
            best = Math.Max(best, Tried(wall, chosen));
            chosen.RemoveAt(chosen.Count - 1);
        }

        return best;
    }

    [Fact]
    public void Trying_every_set_of_places_finds_nothing_better_on_500_small_walls()
    {
        int possible = 0;
        for (int seed = 0; seed < 500; seed++)
        {
            var wall = Wall(seed);
            double best = Tried(wall, []);
            var found = LayoutProgram.Best(wall);
            Assert.True(double.IsNegativeInfinity(best) == found is null, $"seed {seed}: {best} and {(found is null ? "none" : string.Join(' ', found))}");
            if (found is null) continue;
            possible++;
            Assert.True(Math.Abs(best - wall.Of(found)) < 1e-9, $"seed {seed}: {best} and {wall.Of(found)} at {string.Join(' ', found)}");
        }

        Assert.InRange(possible, 150, 500);
    }

    [Fact]
    public void With_nothing_known_the_brackets_stand_evenly()
    {
        var wall = new LayoutCase([.. new double[101]], [.. new bool[101]], 3, 5, 20, 10, 60, 0.01, false) { EvenEnd = 10 };
        Assert.Equal([10, 50, 90], LayoutProgram.Best(wall)!);
    }

    /// <summary>Facts of chance: P(both) = P(first) P(second | the first hole met a support), the hole being told by a drill that never errs.</summary>
    [Theory, InlineData(600, 1200), InlineData(600, 1000), InlineData(850, 1250)]
    public void The_joint_chance_is_the_chance_of_the_first_times_the_second_after_it(double a, double b)
    {
        var never = LineRates.Default with { HoleMeetsOn = 1, HoleMeetsOff = 1e-6, WeightMost = 1e12 };
        LineScan Scan(params LineReading[] more) => new(3000, [new Tap("t1", 600, TapSound.Solid), new Tap("t2", 900, TapSound.Hollow), new Tap("t3", 1210, TapSound.Solid), .. more], []);
        double first = SupportModel.Infer(Scan(), never).HitAt(a), then = SupportModel.Infer(Scan(new ThinHole("h", a, HoleMet.Support)), never).HitAt(b);
        Assert.Equal(first * then, SupportModel.AllHit(Scan(), [a, b], never), 3e-3);
    }
}
