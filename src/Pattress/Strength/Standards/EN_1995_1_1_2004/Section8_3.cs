using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.EN_1995_1_1_2004;

/// <summary>EN 1995-1-1:2004+A1:2008, 8.3: nailed connections; by 8.7.1(5) also laterally loaded screws up to 6 mm.</summary>
public static class Section8_3
{
    private const string Document = "EN 1995-1-1", Edition = "2004+A1:2008", Head = "EN 1995-1-1:2004+A1:2008 ";

    /// <summary>(8.14): yield moment of a round fastener, Nmm; f_u ≥ 600 N/mm² for nails, d in mm.</summary>
    internal static double M_y_Rk(double f_u, double d, Trace? trace) =>
        trace.Step("M_y_Rk", 0.3 * f_u * Pow(d, 2.6), "Nmm", Head + "(8.14)", [In.Of(f_u), In.Of(d)]);

    /// <summary>(8.14): yield moment of a square or grooved nail, Nmm; d is the side.</summary>
    internal static double M_y_Rk_square(double f_u, double d, Trace? trace) =>
        trace.Step("M_y_Rk", 0.45 * f_u * Pow(d, 2.6), "Nmm", Head + "(8.14)", [In.Of(f_u), In.Of(d)]);

    /// <summary>(8.15): embedment strength without pre-drilling, N/mm²; d ≤ 8 mm, rho_k in kg/m³.</summary>
    internal static double f_h_k(double rho_k, double d, Trace? trace) =>
        trace.Step("f_h_k", 0.082 * rho_k * Pow(d, -0.3), "N/mm²", Head + "(8.15)", [In.Of(rho_k), In.Of(d)]);

    /// <summary>(8.16): embedment strength with pre-drilled holes, N/mm².</summary>
    internal static double f_h_k_drilled(double rho_k, double d, Trace? trace) =>
        trace.Step("f_h_k", 0.082 * (1 - 0.01 * d) * rho_k, "N/mm²", Head + "(8.16)", [In.Of(rho_k), In.Of(d)]);

    /// <summary>(8.25): withdrawal strength of smooth nails, N/mm², for a penetration of at least 12 d.</summary>
    internal static double f_ax_k(double rho_k, Trace? trace) =>
        trace.Step("f_ax_k", 20e-6 * Pow(rho_k, 2), "N/mm²", Head + "(8.25)", [In.Of(rho_k)]);

    /// <summary>(8.26): pull-through strength of a smooth nail's head, N/mm².</summary>
    internal static double f_head_k(double rho_k, Trace? trace) =>
        trace.Step("f_head_k", 70e-6 * Pow(rho_k, 2), "N/mm²", Head + "(8.26)", [In.Of(rho_k)]);

    /// <summary>(8.24 b), its second term alone: pull-through of one head of diameter d_h (mm), N.</summary>
    internal static double F_head(double rho_k, double d_h, Trace? trace)
    {
        double f_head_k = Section8_3.f_head_k(rho_k, trace);
        return trace.Step("F_head", f_head_k * Pow(d_h, 2), "N", Head + "(8.24)", [In.Of(f_head_k), In.Of(d_h)]);
    }

    /// <summary>(8.17) and Table 8.1: effective number of n in a row along the grain at a_1 apart: from 7 d on, in drilled holes from 4 d; linear between the rows.</summary>
    internal static double n_ef(double n, double a_1, double d, Trace? trace)
    {
        double k_ef = trace.Step("k_ef", a_1 >= 14 * d ? 1 : a_1 >= 10 * d ? 0.85 + 0.15 * (a_1 / d - 10) / 4 : a_1 >= 7 * d ? 0.7 + 0.15 * (a_1 / d - 7) / 3 : 0.5 + 0.2 * (a_1 / d - 4) / 3, "", Head + "Table 8.1", [In.Of(a_1), In.Of(d)]);
        return trace.Step("n_ef", Pow(n, k_ef), "", Head + "(8.17)", [In.Of(n), In.Of(k_ef)]);
    }

    public static readonly Rule YieldMoment = new("en1995_1_1.8_3_1.yield_moment", Document, Edition, Head + "8.3.1.1 (8.14)",
        "Yield moment of a nail or screw", "Nmm", (x, t) => x[2] == 0 ? M_y_Rk(x[0], x[1], t) : M_y_Rk_square(x[0], x[1], t),
        Input.Stress("f_u", 100, 2000), Input.Length("d", 0.5, 24), Parameter.Choice("shape", "round", "square") with { Default = 0 });

    public static readonly Rule Embedment = new("en1995_1_1.8_3_1.embedment", Document, Edition, Head + "8.3.1.1 (8.15)",
        "Embedment strength without pre-drilling", "N/mm²", (x, t) => f_h_k(x[0], x[1], t), Input.Density("rho_k"), Input.Length("d", 0.5, 8));

    public static readonly Rule EmbedmentDrilled = new("en1995_1_1.8_3_1.embedment_drilled", Document, Edition, Head + "8.3.1.1 (8.16)",
        "Embedment strength with pre-drilled holes", "N/mm²", (x, t) => f_h_k_drilled(x[0], x[1], t), Input.Density("rho_k"), Input.Length("d", 0.5, 8));

    public static readonly Rule NailWithdrawalStrength = new("en1995_1_1.8_3_2.withdrawal_strength", Document, Edition, Head + "8.3.2 (8.25)",
        "Withdrawal strength of smooth nails", "N/mm²", (x, t) => f_ax_k(x[0], t), Input.Density("rho_k"));

    public static readonly Rule HeadStrength = new("en1995_1_1.8_3_2.head_strength", Document, Edition, Head + "8.3.2 (8.26)",
        "Pull-through strength of a head", "N/mm²", (x, t) => f_head_k(x[0], t), Input.Density("rho_k"));

    public static readonly Rule Head1 = new("en1995_1_1.8_3_2.head_pull_through", Document, Edition, Head + "8.3.2 (8.24)",
        "Pull-through of one head", "N", (x, t) => F_head(x[0], x[1], t), Input.Density("rho_k"), Input.Length("d_h", 1, 50));

    public static readonly Rule EffectiveNumber = new("en1995_1_1.8_3_1.effective_number", Document, Edition, Head + "8.3.1.1 (8.17)",
        "Effective number in a row along the grain", "",
        (x, t) => InRow(x[0], x[1], x[2], x[3] == 0 ? 7 : 4, t),
        Input.Count("n", 100), Input.Length("a_1", 1, 10000), Input.Length("d", 0.5, 8), Parameter.Choice("hole", "none", "drilled") with { Default = 0 });

    private static RuleResult InRow(double n, double a_1, double d, double least, Trace? trace) =>
        a_1 < least * d ? new NotCovered(Head + "Table 8.1", "too_close", Said.Length(a_1), Said.Length(least * d)) : n_ef(n, a_1, d, trace);

    public static IReadOnlyList<Rule> Rules =>
        [YieldMoment, Embedment, EmbedmentDrilled, NailWithdrawalStrength, HeadStrength, Head1, EffectiveNumber, Section8_3_Spacing.Spacings];
}
