using Pattress.Trials.Special;
using Pattress.Trials.Statistics;
using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.ISO_16269_6_2014;

/// <summary>
/// ISO 16269-6:2014, one-sided limits of a normal law: k such that m - k s lies below a share P of the population with a confidence. At 5 % and
/// 75 % it is EN 14358's exact factor, at 5 % and 90 % that of European assessments of fixings (EAD 330499), at 10 % and 95 % the B-basis.
/// </summary>
public static class ToleranceLimits
{
    private const string Document = "ISO 16269-6", Edition = "2014", Clause = "ISO 16269-6:2014";

    private static RuleResult Factor(ReadOnlySpan<double> x, Trace? trace)
    {
        double n = x[0], P = x[1], confidence = x[2];
        if (x[3] == 1) return Known(n, P, confidence, trace);
        if (n < 2) return new NotCovered(Clause, "no_entry", Said.Words("n = 1"));
        double t = trace.LookUp("t", ToleranceFactor.ScatterUnknown((int)n, P, confidence) * Sqrt(n), "", Clause + ", noncentral t");
        return trace.Step("k", t / Sqrt(n), "", Clause, [In.Of(t), In.Of(n)]);
    }

    private static double Known(double n, double P, double confidence, Trace? trace)
    {
        double u_P = trace.LookUp("u_P", Normal.Quantile(P), "", Clause + ", normal law"), u_c = trace.LookUp("u_c", Normal.Quantile(confidence), "", Clause + ", normal law");
        return trace.Step("k", u_P + u_c / Sqrt(n), "", Clause, [In.Of(u_P), In.Of(u_c), In.Of(n)]);
    }

    private static RuleResult Run(double R, double C, Trace? trace) =>
        trace.LookUp("n", Counts.SuccessRun(R, C), "", "binomial law");

    public static readonly Rule FactorRule = new("iso16269_6.k", Document, Edition, Clause, "Tolerance factor k by number of tests, share and confidence", "", Factor,
        Input.Count("n", 1e5), Input.Number("P", 0.5, 0.9999, 0.95), Input.Number("confidence", 0.01, 0.999, 0.75), Parameter.Choice("scatter", "unknown", "known") with { Default = 0 });

    public static readonly Rule SuccessRun = new("binomial.success_run", "binomial law", "", "binomial law", "Tests without a failure that show a reliability with a confidence", "",
        (x, t) => Run(x[0], x[1], t), Input.Number("R", 0.1, 0.9999), Input.Number("C", 0.1, 0.9999));

    public static readonly Rule UpperShare = new("binomial.upper_failure_share", "binomial law", "", "binomial law (Clopper and Pearson)", "Upper bound on the share that fails", "", Share,
        Input.Whole("failures", 0, 1e5), Input.Count("n", 1e5), Input.Number("C", 0.01, 0.9999, 0.95));

    private static RuleResult Share(ReadOnlySpan<double> x, Trace? trace)
    {
        if (x[0] > x[1]) return new NotCovered("binomial law", "above_limit", Said.Words("failures"), Said.Plain(x[0]), Said.Plain(x[1]));
        return trace.LookUp("p", Counts.UpperFailureShare((int)x[0], (int)x[1], x[2]), "", "binomial law (Clopper and Pearson)");
    }

    public static IReadOnlyList<Rule> Rules => [FactorRule, SuccessRun, UpperShare];
}
