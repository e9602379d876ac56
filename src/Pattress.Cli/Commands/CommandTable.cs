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
        Ask("locate", "SCAN", "where the supports are along one line", Questions.Locate),
        Ask("bracket", "FILE", "forces on the fixings of one bracket", Questions.Bracket),
        Ask("beam", "FILE", "reactions of a rail on brackets", Questions.Beam),
        Command.Of("rules", "[TEXT]", "every published rule in the program", 0, 20, [Json], RuleCommands.List),
        Command.Of("rule", "ID name=value...", "one rule, with its working", 1, 60, [Json], RuleCommands.One),
        Command.Of("trial", "CSV", "statistics of pull tests", 1, 1, [Json], call => Answering.Document(call, Questions.Trial)),
        Command.Of("schema", "", "the JSON Schema of the job document", 0, 0, [Json], Schema),
        new("serve", "", "the app on " + ServerOptions.LoopbackUrl, 0, 0, [], Serve),
    ];

    public static Command? Find(string name) => All.FirstOrDefault(c => c.Name == name);

    private static Command Ask(string name, string takes, string says, Func<string, Reply> ask) =>
        Command.Of(name, takes, says, 1, 1, [Json, Batch], call => Answering.Document(call, ask));

    private static int Schema(Call call)
    {
        call.Terminal.Out.Write(Questions.Schema.TrimEnd('\n') + "\n");
        return ExitCode.Answered;
    }

    private static Task<int> Serve(Call call) =>
        ServerProgram.Run(ServerOptions.FromSurroundings(), call.Terminal.Out, call.Terminal.Error, call.Stop);
}
