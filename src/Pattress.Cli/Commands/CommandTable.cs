using Pattress.Server;

namespace Pattress.Cli.Commands;

/// <summary>Every command there is, in the order of the help.</summary>
internal static class CommandTable
{
    private const string Json = "--json", Batch = "--batch", Working = "--working";

    public static IReadOnlyList<Command> All { get; } =
    [
        Command.Of("plan", "JOB", "verdicts, fixings, holes, buying, checks", 1, 1, [Json, Batch, Working], PlanCommands.Plan),
        Command.Of("buy", "JOB", "the buying list alone", 1, 1, [Json, Batch], PlanCommands.Buy),
        Command.Of("trial", "CSV", "statistics of pull tests", 1, 1, [Json], call => Answering.Document(call, Questions.Trial)),
        Command.Of("schema", "", "the JSON Schema of the job document", 0, 0, [Json], Schema),
        new("serve", "", "the app on " + ServerOptions.LoopbackUrl, 0, 0, [], Serve),
    ];

    public static Command? Find(string name) => All.FirstOrDefault(c => c.Name == name);

    private static int Schema(Call call)
    {
        call.Terminal.Out.Write(Questions.Schema.TrimEnd('\n') + "\n");
        return ExitCode.Answered;
    }

    private static Task<int> Serve(Call call) =>
        ServerProgram.Run(ServerOptions.FromSurroundings(), call.Terminal.Out, call.Terminal.Error, call.Stop);
}
