using Pattress.Trials.Standards;
using Pattress.Trials.Statistics;
using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.EN_14358_2016;

/// <summary>EN 14358:2016, clause 3: 5 % fractile of timber and its joints from n tests, lognormal, 75 % confidence. From memory: no document seen.</summary>
public static class Section3
{
    private const string Document = "EN 14358", Edition = "2016", Clause = "EN 14358:2016 clause 3";

    private static RuleResult Factor(double n, double basis, Trace? trace)
    {
        if (basis == 0) return trace.Step("k_s", (6.5 * n + 6) / (3.7 * n - 3), "", Clause, [In.Of(n)]);
        return trace.LookUp("k_s", En14358_2016.Exact((int)n).Value!.Value, "", Clause + ", noncentral t");
    }

    /// <summary>m_k = exp(m_y - k_s s_y); the deviation of the logarithms counts as 0.05 at the least.</summary>
    internal static double m_k(double m_y, double s_y, double k_s, Trace? trace) => trace.Step("m_k", Exp(m_y - k_s * Max(s_y, 0.05)), "N", Clause, [In.Of(m_y), In.Of(k_s), In.Of(s_y)]);

    public static readonly Rule FactorRule = new("en14358.3.k_s", Document, Edition, Clause, "Factor k_s for a 5 % fractile from n tests, 75 % confidence", "",
        (x, t) => Factor(x[0], x[1], t), Input.Whole("n", 3, 1e5), Parameter.Choice("basis", "simplified", "exact") with { Default = 0 });

    public static readonly Rule Value = new("en14358.3.m_k", Document, Edition, Clause, "Characteristic value from tests, lognormal", "N",
        (x, t) => m_k(x[0], x[1], x[2], t), Input.Number("m_y", -20, 20), Input.Number("s_y", 0, 2), Input.Number("k_s", 0, 100));

    public static IReadOnlyList<Rule> Rules => [FactorRule, Value];
}
