using Pattress.Strength.Standards.EN_1995_1_1_2004;
using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Mechanisms;

/// <summary>
/// Lateral load of a wood screw. Flush with the wood: EN 1995-1-1 8.2.3, steel plate thin, thick or between. Through a board: the
/// clauses know no gap, so the same mechanics (embedment to yield, hinges in the screw) with the shear acting before the wood by the
/// gap; the board is taken to carry nothing and there is no rope effect.
/// </summary>
public static class WoodScrewShear
{
    private const string Mechanics = "EN 1995-1-1 8.2.3 carried over a gap (mechanics)";

    /// <summary>Lateral resistance, N.</summary>
    public static MechanismResult Lateral(WoodScrewInput s, Trace? trace = null)
    {
        if (s.Set == RuleSet.UnitedStates) return UnitedStatesScrew.Lateral(s, trace);
        double depth = Max(s.Thread - s.D, 0);
        if (depth < 4 * s.D) return MechanismResult.None("lateral", new NotCovered("EN 1995-1-1:2004+A1:2008 8.3.1.2", "too_short", Said.Length(depth), Said.Length(4 * s.D)));
        double d = Section8_7.d_ef(s.Root, trace), M_y = Section8_3.M_y_Rk(s.Fu, d, trace), f_h = Section8_3.f_h_k(s.RhoK, d, trace);
        double R_k = s.Gap > 0 ? OverGap(s.Gap, depth, d, f_h, M_y, trace) : Flush(s.Plate, depth, d, f_h, M_y, trace);
        double V = Factors.Value("variation_timber", "V", "", trace), mean = Factors.Mean(R_k, V, trace);
        double design = WoodScrew.Design(R_k, s, trace);
        return s.Gap > 0
            ? new("lateral", design, Basis.Mechanics, Mechanics, mean, V, [new Reason("board_as_gap", Said.Length(s.Gap)), .. WoodScrew.Marks(s)])
            : new("lateral", design, Basis.Rule, Section8_2_3.Interpolated.Clause, mean, V, WoodScrew.Marks(s));
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
}
