using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.AISI_S100_2016;

/// <summary>
/// AISI S100-16, J4: screws, nominal strength in N (mm, N/mm²); allowable by Omega = 3.0, design by phi = 0.50. t_1, F_u1 the sheet
/// at the head, t_2, F_u2 the sheet behind. Valid for 0.08 ≤ d ≤ 0.25 in (2.03 to 6.35 mm). A study of 335 pull-out tests (RP19-1)
/// found that pull-out needs an adjustment: it is no mean value.
/// </summary>
public static class SectionJ4
{
    private const string Head = "AISI S100-16 ", Document = "AISI S100", Edition = "2016";

    /// <summary>J4.3.1: shear by tilting and bearing; between t_2/t_1 of 1.0 and 2.5 linear.</summary>
    internal static double P_ns(double t_1, double t_2, double d, double F_u1, double F_u2, Trace? trace)
    {
        double tilting = trace.Step("tilting", 4.2 * Sqrt(Pow(t_2, 3) * d) * F_u2, "N", Head + "(J4.3.1-1)", [In.Of(t_2), In.Of(d), In.Of(F_u2)]);
        double bearing_1 = trace.Step("bearing_1", 2.7 * t_1 * d * F_u1, "N", Head + "(J4.3.1-2)", [In.Of(t_1), In.Of(d), In.Of(F_u1)]);
        double bearing_2 = trace.Step("bearing_2", 2.7 * t_2 * d * F_u2, "N", Head + "(J4.3.1-3)", [In.Of(t_2), In.Of(d), In.Of(F_u2)]);
        double thick = trace.Step("thick", Min(bearing_1, bearing_2), "N", Head + "(J4.3.1-5)", [In.Of(bearing_1), In.Of(bearing_2)]);
        double alike = trace.Step("alike", Min(tilting, thick), "N", Head + "J4.3.1", [In.Of(tilting), In.Of(thick)]);
        double share = trace.Step("share", Min(Max((t_2 / t_1 - 1) / 1.5, 0), 1), "", Head + "J4.3.1", [In.Of(t_2), In.Of(t_1)]);
        return trace.Step("P_ns", alike + share * (thick - alike), "N", Head + "J4.3.1", [In.Of(alike), In.Of(share), In.Of(thick)]);
    }

    /// <summary>J4.4.1: pull-out; t_c is the lesser of the depth of penetration and t_2.</summary>
    internal static double P_not(double t_c, double d, double F_u2, Trace? trace) =>
        trace.Step("P_not", 0.85 * t_c * d * F_u2, "N", Head + "(J4.4.1-1)", [In.Of(t_c), In.Of(d), In.Of(F_u2)]);

    /// <summary>J4.4.2: pull-over; d_w at most 3/4 in.</summary>
    internal static double P_nov(double t_1, double d_w, double F_u1, Trace? trace) =>
        trace.Step("P_nov", 1.5 * t_1 * d_w * F_u1, "N", Head + "(J4.4.2-1)", [In.Of(t_1), In.Of(d_w), In.Of(F_u1)]);

    internal static double P_a(double P_n, double Omega, Trace? trace) => trace.Step("P_a", P_n / Omega, "N", Head + "J4", [In.Of(P_n), In.Of(Omega)]);

    internal static double phiP(double P_n, double phi, Trace? trace) => trace.Step("P_d", phi * P_n, "N", Head + "J4", [In.Of(phi), In.Of(P_n)]);

    private static readonly Parameter D = Input.Length("d", 2.03, 6.35);

    public static readonly Rule Shear = new("aisi_s100.j4_3_1.shear", Document, Edition, Head + "J4.3.1", "Screw in shear: tilting and bearing", "N",
        (x, t) => P_ns(x[0], x[1], x[2], x[3], x[4], t),
        Input.Length("t_1", 0.2, 5), Input.Length("t_2", 0.2, 5), D, Input.Stress("F_u1", 200, 700), Input.Stress("F_u2", 200, 700));

    public static readonly Rule PullOut = new("aisi_s100.j4_4_1.pull_out", Document, Edition, Head + "J4.4.1", "Pull-out of a screw", "N",
        (x, t) => P_not(x[0], x[1], x[2], t), Input.Length("t_c", 0.2, 5), D, Input.Stress("F_u2", 200, 700));

    public static readonly Rule PullOver = new("aisi_s100.j4_4_2.pull_over", Document, Edition, Head + "J4.4.2", "Pull-over of the sheet at the head", "N",
        (x, t) => P_nov(x[0], x[1], x[2], t), Input.Length("t_1", 0.2, 5), Input.Length("d_w", 4, 19.05), Input.Stress("F_u1", 200, 700));

    public static readonly Rule Allowable = new("aisi_s100.j4.allowable", Document, Edition, Head + "J4", "Allowable strength", "N",
        (x, t) => P_a(x[0], x[1], t), Input.Force("P_n"), Input.Number("Omega", 1, 5, 3));

    public static readonly Rule Design = new("aisi_s100.j4.design", Document, Edition, Head + "J4", "Design strength", "N",
        (x, t) => phiP(x[0], x[1], t), Input.Force("P_n"), Input.Number("phi", 0.1, 1, 0.5));

    public static readonly Rule DesignThickness = new("aisi_s100.a3.design_thickness", Document, Edition, Head + "A3.4", "Design thickness from the least base thickness", "mm",
        (x, t) => Thickness(x[0], t), Input.Length("t_min", 0.2, 5));

    /// <summary>J4.5.2: utilisation under shear V and pull-out T (allowable stress design, Omega = 2.55; by load and resistance factors phi = 0.60); at most 1. From memory.</summary>
    internal static double u_pull_out(double V, double P_ns, double T, double P_not, double format, Trace? trace) => format == 1
        ? trace.Step("u", (V / P_ns + T / P_not) / (0.60 * 1.15), "", Head + "(J4.5.2-2)", [In.Of(V), In.Of(P_ns), In.Of(T), In.Of(P_not)])
        : trace.Step("u", (V / P_ns + T / P_not) * 2.55 / 1.15, "", Head + "(J4.5.2-1)", [In.Of(V), In.Of(P_ns), In.Of(T), In.Of(P_not)]);

    /// <summary>J4.5.1: utilisation under shear V and pull-over T (allowable stress design, Omega = 2.35; by load and resistance factors phi = 0.65); at most 1. From memory.</summary>
    internal static double u_pull_over(double V, double P_ns, double T, double P_nov, double format, Trace? trace) => format == 1
        ? trace.Step("u", (V / P_ns + 0.71 * T / P_nov) / (0.65 * 1.10), "", Head + "(J4.5.1-2)", [In.Of(V), In.Of(P_ns), In.Of(T), In.Of(P_nov)])
        : trace.Step("u", (V / P_ns + 0.71 * T / P_nov) * 2.35 / 1.10, "", Head + "(J4.5.1-1)", [In.Of(V), In.Of(P_ns), In.Of(T), In.Of(P_nov)]);

    /// <summary>J4.1 and J4.2: least spacing 3 d, least distance to an edge or end 1.5 d, mm. From memory.</summary>
    internal static double Least(double which, double d, Trace? trace)
    {
        double factor = trace.LookUp("factor", which == 0 ? 3 : 1.5, "", which == 0 ? Head + "J4.1" : Head + "J4.2");
        return trace.Step("a", factor * d, "mm", Head + "J4", [In.Of(factor), In.Of(d)]);
    }

    private static readonly Parameter Format = Parameter.Choice("format", "asd", "lrfd") with { Default = 0 };

    public static readonly Rule Distance = new("aisi_s100.j4_1.distance", Document, Edition, Head + "J4.1, J4.2", "Least spacing, and distance to an edge", "mm",
        (x, t) => Least(x[0], x[1], t), Parameter.Choice("which", "spacing", "edge"), D);

    public static readonly Rule ShearAndPullOut = new("aisi_s100.j4_5_2.combined", Document, Edition, Head + "J4.5.2", "Shear and pull-out at once, utilisation", "",
        (x, t) => u_pull_out(x[0], x[1], x[2], x[3], x[4], t), Input.Force("V"), Input.Force("P_ns", 1e-3), Input.Force("T"), Input.Force("P_not", 1e-3), Format);

    public static readonly Rule ShearAndPullOver = new("aisi_s100.j4_5_1.combined", Document, Edition, Head + "J4.5.1", "Shear and pull-over at once, utilisation", "",
        (x, t) => u_pull_over(x[0], x[1], x[2], x[3], x[4], t), Input.Force("V"), Input.Force("P_ns", 1e-3), Input.Force("T"), Input.Force("P_nov", 1e-3), Format);

    /// <summary>A3.4: the least delivered base thickness is 95 % of the design thickness.</summary>
    internal static double Thickness(double t_min, Trace? trace) => trace.Step("t", t_min / 0.95, "mm", Head + "A3.4", [In.Of(t_min)]);

    public static IReadOnlyList<Rule> Rules => [Shear, PullOut, PullOver, Allowable, Design, DesignThickness, ShearAndPullOut, ShearAndPullOver, Distance];
}
