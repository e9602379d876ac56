using Pattress.Strength.Plates;
using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Mechanisms;

/// <summary>
/// Board between its supports. No code covers fixings in plasterboard: this is mechanics on the boards' least values (EN 520,
/// ASTM C1396) with a stated model error, and gives way to trials wherever there are any. Damp, edge and spacing weaken the board itself
/// and so its mean; duration and the partial factor are the margin. Under a short load mean over permitted is 1.2 · 2.5 · 1.5 = 4.5.
/// </summary>
public static class Board
{
    /// <summary>All ways in which board and fixing fail under a pull.</summary>
    public static IReadOnlyList<MechanismResult> InTension(BoardInput b, Trace? trace = null)
    {
        var results = new List<MechanismResult> { b.Bearing > b.Shank ? Punching(b, trace) : ThreadShear(b, trace) };
        if (b.Span > 0) results.Add(BoardBending.Flexure(b, trace));
        results.Add(BoardOwnSupports.Leaving(b, trace));
        return results;
    }

    /// <summary>All ways in which board fails under a load along the wall.</summary>
    public static IReadOnlyList<MechanismResult> InShear(BoardInput b, Trace? trace = null) => [Bearing(b, trace)];

    /// <summary>
    /// The bearing width pulled through the board on a cone of 45°: mean perimeter π(D + t) by t, with the shear stress at which the
    /// least nail-pull load of ASTM C1396 shears the same cone. Fixings closer than D + 2t share one perimeter.
    /// </summary>
    public static MechanismResult Punching(BoardInput b, Trace? trace = null)
    {
        double t = b.Thickness, D = b.Bearing, tau_k = BoardStrength.Shear(t, trace);
        double A_p = Circle.PunchingArea(D, t, trace), k_spacing = Share(b, trace);
        double R_k = trace.Step("R_k", tau_k * A_p * k_spacing, "N", "mechanics: punching", [In.Of(tau_k), In.Of(A_p), In.Of(k_spacing)]);
        return Finish("board_punching", R_k, b, trace, BoardModelError.Punching.V);
    }

    /// <summary>A plug that cuts its own thread and has nothing behind the board: shear of the core on its cylinder.</summary>
    public static MechanismResult ThreadShear(BoardInput b, Trace? trace = null)
    {
        double A_c = Circle.CylinderArea(b.Shank, b.Thickness, trace), tau_k = Factors.Value("self_drive_thread_mpa", "tau_k", "N/mm²", trace), k_spacing = Share(b, trace);
        double R_k = trace.Step("R_k", tau_k * A_c * k_spacing, "N", "mechanics: thread shear", [In.Of(tau_k), In.Of(A_c), In.Of(k_spacing)]);
        return Finish("board_thread", R_k, b, trace);
    }

    /// <summary>Crushing under the shank.</summary>
    public static MechanismResult Bearing(BoardInput b, Trace? trace = null)
    {
        double f_b_k = Factors.Value("board_embedment_mpa", "f_b_k", "N/mm²", trace), d = b.Shank, t = b.Thickness;
        return Finish("board_bearing", trace.Step("R_k", f_b_k * d * t, "N", "mechanics: bearing", [In.Of(f_b_k), In.Of(d), In.Of(t)]), b, trace);
    }

    /// <summary>Pressure that the board takes under a bracket's toe, N/mm², in place of N; a strip under the toe spreads it.</summary>
    public static MechanismResult Toe(Dampness damp, Duration duration, Trace? trace = null)
    {
        double p_k = Factors.Value("board_toe_mpa", "p_k", "N/mm²", trace), k_damp = Factors.OnDamp(damp, trace), k_duration = Factors.OnDuration(duration, trace);
        double gamma_M = Factors.Value("toe_gamma_m", "gamma_M", "", trace);
        double p_d = trace.Step("p_d", p_k * k_damp * k_duration / gamma_M, "N/mm²", "mechanics: toe", [In.Of(p_k), In.Of(k_damp), In.Of(k_duration), In.Of(gamma_M)]);
        double V = Factors.Value("variation_toe", "V", "", trace);
        return new("toe", p_d, Basis.Assumed, "assumed", p_k * k_damp * Exp(1.645 * V), V);
    }

    /// <summary>What a fixing keeps of its own perimeter among neighbours in a row.</summary>
    internal static double Share(BoardInput b, Trace? trace)
    {
        double n = b.Group, s = b.Spacing, D = b.Bearing, t = b.Thickness;
        if (b.Group <= 1 || s >= D + 2 * t) return trace.LookUp("k_spacing", 1, "", "no neighbour within D + 2t");
        return trace.Step("k_spacing", Min((PI * (D + t) + 2 * (n - 1) * s) / (n * PI * (D + t)), 1), "", "mechanics: one perimeter round the group", [In.Of(D), In.Of(t), In.Of(n), In.Of(s)]);
    }

    internal static double EdgeFactor(BoardInput b, Trace? trace)
    {
        double c = b.Edge, c_full = Factors.Value("board_edge_full_mm", "c_full", "mm", trace), k_least = Factors.Value("board_edge_least", "k_least", "", trace);
        return trace.Step("k_edge", Min(k_least + (1 - k_least) * c / c_full, 1), "", "mechanics: edge or joint of the board", [In.Of(c), In.Of(c_full), In.Of(k_least)]);
    }

    /// <param name="V_theta">What the standards' least loads show of the model's own error; 0 where none are printed.</param>
    internal static MechanismResult Finish(string mechanism, double R_k, BoardInput b, Trace? trace, double V_theta = 0)
    {
        double k_damp = Factors.OnDamp(b.Damp, trace), k_edge = EdgeFactor(b, trace), k_duration = Factors.OnDuration(b.Duration, trace);
        double gamma_M = Factors.Value("board_gamma_m", "gamma_M", "", trace), k_mean = Factors.Value("board_mean_over_minimum", "k_mean", "", trace);
        double R_mean = trace.Step("R_mean", k_mean * R_k * k_damp * k_edge, "N", "mechanics: boards above their least values", [In.Of(k_mean), In.Of(R_k), In.Of(k_damp), In.Of(k_edge)]);
        double R_d = trace.Step("R_d", R_k * k_damp * k_edge * k_duration / gamma_M, "N", "mechanics with a model error in gamma_M", [In.Of(R_k), In.Of(k_damp), In.Of(k_edge), In.Of(k_duration), In.Of(gamma_M)]);
        return new(mechanism, R_d, Basis.Mechanics, "mechanics on the least values of EN 520 and ASTM C1396", R_mean, Variation(V_theta, trace));
    }

    // Boards, damp, hands and model together are assumed; what is known of the model alone is the least they can be.
    private static double Variation(double V_theta, Trace? trace)
    {
        if (V_theta == 0) return Factors.Value("variation_board", "V", "", trace);
        double V_0 = Factors.Value("variation_board", "V_0", "", trace);
        trace.LookUp("V_theta", V_theta, "", "model error on the least loads of ASTM C1396 and EN 520");
        return trace.Step("V", Max(V_0, V_theta), "", "mechanics: model error as a lognormal", [In.Of(V_0), In.Of(V_theta)]);
    }
}
