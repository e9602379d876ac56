using Pattress.Cli.Commands;
using Pattress.Jobs.Text;

namespace Pattress.Cli;

/// <summary>What <c>pattress --help</c> prints.</summary>
internal static class Help
{
    public static string Text { get; } = $"""
        {Texts.Name("cli.help")}

        {string.Join('\n', CommandTable.All.Select(Line))}

        {string.Join('\n', Notes())}

        """;

    /// <summary>A line a text: no line of the help is longer than a terminal.</summary>
    private static IEnumerable<string> Notes()
    {
        for (int line = 1; Texts.Has($"cli.help.note{line}"); line++) yield return Texts.Name($"cli.help.note{line}");
    }

    private static string Line(Command command) => $"  {$"pattress {command.Name} {command.Takes}",-35} {command.Says}";
}
