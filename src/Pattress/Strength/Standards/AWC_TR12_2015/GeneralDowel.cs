using Pattress.Working;
using static System.Math;
using static Pattress.Working.Powers;

namespace Pattress.Strength.Standards.AWC_TR12_2015;

/// <summary>A dowel across a gap: q the bearing load for each mm (N/mm), M the dowel's yield moment (Nmm), l the bearing lengths, g the gap (mm).</summary>
internal readonly record struct GapJoint(double q_s, double q_m, double M, double l_s, double l_m, double g);

/// <summary>
/// AWC Technical Report 12 (2015), general dowel equations for single shear with a gap between the members, N at yield (before R_d);
/// from memory. Each mode but I solves A P² + B P + C = 0. Without a gap they are the yield modes of NDS Table 12.3.1A.
/// </summary>
public static class GeneralDowel
{
    private const string Document = "AWC TR12", Edition = "2015", Head = "AWC TR12:2015 ";

    internal static double Root(double A, double B, double C, string mode, Trace? trace) =>
        trace.Step(mode, (-B + Sqrt(Pow(B, 2) - 4 * A * C)) / (2 * A), "N", Head + "general dowel equations", [In.Of(A), In.Of(B), In.Of(C)]);

    internal static double II(in GapJoint j, Trace? trace)
    {
        double q_s = j.q_s, q_m = j.q_m, l_s = j.l_s, l_m = j.l_m, g = j.g;
        double A = trace.Step("A", 1 / (4 * q_s) + 1 / (4 * q_m), "", Head + "mode II", [In.Of(q_s), In.Of(q_m)]);
        double B = trace.Step("B", l_s / 2 + g + l_m / 2, "mm", Head + "mode II", [In.Of(l_s), In.Of(g), In.Of(l_m)]);
        double C = trace.Step("C", -q_s * Pow(l_s, 2) / 4 - q_m * Pow(l_m, 2) / 4, "Nmm", Head + "mode II", [In.Of(q_s), In.Of(l_s), In.Of(q_m), In.Of(l_m)]);
        return Root(A, B, C, "P_II", trace);
    }

    internal static double III_m(in GapJoint j, Trace? trace)
    {
        double q_s = j.q_s, q_m = j.q_m, M = j.M, l_m = j.l_m, g = j.g;
        double A = trace.Step("A", 1 / (2 * q_s) + 1 / (4 * q_m), "", Head + "mode IIIm", [In.Of(q_s), In.Of(q_m)]);
        double B = trace.Step("B", g + l_m / 2, "mm", Head + "mode IIIm", [In.Of(g), In.Of(l_m)]);
        double C = trace.Step("C", -M - q_m * Pow(l_m, 2) / 4, "Nmm", Head + "mode IIIm", [In.Of(M), In.Of(q_m), In.Of(l_m)]);
        return Root(A, B, C, "P_IIIm", trace);
    }

    internal static double III_s(in GapJoint j, Trace? trace)
    {
        double q_s = j.q_s, q_m = j.q_m, M = j.M, l_s = j.l_s, g = j.g;
        double A = trace.Step("A", 1 / (4 * q_s) + 1 / (2 * q_m), "", Head + "mode IIIs", [In.Of(q_s), In.Of(q_m)]);
        double B = trace.Step("B", l_s / 2 + g, "mm", Head + "mode IIIs", [In.Of(l_s), In.Of(g)]);
        double C = trace.Step("C", -q_s * Pow(l_s, 2) / 4 - M, "Nmm", Head + "mode IIIs", [In.Of(q_s), In.Of(l_s), In.Of(M)]);
        return Root(A, B, C, "P_IIIs", trace);
    }

    internal static double IV(in GapJoint j, Trace? trace)
    {
        double q_s = j.q_s, q_m = j.q_m, M = j.M, g = j.g;
        double A = trace.Step("A", 1 / (2 * q_s) + 1 / (2 * q_m), "", Head + "mode IV", [In.Of(q_s), In.Of(q_m)]);
        double B = trace.Step("B", g, "mm", Head + "mode IV", [In.Of(g)]);
        double C = trace.Step("C", -2 * M, "Nmm", Head + "mode IV", [In.Of(M)]);
        return Root(A, B, C, "P_IV", trace);
    }

    /// <summary>The least of the six modes, N.</summary>
    internal static double P(in GapJoint j, Trace? trace)
    {
        double q_s = j.q_s, q_m = j.q_m, l_s = j.l_s, l_m = j.l_m;
        double P_Im = trace.Step("P_Im", q_m * l_m, "N", Head + "mode Im", [In.Of(q_m), In.Of(l_m)]);
        double P_Is = trace.Step("P_Is", q_s * l_s, "N", Head + "mode Is", [In.Of(q_s), In.Of(l_s)]);
        double P_II = II(j, trace), P_IIIm = III_m(j, trace), P_IIIs = III_s(j, trace), P_IV = IV(j, trace);
        return trace.Step("P", Min(Min(Min(P_Im, P_Is), Min(P_II, P_IIIm)), Min(P_IIIs, P_IV)), "N", Head + "single shear",
            [In.Of(P_Im), In.Of(P_Is), In.Of(P_II), In.Of(P_IIIm), In.Of(P_IIIs), In.Of(P_IV)]);
    }

    /// <summary>Allowable value, N: the yield load of a dowel of diameter D (mm) over NDS's R_d; F in N/mm².</summary>
    internal static double Z(double D, double l_m, double l_s, double F_em, double F_es, double F_yb, double g, Trace? trace)
    {
        double q_s = trace.Step("q_s", F_es * D, "N/mm", Head + "bearing", [In.Of(F_es), In.Of(D)]);
        double q_m = trace.Step("q_m", F_em * D, "N/mm", Head + "bearing", [In.Of(F_em), In.Of(D)]);
        double M = trace.Step("M", F_yb * Pow(D, 3) / 6, "Nmm", Head + "dowel", [In.Of(F_yb), In.Of(D)]);
        double R_d = NDS_2018.Section12_3.R_d(D, trace), P_y = P(new GapJoint(q_s, q_m, M, l_s, l_m, g), trace);
        return trace.Step("Z", P_y / R_d, "N", Head + "with R_d of NDS 2018 Table 12.3.1B", [In.Of(P_y), In.Of(R_d)]);
    }

    public static readonly Rule Lateral = new("awc_tr12.lateral_with_gap", Document, Edition, Head + "general dowel equations", "Lateral design value in single shear across a gap", "N",
        (x, t) => Z(x[0], x[1], x[2], x[3], x[4], x[5], x[6], t),
        Input.Length("D", 1.5, 6.34), Input.Length("l_m", 1, 300), Input.Length("l_s", 0.3, 300), Input.Stress("F_em", 1, 700), Input.Stress("F_es", 1, 700), Input.Stress("F_yb", 100, 2000), Input.Length("g", 0, 200));

    public static IReadOnlyList<Rule> Rules => [Lateral];
}
