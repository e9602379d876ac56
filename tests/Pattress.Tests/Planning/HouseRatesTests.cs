using Pattress.Jobs;
using Pattress.Jobs.WallFile;
using Pattress.Planning;
using Pattress.Planning.Views;
using Pattress.Supports;
using static Pattress.Tests.Planning.DemoHouse;

namespace Pattress.Tests.Planning;

/// <summary>One job, one answer: what its holes have taught of taps and magnets is used wherever its walls are read.</summary>
public class HouseRatesTests
{
    /// <summary>Six holes that met a stud which sounded hollow, on a wall of their own.</summary>
    private static readonly Job Dull = DemoHouse.Job with
    {
        Walls = [.. DemoHouse.Job.Walls, new Wall
        {
            Id = "dull", Kind = "wall", WidthMm = 4200, HeightMm = 2400,
            Readings = [.. Enumerable.Range(1, 6).SelectMany(i => new[] { Tap(i), Hole(i) })],
        }],
    };

    private static Reading Tap(int i) => new() { Id = $"t{i}", Kind = "tap", At = new(600 * i, 1000), Sound = "hollow" };

    private static Reading Hole(int i) => new() { Id = $"h{i}", Kind = "hole", At = new(600 * i, 1000), Met = "support" };

    [Fact]
    public void What_one_wall_taught_is_used_on_all()
    {
        var learned = HouseRates.Of(Dull.Walls).Rates;
        Assert.True(learned.TapSolidOn < HouseRates.Of(DemoHouse.Job.Walls).Rates.TapSolidOn - 0.05);
        var view = new HouseView(Dull);
        Assert.All(Dull.Walls, w => Assert.Equal(learned, view[w.Id].Rates));
        Assert.Equal(learned, new HouseBelief(Dull).Rates);
    }

    [Fact]
    public void Plan_and_wall_report_say_the_same_of_the_supports_and_of_the_rates()
    {
        var plan = Planner.Plan(Dull, PlanData.Embedded);
        var report = WallReport.Of(Dull, ["bay"], hidden: false, explain: false)[0];
        var bands = plan.Walls.Single(w => w.Id == "bay").Supports;
        Assert.Equal(report.Line.Supports.Select(s => (s.CentreMm, s.SdMm)), bands.Select(b => (b.CentreMm, b.SdMm)));
        Assert.Equal(report.Rates!.Values, plan.Assumptions.Single(a => a.Code == "rates_learned").Values);
    }

    [Fact]
    public void Without_a_hole_nothing_is_learned_and_nothing_said()
    {
        var bare = DemoHouse.Job with { Walls = [.. DemoHouse.Job.Walls.Select(w => w with { Readings = [.. w.Readings.Where(r => r.Kind is not ("hole" or "probe"))] })] };
        Assert.Equal(LineRates.Default, HouseRates.Of(bare.Walls).Rates);
        Assert.DoesNotContain(Planner.Plan(bare, PlanData.Embedded).Assumptions, a => a.Code == "rates_learned");
    }

    [Fact] // facts: plaster on masonry sounds solid everywhere, without a stud
    public void A_wall_of_masonry_teaches_nothing_of_studs()
    {
        Reading[] solid = [.. Enumerable.Range(1, 12).Select(i => Tap(i) with { At = new(300 * i, 1000), Sound = "solid" }), Hole(3) with { Met = "masonry" }];
        var job = Dull with { Walls = [.. Dull.Walls, new Wall { Id = "brick", Kind = "wall", WidthMm = 4200, HeightMm = 2400, Readings = solid }] };
        Assert.Equal(HouseRates.Of(Dull.Walls).Rates, HouseRates.Of(job.Walls).Rates);
    }

    [Fact]
    public void It_is_learned_again_only_when_a_wall_with_a_hole_changes()
    {
        var before = HouseRates.Of(Dull.Walls);
        var moved = Dull with { Walls = [.. Dull.Walls.Append(new Wall { Id = "new", Kind = "wall", WidthMm = 3000, HeightMm = 2400, Readings = [Tap(1)] })] };
        Assert.Same(before, HouseRates.Of(moved.Walls, before));
        Assert.NotSame(before, HouseRates.Of(WithWall(Dull, "dull", w => w with { Readings = w.Readings.Skip(1).ToList() }).Walls, before));
    }

    /// <summary>What was expected of the first hole rests on rates that it has not taught.</summary>
    [Fact]
    public void A_hole_is_expected_by_the_rates_without_it()
    {
        Wall first = Dull.Walls[^1] with { Readings = [Tap(1)] };
        var others = HouseRates.Of(DemoHouse.Job.Walls).Rates;
        Assert.Equal(others.TapSolidOn, HouseRates.Of(Dull.Walls).When(first).TapSolidOn, 0.031); // one step of what is kept, .88 to .85
    }
}
