using System.Text;
using Pattress.Cli;

namespace Pattress.Apps.Tests.Cli;

/// <summary>What one run of the command line came to.</summary>
internal sealed record Ran(int Exit, string Out, string Error)
{
    /// <summary>Runs the command line as its process does, with a console of its own.</summary>
    public static Task<Ran> Pattress(params string[] words) => Reading("", words);

    /// <summary>The same with something on standard input.</summary>
    public static async Task<Ran> Reading(string input, params string[] words)
    {
        var output = new StringWriter();
        var error = new StringWriter();
        int exit = await CommandLine.Run(words, new Terminal(new MemoryStream(Encoding.UTF8.GetBytes(input)), output, error), CancellationToken.None);
        return new(exit, output.ToString(), error.ToString());
    }
}
