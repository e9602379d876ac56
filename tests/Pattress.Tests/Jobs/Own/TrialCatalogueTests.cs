using Pattress.Jobs;
using Pattress.Jobs.Own;
using Pattress.Tests.Planning;

namespace Pattress.Tests.Jobs.Own;

/// <summary>The user's own trials from all of his jobs: what one house taught counts in the next, and the way back.</summary>
public class TrialCatalogueTests
{
    private static readonly Job Flat = DemoHouse.Read("rented-flat");

    private static readonly string Size = Planner.Plan(Flat, PlanData.Embedded).Items.Single(i => i.Id == "picture").Brackets[0].Fixing!;

    private static readonly Job Elsewhere = new()
    {
        Title = "Elsewhere (invented)",
        Trials = [new OwnTest { Id = "t1", Fixing = Size, Load = "tension", LoadN = 5, BoardMm = 9.5, Wall = "living" }, new OwnTest { Id = "t2", Fixing = Size, Load = "tension", LoadN = 6, Withdrawn = true }],
        Proofs = [new ProofRecord { Id = "p1", Fixture = "gone", Fixing = Size, LoadN = 40, Result = "held" }, new ProofRecord { Id = "p2", Fixture = "gone", Fixing = Size, LoadN = 30, Result = "came_away" }],
    };

    private static readonly TrialCatalogue Taken = TrialCatalogue.Empty.Taking("elsewhere", Elsewhere);

    [Fact]
    public void A_job_puts_in_its_tests_and_pulls_and_nothing_that_was_taken_back() =>
        Assert.Equal([("t1", "failed"), ("p1", "stopped"), ("p2", "failed")], Taken.Tests.Select(t => (t.Test.Id, t.Test.Outcome)));

    [Fact]
    public void What_failed_in_one_house_changes_the_plan_of_another_and_its_verdict_is_shown()
    {
        var changed = ChangedPlans.Of("flat", Flat, TrialCatalogue.Empty, Taken, PlanData.Embedded)!;
        var picture = Assert.Single(changed.Items, i => i.Id == "picture");
        Assert.Equal(Size, picture.FixingBefore);
        Assert.True(picture.FixingAfter != Size || picture.Before != picture.After);
        var plan = Planner.Plan(Taken.In("flat", Flat), PlanData.Embedded);
        Assert.Equal(3, plan.Assumptions.Single(a => a.Code == "assume_catalogue").Values[0].Number);
    }

    [Fact]
    public void Taken_out_the_plans_are_as_they_were()
    {
        var undone = Taken.WithJob("elsewhere", true);
        Assert.Same(Flat, undone.In("flat", Flat));
        Assert.Null(ChangedPlans.Of("flat", Flat, TrialCatalogue.Empty, undone, PlanData.Embedded));
        // What was taken out stays out when the job is kept again, and comes back when it is wanted.
        Assert.All(undone.Taking("elsewhere", Elsewhere).Tests, t => Assert.True(t.Out));
        Assert.Equal(Taken, undone.WithJob("elsewhere", false), (a, b) => a.Tests.SequenceEqual(b.Tests));
    }

    [Fact]
    public void What_is_taken_back_in_the_job_is_gone_from_the_catalogue() =>
        Assert.Equal(["p1", "p2"], Taken.Taking("elsewhere", Elsewhere with { Trials = [] }).Tests.Select(t => t.Test.Id));

    [Fact]
    public void Taking_the_same_twice_changes_nothing() => Assert.Same(Taken, Taken.Taking("elsewhere", Elsewhere));

    /// <summary>A wall of another house is not this house's wall of the same name; ids that both use are told apart, and a copy counts once.</summary>
    [Fact]
    public void Tests_of_other_jobs_come_without_their_walls_under_ids_of_their_own()
    {
        var own = Flat with { Trials = [new OwnTest { Id = "t1", Fixing = Size, Load = "shear", LoadN = 90 }] };
        var all = Taken.For("flat", own);
        Assert.Equal(4, all.Select(t => t.Id).Distinct().Count());
        Assert.All(all.Skip(1), t => Assert.Equal(("", "Elsewhere (invented)"), (t.Wall, t.From)));
        Assert.Empty(JobReader.Read(JobWriter.Write(own with { Trials = all })).Problems);
        Assert.Equal(3, TrialCatalogue.Empty.Taking("elsewhere", Elsewhere).Taking("copy", Elsewhere).For("flat", Flat).Count);
    }

    [Fact]
    public void The_document_comes_back_as_it_went()
    {
        var undone = Taken.With("p1", true);
        Assert.Equal(undone.Tests, CatalogueDocument.Read(CatalogueDocument.Write(undone)).Value!.Tests);
        Assert.NotEmpty(CatalogueDocument.Read("{\"pattress_trials\":1,\"tests\":[{\"job\":\"a\",\"test\":{\"id\":\"x\",\"fixing\":\"chewing_gum\",\"load\":\"tension\",\"load_n\":5}}]}").Problems);
        Assert.NotEmpty(CatalogueDocument.Read("{\"pattress_trials\":2,\"tests\":[]}").Problems);
    }

    /// <summary>Found come away on a later visit: a failure at what it had to carry, which lowers that size from then on.</summary>
    [Fact]
    public void A_bracket_found_come_away_is_a_failure_at_what_it_had_to_carry()
    {
        var plan = Planner.Plan(Flat, PlanData.Embedded);
        var item = Assert.Single(plan.Items, i => i.Id == "picture");
        var failure = LaterFailure.Of(Flat, plan, "picture", 0, "later", "2025-05-01")!;
        Assert.Equal((Size, "failed", "site", item.Wall), (failure.Fixing, failure.Outcome, failure.Where, failure.Wall));
        var after = DemoHouse.Item(Flat with { Trials = [failure] }, "picture");
        Assert.True(after.Brackets[0].Fixing != Size || after.Brackets[0].Utilisation > item.Brackets[0].Utilisation);
        Assert.Null(LaterFailure.Of(Flat, plan, "picture", 99, "later", ""));
    }
}
