using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.EN_1992_4_2018;

/// <summary>
/// EN 1992-4:2018, 7.2.1.3, 7.2.2.3 and Table 4.1: the fixing's own steel, in tension, in shear without and with lever arm.
/// A_s in mm², f_uk, f_yk in N/mm², lengths in mm. The lever arm stays when a sleeve spans the gap: 7.2.2.3.1 drops it only
/// for direct contact or a thin strong mortar.
/// </summary>
public static class Section7_2_Steel
{
    private const string Head = "EN 1992-4:2018 ";

    internal static double N_Rk_s(double A_s, double f_uk, Trace? trace) => trace.Step("N_Rk_s", A_s * f_uk, "N", Head + "7.2.1.3", [In.Of(A_s), In.Of(f_uk)]);

    /// <summary>(7.34): k_6 is 0.6 up to 500 N/mm², 0.5 above; the clause ends at 1000 N/mm².</summary>
    internal static double V0_Rk_s(double A_s, double f_uk, Trace? trace)
    {
        double k_6 = trace.Step("k_6", f_uk <= 500 ? 0.6 : 0.5, "", Head + "7.2.2.3.1", [In.Of(f_uk)]);
        return trace.Step("V0_Rk_s", k_6 * A_s * f_uk, "N", Head + "(7.34)", [In.Of(k_6), In.Of(A_s), In.Of(f_uk)]);
    }

    /// <summary>Elastic section modulus of the stressed section, mm³.</summary>
    internal static double W_el(double A_s, Trace? trace)
    {
        double d_s = trace.Step("d_s", Sqrt(4 * A_s / PI), "mm", Head + "7.2.2.3.2", [In.Of(A_s)]);
        return trace.Step("W_el", PI * Pow(d_s, 3) / 32, "mm³", Head + "7.2.2.3.2", [In.Of(d_s)]);
    }

    /// <summary>Bending resistance of the steel, Nmm.</summary>
    internal static double M0_Rk_s(double A_s, double f_uk, Trace? trace)
    {
        double W_el = Section7_2_Steel.W_el(A_s, trace);
        return trace.Step("M0_Rk_s", 1.2 * W_el * f_uk, "Nmm", Head + "7.2.2.3.2", [In.Of(W_el), In.Of(f_uk)]);
    }

    /// <summary>The same under tension at the share n = N_Ed/N_Rd,s.</summary>
    internal static double M_Rk_s(double M0_Rk_s, double n, Trace? trace) =>
        trace.Step("M_Rk_s", M0_Rk_s * (1 - n), "Nmm", Head + "(7.38)", [In.Of(M0_Rk_s), In.Of(n)]);

    /// <summary>Lever arm: from the shear to the concrete, and half a diameter in it unless a washer and nut clamp on its face.</summary>
    internal static double l_a(double e_1, double d_nom, double clamped, Trace? trace)
    {
        double a_3 = trace.Step("a_3", clamped > 0 ? 0 : 0.5 * d_nom, "mm", Head + "6.2.2.3", [In.Of(clamped), In.Of(d_nom)]);
        return trace.Step("l_a", a_3 + e_1, "mm", Head + "(6.2)", [In.Of(a_3), In.Of(e_1)]);
    }

    /// <summary>Shear with lever arm, N; alpha_M is 1 where the fixture can turn, 2 where it cannot.</summary>
    internal static double V_Rk_s_M(double alpha_M, double M_Rk_s, double l_a, Trace? trace) =>
        trace.Step("V_Rk_s_M", alpha_M * M_Rk_s / l_a, "N", Head + "(7.37)", [In.Of(alpha_M), In.Of(M_Rk_s), In.Of(l_a)]);

    internal static double gamma_Ms_tension(double f_yk, double f_uk, Trace? trace) =>
        trace.Step("gamma_Ms", Max(1.2 / (f_yk / f_uk), 1.4), "", Head + "Table 4.1", [In.Of(f_yk), In.Of(f_uk)]);

    internal static double gamma_Ms_shear(double f_yk, double f_uk, Trace? trace) => trace.Step(
        "gamma_Ms", f_uk <= 800 && f_yk / f_uk <= 0.8 ? Max(1 / (f_yk / f_uk), 1.25) : 1.5, "", Head + "Table 4.1", [In.Of(f_yk), In.Of(f_uk)]);

    private static readonly Parameter Area = Input.Area("A_s", 1, 1000), Ultimate = Input.Stress("f_uk", 200, 1200), Yield = Input.Stress("f_yk", 100, 1200);

    private static Rule Of(string id, string clause, string title, string unit, RuleFunction function, params Parameter[] inputs) =>
        new("en1992_4." + id, "EN 1992-4", "2018", Head + clause, title, unit, function, inputs);

    public static readonly Rule Tension = Of("7_2_1_3.steel_tension", "7.2.1.3", "Steel in tension", "N", (x, t) => N_Rk_s(x[0], x[1], t), Area, Ultimate);

    public static readonly Rule Shear = Of("7_2_2_3.steel_shear", "7.2.2.3.1 (7.34)", "Steel in shear without lever arm", "N", (x, t) => V0_Rk_s(x[0], x[1], t), Area, Input.Stress("f_uk", 200, 1000));

    public static readonly Rule Modulus = Of("7_2_2_3.section_modulus", "7.2.2.3.2", "Elastic section modulus", "mm³", (x, t) => W_el(x[0], t), Area);

    public static readonly Rule Bending = Of("7_2_2_3.bending", "7.2.2.3.2", "Steel in bending", "Nmm", (x, t) => M0_Rk_s(x[0], x[1], t), Area, Ultimate);

    public static readonly Rule LeverArm = Of("6_2_2_3.lever_arm", "6.2.2.3 (6.2)", "Lever arm of the shear", "mm", (x, t) => l_a(x[0], x[1], x[2], t),
        Input.Length("e_1", 0, 500), Input.Length("d_nom", 2, 40), Parameter.Choice("clamped", "no", "yes") with { Default = 0 });

    public static readonly Rule ShearWithArm = Of("7_2_2_3.steel_shear_arm", "7.2.2.3.2 (7.37)", "Steel in shear with lever arm", "N",
        (x, t) => V_Rk_s_M(x[1], M_Rk_s(x[0], x[3], t), x[2], t),
        Input.Moment("M0_Rk_s"), Input.Number("alpha_M", 1, 2), Input.Length("l_a", 0.5, 500), Input.Number("n", 0, 1, 0));

    public static readonly Rule GammaTension = Of("4_4.gamma_ms_tension", "Table 4.1", "Partial factor, steel in tension", "", (x, t) => gamma_Ms_tension(x[0], x[1], t), Yield, Ultimate);

    public static readonly Rule GammaShear = Of("4_4.gamma_ms_shear", "Table 4.1", "Partial factor, steel in shear", "", (x, t) => gamma_Ms_shear(x[0], x[1], t), Yield, Ultimate);

    public static IReadOnlyList<Rule> Rules => [Tension, Shear, Modulus, Bending, LeverArm, ShearWithArm, GammaTension, GammaShear];
}
