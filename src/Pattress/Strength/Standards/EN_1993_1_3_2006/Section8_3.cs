using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.EN_1993_1_3_2006;

/// <summary>EN 1993-1-3:2006, the rest of Table 8.2 and 8.3 for screws: distances, net section, tension and shear at once. From memory: no document seen.</summary>
public static class Section8_3
{
    private const string Document = "EN 1993-1-3", Edition = "2006", Table = "EN 1993-1-3:2006 Table 8.2";
    private static readonly double[] Diameters = [3, 3, 1.5, 3];

    /// <summary>Least distance, mm: e_1 to the end, p_1 along and p_2 across the force between screws 3 d, e_2 to the edge 1.5 d.</summary>
    internal static double Distance(double which, double d, Trace? trace)
    {
        double factor = trace.LookUp("factor", Diameters[(int)which], "", Table);
        return trace.Step("a", factor * d, "mm", Table, [In.Of(factor), In.Of(d)]);
    }

    internal static double F_n_Rk(double A_net, double f_u, Trace? trace) => trace.Step("F_n_Rk", A_net * f_u, "N", Table, [In.Of(A_net), In.Of(f_u)]);

    /// <summary>8.3: tension and shear at once; the resistances are the least of pull-out and pull-through, of bearing and net section. At most 1.</summary>
    internal static double Together(double F_t_Ed, double F_p_Rd, double F_o_Rd, double F_v_Ed, double F_b_Rd, double F_n_Rd, Trace? trace)
    {
        double F_t_Rd = trace.Step("F_t_Rd", Min(F_p_Rd, F_o_Rd), "N", "EN 1993-1-3:2006 8.3", [In.Of(F_p_Rd), In.Of(F_o_Rd)]);
        double F_v_Rd = trace.Step("F_v_Rd", Min(F_b_Rd, F_n_Rd), "N", "EN 1993-1-3:2006 8.3", [In.Of(F_b_Rd), In.Of(F_n_Rd)]);
        return trace.Step("utilisation", F_t_Ed / F_t_Rd + F_v_Ed / F_v_Rd, "", "EN 1993-1-3:2006 8.3", [In.Of(F_t_Ed), In.Of(F_t_Rd), In.Of(F_v_Ed), In.Of(F_v_Rd)]);
    }

    public static readonly Rule Distances = new("en1993_1_3.table_8_2.distance", Document, Edition, Table, "Least distance of screws in thin sheet", "mm",
        (x, t) => Distance(x[0], x[1], t), Parameter.Choice("which", "e_1", "p_1", "e_2", "p_2"), Input.Length("d", 3, 8));

    public static readonly Rule NetSection = new("en1993_1_3.table_8_2.net_section", Document, Edition, Table, "Net section of the sheet", "N",
        (x, t) => F_n_Rk(x[0], x[1], t), Input.Area("A_net", 0.1, 1e5), Input.Stress("f_u", 200, 700));

    public static readonly Rule Combined = new("en1993_1_3.8_3.combined", Document, Edition, "EN 1993-1-3:2006 8.3", "Tension and shear of a screw at once, utilisation", "",
        (x, t) => Together(x[0], x[1], x[2], x[3], x[4], x[5], t),
        Input.Force("F_t_Ed"), Input.Force("F_p_Rd", 1e-3), Input.Force("F_o_Rd", 1e-3), Input.Force("F_v_Ed"), Input.Force("F_b_Rd", 1e-3), Input.Force("F_n_Rd", 1e-3));

    public static IReadOnlyList<Rule> Rules => [Distances, NetSection, Combined];
}
