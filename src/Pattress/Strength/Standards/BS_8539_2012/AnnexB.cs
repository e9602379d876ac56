using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.BS_8539_2012;

/// <summary>
/// BS 8539:2012+A1:2021, Annex B.3: proof tests on site, from secondary sources (the standard was not seen). The regime with 2.5 %
/// of the fixings goes with a factor of 1.5, that with 5 % with 1.25. Holding and load drop as VicRoads 680 is quoted.
/// </summary>
public static class AnnexB
{
    private const string Document = "BS 8539", Edition = "2012+A1:2021", Clause = "BS 8539:2012+A1:2021 B.3";

    internal static double N_p(double N_Sk, double regime, Trace? trace)
    {
        double factor = trace.Step("factor", regime == 0 ? 1.5 : regime == 1 ? 1.25 : 2.0, "", Clause, [In.Of(regime)]);
        return trace.Step("N_p", factor * N_Sk, "N", Clause, [In.Of(factor), In.Of(N_Sk)]);
    }

    /// <summary>How many of a lot are tested: the regime's share, rounded up, at least 3 and no more than the lot.</summary>
    internal static double Samples(double lot, double regime, Trace? trace)
    {
        double share = trace.Step("share", regime == 1 ? 0.05 : 0.025, "", Clause, [In.Of(regime)]);
        return trace.Step("n", Min(Max(Ceiling(share * lot - 0.000000001), 3), lot), "", Clause, [In.Of(share), In.Of(lot)]);
    }

    /// <summary>After failures: one doubles the tests to 5 % and at least 6, more than one means every fixing of the lot.</summary>
    internal static double AfterFailures(double lot, double failures, Trace? trace) => trace.Step(
        "n", failures > 1 ? lot : Min(Max(Ceiling(0.05 * lot - 0.000000001), 6), lot), "", Clause, [In.Of(failures), In.Of(lot)]);

    /// <summary>Load drop over 30 s as a share of the peak; at most 0.10.</summary>
    internal static double Drop(double N_peak, double N_30, Trace? trace) =>
        trace.Step("drop", (N_peak - N_30) / N_peak, "", "VicRoads 680 as quoted in AEFAC TN05", [In.Of(N_peak), In.Of(N_30)]);

    private static readonly Parameter Regime = Parameter.Choice("regime", "one_in_40", "one_in_20", "vicroads_cracked"), Lot = Input.Count("lot", 100000);

    public static readonly Rule TestLoad = new("bs8539.b_3.test_load", Document, Edition, Clause, "Proof load of a site test", "N", (x, t) => N_p(x[0], x[1], t), Input.Force("N_Sk"), Regime);

    public static readonly Rule SampleSize = new("bs8539.b_3.samples", Document, Edition, Clause, "Fixings to test of a lot", "", (x, t) => Samples(x[0], x[1], t), Lot, Regime);

    public static readonly Rule Escalation = new("bs8539.b_3.after_failures", Document, Edition, Clause, "Fixings to test after failures", "",
        (x, t) => AfterFailures(x[0], x[1], t), Lot, Input.Count("failures", 100000));

    public static readonly Rule LoadDrop = new("vicroads_680.load_drop", "VicRoads 680", "as quoted in AEFAC TN05", "VicRoads 680", "Load drop over 30 s as a share of the peak (at most 0.10)", "",
        (x, t) => x[1] > x[0] ? new NotCovered("VicRoads 680", "above_limit", Said.Words("N_30"), Said.Plain(x[1]), Said.Plain(x[0])) : Drop(x[0], x[1], t), Input.Force("N_peak", 1), Input.Force("N_30"));

    public static IReadOnlyList<Rule> Rules => [TestLoad, SampleSize, Escalation, LoadDrop];
}
