namespace Pattress.Planning.Programs;

/// <summary>
/// Breaks ties by a fixed second sum, so that equal plans do not flicker: least cost first, then least rank. Costs and ranks are whole numbers. Where
/// cost times (most rank + 1) plus rank stays small enough for a solver's tolerances one solve finds both: no rank makes up for a cost that is one higher.
/// </summary>
public static class Ties
{
    /// <summary>Half of the smallest difference between two costs.</summary>
    private const double HalfACost = 0.5;

    /// <summary>Largest sum of costs for one solve: solvers compare to about a part in 1e9, so that half a rank is still told apart.</summary>
    private const double Together = 5e8;

    /// <summary>Solves for cost and among the solutions of that cost for rank. Cost and bound of the answer are those of the cost alone.</summary>
    /// <param name="ranks">Per unknown, what one of it adds to the second sum; none below 0.</param>
    /// <param name="mostRank">What the second sum of a solution never exceeds.</param>
    /// <param name="costAbout">About what the least cost is, or more.</param>
    public static async Task<ProgramAnswer> Solve(IProgramSolver solver, IntegerProgram program, IReadOnlyList<double> ranks, double mostRank, double costAbout, double seconds, CancellationToken cancel)
    {
        double weight = mostRank + 1;
        var (less, spared) = Unavoidable.Spared(program);
        if ((costAbout - spared) * weight > Together) return await Apart(solver, program, ranks, seconds, cancel);
        var both = less with { Unknowns = [.. less.Unknowns.Select((u, i) => u with { Cost = u.Cost * weight + ranks[i] })] };
        var found = await solver.Solve(both, seconds, cancel);
        if (found.Values.Count == 0) return found;
        double cost = program.CostOf(found.Values), bound = spared + Math.Ceiling((found.Bound - mostRank) / weight - HalfACost / weight);
        return found with { Cost = cost, Bound = Math.Min(bound, Math.Round(cost)) };
    }

    private static async Task<ProgramAnswer> Apart(IProgramSolver solver, IntegerProgram program, IReadOnlyList<double> ranks, double seconds, CancellationToken cancel)
    {
        var first = await solver.Solve(program, seconds, cancel);
        if (first.Status != ProgramStatus.Optimal) return first;
        var second = await solver.Solve(Ranked(program, ranks, first.Cost), seconds, cancel);
        return second.Status is ProgramStatus.Optimal or ProgramStatus.Feasible
            ? first with { Values = second.Values, Cost = program.CostOf(second.Values) }
            : first;
    }

    private static IntegerProgram Ranked(IntegerProgram program, IReadOnlyList<double> ranks, double cost) => new(
        [.. program.Unknowns.Select((u, i) => u with { Cost = ranks[i] })],
        [.. program.Rows, new Row("no_dearer", [.. program.Unknowns.Select((u, i) => new Term(i, u.Cost)).Where(t => t.Times != 0)], double.NegativeInfinity, Math.Round(cost) + HalfACost)]);
}
