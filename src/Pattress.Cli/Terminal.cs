namespace Pattress.Cli;

/// <summary>What the command line reads from and writes to; the console, or what a test passes in.</summary>
/// <param name="Width">Columns for text; 80 where the console does not say.</param>
/// <param name="Colour">Bold and colour; never when the output is no terminal or NO_COLOR is set.</param>
internal sealed record Terminal(Stream In, TextWriter Out, TextWriter Error, int Width = Terminal.PlainWidth, bool Colour = false)
{
    public const int PlainWidth = 80;
    private const int Widest = 100;

    /// <summary>What dates on papers come from.</summary>
    public TimeProvider Clock { get; init; } = TimeProvider.System;

    /// <summary>The console of the process.</summary>
    public static Terminal OfProcess()
    {
        bool plain = Console.IsOutputRedirected || !string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"));
        return new(Console.OpenStandardInput(), Console.Out, Console.Error, ConsoleWidth(), !plain);
    }

    private static int ConsoleWidth() =>
        Console.IsOutputRedirected || Console.WindowWidth <= 0 ? PlainWidth : int.Clamp(Console.WindowWidth, 40, Widest);
}
