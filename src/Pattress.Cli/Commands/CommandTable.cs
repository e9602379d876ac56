using Pattress.Server;

namespace Pattress.Cli.Commands;

/// <summary>Every command there is, in the order of the help.</summary>
internal static class CommandTable
{
    private const string Json = "--json";

    public static IReadOnlyList<Command> All { get; } =
    [
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
