using Pattress.Strength.Plates;
using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Mechanisms;

/// <summary>
/// A pull on board between two studs. First crack: the endless strip under a patch (Timoshenko, Westergaard) with the least bending
/// strength in its weak direction unless the board's is known. Collapse: yield lines in all directions, 2π√(m_across m_along), whatever
/// the direction. Paper-faced board is neither brittle nor ductile, so an assumed share of the reserve between the two is counted.
/// </summary>
public static class BoardBending
{
    /// <summary>Flexure between supports, N.</summary>
    public static MechanismResult Flexure(BoardInput b, Trace? trace = null)
    {
        double t_layer = b.Thickness / Max(b.Layers, 1);
        double m_across = BoardStrength.Moment(b.Set, false, t_layer, b.Layers, trace), m_along = BoardStrength.Moment(b.Set, true, t_layer, b.Layers, trace);
        double m_known = b.Direction == BendingDirection.Along ? m_along : m_across;
        double P_crack = FirstCrack(b, m_known, trace);
        double P_yield = trace.Step("P_yield", 2 * PI * Sqrt(m_across * m_along), "N", "mechanics: yield lines", [In.Of(m_across), In.Of(m_along)]);
        double k_reserve = Factors.Value("board_reserve", "k_reserve", "", trace);
        double n = b.Group > 1 && b.Spacing < b.Span ? b.Group : 1;
        double P_bay = trace.Step("P_bay", P_crack >= P_yield ? P_yield : P_crack + k_reserve * (P_yield - P_crack), "N", "mechanics: flexure between supports",
            [In.Of(P_crack), In.Of(P_yield), In.Of(k_reserve)]);
        double R_k = trace.Step("R_k", P_bay / n, "N", "mechanics: flexure between supports, shared by n fixings in the bay", [In.Of(P_bay), In.Of(n)]);
        double layers = b.Layers;
        if (b.Layers > 1) trace.Step("R_k_glued", R_k * layers, "N", "mechanics: layers glued to one board, the upper end; not counted", [In.Of(R_k), In.Of(layers)]);
        return Board.Finish("board_flexure", R_k, b, trace, BoardModelError.Flexure.V);
    }

    /// <summary>Pull at which the peak moment under the patch reaches m, N.</summary>
    internal static double FirstCrack(BoardInput b, double m, Trace? trace)
    {
        double a = b.Span, t = b.Thickness, c_0 = Max(b.Bearing, b.Shank) / 2;
        // Westergaard's radius jumps down by 2 % at c = t/2; held level there, so that a wider bearing never holds less.
        double c = trace.Step("c", c_0 < 0.5 * t ? Sqrt(1.6 * Pow(c_0, 2) + Pow(t, 2)) - 0.675 * t : Max(c_0, 0.508216 * t), "mm", "Westergaard", [In.Of(c_0), In.Of(t)]);
        double xi = Clear(b.FromSupport ?? a / 2, a, c);
        double nu = Factors.Value("board_nu", "nu", "", trace);
        double M_1 = Strip.M_x(1, a, c, xi, nu, 0, trace);
        return trace.Step("P_crack", m / Max(M_1, 0.05), "N", "mechanics: first crack", [In.Of(m), In.Of(M_1)]);
    }

    // The formula wants a patch clear of the support; nearer than that the board does not bend but shears.
    private static double Clear(double xi, double a, double c) => Min(Max(Min(xi, a - xi), Min(c, a / 2)), a / 2);
}
