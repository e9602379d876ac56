using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.EN_1993_1_3_2006;

/// <summary>
/// EN 1993-1-3:2006, Table 8.1: blind rivets in shear, characteristic value (divide by gamma_M2 = 1.25), N and mm. Valid for
/// 2.6 ≤ d ≤ 6.4 mm, f_u ≤ 550 N/mm² and e_1 ≥ 1.5 d. Pull-out, pull-through and the rivet itself are tested. From memory: no document seen.
/// </summary>
public static class Table8_1
{
    private const string Clause = "EN 1993-1-3:2006 Table 8.1";

    /// <summary>Bearing of the thinner sheet t beside the thicker t_1; e_1 to the end of the sheet.</summary>
    internal static double F_b_Rk(double t, double t_1, double d, double e_1, double f_u, Trace? trace)
    {
        double alpha_1 = trace.Step("alpha_1", Min(3.6 * Sqrt(t / d), 2.1), "", Clause, [In.Of(t), In.Of(d)]);
        double share = trace.Step("share", Min(Max((t_1 / t - 1) / 1.5, 0), 1), "", Clause, [In.Of(t_1), In.Of(t)]);
        double alpha = trace.Step("alpha", alpha_1 + share * (2.1 - alpha_1), "", Clause, [In.Of(alpha_1), In.Of(share)]);
        return trace.Step("F_b_Rk", Min(alpha * f_u * d * t, f_u * e_1 * t / 1.2), "N", Clause, [In.Of(alpha), In.Of(f_u), In.Of(d), In.Of(t), In.Of(e_1)]);
    }

    private static RuleResult Covered(ReadOnlySpan<double> x, Trace? trace)
    {
        if (x[1] < x[0]) return new NotCovered(Clause, "thinner_behind", Said.Length(x[1]), Said.Length(x[0]));
        if (x[3] < 1.5 * x[2]) return new NotCovered(Clause, "too_close", Said.Length(x[3]), Said.Length(1.5 * x[2]));
        return F_b_Rk(x[0], x[1], x[2], x[3], x[4], trace);
    }

    public static readonly Rule Bearing = new("en1993_1_3.table_8_1.bearing", "EN 1993-1-3", "2006", Clause, "Bearing of blind rivets", "N",
        Covered, Input.Length("t", 0.45, 5), Input.Length("t_1", 0.45, 20), Input.Length("d", 2.6, 6.4), Input.Length("e_1", 1, 1000), Input.Stress("f_u", 200, 550));

    public static IReadOnlyList<Rule> Rules => [Bearing];
}
