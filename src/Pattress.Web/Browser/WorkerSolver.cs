using System.Globalization;
using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;
using Pattress.Planning.Programs;

namespace Pattress.Web.Browser;

/// <summary>HiGHS as WebAssembly in a worker: the page stays free, and the work can be stopped.</summary>
[SupportedOSPlatform("browser")]
internal sealed partial class WorkerSolver : IProgramSolver
{
    private const string Module = "pattress-solver";

    // Model statuses of HiGHS.
    private const string Optimal = "7", Infeasible = "8", UnboundedOrInfeasible = "9", TimeLimit = "13";

    private Task? _loaded;

    public string Name => "highs";

    /// <inheritdoc/>
    public async Task<ProgramAnswer> Solve(IntegerProgram program, double seconds, CancellationToken cancel)
    {
        await (_loaded ??= JSHost.ImportAsync(Module, "../js/solver.js"));
        cancel.ThrowIfCancellationRequested();
        using var stopping = cancel.Register(Stop);
        try
        {
            return Read(await Run(LpText.Write(program), program.Unknowns.Count, seconds));
        }
        catch (JSException) when (cancel.IsCancellationRequested)
        {
            throw new OperationCanceledException(cancel);
        }
    }

    private static ProgramAnswer Read(string line)
    {
        string[] parts = line.Split(' ');
        return parts[0] switch
        {
            Optimal => Found(ProgramStatus.Optimal, parts),
            TimeLimit when double.IsFinite(Number(parts[1])) => Found(ProgramStatus.Feasible, parts),
            TimeLimit => ProgramAnswer.None(ProgramStatus.Stopped),
            Infeasible or UnboundedOrInfeasible => ProgramAnswer.None(ProgramStatus.Infeasible),
            _ => throw new InvalidOperationException(line),
        };
    }

    private static ProgramAnswer Found(ProgramStatus status, string[] parts) =>
        new(status, Number(parts[1]), Number(parts[2]), [.. parts.Skip(3).Select(Number)]);

    private static double Number(string text) => text switch
    {
        "Infinity" => double.PositiveInfinity,
        "-Infinity" => double.NegativeInfinity,
        _ => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture),
    };

    [JSImport("solve", Module)]
    private static partial Task<string> Run(string lp, int count, double seconds);

    [JSImport("stop", Module)]
    private static partial void Stop();
}
