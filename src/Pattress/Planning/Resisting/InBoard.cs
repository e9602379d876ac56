using Pattress.Fixings;
using Pattress.Working;
using static System.Math;

namespace Pattress.Planning.Resisting;

/// <summary>
/// Board, laths or a thin panel with nothing sound behind: pull-through round what bears on the back, bearing under the shank,
/// crushing under the toe. No code covers this; the basis is mechanics with a stated model error.
/// </summary>
internal static class InBoard
{
    private const string Punch = "pattress: pull-through, 45 degree cone round the bearing width",
        Shank = "pattress: bearing under the shank", Under = "pattress: pressure under the toe", Reduce = "pattress: mechanics to design";

    public static FixingCarries Carries(Asked a, double share, Trace? trace)
    {
        double cov = Factors.Cov(Named.Value("board_cov"), Named.Value("model_cov_board"));
        var pull = Pull(a, share, cov, trace);
        var shear = Reduced(a, ShearMean(a, trace), cov, "board_bearing", "V", trace);
        return new(pull, shear, 1, Toe(a, cov, trace), null);
    }

    private static Carries Pull(Asked a, double share, double cov, Trace? trace) => a.Size.AssumedMeanN is { } mean
        ? Reduced(a, mean * a.Spot.Face.Mean / 12.5, cov, "friction", "T", trace) with { Basis = "assumed" }
        : Reduced(a, PunchMean(a, share, trace), cov, "pull_through", "T", trace);

    private static double PunchMean(Asked a, double share, Trace? trace)
    {
        double l = a.Size.BearsLongMm, w = a.Size.BearsWideMm, t = a.Spot.Face.Mean, tau = Tau(a, trace), use = Named.UseOfBearing(a.Size.Kind.Id);
        double p = trace.Step("p", (2 * (l + w) + PI * t) * share, "mm", Punch, [In.Of(l), In.Of(w), In.Of(t), In.Of(share)]);
        return trace.Step("T_mean", p * t * tau * use, "N", Punch, [In.Of(p), In.Of(t), In.Of(tau), In.Of(use)]);
    }

    private static double Tau(Asked a, Trace? trace)
    {
        if (a.Spot.Base != "gypsum_board") return Named.Value(a.Spot.Base == "panel" ? "panel_tau_mean" : "lath_tau_mean");
        double tau_min = Named.Value("board_tau_min"), k = Named.Value("board_mean_over_min");
        return trace.Step("tau", tau_min * k, "N/mm²", "ASTM C1396 nail pull (derived), mean over minimum assumed", [In.Of(tau_min), In.Of(k)]);
    }

    private static double ShearMean(Asked a, Trace? trace)
    {
        double d = Bearing(a.Size), t = a.Spot.Face.Mean;
        double f = Named.Value(a.Spot.Base switch { "gypsum_board" => "board_bearing_mean", "panel" => "panel_bearing_mean", _ => "lath_bearing_mean" });
        return trace.Step("V_mean", d * t * f, "N", Shank, [In.Of(d), In.Of(t), In.Of(f)]);
    }

    /// <summary>What fills the hole bears on its edge: the collar or straps of most kinds, the bare bolt of a spring toggle or hollow anchor.</summary>
    private static double Bearing(FixingSize size) =>
        size.Kind.Id is "spring_toggle" or "hollow_wall_anchor" or "wing_driven_plug" ? size.ScrewMm : Max(size.ScrewMm, Min(size.HoleMm, CollarMostMm));

    /// <summary>No collar is counted wider than this, mm (assumed).</summary>
    private const double CollarMostMm = 12;

    private static Carries Reduced(Asked a, double mean, double cov, string mechanism, string symbol, Trace? trace)
    {
        double k5 = Factors.CharacteristicOverMean(cov), k_dur = Factors.Duration(a), k_damp = Factors.Damp(a), gamma_M = Named.Value("gamma_m_board");
        double design = trace.Step(symbol + "_Rd", mean * k5 * k_dur * k_damp / gamma_M, "N", Reduce,
            [In.Of(mean), In.Of(k5), In.Of(k_dur), In.Of(k_damp), In.Of(gamma_M)]);
        return new(design, mean * k_dur * k_damp, cov, mechanism, "mechanics");
    }

    private static double Toe(Asked a, double cov, Trace? trace)
    {
        double p_mean = Named.Value("board_toe_mean"), k5 = Factors.CharacteristicOverMean(cov), k_damp = Factors.Damp(a), gamma_M = Named.Value("gamma_m_board");
        return trace.Step("p_Rd", p_mean * k5 * k_damp / gamma_M, "N/mm²", Under, [In.Of(p_mean), In.Of(k5), In.Of(k_damp), In.Of(gamma_M)]);
    }

    /// <summary>The toe over anything: board in front of studs or a gap crushes just so.</summary>
    public static double Toe(Asked a, Trace? trace) => Toe(a, Factors.Cov(Named.Value("board_cov"), Named.Value("model_cov_board")), trace);
}
