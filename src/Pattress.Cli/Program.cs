namespace Pattress.Cli;

/// <summary>The command line.</summary>
public static class CliProgram
{
    public static int Main(string[] args) => args.Length == 0 ? 0 : 2;
}
