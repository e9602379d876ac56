using Pattress.Strength.Standards.ASTM_C1396_2017;
using Pattress.Strength.Standards.EN_520_2004;
using Pattress.Strength.Plates;
using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Mechanisms;

/// <summary>Least strengths of board by thickness, from the standards' least loads.</summary>
internal static class BoardStrength
{
    private static readonly double[] T = [9.525, 12.7, 15.875];
    private static readonly double[] Along = [.. Enumerable.Range(0, 3).Select(i => Section5.m(Section5.Flexure(i, 0, null), null))];
    private static readonly double[] Across = [.. Enumerable.Range(0, 3).Select(i => Section5.m(Section5.Flexure(i, 1, null), null))];
    private static readonly double[] Pulls = [Section5.NailPull(0, null), Section5.NailPull(1, null), Section5.NailPull(2, null)];

    /// <summary>Shear stress on the cone of 45° under the test's head, N/mm².</summary>
    internal static double Shear(double t, Trace? trace)
    {
        double F = NailPull(t, trace), D = Factors.Value("board_head_mm", "D", "mm", trace);
        double A_p = Circle.PunchingArea(D, t, trace);
        return trace.Step("tau_k", F / A_p, "N/mm²", "mechanics: cone of the nail-pull test", [In.Of(F), In.Of(A_p)]);
    }

    // Between the printed thicknesses of ASTM C1396 straight; beyond them with the square of the thickness.
    private static double AmericanMoment(bool along, double t_layer, int layers, Trace? trace)
    {
        double[] moments = along ? Along : Across;
        int i = t_layer < T[1] ? 0 : 1;
        double t_0 = T[i], t_1 = T[i + 1], m_0 = moments[i], m_1 = moments[i + 1], n = layers;
        string symbol = along ? "m_along" : "m_across";
        if (t_layer < t_0) return trace.Step(symbol, n * m_0 * Pow(t_layer / t_0, 2), "N", "ASTM C1396/C473 method B, by the square", [In.Of(n), In.Of(m_0), In.Of(t_layer), In.Of(t_0)]);
        if (t_layer > t_1) return trace.Step(symbol, n * m_1 * Pow(t_layer / t_1, 2), "N", "ASTM C1396/C473 method B, by the square", [In.Of(n), In.Of(m_1), In.Of(t_layer), In.Of(t_1)]);
        return trace.Step(symbol, n * (m_0 + (m_1 - m_0) * (t_layer - t_0) / (t_1 - t_0)), "N", "ASTM C1396/C473 method B, interpolated", [In.Of(n), In.Of(m_0), In.Of(m_1), In.Of(t_layer), In.Of(t_0), In.Of(t_1)]);
    }

    /// <summary>Least nail-pull load between the printed thicknesses, N; beyond them on the last line, below them in proportion.</summary>
    internal static double NailPull(double t, Trace? trace)
    {
        int i = t < T[1] ? 0 : 1;
        double t_0 = T[i], t_1 = T[i + 1], F_0 = Pulls[i], F_1 = Pulls[i + 1];
        if (t < T[0]) return trace.Step("F", F_0 * t / t_0, "N", "ASTM C1396/C473, in proportion", [In.Of(F_0), In.Of(t), In.Of(t_0)]);
        return trace.Step("F", F_0 + (F_1 - F_0) * (t - t_0) / (t_1 - t_0), "N", "ASTM C1396/C473, interpolated", [In.Of(F_0), In.Of(F_1), In.Of(t), In.Of(t_0), In.Of(t_1)]);
    }

    /// <summary>Plastic moment for each mm of width, N, across (weak) or along the board, of all layers together.</summary>
    internal static double Moment(RuleSet set, bool along, double t_layer, int layers, Trace? trace)
    {
        if (set == RuleSet.UnitedStates) return AmericanMoment(along, t_layer, layers, trace);
        double f_m = Table4.Mor(along ? 0 : 1, Max(t_layer, 6), trace), n = layers;
        return trace.Step(along ? "m_along" : "m_across", n * f_m * Pow(t_layer, 2) / 6, "N", "statics", [In.Of(n), In.Of(f_m), In.Of(t_layer)]);
    }
}
