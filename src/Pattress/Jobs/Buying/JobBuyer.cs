using Pattress.Actions;
using Pattress.Planning.Buying;
using Pattress.Planning.Programs;

namespace Pattress.Jobs.Buying;

/// <summary>Buys for a whole job with the solver that is passed in; the plan's greedy list is replaced.</summary>
public static class JobBuyer
{
    /// <summary>The cheapest shopping by expected cost, one kind for brackets that are alike, with the cheaper mix beside it.</summary>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public static async Task<BuyAnswer> Buy(Job job, PlanData data, IProgramSolver solver, CancellationToken cancel = default)
    {
        var house = Planner.House(job, data, WantedSizes.None, cancel);
        if (house.Needs.Count == 0) return new(house.Plan with { Buy = [], BuyTotal = 0 }, "nothing", solver.Name, 0, 0, 0, [], null, [], [], []);
        var problem = CaseOfJob.Of(house.Needs, job.Stock, data.Catalogue.With(job.Prices), Rules(job.Settings));
        var choice = await Buyer.Solve(problem, solver, cancel);
        if (choice is null) return Infeasible(house.Plan, solver, await Buyer.GiveUp(problem, solver, cancel));
        var plan = Planner.House(job, data, Chosen(house.Needs, problem, choice), cancel).Plan;
        var mix = await Buyer.Solve(problem with { Rules = problem.Rules with { OneKindPerClass = false } }, solver, cancel);
        return Answer(plan, problem, choice, mix);
    }

    /// <summary>The rules of a job's settings.</summary>
    public static BuyingRules Rules(Settings s) => new()
    {
        MinutePrice = s.MinutePrice,
        TripPrice = s.Buying.TripPrice,
        SparePercent = s.Buying.SparePercent,
        Budget = s.Buying.Budget,
        MostKinds = s.Buying.MostKinds,
        MostBits = s.Buying.MostBits,
        VanOnly = s.Buying.VanOnly,
        NoSecondTrip = s.Buying.NoSecondTrip,
        Avoid = s.Buying.Avoid,
    };

    private static WantedSizes Chosen(IReadOnlyList<BracketNeed> needs, BuyingCase problem, BuyingChoice choice)
    {
        var wanted = new Dictionary<(string, int), string>();
        foreach (var (group, c) in needs.GroupBy(n => n.Key).Select((g, c) => (g, c)))
            foreach (var need in group) wanted[(need.Item, need.Index)] = problem.Kinds[problem.Classes[c].Options[choice.Classes[c].Main[0].Option].Kind].Id;
        return new(wanted);
    }

    private static BuyAnswer Infeasible(PlanAnswer plan, IProgramSolver solver, IReadOnlyList<IReadOnlyList<string>> sets) =>
        new(plan with { Buy = [], BuyTotal = 0 }, "infeasible", solver.Name, 0, 0, 0, [], null,
            [.. sets.Select(set => (IReadOnlyList<Reason>)[.. set.Select(GivenUp)])], [new Reason("buy_infeasible")], []);

    private static Reason GivenUp(string rule)
    {
        string code = "give_up." + rule;
        return new(code);
    }

    private static BuyAnswer Answer(PlanAnswer plan, BuyingCase problem, BuyingChoice choice, BuyingChoice? mix)
    {
        var lines = new BuyLines(problem, choice).All();
        bool cheaper = mix is not null && mix.Expected < choice.Expected;
        return new(plan with { Buy = lines, BuyTotal = lines.Sum(l => l.Price) }, choice.Status == ProgramStatus.Optimal ? "optimal" : "feasible", choice.By,
            choice.Expected, choice.Bound, choice.SecondTrip, [.. choice.Classes.Select(c => Class(problem, c))],
            cheaper ? new(mix!.Expected, choice.Expected - mix.Expected, new BuyLines(problem, mix).All()) : null, [], Notes(problem, choice), Assumed(problem.Rules));
    }

    private static BuyClassAnswer Class(BuyingCase problem, ClassChoice c)
    {
        var group = problem.Classes[c.Class];
        var main = group.Options[c.Main[0].Option];
        return new(group.Items, group.Brackets, problem.Kinds[main.Kind].Id, main.Count,
            [.. c.StandIns.Select(s => new StandInAnswer(problem.Kinds[group.Options[s.Option].Kind].Id, group.States[s.State].Probability))], c.Uncovered);
    }

    private static IReadOnlyList<Reason> Notes(BuyingCase problem, BuyingChoice choice) =>
        [.. choice.Classes.Where(c => c.Uncovered > 0).Select(c => new Reason("buy_trip", Said.Words(string.Join(", ", problem.Classes[c.Class].Items)), Said.Percent(c.Uncovered)))];

    private static IReadOnlyList<Assumption> Assumed(BuyingRules rules) =>
    [
        new("assume_prices", [], "invented"),
        new("assume_spare", [Said.Count(rules.SparePercent)], "assumed"),
        new("assume_trip", [Said.Money(rules.TripPrice), Said.Money(rules.MinutePrice)], "assumed"),
        new("assume_van_share", [Said.Percent((double)rules.VanShare)], "assumed"),
    ];
}
