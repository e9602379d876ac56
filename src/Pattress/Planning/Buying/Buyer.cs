using Pattress.Planning.Programs;

namespace Pattress.Planning.Buying;

/// <summary>Solves buying problems with whatever solver is passed in.</summary>
public static class Buyer
{
    /// <summary>Time allowed for one solve, seconds.</summary>
    public const double Seconds = 10;

    /// <summary>The cheapest choice, or null when the rules leave none.</summary>
    public static async Task<BuyingChoice?> Solve(BuyingCase problem, IProgramSolver solver, CancellationToken cancel)
    {
        if (solver.SearchFirst && Searched(problem, cancel) is { } proven) return proven;
        var program = new BuyingProgram(problem);
        var answer = await Ties.Solve(solver, program.Program, program.Ranks, program.MostRank, program.CostAbout, Seconds, cancel);
        return answer.Values.Count == 0 ? null : BuyingChoice.Of(problem, program, answer) with { By = solver.Name };
    }

    /// <summary>The cheapest choice by the program's own search, proven; null where rules want more than it can, or where it did not end within its steps.</summary>
    internal static BuyingChoice? Searched(BuyingCase problem, CancellationToken cancel) =>
        Search.SharedProblem.Of(problem) is { } shared
        && Search.ClassSearch.Solve(shared, cancel) is (var chosen, var cost) ? BuyingChoice.Of(problem, chosen, Math.Floor(cost / shared.Weight)) : null;

    /// <summary>
    /// The smallest sets of rules to give up so that something can be bought: all of the least size, found by trying every set
    /// of one, then of two, and so on. Empty when giving up all of them does not help.
    /// </summary>
    public static async Task<IReadOnlyList<IReadOnlyList<string>>> GiveUp(BuyingCase problem, IProgramSolver solver, CancellationToken cancel)
    {
        var stated = Stated(problem.Rules);
        for (int size = 1; size <= stated.Count; size++)
        {
            var enough = new List<IReadOnlyList<string>>();
            foreach (var set in Sets(stated, size)) if (await Possible(problem with { Rules = Without(problem.Rules, set) }, solver, cancel)) enough.Add(set);
            if (enough.Count > 0) return enough;
        }

        return [];
    }

    private static async Task<bool> Possible(BuyingCase problem, IProgramSolver solver, CancellationToken cancel)
    {
        var program = new BuyingProgram(problem).Program;
        var free = program with { Unknowns = [.. program.Unknowns.Select(u => u with { Cost = 0 })] };
        return (await solver.Solve(free, Seconds, cancel)).Values.Count > 0;
    }

    /// <summary>The rules that were laid down, by the name of their field.</summary>
    public static IReadOnlyList<string> Stated(BuyingRules r) =>
        [.. new[] { r.Budget is null ? "" : "budget", r.MostKinds is null ? "" : "most_kinds", r.MostBits is null ? "" : "most_bits",
            r.VanOnly ? "van_only" : "", r.NoSecondTrip ? "no_second_trip" : "", r.Avoid.Count > 0 ? "avoid" : "" }.Where(n => n.Length > 0)];

    /// <summary>The rules without these.</summary>
    public static BuyingRules Without(BuyingRules r, IReadOnlyList<string> given) => given.Aggregate(r, (rules, name) => name switch
    {
        "budget" => rules with { Budget = null },
        "most_kinds" => rules with { MostKinds = null },
        "most_bits" => rules with { MostBits = null },
        "van_only" => rules with { VanOnly = false },
        "no_second_trip" => rules with { NoSecondTrip = false },
        _ => rules with { Avoid = [] },
    });

    private static IEnumerable<IReadOnlyList<string>> Sets(IReadOnlyList<string> names, int size) =>
        Enumerable.Range(0, 1 << names.Count).Where(bits => System.Numerics.BitOperations.PopCount((uint)bits) == size)
            .Select(bits => (IReadOnlyList<string>)[.. names.Where((_, i) => (bits >> i & 1) == 1)]);
}
