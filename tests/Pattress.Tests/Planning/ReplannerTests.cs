using Pattress.Jobs;
using static Pattress.Tests.Planning.DemoHouse;

namespace Pattress.Tests.Planning;

/// <summary>A plan that keeps what has not changed is the plan that begins anew, byte for byte.</summary>
public class ReplannerTests
{
    public static TheoryData<string> Edits => [.. All.Keys];

    private static readonly Dictionary<string, Func<Job, Job>> All = new()
    {
        ["nothing"] = job => job,
        ["a thing is moved"] = job => With(job, "bay-pole", f => f with { At = f.At with { X = f.At.X + 40 } }),
        ["a thing gets heavier"] = job => With(job, "breast-mirror", f => f with { Numbers = new Dictionary<string, double>(f.Numbers) { ["mass_kg"] = 90 } }),
        ["a thing goes to another wall"] = job => With(job, "breast-mirror", f => f with { Wall = "loft", At = new(1000, 1200) }),
        ["a thing is taken away"] = job => job with { Fixtures = [.. job.Fixtures.Skip(1)] },
        ["things change places"] = job => job with { Fixtures = [.. job.Fixtures.Reverse()] },
        ["a reading on a wall"] = job => WithWall(job, "loft", w => w with { Readings = [.. w.Readings, new Reading { Id = "new", Kind = "told", Says = "dabs" }] }),
        ["a reading on the ceiling"] = job => WithWall(job, "landing", w => w with { Readings = [.. w.Readings, new Reading { Id = "new", Kind = "tap", At = new(500, 500), Sound = "dull" }] }),
        ["a hole on a wall"] = job => WithWall(job, "bay", w => w with { Readings = [.. w.Readings, new Reading { Id = "new", Kind = "hole", At = new(1310, 1500), Met = "support" }, new Reading { Id = "new2", Kind = "tap", At = new(1310, 1500), Sound = "hollow" }] }),
        ["a reading is withdrawn"] = job => WithWall(job, "bay", w => w with { Readings = [.. w.Readings.Select((r, i) => i == 3 ? r with { Withdrawn = true } : r)] }),
        ["a strip is checked"] = job => WithWall(job, "bay", w => w with { StripChecks = [.. w.StripChecks, new StripCheck("new", "ceiling", "detector")] }),
        ["a wall is said to be outside"] = job => WithWall(job, "breast", w => w with { OtherSide = "outside" }),
        ["a wall less"] = job => job with { Walls = [.. job.Walls.Where(w => w.Id != "loft")], Fixtures = [.. job.Fixtures.Where(f => f.Wall != "loft")] },
        ["walls change places"] = job => job with { Walls = [.. job.Walls.Reverse()] },
        ["another set of standards"] = job => job with { Settings = job.Settings with { Standards = "us" } },
        ["a younger house"] = job => job with { Settings = job.Settings with { YearBuilt = 2015 } },
        ["stock"] = job => job with { Stock = [new StockItem("strap_toggle.medium", 4)] },
    };

    [Theory]
    [MemberData(nameof(Edits))]
    public void One_change_gives_the_plan_that_begins_anew(string edit)
    {
        var planner = new Replanner(PlanData.Embedded);
        planner.Plan(DemoHouse.Job);
        var changed = All[edit](DemoHouse.Job);
        Same(changed, planner.Plan(changed));
        Same(DemoHouse.Job, planner.Plan(DemoHouse.Job));
    }

    [Fact]
    public void Changes_on_top_of_each_other_do_too()
    {
        var planner = new Replanner(PlanData.Embedded);
        var job = DemoHouse.Job;
        foreach (var edit in All.Where(e => e.Key is not ("a thing is taken away" or "a wall less")))
        {
            job = edit.Value(job);
            Same(job, planner.Plan(job));
        }
    }

    [Fact]
    public void What_a_change_does_not_touch_is_kept()
    {
        var planner = new Replanner(PlanData.Embedded);
        var before = planner.Plan(DemoHouse.Job);
        var after = planner.Plan(All["a thing is moved"](DemoHouse.Job));
        Assert.All(before.Items.Zip(after.Items), pair => Assert.Equal(pair.First.Id != "bay-pole", ReferenceEquals(pair.First, pair.Second)));
        Assert.All(before.Walls.Zip(after.Walls), pair => Assert.Same(pair.First, pair.Second));
    }

    [Fact]
    public void A_plan_that_was_cancelled_leaves_the_next_one_right()
    {
        var planner = new Replanner(PlanData.Embedded);
        planner.Plan(DemoHouse.Job);
        using var cancelled = new CancellationTokenSource();
        cancelled.Cancel();
        var changed = All["a reading on a wall"](DemoHouse.Job);
        Assert.Throws<OperationCanceledException>(() => planner.Plan(changed, cancelled.Token));
        Same(changed, planner.Plan(changed));
    }

    private static void Same(Job job, PlanAnswer answer) =>
        Assert.Equal(PlanJson.Write(Planner.Plan(job, PlanData.Embedded), job.Settings), PlanJson.Write(answer, job.Settings));
}
