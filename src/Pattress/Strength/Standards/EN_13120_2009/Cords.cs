using Pattress.Working;

namespace Pattress.Strength.Standards.EN_13120_2009;

/// <summary>
/// EN 13120:2009+A1:2014: where children under 42 months may be, no part of a loop below 1500 mm above the floor
/// (secondary sources). The breakaway force is not settled, so none is given (decision on the flags).
/// </summary>
public static class Cords
{
    internal const double Least = 1500;
    private const string Clause = "EN 13120:2009+A1:2014";

    /// <summary>How far the lowest point of a loop stands above the least height, mm; below 0 it hangs too low.</summary>
    internal static double Spare(double lowest, Trace? trace) => trace.Step("spare", lowest - 1500, "mm", Clause, [In.Of(lowest)]);

    public static readonly Rule LoopHeight = new("en13120.loop_height", "EN 13120", "2009+A1:2014", Clause, "Height of a loop's lowest point above the least", "mm",
        (x, t) => Spare(x[0], t), Input.Length("lowest", 0, 10000));

    public static IReadOnlyList<Rule> Rules => [LoopHeight];
}
