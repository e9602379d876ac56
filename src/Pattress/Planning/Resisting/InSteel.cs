using Pattress.Fixings;
using Pattress.Working;
using static System.Math;

namespace Pattress.Planning.Resisting;

/// <summary>
/// Screws and toggles in thin steel. EN 1993-1-3 Table 8.2 covers supports from 0.9 mm; a stud of 0.55 mm lies outside and falls
/// back to AISI S100-16 J4. The face in between bears nothing; the stud's flange twists.
/// </summary>
internal static class InSteel
{
    private const string En = "EN 1993-1-3:2006 Table 8.2", Aisi = "AISI S100-16 J4 (EN 1993-1-3 Table 8.2 does not cover a support under 0.9 mm)",
        Twist = "pattress: the flange of a stud twists (assumed)";

    public static FixingCarries Carries(Asked a, Trace? trace)
    {
        bool stud = a.Spot.Behind == Behind.SteelStud;
        double t = Named.Value(stud ? "steel_t" : "lintel_t"), f_u = Named.Value(stud ? "steel_fu" : "lintel_fu");
        var pull = stud ? StudPull(a, t, f_u, trace) : LintelPull(a, t, f_u, trace);
        return new(pull, Shear(a, t, f_u, trace), 1, InBoard.Toe(a, trace), null);
    }

    private static Carries StudPull(Asked a, double t, double f_u, Trace? trace)
    {
        double phi = Named.Value("phi_aisi"), k_twist = Named.Value("flange_twist"), d = a.Size.ScrewMm, d_w = a.Size.BearsWideMm;
        double nominal = a.Size.Kind.HoldsBy == HoldsBy.Wings
            ? trace.Step("P_nov", 1.5 * t * d_w * f_u, "N", Aisi, [In.Of(t), In.Of(d_w), In.Of(f_u)])
            : trace.Step("P_not", 0.85 * t * d * f_u, "N", Aisi, [In.Of(t), In.Of(d), In.Of(f_u)]);
        double design = trace.Step("T_Rd", phi * nominal * k_twist, "N", Twist, [In.Of(phi), In.Of(nominal), In.Of(k_twist)]);
        return new(design, nominal * k_twist, Named.Value("steel_cov"), a.Size.Kind.HoldsBy == HoldsBy.Wings ? "pull_over" : "pull_out", "rule");
    }

    private static Carries LintelPull(Asked a, double t_sup, double f_u, Trace? trace)
    {
        double d = a.Size.ScrewMm, gamma_M2 = Named.Value("gamma_m2"), cov = Named.Value("steel_cov");
        double F_o = trace.Step("F_o", 0.45 * d * t_sup * f_u, "N", En, [In.Of(d), In.Of(t_sup), In.Of(f_u)]);
        return new(trace.Step("T_Rd", F_o / gamma_M2, "N", En, [In.Of(F_o), In.Of(gamma_M2)]), F_o / Factors.CharacteristicOverMean(cov), cov, "pull_out", "rule");
    }

    /// <summary>Shear across the face: tilting of the screw in the sheet, and no more than the screw bent over the face as a lever.</summary>
    private static Carries Shear(Asked a, double t, double f_u, Trace? trace)
    {
        double d = a.Size.ScrewMm, phi = Named.Value("phi_aisi"), fu_s = Named.Value("screw_fu"), g = a.Spot.Face.Mean, root = Named.Value("root_over_nominal");
        double P_ns = trace.Step("P_ns", Min(4.2 * Sqrt(Pow(t, 3) * d) * f_u, 2.7 * t * d * f_u), "N", Aisi, [In.Of(t), In.Of(d), In.Of(f_u)]);
        double V_M = trace.Step("V_M", 1.2 * PI * Pow(root * d, 3) / 32 * fu_s / (g + d / 2), "N", "EN 1992-4:2018 7.2.2.3 by analogy", [In.Of(root), In.Of(d), In.Of(fu_s), In.Of(g)]);
        double nominal = trace.Step("V_n", Min(P_ns, V_M), "N", "the smaller", [In.Of(P_ns), In.Of(V_M)]);
        return new(trace.Step("V_Rd", phi * nominal, "N", Aisi, [In.Of(phi), In.Of(nominal)]), nominal, Named.Value("steel_cov"), P_ns < V_M ? "tilting" : "lever_arm", "rule");
    }
}
