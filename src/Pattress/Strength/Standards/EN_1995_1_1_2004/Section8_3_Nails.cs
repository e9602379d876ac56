using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.EN_1995_1_1_2004;

/// <summary>
/// EN 1995-1-1:2004+A1:2008, 8.3.1.2, 8.3.2 and 8.3.3: how thick the wood must be for a nail without a drilled hole, what a nail holds
/// along its axis, and both loads at once. Lengths in mm, forces in N. From memory and a public program: no document seen.
/// Smooth nails carry no lasting load along their axis (8.3.2(1)).
/// </summary>
public static class Section8_3_Nails
{
    private const string Document = "EN 1995-1-1", Edition = "2004+A1:2008", Head = "EN 1995-1-1:2004+A1:2008 ";

    /// <summary>(8.18), (8.19): least thickness of a timber that is not drilled for; twice as much where the wood splits easily.</summary>
    internal static double t_least(double d, double rho_k, double splits, Trace? trace)
    {
        double t = trace.Step("t", Max(7 * d, (13 * d - 30) * rho_k / 400), "mm", Head + "(8.18)", [In.Of(d), In.Of(rho_k)]);
        return splits == 0 ? t : trace.Step("t_split", 2 * t, "mm", Head + "(8.19)", [In.Of(t)]);
    }

    /// <summary>(8.24): smooth nail driven across the grain, t_pen in the member of the point, t in that of the head; by 8.3.2(7) less than 12 d counts less, under 8 d nothing.</summary>
    internal static RuleResult Smooth(double d, double t_pen, double t, double d_h, double rho_k, double head, Trace? trace)
    {
        if (t_pen < 8 * d) return new NotCovered(Head + "8.3.2(7)", "too_short", Said.Length(t_pen), Said.Length(8 * d));
        double f_ax_k = Section8_3.f_ax_k(rho_k, trace);
        double k_pen = trace.Step("k_pen", Min(t_pen / (4 * d) - 2, 1), "", Head + "8.3.2(7)", [In.Of(t_pen), In.Of(d)]);
        double F_point = trace.Step("F_point", k_pen * f_ax_k * d * t_pen, "N", Head + "(8.24) a", [In.Of(k_pen), In.Of(f_ax_k), In.Of(d), In.Of(t_pen)]);
        if (head == 1) return F_point;
        double F_head = Section8_3.F_head(rho_k, d_h, trace);
        double F_top = trace.Step("F_top", f_ax_k * d * t + F_head, "N", Head + "(8.24) b", [In.Of(f_ax_k), In.Of(d), In.Of(t), In.Of(F_head)]);
        return trace.Step("F_ax_Rk", Min(F_point, F_top), "N", Head + "(8.24)", [In.Of(F_point), In.Of(F_top)]);
    }

    /// <summary>(8.23): any other nail by its declared parameters (N/mm²); by 8.3.2(7) less than 8 d counts less, under 6 d nothing.</summary>
    internal static RuleResult Threaded(double f_ax_k, double f_head_k, double d, double t_pen, double d_h, Trace? trace)
    {
        if (t_pen < 6 * d) return new NotCovered(Head + "8.3.2(7)", "too_short", Said.Length(t_pen), Said.Length(6 * d));
        double k_pen = trace.Step("k_pen", Min(t_pen / (2 * d) - 3, 1), "", Head + "8.3.2(7)", [In.Of(t_pen), In.Of(d)]);
        double F_point = trace.Step("F_point", k_pen * f_ax_k * d * t_pen, "N", Head + "(8.23) a", [In.Of(k_pen), In.Of(f_ax_k), In.Of(d), In.Of(t_pen)]);
        double F_head = trace.Step("F_head", f_head_k * Pow(d_h, 2), "N", Head + "(8.23) b", [In.Of(f_head_k), In.Of(d_h)]);
        return trace.Step("F_ax_Rk", Min(F_point, F_head), "N", Head + "(8.23)", [In.Of(F_point), In.Of(F_head)]);
    }

    /// <summary>(8.27) smooth nails, linear; (8.28) other nails and, by 8.7.3, screws, squares. At most 1.</summary>
    internal static double Together(double F_ax_Ed, double F_ax_Rd, double F_v_Ed, double F_v_Rd, double fastener, Trace? trace)
    {
        double beta_ax = trace.Step("beta_ax", F_ax_Ed / F_ax_Rd, "", Head + "8.3.3", [In.Of(F_ax_Ed), In.Of(F_ax_Rd)]);
        double beta_v = trace.Step("beta_v", F_v_Ed / F_v_Rd, "", Head + "8.3.3", [In.Of(F_v_Ed), In.Of(F_v_Rd)]);
        return fastener == 1
            ? trace.Step("utilisation", beta_ax + beta_v, "", Head + "(8.27)", [In.Of(beta_ax), In.Of(beta_v)])
            : trace.Step("utilisation", Pow(beta_ax, 2) + Pow(beta_v, 2), "", Head + "(8.28)", [In.Of(beta_ax), In.Of(beta_v)]);
    }

    public static readonly Rule LeastThickness = new("en1995_1_1.8_3_1.least_thickness", Document, Edition, Head + "8.3.1.2 (8.18), (8.19)", "Least thickness of timber without drilled holes", "mm",
        (x, t) => t_least(x[0], x[1], x[2], t), Input.Length("d", 0.5, 6), Input.Density("rho_k", 100, 500), Parameter.Choice("splits", "no", "yes") with { Default = 0 });

    public static readonly Rule SmoothWithdrawal = new("en1995_1_1.8_3_2.nail_withdrawal", Document, Edition, Head + "8.3.2 (8.24)", "Smooth nail along its axis", "N",
        (x, t) => Smooth(x[0], x[1], x[2], x[3], x[4], x[5], t),
        Input.Length("d", 0.5, 8), Input.Length("t_pen", 1, 500), Input.Length("t", 0, 500), Input.Length("d_h", 1, 50), Input.Density("rho_k"), Parameter.Choice("head", "timber", "steel") with { Default = 0 });

    public static readonly Rule ThreadedWithdrawal = new("en1995_1_1.8_3_2.threaded_nail_withdrawal", Document, Edition, Head + "8.3.2 (8.23)", "Threaded nail along its axis by its declared parameters", "N",
        (x, t) => Threaded(x[0], x[1], x[2], x[3], x[4], t),
        Input.Stress("f_ax_k", 0.1, 100), Input.Stress("f_head_k", 0.1, 200), Input.Length("d", 0.5, 8), Input.Length("t_pen", 1, 500), Input.Length("d_h", 1, 50));

    public static readonly Rule Combined = new("en1995_1_1.8_3_3.combined", Document, Edition, Head + "8.3.3 (8.27), (8.28)", "Axial and lateral load at once, utilisation", "",
        (x, t) => Together(x[0], x[1], x[2], x[3], x[4], t),
        Input.Force("F_ax_Ed"), Input.Force("F_ax_Rd", 1e-3), Input.Force("F_v_Ed"), Input.Force("F_v_Rd", 1e-3), Parameter.Choice("fastener", "screw", "smooth_nail", "other_nail") with { Default = 0 });

    public static IReadOnlyList<Rule> Rules => [LeastThickness, SmoothWithdrawal, ThreadedWithdrawal, Combined];
}
