using Pattress.Cli.Input;
using Pattress.Cli.Printing;
using Pattress.Jobs;
using Pattress.Server;

namespace Pattress.Cli.Commands;

/// <summary>The way of most commands: read a document, ask, print the answer or every problem.</summary>
internal static class Answering
{
    /// <summary>Answers one document, or with <c>--batch</c> one a line.</summary>
    public static int Document(Call call, Func<string, Reply> ask) => Document(call, ask, json => DocumentSheet.Text(json, call.Terminal));

    /// <inheritdoc cref="Document(Call, Func{string, Reply})"/>
    /// <param name="show">The answer as people read it.</param>
    public static int Document(Call call, Func<string, Reply> ask, Func<string, string> show)
    {
        if (call.Arguments.Has("--batch")) return Batch(call, (line, _) => Task.FromResult(ask(line))).GetAwaiter().GetResult();
        var text = call.Read();
        return text.Value is { } json ? Finish(call, ask(json), show) : Refuse(call, text.Problems);
    }

    /// <summary>Prints a reply and gives the exit code.</summary>
    public static int Finish(Call call, Reply reply, Func<string, string> show)
    {
        if (reply.Ending == Ending.BadInput) return Refuse(call, reply.Problems);
        call.Terminal.Out.Write(call.Json ? WithLineEnd(reply.Json) : show(reply.Json));
        return ExitCode.Of(reply.Ending);
    }

    /// <summary>Every problem as a sentence on stderr; with <c>--json</c> the same as a document on stdout.</summary>
    public static int Refuse(Call call, IReadOnlyList<Problem> problems)
    {
        if (call.Json) call.Terminal.Out.Write(WithLineEnd(ProblemJson.Write(problems)));
        call.Terminal.Error.Write(Sheet.Clean(ProblemJson.Lines(problems)));
        return ExitCode.BadInput;
    }

    /// <summary>One answer a line in the order of the input; a bad line gives an error object, and 2 at the end.</summary>
    public static async Task<int> Batch(Call call, Func<string, CancellationToken, Task<Reply>> ask)
    {
        int worst = ExitCode.Answered;
        var catalogue = call.Arguments.Given.TryGetValue(OwnTrialsFile.Switch, out string? path) ? OwnTrialsFile.Read(path, call.Terminal) : null;
        if (catalogue is { Value: null }) return Refuse(call, catalogue.Problems);
        using var input = Documents.Open(call.File, call.Terminal);
        foreach (string line in Lines.Of(input).Where(l => !string.IsNullOrWhiteSpace(l)))
        {
            call.Stop.ThrowIfCancellationRequested();
            var reply = await ask(catalogue?.Value is { } own ? OwnTrialsFile.Into(line, own) : line, call.Stop);
            if (reply.Ending == Ending.BadInput) worst = ExitCode.BadInput;
            call.Terminal.Out.Write(OneLine.Of(reply.Ending == Ending.BadInput ? ProblemJson.Write(reply.Problems, indented: false) : reply.Json) + "\n");
        }
        return worst;
    }

    private static string WithLineEnd(string json) => json.EndsWith('\n') ? json : json + "\n";
}
