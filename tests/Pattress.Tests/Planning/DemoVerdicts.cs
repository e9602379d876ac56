using Pattress.Jobs;

namespace Pattress.Tests.Planning;

/// <summary>
/// The demo house shows all three verdicts, and for each thing in it one changed reading or load turns its verdict.
/// No number is expected here but the verdict's direction (common practice, no source).
/// </summary>
public class DemoVerdicts
{
    private static readonly Job Demo = DemoHouse.Job;

    private static Verdict Of(Job job, string id) => DemoHouse.Item(job, id).Verdict;

    private static Job Number(string id, string field, double value) =>
        DemoHouse.With(Demo, id, f => f with { Numbers = new Dictionary<string, double>(f.Numbers) { [field] = value } });

    private static Job Numbers(string id, params (string Field, double Value)[] changes) =>
        changes.Aggregate(Demo, (job, c) => DemoHouse.With(job, id, f => f with { Numbers = new Dictionary<string, double>(f.Numbers) { [c.Field] = c.Value } }));

    private static Job Brick(string wall) => DemoHouse.WithWall(Demo, wall, w => w with
    {
        Zones = [],
        Openings = [],
        Services = [],
        Readings = [.. Enumerable.Range(0, 4).Select(i => new Reading
        {
            Id = "brick" + i, Kind = "hole", At = new(300 + 250 * i, 1500), Met = "masonry", DiameterMm = 5, SolidAtMm = 13, DepthMm = 60, Swarf = "red",
        })],
    });

    [Fact]
    public void All_three_verdicts_occur() =>
        Assert.Equal([Verdict.Ready, Verdict.CheckFirst, Verdict.NotHere], DemoHouse.Plan.Items.Select(i => i.Verdict).Distinct().Order());

    [Fact]
    public void The_whole_plan_is_as_bad_as_its_worst_item() => Assert.Equal(Verdict.NotHere, DemoHouse.Plan.Verdict);

    [Fact]
    public void A_mirror_of_150_kg_is_no_longer_ready()
    {
        Assert.Equal(Verdict.Ready, Of(Demo, "breast-mirror"));
        Assert.NotEqual(Verdict.Ready, Of(Number("breast-mirror", "mass_kg", 150), "breast-mirror"));
    }

    [Fact]
    public void A_mirror_on_a_wall_without_readings_is_no_longer_ready() =>
        Assert.NotEqual(Verdict.Ready, Of(DemoHouse.WithWall(Demo, "breast", w => w with { Readings = [] }), "breast-mirror"));

    [Fact]
    public void A_hard_pull_at_the_pole_makes_it_not_here()
    {
        Assert.Equal(Verdict.CheckFirst, Of(Demo, "bay-pole"));
        Assert.Equal(Verdict.NotHere, Of(Number("bay-pole", "pull_n", 900), "bay-pole"));
    }

    [Fact]
    public void A_hard_pull_at_the_blind_makes_it_not_here()
    {
        Assert.Equal(Verdict.CheckFirst, Of(Demo, "kitchen-blind"));
        Assert.Equal(Verdict.NotHere, Of(Number("kitchen-blind", "pull_n", 900), "kitchen-blind"));
    }

    [Fact]
    public void A_lighter_shelf_that_nobody_leans_on_is_no_longer_refused()
    {
        Assert.Equal(Verdict.NotHere, Of(Demo, "book-shelf"));
        Assert.NotEqual(Verdict.NotHere, Of(Numbers("book-shelf", ("load_kg_m", 5), ("pull_n", 20)), "book-shelf"));
    }

    [Fact]
    public void A_light_screen_that_nobody_pulls_at_is_no_longer_refused()
    {
        Assert.Equal(Verdict.NotHere, Of(Demo, "breast-screen"));
        Assert.NotEqual(Verdict.NotHere, Of(Numbers("breast-screen", ("mass_kg", 2), ("arm_kg", 1), ("pull_n", 0)), "breast-screen"));
    }

    [Fact]
    public void On_brick_a_light_cabinet_is_no_longer_refused_and_in_laminate_it_still_is()
    {
        Assert.Equal(Verdict.NotHere, Of(Demo, "kitchen-cabinet"));
        (string, double)[] light = [("load_kg", 5), ("mass_kg", 6), ("pull_n", 0)];
        Assert.Equal(Verdict.NotHere, Of(Numbers("kitchen-cabinet", light), "kitchen-cabinet"));
        var brick = Brick("outside") with { Fixtures = Numbers("kitchen-cabinet", light).Fixtures };
        Assert.NotEqual(Verdict.NotHere, Of(brick, "kitchen-cabinet"));
    }

    [Fact]
    public void A_rail_that_holds_a_person_is_refused_on_board_for_that_reason() =>
        Assert.Equal("not_here_person", DemoHouse.Item(Demo, "loft-rail").Why.Code);

    [Fact]
    public void On_brick_the_rail_is_refused_for_another_reason_or_not_at_all() =>
        Assert.NotEqual("not_here_person", DemoHouse.Item(Brick("loft"), "loft-rail").Why.Code);

    [Fact]
    public void A_probe_that_meets_the_joist_turns_the_airer()
    {
        Assert.Equal(Verdict.NotHere, Of(Demo, "landing-airer"));
        var found = DemoHouse.WithWall(Numbers("landing-airer", ("pull_n", 0)), "landing", w => w with
        {
            Readings = [.. w.Readings, Probe("p1", 692), Probe("p2", 700), Probe("p3", 708)],
        });
        Assert.NotEqual(Verdict.NotHere, Of(found, "landing-airer"));
    }

    private static Reading Probe(string id, double x) => new() { Id = id, Kind = "probe", At = new(x, 900), Met = "support" };
}
