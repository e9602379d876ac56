using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.EN_1992_4_2018;

/// <summary>EN 1992-4:2018, what 7.2.1.4 and 7.2.2.5 add for eccentric loads, dense reinforcement, corners and thin members. From memory: no document seen.</summary>
public static class Section7_2_More
{
    private const string Document = "EN 1992-4", Edition = "2018", Head = "EN 1992-4:2018 ";

    /// <summary>(7.5): shell spalling where reinforcement is closer than 150 mm; h_ef in mm.</summary>
    internal static double psi_re_N(double h_ef, Trace? trace) => trace.Step("psi_re_N", Min(0.5 + h_ef / 200, 1), "", Head + "(7.5)", [In.Of(h_ef)]);

    /// <summary>(7.6): resultant tension off the middle of the group by e_N.</summary>
    internal static double psi_ec_N(double e_N, double h_ef, Trace? trace)
    {
        double s_cr_N = trace.Step("s_cr_N", 3 * h_ef, "mm", Head + "7.2.1.4(3)", [In.Of(h_ef)]);
        return trace.Step("psi_ec_N", 1 / (1 + 2 * e_N / s_cr_N), "", Head + "(7.6)", [In.Of(e_N), In.Of(s_cr_N)]);
    }

    /// <summary>(7.40): edge break-out of one fixing at c_1 from the loaded edge, c_2 from a corner, in a member h thick, from that far from both.</summary>
    internal static double V_Rk_c(double V0_Rk_c, double c_1, double c_2, double h, Trace? trace)
    {
        double A_ratio = trace.Step("A_ratio", (1.5 * c_1 + Min(c_2, 1.5 * c_1)) * Min(h, 1.5 * c_1) / (4.5 * Pow(c_1, 2)), "", Head + "7.2.2.5(4)", [In.Of(c_1), In.Of(c_2), In.Of(h)]);
        double psi_s_V = trace.Step("psi_s_V", Min(0.7 + 0.3 * c_2 / (1.5 * c_1), 1), "", Head + "7.2.2.5(5)", [In.Of(c_2), In.Of(c_1)]);
        double psi_h_V = trace.Step("psi_h_V", Max(Sqrt(1.5 * c_1 / h), 1), "", Head + "7.2.2.5(6)", [In.Of(c_1), In.Of(h)]);
        return trace.Step("V_Rk_c", V0_Rk_c * A_ratio * psi_s_V * psi_h_V, "N", Head + "(7.40)", [In.Of(V0_Rk_c), In.Of(A_ratio), In.Of(psi_s_V), In.Of(psi_h_V)]);
    }

    /// <summary>(7.47): resultant shear off the middle of the group by e_V, at c_1 from the edge.</summary>
    internal static double psi_ec_V(double e_V, double c_1, Trace? trace) => trace.Step("psi_ec_V", 1 / (1 + 2 * e_V / (3 * c_1)), "", Head + "(7.47)", [In.Of(e_V), In.Of(c_1)]);

    /// <summary>(7.48): shear at alpha_V to the line square to the edge.</summary>
    internal static double psi_alpha_V(double alpha_V, Trace? trace) => trace.Step(
        "psi_alpha_V", Max(Sqrt(1 / (Pow(Cos(alpha_V * PI / 180), 2) + Pow(0.5 * Sin(alpha_V * PI / 180), 2))), 1), "", Head + "(7.48)", [In.Of(alpha_V)]);

    public static readonly Rule ShearEccentric = new("en1992_4.7_2_2_5.psi_ec", Document, Edition, Head + "7.2.2.5 (7.47)", "Shear off the middle of a group", "",
        (x, t) => psi_ec_V(x[0], x[1], t), Input.Length("e_V", 0, 5000), Input.Length("c_1", 15, 2000));

    public static readonly Rule ShearDirection = new("en1992_4.7_2_2_5.psi_alpha", Document, Edition, Head + "7.2.2.5 (7.48)", "Shear at an angle to the edge", "",
        (x, t) => psi_alpha_V(x[0], t), Input.Angle("alpha_V", 0, 90));

    public static readonly Rule Shell = new("en1992_4.7_2_1_4.psi_re", Document, Edition, Head + "7.2.1.4(5) (7.5)", "Shell spalling", "",
        (x, t) => psi_re_N(x[0], t), Input.Length("h_ef", 40, 500));

    public static readonly Rule Eccentric = new("en1992_4.7_2_1_4.psi_ec", Document, Edition, Head + "7.2.1.4(6) (7.6)", "Tension off the middle of a group", "",
        (x, t) => psi_ec_N(x[0], x[1], t), Input.Length("e_N", 0, 5000), Input.Length("h_ef", 40, 500));

    public static readonly Rule Edge = new("en1992_4.7_2_2_5.edge", Document, Edition, Head + "7.2.2.5 (7.40)", "Edge break-out near a corner or in a thin member", "N",
        (x, t) => V_Rk_c(x[0], x[1], x[2], x[3], t), Input.Force("V0_Rk_c"), Input.Length("c_1", 15, 2000), Input.Length("c_2", 15, 10000, 10000), Input.Length("h", 20, 10000, 10000));

    public static IReadOnlyList<Rule> Rules => [Shell, Eccentric, Edge, ShearEccentric, ShearDirection];
}
