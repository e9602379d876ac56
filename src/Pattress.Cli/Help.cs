using Pattress.Cli.Commands;

namespace Pattress.Cli;

/// <summary>What <c>pattress --help</c> prints.</summary>
internal static class Help
{
    public static string Text { get; } = $"""
        pattress: where it hangs, what holds it, what to check first

        {string.Join('\n', CommandTable.All.Select(Line))}

        A FILE of - is standard input. --json prints one JSON document and nothing else;
        --batch reads a document a line and answers each on a line; --working unfolds
        the calculation, --explain says what each reading moved; --trials FILE counts
        what your other jobs taught; trial draws with --svg FILE and writes a report
        with --report DIR; papers go to --out DIR, on --paper a4 or letter. Ends with
        0: answered, 2: bad input, 3: not covered, 1: else.

        """;

    private static string Line(Command command) => $"  {$"pattress {command.Name} {command.Takes}",-35} {command.Says}";
}
