using System.Text;

namespace Pattress.Cli;

/// <summary>The command line's process.</summary>
public static class CliProgram
{
    public static async Task<int> Main(string[] args)
    {
        Console.OutputEncoding = new UTF8Encoding(false);
        using var stop = new CancellationTokenSource();
        Console.CancelKeyPress += (_, pressed) =>
        {
            pressed.Cancel = true;
            stop.Cancel();
        };
        return await CommandLine.Run(args, Terminal.OfProcess(), stop.Token);
    }
}
