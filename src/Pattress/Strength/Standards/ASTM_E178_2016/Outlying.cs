using Pattress.Trials.Special;
using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.ASTM_E178_2016;

/// <summary>ASTM E178-16, as the NIST/SEMATECH handbook 1.3.5.17 has it: critical value of Grubbs' test for one outlying observation.</summary>
public static class Outlying
{
    private const string Clause = "ASTM E178-16";

    private static RuleResult Critical(ReadOnlySpan<double> x, Trace? trace)
    {
        double n = x[0], alpha = x[1];
        double share = x[2] == 1 ? alpha / n : alpha / (2 * n);
        double t = trace.LookUp("t", -StudentT.Quantile(share, n - 2), "", Clause + ", Student's law");
        return trace.Step("G", (n - 1) / Sqrt(n) * Sqrt(Pow(t, 2) / (n - 2 + Pow(t, 2))), "", Clause, [In.Of(n), In.Of(t)]);
    }

    public static readonly Rule Grubbs = new("astm_e178.grubbs", "ASTM E178", "2016", Clause, "Critical value of Grubbs' test for one outlier", "", Critical,
        Input.Whole("n", 3, 1e5), Input.Number("alpha", 0.0001, 0.5, 0.05), Parameter.Choice("sides", "two", "one") with { Default = 0 });

    public static IReadOnlyList<Rule> Rules => [Grubbs];
}
