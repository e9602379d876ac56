using Pattress.Strength.Standards.EN_1995_1_1_2004;
using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Mechanisms;

/// <summary>
/// Lateral load of a wood screw. Flush with the wood: EN 1995-1-1 8.2.3, steel plate thin, thick or between. Through a board: the
/// clauses know no layer between, so their mechanics (embedment to yield, hinges in the screw) with the shear acting before the wood by
/// the board's thickness; a thin plate, no rope effect. The board, itself held by its own fixings, bears on the screw with its embedment
/// strength, or it counts as a gap that carries nothing: both are states of balance, so the greater load holds (static theorem of plasticity).
/// </summary>
public static class WoodScrewShear
{
    private const string Mechanics = "EN 1995-1-1 8.2.3 carried over a board (mechanics)";

    /// <summary>Lateral resistance, N.</summary>
    public static MechanismResult Lateral(WoodScrewInput s, Trace? trace = null)
    {
        if (s.Set == RuleSet.UnitedStates) return UnitedStatesScrew.Lateral(s, trace);
        double depth = Max(s.Thread - s.D, 0);
        if (depth < 4 * s.D) return MechanismResult.None("lateral", new NotCovered("EN 1995-1-1:2004+A1:2008 8.3.1.2", "too_short", Said.Length(depth), Said.Length(4 * s.D)));
        double d = Section8_7.d_ef(s.Root, trace), M_y = Section8_3.M_y_Rk(s.Fu, d, trace), f_h = Section8_3.f_h_k(s.RhoK, d, trace);
        if (s.Gap > 0) return ThroughBoard(s, depth, d, f_h, M_y, trace);
        double R_k = Flush(s.Plate, depth, d, f_h, M_y, trace);
        return Result(Basis.Rule, Section8_2_3.Interpolated.Clause, R_k, WoodScrew.Design(R_k, s, trace), WoodScrew.Marks(s), trace);
    }

    private static MechanismResult ThroughBoard(WoodScrewInput s, double depth, double d, double f_h, double M_y, Trace? trace)
    {
        double R_gap = OverGap(s.Gap, depth, d, f_h, M_y, trace), D_gap = WoodScrew.Design(R_gap, s, trace);
        if (!s.BoardBears) return Result(Basis.Mechanics, Mechanics, R_gap, D_gap, [new Reason("board_as_gap", Said.Length(s.Gap)), .. WoodScrew.Marks(s)], trace);
        double f_b_k = Factors.Value("board_embedment_mpa", "f_b_k", "N/mm²", trace), k_damp = Factors.OnDamp(s.Damp, trace);
        double f_b = trace.Step("f_b", f_b_k * k_damp, "N/mm²", "mechanics: bearing of the board", [In.Of(f_b_k), In.Of(k_damp)]);
        double R_board = OverBoard(s.Gap, depth, d, f_b, f_h, M_y, trace), D_board = TwoMaterials(R_board, s, trace);
        bool bears = D_board > D_gap;
        double R_d = trace.Step("R_d", Max(D_gap, D_board), "N", "static theorem of plasticity: the better state of balance", [In.Of(D_gap), In.Of(D_board)]);
        return Result(Basis.Mechanics, Mechanics, bears ? R_board : R_gap, R_d, [new Reason(bears ? "board_bears" : "board_as_gap", Said.Length(s.Gap)), .. WoodScrew.Marks(s)], trace);
    }

    private static MechanismResult Result(Basis basis, string clause, double R_k, double design, IReadOnlyList<Reason> marks, Trace? trace)
    {
        double V = Factors.Value("variation_timber", "V", "", trace);
        return new("lateral", design, basis, clause, Factors.Mean(R_k, V, trace), V, marks);
    }

    // Two materials that last differently: the geometric mean of their factors.
    private static double TwoMaterials(double R_k, WoodScrewInput s, Trace? trace)
    {
        double k_mod_1 = Section2and3.k_mod((int)s.Duration, s.ServiceClass, trace), k_mod_2 = Factors.OnDuration(s.Duration, trace);
        double k_mod = trace.Step("k_mod", Sqrt(k_mod_1 * k_mod_2), "", "EN 1995-1-1:2004+A1:2008 2.3.2.1(2) (2.6)", [In.Of(k_mod_1), In.Of(k_mod_2)]);
        return Section2and3.R_d(R_k, k_mod, Section2and3.gamma_M(1, trace), trace);
    }

    // Without withdrawal to lean on, the rope effect is left out.
    private static double Flush(double t, double t_1, double d, double f_h, double M_y, Trace? trace)
    {
        double F_thin = Section8_2_3.Thin(t_1, d, f_h, M_y, 0, 1, trace), F_thick = Section8_2_3.Thick(t_1, d, f_h, M_y, 0, 1, trace);
        return Section8_2_3.Between(t, d, F_thin, F_thick, trace);
    }

    /// <summary>The lesser of the stiff screw turning in the wood and one hinge in it, with the shear at g before the wood, N.</summary>
    internal static double OverGap(double g, double t_1, double d, double f_h, double M_y, Trace? trace)
    {
        double x = trace.Step("x", Sqrt(Pow(g, 2) + Pow(t_1, 2) / 2 + g * t_1) - g, "mm", Mechanics, [In.Of(g), In.Of(t_1)]);
        double F_turn = trace.Step("F_turn", f_h * d * (2 * x - t_1), "N", Mechanics, [In.Of(f_h), In.Of(d), In.Of(x), In.Of(t_1)]);
        double F_hinge = trace.Step("F_hinge", f_h * d * (Sqrt(Pow(g, 2) + 2 * M_y / (f_h * d)) - g), "N", Mechanics, [In.Of(f_h), In.Of(d), In.Of(g), In.Of(M_y)]);
        return trace.Step("F_v_k", Min(F_turn, F_hinge), "N", Mechanics, [In.Of(F_turn), In.Of(F_hinge)]);
    }

    /// <summary>
    /// The same with the board bearing on the screw at f_b over its whole thickness g, N. Turning: the reaction of the wood changes its
    /// side at x; one hinge at x in the wood or, where the board alone can carry the shear to it, in the board.
    /// </summary>
    internal static double OverBoard(double g, double t_1, double d, double f_b, double f_h, double M_y, Trace? trace)
    {
        double x_turn = trace.Step("x_turn", Sqrt(Pow(g, 2) * (1 - f_b / f_h / 2) + Pow(t_1, 2) / 2 + g * t_1) - g, "mm", Mechanics, [In.Of(g), In.Of(t_1), In.Of(f_b), In.Of(f_h)]);
        double F_turn = trace.Step("F_turn", f_b * d * g + f_h * d * (2 * x_turn - t_1), "N", Mechanics, [In.Of(f_b), In.Of(f_h), In.Of(d), In.Of(g), In.Of(x_turn), In.Of(t_1)]);
        double x_hinge = trace.Step("x_hinge", Sqrt(Max(Pow(g, 2) * (1 - f_b / f_h) + 2 * M_y / (f_h * d), 0)) - g, "mm", Mechanics, [In.Of(g), In.Of(f_b), In.Of(f_h), In.Of(M_y), In.Of(d)]);
        double F_hinge = trace.Step("F_hinge", x_hinge > 0 ? f_b * d * g + f_h * d * x_hinge : Sqrt(2 * M_y * f_b * d), "N", Mechanics, [In.Of(x_hinge), In.Of(f_b), In.Of(f_h), In.Of(d), In.Of(g), In.Of(M_y)]);
        return trace.Step("F_v_k", Min(F_turn, F_hinge), "N", Mechanics, [In.Of(F_turn), In.Of(F_hinge)]);
    }
}
