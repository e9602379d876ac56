using Pattress.Cli.Input;
using Pattress.Jobs;
using Pattress.Jobs.Text;
using Pattress.Server;

namespace Pattress.Cli.Commands;

/// <summary>One call of a command.</summary>
internal sealed record Call(Arguments Arguments, Terminal Terminal, CancellationToken Stop)
{
    public bool Json => Arguments.Has("--json");

    public string File => Arguments.Values[0];

    /// <summary>The document, with what the user's other jobs taught where <c>--trials</c> names their file.</summary>
    public Outcome<string> Read()
    {
        var text = Documents.Read(File, Terminal);
        return text.Value is { } json && Arguments.Given.TryGetValue(OwnTrialsFile.Switch, out string? path) ? With(json, path) : text;
    }

    private Outcome<string> With(string json, string path)
    {
        var catalogue = OwnTrialsFile.Read(path, Terminal);
        return catalogue.Value is { } own ? Outcome<string>.Of(OwnTrialsFile.Into(json, own)) : Outcome<string>.Refused(catalogue.Problems);
    }
}

/// <summary>A command: its name, what it takes, the switches it knows, and what it does.</summary>
/// <param name="Least">Fewest values it takes.</param>
/// <param name="Most">Most values it takes.</param>
internal sealed record Command(
    string Name, string Takes, int Least, int Most, IReadOnlyList<string> Switches, Func<Call, Task<int>> Run)
{
    /// <summary>One line about it.</summary>
    public string Says => Texts.Sentence("cli.help." + Name, [Said.Words(ServerOptions.LoopbackUrl)], new Settings());

    /// <summary>A command that answers at once.</summary>
    public static Command Of(string name, string takes, int least, int most, IReadOnlyList<string> switches, Func<Call, int> run) =>
        new(name, takes, least, most, switches, call => Task.FromResult(run(call)));

    /// <summary>What is wrong with the words behind it, or null.</summary>
    public Problem? Fault(Arguments arguments)
    {
        string? unknown = arguments.Switches.FirstOrDefault(s => !Switches.Contains(s, StringComparer.Ordinal));
        if (unknown is not null) return new("unknown_switch", $"pattress {Name}", unknown, Switches.Count == 0 ? "no switch" : string.Join(", ", Switches));
        if (arguments.Given.FirstOrDefault(g => g.Value.Length == 0).Key is { } empty) return new("wrong_words", $"pattress {Name}", empty, $"{empty} and a file or folder");
        int count = arguments.Values.Count;
        return count >= Least && count <= Most ? null
            : new("wrong_words", $"pattress {Name}", string.Join(' ', arguments.Values), $"pattress {Name} {Takes}".TrimEnd());
    }
}
