namespace Pattress.Planning.Programs;

/// <summary>Breaks ties by a fixed second sum, so that equal plans do not flicker: least cost first, then least rank.</summary>
public static class Ties
{
    /// <summary>Half of the smallest difference between two costs: costs are whole numbers.</summary>
    private const double HalfACost = 0.5;

    /// <summary>Solves for cost, then among the solutions of that cost for rank. The answer keeps the first run's status and bound.</summary>
    /// <param name="ranks">Per unknown, what one of it adds to the second sum.</param>
    public static async Task<ProgramAnswer> Solve(IProgramSolver solver, IntegerProgram program, IReadOnlyList<double> ranks, double seconds, CancellationToken cancel)
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
