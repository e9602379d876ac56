using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.EN_520_2004;

/// <summary>
/// EN 520:2004+A1:2009, Table 4: least flexural breaking load of plasterboard, type A (span 350 mm, width 300 mm). The table is
/// taken for 9.5, 12.5 and 15 mm, and 43 t or 16.8 t (N) between (decision on the flags). Minima, neither means nor sustained strengths.
/// </summary>
public static class Table4
{
    private const string Document = "EN 520", Edition = "2004+A1:2009", Clause = "EN 520:2004+A1:2009 Table 4";
    private static readonly StandardTable Boards = StandardTable.Read("en520_breaking_load");
    private static readonly double[] Thickness = Boards.Column("t_mm"), Along = Boards.Column("longitudinal_n"), Across = Boards.Column("transverse_n");

    /// <summary>Breaking load, N, along (0) or across (1) the board; t in mm.</summary>
    internal static double F(double direction, double t, Trace? trace)
    {
        int row = Array.IndexOf(Thickness, t);
        if (row >= 0) return trace.LookUp("F", (direction == 0 ? Along : Across)[row], "N", Clause);
        return trace.Step("F", direction == 0 ? 43 * t : 16.8 * t, "N", Clause, [In.Of(direction), In.Of(t)]);
    }

    /// <summary>Equivalent modulus of rupture, N/mm²: F · 350/4 over 300 t²/6.</summary>
    internal static double Mor(double direction, double t, Trace? trace)
    {
        double F = Table4.F(direction, t, trace);
        return trace.Step("f_m", 1.5 * F * 350 / (300 * Pow(t, 2)), "N/mm²", Clause + " (span 350, width 300)", [In.Of(F), In.Of(t)]);
    }

    private static readonly Parameter Direction = Parameter.Choice("direction", "along", "across"), T = Input.Length("t", 6, 30);

    public static readonly Rule BreakingLoad = new("en520.table_4.breaking_load", Document, Edition, Clause, "Least flexural breaking load of plasterboard", "N",
        (x, t) => F(x[0], x[1], t), Direction, T);

    public static readonly Rule Rupture = new("en520.table_4.modulus_of_rupture", Document, Edition, Clause, "Bending strength from the breaking load", "N/mm²",
        (x, t) => Mor(x[0], x[1], t), Direction, T);

    public static readonly Rule Mass = new("en520.mass", Document, Edition, "EN 520:2004+A1:2009 5.12 (type D)", "Areal mass of board", "kg/m²",
        (x, t) => ArealMass(x[0], x[1], t), Input.Density("rho", 400, 1400), T);

    internal static double ArealMass(double rho, double t, Trace? trace) => trace.Step("m", rho * t / 1000, "kg/m²", "arithmetic", [In.Of(rho), In.Of(t)]);

    public static IReadOnlyList<Rule> Rules => [BreakingLoad, Rupture, Mass];
}
