using System.Globalization;
using Google.OrTools.LinearSolver;
using Pattress.Planning.Programs;

namespace Pattress.Solvers;

/// <summary>SCIP, by way of OR-Tools. One thread, so that the same program gives the same answer.</summary>
public sealed class ScipSolver : IProgramSolver
{
    public string Name => "scip";

    /// <inheritdoc/>
    public bool SearchFirst => true;

    /// <inheritdoc/>
    public Task<ProgramAnswer> Solve(IntegerProgram program, double seconds, CancellationToken cancel) => NativeSolver.Run("SCIP", program, seconds, cancel);
}

/// <summary>CP-SAT, as a second opinion on small programs whose numbers are all whole.</summary>
public sealed class CpSatSolver : IProgramSolver
{
    public string Name => "cp_sat";

    /// <inheritdoc/>
    public Task<ProgramAnswer> Solve(IntegerProgram program, double seconds, CancellationToken cancel) => NativeSolver.Run("SAT", program, seconds, cancel);
}

/// <summary>HiGHS natively, as a second opinion.</summary>
public sealed class HighsSolver : IProgramSolver
{
    public string Name => "highs";

    /// <inheritdoc/>
    public Task<ProgramAnswer> Solve(IntegerProgram program, double seconds, CancellationToken cancel) => NativeSolver.Run("HIGHS", program, seconds, cancel);
}

/// <summary>Hands a program to one of the native solvers and takes the answer back.</summary>
internal static class NativeSolver
{
    // The programs are small and nearly whole once relaxed: what pays on large ones (restarts, probing, searches for better solutions in
    // the neighbourhood of known ones) takes longer here than the search itself. None of it changes what is proven.
    private static readonly string Settings = string.Join('\n',
        "presolving/maxrestarts = 0", "propagating/probing/maxprerounds = 0", "heuristics/alns/freq = -1", "heuristics/rins/freq = -1",
        "heuristics/feaspump/freq = -1", "heuristics/clique/freq = -1", "heuristics/vbounds/freq = -1");

    internal static Task<ProgramAnswer> Run(string kind, IntegerProgram program, double seconds, CancellationToken cancel) =>
        Task.Run(() => Solve(kind, program, seconds, cancel), cancel);

    private static ProgramAnswer Solve(string kind, IntegerProgram program, double seconds, CancellationToken cancel)
    {
        using var solver = Solver.CreateSolver(kind) ?? throw new InvalidOperationException($"the solver {kind} is not in this build");
        solver.SetTimeLimit((long)(seconds * 1000));
        var unknowns = Fill(solver, program);
        if (kind == "SCIP") solver.SetSolverSpecificParametersAsString(Settings);
        using var parameters = new MPSolverParameters();
        parameters.SetDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
        using var stop = cancel.Register(() => solver.InterruptSolve());
        var ended = solver.Solve(parameters);
        cancel.ThrowIfCancellationRequested();
        return Answer(ended, solver, unknowns);
    }

    private static Variable[] Fill(Solver solver, IntegerProgram program)
    {
        var unknowns = program.Unknowns.Select(u => solver.MakeVar(u.Lower, u.Upper, u.Whole, u.Name)).ToArray();
        using var objective = solver.Objective();
        for (int i = 0; i < unknowns.Length; i++) objective.SetCoefficient(unknowns[i], program.Unknowns[i].Cost);
        objective.SetMinimization();
        foreach (var row in program.Rows)
        {
            var constraint = solver.MakeConstraint(row.Lower, row.Upper, row.Name);
            foreach (var term in row.Terms) constraint.SetCoefficient(unknowns[term.Unknown], term.Times);
        }

        return unknowns;
    }

    private static ProgramAnswer Answer(Solver.ResultStatus ended, Solver solver, Variable[] unknowns) => ended switch
    {
        Solver.ResultStatus.OPTIMAL => Found(ProgramStatus.Optimal, solver, unknowns),
        Solver.ResultStatus.FEASIBLE => Found(ProgramStatus.Feasible, solver, unknowns),
        Solver.ResultStatus.INFEASIBLE => ProgramAnswer.None(ProgramStatus.Infeasible),
        Solver.ResultStatus.NOT_SOLVED => ProgramAnswer.None(ProgramStatus.Stopped),
        _ => throw new InvalidOperationException(string.Create(CultureInfo.InvariantCulture, $"the solver ended with {ended}")),
    };

    private static ProgramAnswer Found(ProgramStatus status, Solver solver, Variable[] unknowns) =>
        new(status, solver.Objective().Value(), solver.Objective().BestBound(), [.. unknowns.Select(u => u.SolutionValue())]);
}
