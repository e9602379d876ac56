using Pattress.Cli.Input;
using Pattress.Cli.Printing;
using Pattress.Server;

namespace Pattress.Cli.Commands;

/// <summary>Every command there is, in the order of the help.</summary>
internal static class CommandTable
{
    private const string Json = "--json", Batch = "--batch", Trials = OwnTrialsFile.Switch, Working = "--working", Explained = "--explain";

    public static IReadOnlyList<Command> All { get; } =
    [
        Command.Of("plan", "JOB", 1, 1, [Json, Batch, Working, Trials], PlanCommands.Plan),
        Command.Of("layout", "JOB", 1, 1, [Json, Batch, Trials], BuyCommands.Layout),
        new("buy", "JOB", 1, 1, [Json, Batch, Trials], BuyCommands.Buy),
        new("quote", "JOB", 1, 1, [Json, Batch, Trials], BuyCommands.Quote),
        new("stock", "[JOB [CSV]]", 0, 2, [Json, StockCommand.Csv, StockCommand.Done, StockCommand.Start], StockCommand.Run),
        new("load", "JOB JOB...", 1, 20, [Json], LoadCommand.Run),
        Command.Of("repair", "JOB ITEM BRACKET MM", 4, 4, [Json, RepairCommand.Torn, RepairCommand.Crushed, RepairCommand.Record, Trials], RepairCommand.Run),
        Command.Of("papers", "JOB", 1, 1, [Json, PapersCommand.Out, PapersCommand.Paper, Trials], PapersCommand.Run),
        Explain("wall", "FILE", Questions.Wall, WallSheet.Text),
        Explain("locate", "SCAN", Questions.Locate, DocumentSheet.Text),
        Ask("bracket", "FILE", Questions.Bracket),
        Ask("beam", "FILE", Questions.Beam),
        Command.Of("rules", "[TEXT]", 0, 20, [Json], RuleCommands.List),
        Command.Of("rule", "ID name=value...", 1, 60, [Json], RuleCommands.One),
        Command.Of("trial", "CSV", 1, 1, [Json, "--svg", "--report"], TrialCommand.Run),
        Command.Of("trials", "FILE [JOB...]", 1, 50, [Json, TrialsCommand.Undo], TrialsCommand.Run),
        Command.Of("compare", "FILE", 1, 1, [Json], call => Answering.Document(call, Questions.Compare, json => CompareSheet.Text(json, call.Terminal))),
        Command.Of("certainty", "JOB", 1, 1, [Json, Batch, Trials], call => Answering.Document(call, json => Questions.Certainty(json, call.Stop), json => CertaintySheet.Text(json, call.Terminal))),
        Command.Of("proof", "JOB", 1, 1, [Json, Batch, Trials], call => Answering.Document(call, json => Questions.Proof(json, call.Stop), json => ProofSheet.Text(json, call.Terminal))),
        Command.Of("schema", "[job|wall|locate]", 0, 1, [Json], Schema),
        new("serve", "", 0, 0, [], Serve),
    ];

    public static Command? Find(string name) => All.FirstOrDefault(c => c.Name == name);

    private static Command Ask(string name, string takes, Func<string, Reply> ask) =>
        Command.Of(name, takes, 1, 1, [Json, Batch], call => Answering.Document(call, ask));

    private static Command Explain(string name, string takes, Func<string, bool, Reply> ask, Func<string, Terminal, string> show) =>
        Command.Of(name, takes, 1, 1, [Json, Batch, Explained], call =>
            Answering.Document(call, json => ask(json, call.Arguments.Has(Explained)), json => show(json, call.Terminal)));

    private static int Schema(Call call) =>
        Answering.Finish(call, Questions.SchemaOf(call.Arguments.Values.Count > 0 ? call.Arguments.Values[0] : "job"), json => json.TrimEnd('\n') + "\n");

    private static Task<int> Serve(Call call) =>
        ServerProgram.Run(ServerOptions.FromSurroundings(), call.Terminal.Out, call.Terminal.Error, call.Stop);
}
