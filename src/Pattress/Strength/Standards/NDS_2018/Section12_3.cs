using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.NDS_2018;

/// <summary>A joint in single shear: D diameter (root where the thread bears), l_m main and l_s side member (mm), F_em, F_es, F_yb (N/mm²).</summary>
/// <param name="theta">Largest angle of the load to the grain of either member, degrees; matters from 1/4 in on.</param>
/// <param name="D_nominal">Nominal diameter of a threaded fastener (mm); 0 where it is D.</param>
internal readonly record struct Yield(double D, double l_m, double l_s, double F_em, double F_es, double F_yb, double theta = 0, double D_nominal = 0)
{
    /// <summary>From 1/4 in on R_d goes by mode and angle.</summary>
    internal bool Large => Max(D, D_nominal) >= 6.35;
}

/// <summary>NDS 2018, 12.3: lateral yield modes of one fastener in single shear, allowable N.</summary>
public static class Section12_3
{
    private const string Head = "NDS 2018 ", Modes = Head + "Table 12.3.1A";

    /// <summary>Table 12.3.3: dowel bearing strength, 16600 G^1.84 psi rounded to 50 psi, in N/mm².</summary>
    internal static double F_e(double G, Trace? trace) =>
        trace.Step("F_e", Round(16600 * Pow(G, 1.84) / 50) * 50 * 0.0068947572931683613, "N/mm²", Head + "Table 12.3.3", [In.Of(G)]);

    /// <summary>
    /// Table 12.3.3 and (12.3-11) from 1/4 in on: along the grain 11200 G, across it 6100 G^1.45 / sqrt(D) with D in inches, each rounded to 50 psi, and
    /// between them Hankinson's formula at theta; N/mm². From memory.
    /// </summary>
    internal static double F_e_theta(double G, double D, double theta, Trace? trace)
    {
        double F_par = trace.Step("F_par", Round(11200 * G / 50) * 50 * 0.0068947572931683613, "N/mm²", Head + "Table 12.3.3", [In.Of(G)]);
        double F_perp = trace.Step("F_perp", Round(6100 * Pow(G, 1.45) / Sqrt(D / 25.4) / 50) * 50 * 0.0068947572931683613, "N/mm²", Head + "Table 12.3.3", [In.Of(G), In.Of(D)]);
        return trace.Step("F_e_theta", F_par * F_perp / (F_par * Pow(Sin(theta * PI / 180), 2) + F_perp * Pow(Cos(theta * PI / 180), 2)), "N/mm²", Head + "(12.3-11)",
            [In.Of(F_par), In.Of(F_perp), In.Of(theta)]);
    }

    /// <summary>Table 12.3.1B: reduction term for D below 1/4 in; the diameter is in mm.</summary>
    internal static double R_d(double D, Trace? trace) =>
        trace.Step("R_d", D / 25.4 <= 0.17 ? 2.2 : 10 * D / 25.4 + 0.5, "", Head + "Table 12.3.1B", [In.Of(D)]);

    /// <summary>
    /// Table 12.3.1B for a mode: below 1/4 in K_D; from 1/4 in on 4 (I), 3.6 (II) or 3.2 (III, IV) times K_theta = 1 + 0.25 theta/90; a fastener
    /// of 1/4 in or more whose root is thinner K_D K_theta (footnote 1, from memory).
    /// </summary>
    internal static double R_d(in Yield y, double R_mode, Trace? trace)
    {
        if (!y.Large) return R_d(y.D, trace);
        double theta = y.theta, K_theta = trace.Step("K_theta", 1 + 0.25 * theta / 90, "", Head + "Table 12.3.1B", [In.Of(theta)]);
        double K = y.D < 6.35 ? R_d(y.D, trace) : R_mode;
        return trace.Step("R_d", K * K_theta, "", Head + "Table 12.3.1B", [In.Of(K), In.Of(K_theta)]);
    }

    internal const double ModeI = 4, ModeII = 3.6, ModeIII = 3.2;

    internal static double I_m(in Yield y, double R_d, Trace? trace)
    {
        double D = y.D, l_m = y.l_m, F_em = y.F_em;
        return trace.Step("Z_Im", D * l_m * F_em / R_d, "N", Modes, [In.Of(D), In.Of(l_m), In.Of(F_em), In.Of(R_d)]);
    }

    internal static double I_s(in Yield y, double R_d, Trace? trace)
    {
        double D = y.D, l_s = y.l_s, F_es = y.F_es;
        return trace.Step("Z_Is", D * l_s * F_es / R_d, "N", Modes, [In.Of(D), In.Of(l_s), In.Of(F_es), In.Of(R_d)]);
    }

    internal static double II(in Yield y, double R_e, double R_d, Trace? trace)
    {
        double D = y.D, l_s = y.l_s, F_es = y.F_es, l_m = y.l_m;
        double R_t = trace.Step("R_t", l_m / l_s, "", Modes, [In.Of(l_m), In.Of(l_s)]);
        double k_1 = trace.Step("k_1", (Sqrt(R_e + 2 * Pow(R_e, 2) * (1 + R_t + Pow(R_t, 2)) + Pow(R_t, 2) * Pow(R_e, 3)) - R_e * (1 + R_t)) / (1 + R_e), "", Modes, [In.Of(R_e), In.Of(R_t)]);
        return trace.Step("Z_II", k_1 * D * l_s * F_es / R_d, "N", Modes, [In.Of(k_1), In.Of(D), In.Of(l_s), In.Of(F_es), In.Of(R_d)]);
    }

    internal static double III_m(in Yield y, double R_e, double R_d, Trace? trace)
    {
        double D = y.D, l_m = y.l_m, F_em = y.F_em, F_yb = y.F_yb;
        double k_2 = trace.Step("k_2", -1 + Sqrt(2 * (1 + R_e) + 2 * F_yb * (1 + 2 * R_e) * Pow(D, 2) / (3 * F_em * Pow(l_m, 2))), "", Modes, [In.Of(R_e), In.Of(F_yb), In.Of(D), In.Of(F_em), In.Of(l_m)]);
        return trace.Step("Z_IIIm", k_2 * D * l_m * F_em / ((1 + 2 * R_e) * R_d), "N", Modes, [In.Of(k_2), In.Of(D), In.Of(l_m), In.Of(F_em), In.Of(R_e), In.Of(R_d)]);
    }

    internal static double III_s(in Yield y, double R_e, double R_d, Trace? trace)
    {
        double D = y.D, l_s = y.l_s, F_em = y.F_em, F_yb = y.F_yb;
        double k_3 = trace.Step("k_3", -1 + Sqrt(2 * (1 + R_e) / R_e + 2 * F_yb * (2 + R_e) * Pow(D, 2) / (3 * F_em * Pow(l_s, 2))), "", Modes, [In.Of(R_e), In.Of(F_yb), In.Of(D), In.Of(F_em), In.Of(l_s)]);
        return trace.Step("Z_IIIs", k_3 * D * l_s * F_em / ((2 + R_e) * R_d), "N", Modes, [In.Of(k_3), In.Of(D), In.Of(l_s), In.Of(F_em), In.Of(R_e), In.Of(R_d)]);
    }

    internal static double IV(in Yield y, double R_e, double R_d, Trace? trace)
    {
        double D = y.D, F_em = y.F_em, F_yb = y.F_yb;
        return trace.Step("Z_IV", Pow(D, 2) / R_d * Sqrt(2 * F_em * F_yb / (3 * (1 + R_e))), "N", Modes, [In.Of(D), In.Of(R_d), In.Of(F_em), In.Of(F_yb), In.Of(R_e)]);
    }

    internal static double R_e(in Yield y, Trace? trace)
    {
        double F_em = y.F_em, F_es = y.F_es;
        return trace.Step("R_e", F_em / F_es, "", Modes, [In.Of(F_em), In.Of(F_es)]);
    }

    /// <summary>The least of the six modes, N.</summary>
    internal static double Z(in Yield y, Trace? trace)
    {
        double r_I = R_d(y, ModeI, trace), r_II = y.Large ? R_d(y, ModeII, trace) : r_I, r_III = y.Large ? R_d(y, ModeIII, trace) : r_I, e = R_e(y, trace);
        double Z_Im = I_m(y, r_I, trace), Z_Is = I_s(y, r_I, trace), Z_II = II(y, e, r_II, trace);
        double Z_IIIm = III_m(y, e, r_III, trace), Z_IIIs = III_s(y, e, r_III, trace), Z_IV = IV(y, e, r_III, trace);
        return trace.Step("Z", Min(Min(Min(Z_Im, Z_Is), Min(Z_II, Z_IIIm)), Min(Z_IIIs, Z_IV)), "N", Modes,
            [In.Of(Z_Im), In.Of(Z_Is), In.Of(Z_II), In.Of(Z_IIIm), In.Of(Z_IIIs), In.Of(Z_IV)]);
    }

    public static IReadOnlyList<Rule> Rules => Section12_3_Rules.All;
}
