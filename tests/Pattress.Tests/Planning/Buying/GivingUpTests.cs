using Pattress.Jobs;
using Pattress.Jobs.Buying;
using Pattress.Planning.Buying;
using Pattress.Planning.Programs;
using Pattress.Solvers;

namespace Pattress.Tests.Planning.Buying;

/// <summary>Rules that leave nothing are named, the smallest set first. Expected sets by hand from three-line problems.</summary>
public class GivingUpTests
{
    // One class of two brackets, one fixing each, one kind at 4.00 a pack of 4, its bit 3.00: in the shop 7.00, and nothing in the van.
    private static BuyingCase Problem(BuyingRules rules) => new(
        [new BuyClass(["shelf"], 2, [new BuyOption(0, 1, [0], true)], [new BuyState(0.9, [0])])],
        [new BuyKind("pivot_bar.medium", 4, 4.00m, 0, 3)], [new BuyTool("spear 16", "bit", 3.00m, false)], rules);

    private static async Task<IReadOnlyList<string>> Sets(BuyingRules rules)
    {
        Assert.Null(await Buyer.Solve(Problem(rules), new ScipSolver(), default));
        return [.. (await Buyer.GiveUp(Problem(rules), new ScipSolver(), default)).Select(s => string.Join("+", s))];
    }

    [Fact]
    public async Task A_budget_below_the_pack_and_the_bit_is_the_rule_to_give_up() =>
        Assert.Equal(["budget"], await Sets(new() { Budget = 6.99m, MostKinds = 1, NoSecondTrip = true }));

    [Fact]
    public async Task A_budget_of_just_pack_and_bit_will_do() =>
        Assert.Equal(7.00m, (await Buyer.Solve(Problem(new() { Budget = 7.00m }), new ScipSolver(), default))!.Paid(Problem(new())));

    [Fact]
    public async Task Two_rules_that_each_forbid_it_must_both_go() =>
        Assert.Equal(["most_bits+avoid"], await Sets(new() { MostBits = 0, Avoid = ["pivot_bar"], Budget = 100 }));

    [Fact]
    public async Task Where_either_of_two_rules_is_enough_both_are_named()
    {
        // Two kinds: a dear one in the shop (8.00), a cheap one (1.00) that needs a bit; budget 5 forbids the first, no bits the second.
        BuyingCase problem(BuyingRules rules) => new(
            [new BuyClass(["shelf"], 1, [new BuyOption(0, 1, [], true), new BuyOption(1, 1, [0], true)], [new BuyState(1, [0, 1])])],
            [new BuyKind("dear.medium", 1, 8.00m, 0, 1), new BuyKind("cheap.medium", 1, 1.00m, 0, 1)], [new BuyTool("wood 3", "bit", 2.00m, false)],
            rules with { SparePercent = 0 });
        var tight = problem(new() { Budget = 5, MostBits = 0 });
        Assert.Null(await Buyer.Solve(tight, new ScipSolver(), default));
        Assert.Equal(["budget", "most_bits"], (await Buyer.GiveUp(tight, new ScipSolver(), default)).Select(s => Assert.Single(s)).Order());
    }

    [Fact]
    public async Task The_wall_in_doubt_has_both_kinds_carried_when_a_trip_is_dear_and_one_when_it_is_cheap()
    {
        // Screw holds with 0.7, toggle with 0.3 (pack 2.00, no bit, 1 minute at 0.50): carrying it costs 2.00, a trip at 20 costs 0.3 x 20 = 6.00, at 5 it costs 1.50.
        BuyingCase problem(decimal trip) => new(
            [new BuyClass(["rail"], 1, [new BuyOption(0, 1, [], true), new BuyOption(1, 1, [], false)], [new BuyState(0.7, [0]), new BuyState(0.3, [1])])],
            [new BuyKind("wood_screw.medium", 1, 0.50m, 0, 1), new BuyKind("strap_toggle.medium", 1, 2.00m, 0, 1)], [],
            new BuyingRules { TripPrice = trip, SparePercent = 0, FillMinutes = 0 });
        var dear = (await Buyer.Solve(problem(20), new ScipSolver(), default))!;
        Assert.Equal([1, 1], dear.Packs);
        Assert.Equal(0, dear.SecondTrip);
        // 0.50 + 2.00 + 0.7 x 0.50 + 0.3 x 0.50 = 3.00
        Assert.Equal(3.00m, dear.Expected);
        var cheap = (await Buyer.Solve(problem(5), new ScipSolver(), default))!;
        Assert.Equal([1, 0], cheap.Packs);
        Assert.Equal(0.3, cheap.SecondTrip, 12);
        // 0.50 + 0.7 x 0.50 + 0.3 x 5 = 2.35
        Assert.Equal(2.35m, cheap.Expected);
    }

    [Theory, InlineData("demo-house"), InlineData("rented-flat"), InlineData("masonry-house")]
    public async Task Every_sample_is_bought_for_to_proven_optimum_and_keeps_its_verdicts(string name)
    {
        var job = DemoHouse.Read(name);
        var answer = await JobBuyer.Buy(job, PlanData.Embedded, new ScipSolver());
        Assert.Equal("optimal", answer.Status);
        Assert.InRange(answer.Expected - answer.Bound, -0.001m, 0.001m);
        Assert.Equal(answer.Plan.BuyTotal, answer.Plan.Buy.Sum(l => l.Packs * l.PackPrice));
        Assert.All(answer.Plan.Buy, l => Assert.NotNull(l.Why));
        Assert.Equal(Planner.Plan(job, PlanData.Embedded).Items.Select(i => i.Verdict), answer.Plan.Items.Select(i => i.Verdict));
        foreach (var used in answer.Plan.Items.Where(i => i.Verdict != Verdict.NotHere).SelectMany(i => i.Brackets).Where(b => b.Fixing is not null).GroupBy(b => b.Fixing))
            Assert.True(answer.Plan.Buy.Single(l => l.Id == used.Key).Needed >= used.Sum(b => b.Count));
    }

    [Fact]
    public async Task What_was_chosen_is_the_same_every_time() =>
        Assert.Equal(BuyJson.Write(await JobBuyer.Buy(DemoHouse.Job, PlanData.Embedded, new ScipSolver()), DemoHouse.Job.Settings),
            BuyJson.Write(await JobBuyer.Buy(DemoHouse.Job, PlanData.Embedded, new ScipSolver()), DemoHouse.Job.Settings));

    [Fact]
    public async Task A_job_whose_rules_leave_nothing_says_which_to_give_up()
    {
        var job = DemoHouse.Job with { Stock = [], Settings = DemoHouse.Job.Settings with { Buying = new() { VanOnly = true, Budget = 500 } } };
        var answer = await JobBuyer.Buy(job, PlanData.Embedded, new ScipSolver());
        Assert.Equal("infeasible", answer.Status);
        Assert.Equal("give_up.van_only", Assert.Single(Assert.Single(answer.GiveUp)).Code);
    }
}
