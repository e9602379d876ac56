using Pattress.Working;
using static System.Math;

namespace Pattress.Planning.Resisting;

/// <summary>
/// A sleeved through-fixing over a dab gap. The sleeve keeps the board from being drawn back and does not remove the lever arm:
/// shear bends the core across board and gap, EN 1992-4 7.2.2.3.2, arm to the masonry's face plus an allowance for crushed
/// brick. The clause is for concrete; in masonry it is used by analogy and the pull rests on assumed values.
/// </summary>
internal static class ThroughGap
{
    private const string Arm = "EN 1992-4:2018 7.2.2.3.2 (by analogy in masonry)";

    public static FixingCarries Carries(Asked a, Trace? trace)
    {
        var pull = InMasonry.Pull(a, trace);
        double d = a.Size.ScrewMm, fuk = Named.Value("fuk_core"), e1 = a.Spot.MasonryAt.Mean, a3 = Named.Value("crushed_brick") + 0.5 * d;
        double l_a = trace.Step("l_a", a3 + e1, "mm", Arm, [In.Of(a3), In.Of(e1)]);
        double W_el = trace.Step("W_el", PI * Pow(0.89 * d, 3) / 32, "mm³", Arm, [In.Of(d)]);
        double M0_Rk_s = trace.Step("M0_Rk_s", 1.2 * W_el * fuk, "Nmm", Arm, [In.Of(W_el), In.Of(fuk)]);
        double V_Rk_s_M = trace.Step("V_Rk_s_M", M0_Rk_s / l_a, "N", Arm + ", α_M = 1", [In.Of(M0_Rk_s), In.Of(l_a)]);
        double gamma_Ms = Named.Value("gamma_m2");
        var shear = new Carries(trace.Step("V_Rd", V_Rk_s_M / gamma_Ms, "N", "EN 1992-4:2018 Table 4.1", [In.Of(V_Rk_s_M), In.Of(gamma_Ms)]),
            V_Rk_s_M / Factors.CharacteristicOverMean(0.1), 0.15, "lever_arm", "rule");
        return new(pull, shear, 1, InBoard.Toe(a, trace), null);
    }
}
