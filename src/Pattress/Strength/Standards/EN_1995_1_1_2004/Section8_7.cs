using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.EN_1995_1_1_2004;

/// <summary>EN 1995-1-1:2004+A1:2008, 8.7: screws. Symbols d outer thread diameter, d_1 inner, l_ef length of thread in the wood less one d (mm).</summary>
public static class Section8_7
{
    private const string Document = "EN 1995-1-1", Edition = "2004+A1:2008", Head = "EN 1995-1-1:2004+A1:2008 ";

    /// <summary>8.7.1(2): effective diameter for laterally loaded screws, 1.1 d_root (mm).</summary>
    internal static double d_ef(double d_root, Trace? trace) =>
        trace.Step("d_ef", 1.1 * d_root, "mm", Head + "8.7.1(2)", [In.Of(d_root)]);

    /// <summary>(8.41): effective number of axially loaded screws, n^0.9.</summary>
    internal static double n_ef(double n, Trace? trace) => trace.Step("n_ef", Pow(n, 0.9), "", Head + "(8.41)", [In.Of(n)]);

    /// <summary>(8.39): withdrawal strength square to the grain, N/mm²; d and l_ef in mm, rho_k in kg/m³.</summary>
    internal static double f_ax_k(double d, double l_ef, double rho_k, Trace? trace) => trace.Step(
        "f_ax_k", 0.52 * Pow(d, -0.5) * Pow(l_ef, -0.1) * Pow(rho_k, 0.8), "N/mm²", Head + "(8.39)", [In.Of(d), In.Of(l_ef), In.Of(rho_k)]);

    /// <summary>(8.40): k_d = min(d/8; 1).</summary>
    internal static double k_d(double d, Trace? trace) => trace.Step("k_d", Min(d / 8, 1), "", Head + "(8.40)", [In.Of(d)]);

    /// <summary>
    /// (8.38): withdrawal of n screws, N, in wood of rho_k at alpha to the grain. Valid for 6 ≤ d ≤ 12 mm, 0.6 ≤ d_1/d ≤ 0.75,
    /// alpha ≥ 30° and l_ef ≥ 6 d; outside it the clause gives nothing and asks for tests to EN 14592.
    /// </summary>
    internal static RuleResult F_ax_Rk(double d, double l_ef, double rho_k, double alpha, double n, Trace? trace)
    {
        if (l_ef < 6 * d) return new NotCovered(Head + "8.7.2(2)", "too_short", Said.Length(l_ef), Said.Length(6 * d));
        double number = n_ef(n, trace), strength = f_ax_k(d, l_ef, rho_k, trace), small = k_d(d, trace);
        return Inclined(number, strength, d, l_ef, small, alpha, trace);
    }

    private static double Inclined(double n_ef, double f_ax_k, double d, double l_ef, double k_d, double alpha, Trace? trace) => trace.Step(
        "F_ax_Rk", n_ef * f_ax_k * d * l_ef * k_d / (1.2 * Pow(Cos(alpha * PI / 180), 2) + Pow(Sin(alpha * PI / 180), 2)), "N", Head + "(8.38)",
        [In.Of(n_ef), In.Of(f_ax_k), In.Of(d), In.Of(l_ef), In.Of(k_d), In.Of(alpha)]);

    /// <summary>(8.40b): pull-through of n heads of diameter d_h (mm), N; f_head_k (N/mm²) declared at density rho_a.</summary>
    internal static double F_head_Rk(double f_head_k, double d_h, double rho_k, double rho_a, double n, Trace? trace)
    {
        double n_ef = Section8_7.n_ef(n, trace);
        return trace.Step("F_head_Rk", n_ef * f_head_k * Pow(d_h, 2) * Pow(rho_k / rho_a, 0.8), "N", Head + "(8.40b)",
            [In.Of(n_ef), In.Of(f_head_k), In.Of(d_h), In.Of(rho_k), In.Of(rho_a)]);
    }

    /// <summary>(8.40c): tearing of n screws of tensile capacity f_tens_k (N, declared), N.</summary>
    internal static double F_t_Rk(double f_tens_k, double n, Trace? trace)
    {
        double n_ef = Section8_7.n_ef(n, trace);
        return trace.Step("F_t_Rk", n_ef * f_tens_k, "N", Head + "(8.40c)", [In.Of(n_ef), In.Of(f_tens_k)]);
    }

    /// <summary>8.7.2(1), Table 8.6: least distances of axially loaded screws, mm. End 10 d, edge 4 d.</summary>
    internal static double Spacing(double which, double d, Trace? trace)
    {
        double factor = trace.Step("factor", which == 0 ? 7 : which == 1 ? 5 : which == 2 ? 10 : 4, "", Head + "Table 8.6", [In.Of(which)]);
        return trace.Step("a", factor * d, "mm", Head + "Table 8.6", [In.Of(factor), In.Of(d)]);
    }

    public static readonly Rule Withdrawal = new("en1995_1_1.8_7_2.withdrawal", Document, Edition, Head + "8.7.2 (8.38)",
        "Withdrawal of screws of 6 to 12 mm", "N", (x, t) => F_ax_Rk(x[0], x[1], x[2], x[3], x[4], t),
        Input.Length("d", 6, 12), Input.Length("l_ef", 1, 1000), Input.Density("rho_k"), Input.Angle("alpha", 30, 90, 90), Input.Count("n", 100, 1),
        Input.Number("d1_d", 0.6, 0.75, 0.7));

    public static readonly Rule WithdrawalStrength = new("en1995_1_1.8_7_2.withdrawal_strength", Document, Edition, Head + "8.7.2 (8.39)",
        "Withdrawal strength of screws of 6 to 12 mm", "N/mm²", (x, t) => f_ax_k(x[0], x[1], x[2], t),
        Input.Length("d", 6, 12), Input.Length("l_ef", 1, 1000), Input.Density("rho_k"));

    public static readonly Rule EffectiveNumber = new("en1995_1_1.8_7_2.effective_number", Document, Edition, Head + "8.7.2 (8.41)",
        "Effective number of axially loaded screws", "", (x, t) => n_ef(x[0], t), Input.Count("n", 100));

    public static readonly Rule HeadPullThrough = new("en1995_1_1.8_7_2.head_pull_through", Document, Edition, Head + "8.7.2 (8.40b)",
        "Pull-through of screw heads", "N", (x, t) => F_head_Rk(x[0], x[1], x[2], x[3], x[4], t),
        Input.Stress("f_head_k", 0.1, 200), Input.Length("d_h", 1, 50), Input.Density("rho_k"), Input.Density("rho_a", or: 350), Input.Count("n", 100, 1));

    public static readonly Rule EffectiveDiameter = new("en1995_1_1.8_7_1.effective_diameter", Document, Edition, Head + "8.7.1(2)",
        "Effective diameter of a screw under lateral load", "mm", (x, t) => d_ef(x[0], t), Input.Length("d_root", 0.5, 24));

    public static readonly Rule Spacings = new("en1995_1_1.8_7_2.spacing", Document, Edition, Head + "8.7.2 Table 8.6",
        "Least distances of axially loaded screws", "mm", (x, t) => Spacing(x[0], x[1], t),
        Parameter.Choice("which", "a_1", "a_2", "a_1_CG", "a_2_CG"), Input.Length("d", 0.5, 24));

    public static readonly Rule Tension = new("en1995_1_1.8_7_2.tension", Document, Edition, Head + "8.7.2 (8.40c)", "Tearing of screws", "N",
        (x, t) => F_t_Rk(x[0], x[1], t), Input.Force("f_tens_k", 1, 1e6), Input.Count("n", 100, 1));

    public static IReadOnlyList<Rule> Rules => [Withdrawal, WithdrawalStrength, EffectiveNumber, HeadPullThrough, Tension, EffectiveDiameter, Spacings];
}
