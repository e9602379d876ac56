using Pattress.Fixings;
using Pattress.Working;
using static System.Math;

namespace Pattress.Planning.Resisting;

/// <summary>
/// Plug and screw straight into masonry, aerated block or a dab. Rests on an assessment or site tests; without them on assumed
/// means per depth, with the chance that an unseen joint was hit. Pull-out is never derived from the strength of masonry.
/// </summary>
internal static class InMasonry
{
    private const string Assumed = "pattress: assumed mean of a plug, to be proved on site", Joint = "pattress: a joint may be hit unseen (assumed)",
        Gamma = "ETAG 020, use in masonry (from memory)";

    public static FixingCarries Carries(Asked a, Trace? trace)
    {
        var pull = Pull(a, trace);
        double cov = Named.Value("masonry_cov");
        double V_mean = trace.Step("V_mean", Min(SteelShear(a), 1.5 * pull.MeanN), "N", Assumed, [In.Of(SteelShear(a)), In.Of(pull.MeanN)]);
        return new(pull, Designed(V_mean, cov, "masonry_bearing", "V", trace), 1, double.PositiveInfinity, null);
    }

    /// <summary>Pull of the plug in its masonry.</summary>
    public static Carries Pull(Asked a, Trace? trace)
    {
        double depth = Depth(a), per = Named.PlugMean(a.Spot.Behind == Behind.Dab ? "dab" : a.Spot.Base), hole = a.Size.HoleMm;
        double share = Named.Value("joint_share"), left = Named.Value("joint_factor"), creep = Factors.Duration(a);
        double T_plug = trace.Step("T_plug", per * depth * hole / 6, "N", Assumed, [In.Of(per), In.Of(depth), In.Of(hole)]);
        double T_mean = trace.Step("T_mean", T_plug * (1 - share + share * left) * creep, "N", Joint, [In.Of(T_plug), In.Of(share), In.Of(left), In.Of(creep)]);
        double scatter = Sqrt(share * (1 - share)) * (1 - left);
        return Designed(T_mean, Factors.Cov(Named.Value("masonry_cov"), scatter), "plug_pull_out", "T", trace);
    }

    private static Carries Designed(double mean, double cov, string mechanism, string symbol, Trace? trace)
    {
        double k5 = Factors.CharacteristicOverMean(cov), gamma_M = Named.Value("gamma_m_masonry");
        return new(trace.Step(symbol + "_Rd", mean * k5 / gamma_M, "N", Gamma, [In.Of(mean), In.Of(k5), In.Of(gamma_M)]), mean, cov, mechanism, "assumed");
    }

    /// <summary>Depth in sound material, mm.</summary>
    private static double Depth(Asked a) => a.Spot.Behind == Behind.Dab
        ? Min(a.Size.EmbedMm, a.Spot.Void.Mean)
        : Max(0, Min(a.Size.EmbedMm, a.Size.LengthMm - a.PlateMm - a.Spot.MasonryAt.Mean));

    private static double SteelShear(Asked a) => 0.6 * Named.Value("screw_fu") * PI / 4 * Pow(a.Size.ScrewMm * Named.Value("root_over_nominal"), 2);
}
