namespace Pattress.Planning.Programs;

/// <summary>One unknown of a program: not below <paramref name="Lower"/>, not above <paramref name="Upper"/> (may be infinite).</summary>
/// <param name="Cost">What one of it adds to the sum that is made least.</param>
public sealed record Unknown(string Name, double Lower, double Upper, bool Whole, double Cost);

/// <summary>So many of one unknown in a row.</summary>
public readonly record struct Term(int Unknown, double Times);

/// <summary>A sum of terms that must lie between two bounds (either may be infinite).</summary>
public sealed record Row(string Name, IReadOnlyList<Term> Terms, double Lower, double Upper);

/// <summary>A mixed integer program as plain data: make the sum of costs least. Any solver can be asked.</summary>
public sealed record IntegerProgram(IReadOnlyList<Unknown> Unknowns, IReadOnlyList<Row> Rows)
{
    /// <summary>The sum of costs at these values.</summary>
    public double CostOf(IReadOnlyList<double> values)
    {
        double sum = 0;
        for (int i = 0; i < Unknowns.Count; i++) sum += Unknowns[i].Cost * values[i];
        return sum;
    }

    /// <summary>The greatest breach of a bound, a row or wholeness at these values; 0 when all hold.</summary>
    public double Breach(IReadOnlyList<double> values)
    {
        double worst = 0;
        for (int i = 0; i < Unknowns.Count; i++)
        {
            var u = Unknowns[i];
            worst = Math.Max(worst, Math.Max(u.Lower - values[i], values[i] - u.Upper));
            if (u.Whole) worst = Math.Max(worst, Math.Abs(values[i] - Math.Round(values[i])));
        }

        foreach (var row in Rows)
        {
            double sum = row.Terms.Sum(t => t.Times * values[t.Unknown]);
            worst = Math.Max(worst, Math.Max(row.Lower - sum, sum - row.Upper));
        }

        return worst;
    }
}

/// <summary>How a solver ended: proven least, a solution without proof, proven impossible, or nothing found in the time allowed.</summary>
public enum ProgramStatus { Optimal, Feasible, Infeasible, Stopped }

/// <summary>A solver's answer.</summary>
/// <param name="Bound">No solution can cost less than this.</param>
/// <param name="Values">One per unknown; empty when there is none.</param>
public sealed record ProgramAnswer(ProgramStatus Status, double Cost, double Bound, IReadOnlyList<double> Values)
{
    public static ProgramAnswer None(ProgramStatus status) => new(status, double.PositiveInfinity, double.NegativeInfinity, []);
}

/// <summary>Whoever can solve a program: natively on server and command line, in a worker in the browser.</summary>
public interface IProgramSolver
{
    /// <summary>Name for the record, e.g. <c>scip</c>.</summary>
    string Name { get; }

    /// <summary>Whether the program's own search may go first: not where it would hold up the thread that draws a page.</summary>
    bool SearchFirst => false;

    /// <summary>Solves to proven optimum unless the time runs out.</summary>
    /// <param name="seconds">Time allowed.</param>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    Task<ProgramAnswer> Solve(IntegerProgram program, double seconds, CancellationToken cancel);
}
