using Pattress.Jobs;

namespace Pattress.Tests.Planning;

/// <summary>The demo house, read once and planned; and ways to change it.</summary>
internal static class DemoHouse
{
    public static Job Job { get; } = Read("demo-house");

    public static PlanAnswer Plan { get; } = Planner.Plan(Job, PlanData.Embedded);

    public static Job Read(string name)
    {
        var outcome = JobReader.Read(Embedded.Text($"samples/{name}.job.json"));
        Assert.Empty(outcome.Problems);
        return outcome.Value!;
    }

    public static ItemAnswer Item(Job job, string id) => Planner.Plan(job, PlanData.Embedded).Items.Single(i => i.Id == id);

    public static Job With(Job job, string fixture, Func<Fixture, Fixture> change) =>
        job with { Fixtures = [.. job.Fixtures.Select(f => f.Id == fixture ? change(f) : f)] };

    public static Job WithWall(Job job, string wall, Func<Wall, Wall> change) =>
        job with { Walls = [.. job.Walls.Select(w => w.Id == wall ? change(w) : w)] };
}
