using Pattress.Server;

namespace Pattress.Cli;

/// <summary>How a command ends.</summary>
internal static class ExitCode
{
    /// <summary>Answered, whatever the verdict.</summary>
    public const int Answered = 0;

    /// <summary>Anything else: cancelled, the address is taken, a fault.</summary>
    public const int Else = 1;

    public const int BadInput = 2;

    /// <summary>No rule of the program covers it.</summary>
    public const int NotCovered = 3;

    public static int Of(Ending ending) => ending switch
    {
        Ending.Answered => Answered,
        Ending.BadInput => BadInput,
        _ => NotCovered,
    };
}
