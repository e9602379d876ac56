using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.EN_1992_4_2018;

/// <summary>
/// EN 1992-4:2018, 7.2.1.4, 7.2.2.4, 7.2.2.5 and 7.2.3: concrete cone, pry-out, concrete edge, interaction. N, mm, N/mm².
/// For concrete only: in masonry they are no more than an order of magnitude, and no plug is designed by them here.
/// </summary>
public static class Section7_2_Concrete
{
    private const string Head = "EN 1992-4:2018 ";

    /// <summary>(7.2): one fixing far from edges and neighbours; k_1 is 11.0 in uncracked, 7.7 in cracked concrete.</summary>
    internal static double N0_Rk_c(double f_ck, double h_ef, double cracked, Trace? trace)
    {
        double k_1 = trace.Step("k_1", cracked > 0 ? 7.7 : 11.0, "", Head + "7.2.1.4(2)", [In.Of(cracked)]);
        return trace.Step("N0_Rk_c", k_1 * Sqrt(f_ck) * Pow(h_ef, 1.5), "N", Head + "(7.2)", [In.Of(k_1), In.Of(f_ck), In.Of(h_ef)]);
    }

    /// <summary>Share of the cone left to two fixings s apart, at c from an edge, over that of one: A_c,N/A0_c,N.</summary>
    internal static double AreaRatio(double h_ef, double s, double c, Trace? trace)
    {
        double s_cr = trace.Step("s_cr_N", 3 * h_ef, "mm", Head + "7.2.1.4(3)", [In.Of(h_ef)]);
        return trace.Step("A_ratio", (s_cr / 2 + Min(s, s_cr) + Min(c, s_cr / 2)) / s_cr, "", Head + "(7.3)", [In.Of(s_cr), In.Of(s), In.Of(c)]);
    }

    /// <summary>(7.4) of 7.2.1.4(4): disturbance by an edge at c.</summary>
    internal static double psi_s_N(double h_ef, double c, Trace? trace)
    {
        double c_cr = trace.Step("c_cr_N", 1.5 * h_ef, "mm", Head + "7.2.1.4(3)", [In.Of(h_ef)]);
        return trace.Step("psi_s_N", Min(0.7 + 0.3 * c / c_cr, 1), "", Head + "7.2.1.4(4)", [In.Of(c), In.Of(c_cr)]);
    }

    /// <summary>Cone of two fixings s apart (one: s = 0) at c from an edge.</summary>
    internal static double N_Rk_c(double f_ck, double h_ef, double cracked, double s, double c, Trace? trace)
    {
        double N0_Rk_c = Section7_2_Concrete.N0_Rk_c(f_ck, h_ef, cracked, trace);
        double A_ratio = AreaRatio(h_ef, s, c, trace), psi_s_N = Section7_2_Concrete.psi_s_N(h_ef, c, trace);
        return trace.Step("N_Rk_c", N0_Rk_c * A_ratio * psi_s_N, "N", Head + "(7.1)", [In.Of(N0_Rk_c), In.Of(A_ratio), In.Of(psi_s_N)]);
    }

    /// <summary>(7.39): pry-out; k_8 is 1 below 60 mm of embedment, else 2 (the product's assessment may say otherwise).</summary>
    internal static double V_Rk_cp(double N_Rk_c, double h_ef, Trace? trace)
    {
        double k_8 = trace.Step("k_8", h_ef < 60 ? 1 : 2, "", Head + "7.2.2.4", [In.Of(h_ef)]);
        return trace.Step("V_Rk_cp", k_8 * N_Rk_c, "N", Head + "(7.39)", [In.Of(k_8), In.Of(N_Rk_c)]);
    }

    /// <summary>(7.41): edge break-out of one fixing under shear towards an edge at c_1; of its length l_f no more than 12 d_nom counts. From memory: no document seen.</summary>
    internal static double V0_Rk_c(double f_ck, double d_nom, double l_f, double c_1, double cracked, Trace? trace)
    {
        double k_9 = trace.Step("k_9", cracked > 0 ? 1.7 : 2.4, "", Head + "7.2.2.5", [In.Of(cracked)]);
        double l = trace.Step("l", Min(l_f, 12 * d_nom), "mm", Head + "7.2.2.5(6)", [In.Of(l_f), In.Of(d_nom)]);
        double alpha = trace.Step("alpha", 0.1 * Sqrt(l / c_1), "", Head + "(7.42)", [In.Of(l), In.Of(c_1)]);
        double beta = trace.Step("beta", 0.1 * Pow(d_nom / c_1, 0.2), "", Head + "(7.43)", [In.Of(d_nom), In.Of(c_1)]);
        return trace.Step("V0_Rk_c", k_9 * Pow(d_nom, alpha) * Pow(l, beta) * Sqrt(f_ck) * Pow(c_1, 1.5), "N", Head + "(7.41)",
            [In.Of(k_9), In.Of(d_nom), In.Of(alpha), In.Of(l), In.Of(beta), In.Of(f_ck), In.Of(c_1)]);
    }

    /// <summary>(7.54): steel, from the shares of tension and shear; at most 1.</summary>
    internal static double SteelTogether(double beta_N, double beta_V, Trace? trace) =>
        trace.Step("utilisation", Pow(beta_N, 2) + Pow(beta_V, 2), "", Head + "(7.54)", [In.Of(beta_N), In.Of(beta_V)]);

    /// <summary>(7.55): other than steel; at most 1.</summary>
    internal static double ConcreteTogether(double beta_N, double beta_V, Trace? trace) =>
        trace.Step("utilisation", Pow(beta_N, 1.5) + Pow(beta_V, 1.5), "", Head + "(7.55)", [In.Of(beta_N), In.Of(beta_V)]);

    /// <summary>(7.56): the linear alternative, N/N_Rd + V/V_Rd ≤ 1.2 with each of them at most 1, as a share of its limit.</summary>
    internal static double LinearTogether(double beta_N, double beta_V, Trace? trace) =>
        trace.Step("utilisation", Max((beta_N + beta_V) / 1.2, Max(beta_N, beta_V)), "", Head + "(7.56)", [In.Of(beta_N), In.Of(beta_V)]);

    public static IReadOnlyList<Rule> Rules => Section7_2_ConcreteRules.All;
}
