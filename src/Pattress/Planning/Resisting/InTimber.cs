using Pattress.Actions;
using Pattress.Working;
using static System.Math;

namespace Pattress.Planning.Resisting;

/// <summary>
/// A wood screw through the face into timber. Withdrawal by EN 1995-1-1 8.7.2 from 6 mm, below that by the second-generation
/// rule, since 8.7.2 does not cover it; lateral by the yielding screw of 8.2.3 with the face as a gap that bears nothing.
/// The edge distance of 4d is not met in a 38 mm stud: a marked departure.
/// </summary>
internal static class InTimber
{
    private const string Old = "EN 1995-1-1:2004+A1:2008 8.7.2 (8.38), (8.40a)", New = "prEN 1995-1-1:2023 11.2.2.3",
        Design = "EN 1995-1-1:2004 (2.17)", Lateral = "EN 1995-1-1:2004 8.2.3, one hinge, with a gap that bears nothing";

    private static readonly double[] KMod = [0.60, 0.70, 0.80, 0.90, 1.10], KModOut = [0.50, 0.55, 0.65, 0.70, 0.90];

    public static FixingCarries Carries(Asked a, Trace? trace)
    {
        double cov = Named.Value("timber_cov");
        var pull = Designed(a, Withdrawal(a, trace), cov, "withdrawal", "T", trace);
        var shear = Designed(a, Yielding(a, trace), cov, "lateral", "V", trace);
        return new(pull, shear, 2, InBoard.Toe(a, trace), null);
    }

    private static double Withdrawal(Asked a, Trace? trace)
    {
        double d = a.Size.ScrewMm, l_ef = Embedded(a), rho_k = Named.Value("rho_k");
        if (d < 6 || l_ef < 6 * d)
        {
            double f_w_k = trace.Step("f_w_k", 20 * Pow(rho_k / 350, 0.8) * Pow(d, -0.2), "N/mm²", New, [In.Of(rho_k), In.Of(d)]);
            return trace.Step("F_w_k", f_w_k * d * l_ef, "N", New, [In.Of(f_w_k), In.Of(d), In.Of(l_ef)]);
        }
        double k_d = trace.Step("k_d", Min(d / 8, 1), "", Old, [In.Of(d)]);
        double f_ax_k = trace.Step("f_ax_k", 0.52 * Pow(d, -0.5) * Pow(l_ef, -0.1) * Pow(rho_k, 0.8), "N/mm²", Old, [In.Of(d), In.Of(l_ef), In.Of(rho_k)]);
        return trace.Step("F_ax_k", f_ax_k * d * l_ef * k_d, "N", Old, [In.Of(f_ax_k), In.Of(d), In.Of(l_ef), In.Of(k_d)]);
    }

    private static double Yielding(Asked a, Trace? trace)
    {
        double d = a.Size.ScrewMm, rho_k = Named.Value("rho_k"), f_u = Named.Value("screw_fu"), root = Named.Value("root_over_nominal"), g = a.Spot.Face.Mean;
        double d_ef = trace.Step("d_ef", 1.1 * root * d, "mm", "EN 1995-1-1:2004 8.7.1", [In.Of(root), In.Of(d)]);
        double M_y = trace.Step("M_y", 0.3 * f_u * Pow(d_ef, 2.6), "Nmm", "EN 1995-1-1:2004 (8.14)", [In.Of(f_u), In.Of(d_ef)]);
        double f_h = trace.Step("f_h", 0.082 * rho_k * Pow(d_ef, -0.3), "N/mm²", "EN 1995-1-1:2004 (8.15)", [In.Of(rho_k), In.Of(d_ef)]);
        return trace.Step("F_v_k", f_h * d_ef * (Sqrt(g * g + 2 * M_y / (f_h * d_ef)) - g), "N", Lateral, [In.Of(f_h), In.Of(d_ef), In.Of(g), In.Of(M_y)]);
    }

    private static Carries Designed(Asked a, double F_k, double cov, string mechanism, string symbol, Trace? trace)
    {
        double k_mod = (a.ServiceClass == 3 ? KModOut : KMod)[(int)a.Duration], gamma_M = Named.Value("gamma_m_timber");
        double design = trace.Step(symbol + "_Rd", k_mod * F_k / gamma_M, "N", Design, [In.Of(k_mod), In.Of(F_k), In.Of(gamma_M)]);
        return new(design, k_mod * F_k / Factors.CharacteristicOverMean(cov), cov, mechanism, "rule");
    }

    /// <summary>Threaded length in the timber: what the screw reaches past plate and face, no more than the timber is deep.</summary>
    private static double Embedded(Asked a) => Min(a.Size.LengthMm - a.PlateMm - a.Spot.Face.Mean, a.Spot.SupportDepth.Mean);
}
