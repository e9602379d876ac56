using Pattress.Cli.Commands;
using Pattress.Cli.Input;
using Pattress.Jobs;
using Pattress.Jobs.Text;

namespace Pattress.Cli;

/// <summary>The command line as a function of words and a terminal; tests call it as the process does.</summary>
internal static class CommandLine
{
    /// <summary>Runs one command and gives its exit code: 0 answered, 2 bad input, 3 not covered, 1 anything else.</summary>
    public static async Task<int> Run(IReadOnlyList<string> words, Terminal terminal, CancellationToken stop)
    {
        var arguments = Arguments.Of(words);
        if (arguments.Has("--version")) return Print(terminal, $"pattress {Version}\n");
        if (arguments.Has("--help") || arguments.Command is "help" || words.Count == 0) return Print(terminal, Help.Text);
        var call = new Call(arguments, terminal, stop);
        if (CommandTable.Find(arguments.Command) is not { } command) return Unknown(call);
        if (command.Fault(arguments) is { } fault) return Answering.Refuse(call, [fault]);
        return await Guarded(command, call);
    }

    private static string Version => typeof(CommandLine).Assembly.GetName().Version!.ToString(3);

    private static async Task<int> Guarded(Command command, Call call)
    {
        try
        {
            return await command.Run(call);
        }
        catch (OperationCanceledException)
        {
            call.Terminal.Error.WriteLine($"pattress: {Texts.Name("cli.stopped")}");
            return ExitCode.Else;
        }
        catch (IOException e)
        {
            call.Terminal.Error.WriteLine($"pattress: {e.Message}");
            return ExitCode.Else;
        }
    }

    private static int Unknown(Call call) => Answering.Refuse(call,
        [new Problem("unknown_command", "pattress", call.Arguments.Command, string.Join(", ", CommandTable.All.Select(c => c.Name)))]);

    private static int Print(Terminal terminal, string text)
    {
        terminal.Out.Write(text);
        return ExitCode.Answered;
    }
}
