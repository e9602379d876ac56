using Pattress.Jobs;

namespace Pattress.Tests.Planning;

/// <summary>The user's own tests in masonry: five on the wall itself carry its plugs, a failure lowers them, another wall teaches nothing.</summary>
public class MasonryTrialsTests
{
    private static readonly Job House = DemoHouse.Read("masonry-house");

    private static readonly ItemAnswer Cleat = DemoHouse.Item(House, "front-cleat");

    private static readonly string Plug = Cleat.Brackets[0].Fixing!;

    private static OwnTest Test(int i, double load, string wall = "front") => new() { Id = $"m{i}", Fixing = Plug, Load = "tension", LoadN = load, Into = "brick", Wall = wall, Where = "site" };

    private static ItemAnswer With(params OwnTest[] tests) => DemoHouse.Item(House with { Trials = tests }, "front-cleat");

    private static OwnTest[] Five(double load, string wall = "front") => [.. Enumerable.Range(0, 5).Select(i => Test(i, load, wall))];

    private static double Utilised(ItemAnswer item) =>
        item.Brackets[0].Fixing == Plug ? item.Brackets[0].Utilisation : item.Brackets[0].Alternatives.Where(a => a.Fixing == Plug).Select(a => a.Utilisation).DefaultIfEmpty(double.PositiveInfinity).First();

    [Fact]
    public void The_sample_stands_on_a_plug_in_brick() => Assert.Contains("plug", Plug);

    /// <summary>Five equal tests do not scatter, so that their load is the characteristic one: N_Rk is at most 4000 (less where the plug sits less deep).</summary>
    [Fact]
    public void Five_tests_on_the_wall_stand_in_for_the_assumed_pull_out()
    {
        var after = With(Five(4000));
        var step = Assert.Single(after.Brackets[0].Working.Where(s => s.Clause == "tests on this wall" && s.Symbol == "N_Rk").DistinctBy(s => s.Value));
        Assert.InRange(step.Value, 2000, 4000 + 1e-6);
        Assert.Contains(after.Assumptions, a => a.Code == "assume_site_tests");
        Assert.True(Utilised(after) <= Utilised(Cleat));
    }

    [Fact]
    public void Four_tests_or_tests_on_another_wall_raise_nothing()
    {
        Assert.Equal(Utilised(Cleat), Utilised(With(Five(4000)[..4])), 12);
        Assert.Equal(Utilised(Cleat), Utilised(With(Five(4000, "back"))), 12);
        Assert.Equal(Utilised(Cleat), Utilised(With([.. Five(4000).Select(t => t with { From = "another job" })])), 12);
    }

    /// <summary>In a material nobody named it lowers the plug in all of them; in brick it no longer holds in brick, and is less sure for it or no longer chosen.</summary>
    [Fact]
    public void One_failure_lowers_wherever_it_was()
    {
        Assert.True(Utilised(With(Test(1, 20, "") with { Into = "unknown" })) > Utilised(Cleat));
        var brick = With(Test(1, 20, "")).Brackets[0];
        Assert.True(brick.Fixing != Plug || brick.BuildUpProbability < Cleat.Brackets[0].BuildUpProbability);
        Assert.Equal(Utilised(Cleat), Utilised(With(Test(1, 20) with { Into = "concrete" })), 12);
    }

    [Fact]
    public void Tests_in_board_say_nothing_of_masonry() => Assert.Equal(Utilised(Cleat), Utilised(With(Test(1, 20) with { Into = "unknown", BoardMm = 12.5 })), 12);
}
