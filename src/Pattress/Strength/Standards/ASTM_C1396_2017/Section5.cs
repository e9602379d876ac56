using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.ASTM_C1396_2017;

/// <summary>ASTM C1396 with C473: least nail-pull and flexural loads of gypsum board (method B), N, by nominal thickness. Minima.</summary>
public static class Section5
{
    private const string Document = "ASTM C1396", Edition = "2017", Clause = "ASTM C1396/C473";
    private static readonly StandardTable Boards = StandardTable.Read("astm_c1396");
    private static readonly double[] NailPulls = Boards.Column("nail_pull_lbf"), Perpendicular = Boards.Column("perpendicular_lbf"), Parallel = Boards.Column("parallel_lbf");

    internal static double NailPull(double board, Trace? trace)
    {
        double F = trace.LookUp("F_lbf", NailPulls[(int)board], "lbf", Clause);
        return trace.Step("F", F * 4.4482216152605, "N", Clause, [In.Of(F)]);
    }

    internal static double Flexure(double board, double direction, Trace? trace)
    {
        double F = trace.LookUp("F_lbf", (direction == 0 ? Perpendicular : Parallel)[(int)board], "lbf", Clause);
        return trace.Step("F", F * 4.4482216152605, "N", Clause, [In.Of(F)]);
    }

    /// <summary>
    /// Bending strength for each mm of width, N, from the flexural load: method B, a strip 12 in wide on a span of 14 in loaded at its middle
    /// (C473, from memory), M = F L / 4.
    /// </summary>
    internal static double m(double F, Trace? trace) => trace.Step("m", F * 355.6 / (4 * 304.8), "N", "ASTM C473 method B", [In.Of(F)]);

    public static readonly Rule BendingStrength = new("astm_c1396.bending_strength", Document, Edition, "ASTM C473 method B", "Least bending strength for each mm of width", "N",
        (x, t) => m(Flexure(x[0], x[1], t), t), Parameter.Choice("board", [.. Boards.Words]), Parameter.Choice("direction", "perpendicular", "parallel"));

    /// <summary>Nominal shear stress on the cylinder of the head's diameter through the board, N/mm².</summary>
    internal static double tau(double F, double D, double t, Trace? trace) =>
        trace.Step("tau", F / (PI * D * t), "N/mm²", "mechanics", [In.Of(F), In.Of(D), In.Of(t)]);

    private static readonly Parameter Board = Parameter.Choice("board", [.. Boards.Words]);

    public static readonly Rule NailPullLoad = new("astm_c1396.nail_pull", Document, Edition, Clause, "Least nail-pull load of gypsum board", "N", (x, t) => NailPull(x[0], t), Board);

    public static readonly Rule FlexuralLoad = new("astm_c1396.flexural", Document, Edition, Clause, "Least flexural load of gypsum board, method B", "N",
        (x, t) => Flexure(x[0], x[1], t), Board, Parameter.Choice("direction", "perpendicular", "parallel"));

    public static readonly Rule NominalShear = new("mechanics.nominal_shear", "mechanics", "", "mechanics", "Nominal shear stress of a head pulled through board", "N/mm²",
        (x, t) => tau(x[0], x[1], x[2], t), Input.Force("F"), Input.Length("D", 1, 200), Input.Length("t", 1, 100));

    public static IReadOnlyList<Rule> Rules => [NailPullLoad, FlexuralLoad, BendingStrength, NominalShear];
}
