using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.EN_1993_1_3_2006;

/// <summary>
/// EN 1993-1-3:2006, Table 8.2: self-tapping screws, characteristic values (divide by gamma_M2 = 1.25), N and mm.
/// Valid for 3.0 ≤ d ≤ 8.0 mm and f_u ≤ 550 N/mm² (from memory); in tension 0.5 ≤ t ≤ 1.5 mm and t_sup ≥ 0.9 mm: a stud of 0.5 to 0.6 mm is not covered in tension.
/// t is the thinner (head side) sheet, t_1 the thicker, s the thread's pitch, d_w the washer or head.
/// </summary>
public static class Table8_2
{
    private const string Document = "EN 1993-1-3", Edition = "2006", Clause = "EN 1993-1-3:2006 Table 8.2";

    /// <summary>Factor alpha of the bearing resistance: by the ratio of the sheets, interpolated between t_1 = t and t_1 = 2.5 t.</summary>
    internal static double alpha(double t, double t_1, double d, Trace? trace)
    {
        double alpha_1 = trace.Step("alpha_1", Min(3.2 * Sqrt(t / d), 2.1), "", Clause, [In.Of(t), In.Of(d)]);
        double alpha_2 = trace.Step("alpha_2", t < 1.0 ? alpha_1 : 2.1, "", Clause, [In.Of(t), In.Of(alpha_1)]);
        double share = trace.Step("share", Min(Max((t_1 / t - 1) / 1.5, 0), 1), "", Clause, [In.Of(t_1), In.Of(t)]);
        return trace.Step("alpha", alpha_1 + share * (alpha_2 - alpha_1), "", Clause, [In.Of(alpha_1), In.Of(alpha_2), In.Of(share)]);
    }

    internal static double F_b_Rk(double t, double t_1, double d, double f_u, Trace? trace)
    {
        double alpha = Table8_2.alpha(t, t_1, d, trace);
        return trace.Step("F_b_Rk", alpha * f_u * d * t, "N", Clause, [In.Of(alpha), In.Of(f_u), In.Of(d), In.Of(t)]);
    }

    /// <summary>Pull-out: 0.45 below, 0.65 from t_sup = s on. An older text has 0.65 alone, which is unsafe in thin studs (decision on the flags).</summary>
    internal static double F_o_Rk(double d, double t_sup, double s, double f_u, Trace? trace)
    {
        double k = trace.Step("k", t_sup / s < 1 ? 0.45 : 0.65, "", Clause, [In.Of(t_sup), In.Of(s)]);
        return trace.Step("F_o_Rk", k * d * t_sup * f_u, "N", Clause, [In.Of(k), In.Of(d), In.Of(t_sup), In.Of(f_u)]);
    }

    internal static double F_p_Rk(double d_w, double t, double f_u, double load, Trace? trace)
    {
        double k = trace.Step("k", load == 0 ? 1 : 0.5, "", Clause, [In.Of(load)]);
        return trace.Step("F_p_Rk", k * d_w * t * f_u, "N", Clause, [In.Of(k), In.Of(d_w), In.Of(t), In.Of(f_u)]);
    }

    internal static double F_Rd(double F_Rk, double gamma_M2, Trace? trace) =>
        trace.Step("F_Rd", F_Rk / gamma_M2, "N", Clause, [In.Of(F_Rk), In.Of(gamma_M2)]);

    private static readonly Parameter Strength = Input.Stress("f_u", 200, 550);

    public static readonly Rule Bearing = new("en1993_1_3.table_8_2.bearing", Document, Edition, Clause, "Bearing of self-tapping screws", "N",
        (x, t) => x[1] < x[0] ? new NotCovered(Clause, "thinner_behind", Said.Length(x[1]), Said.Length(x[0])) : F_b_Rk(x[0], x[1], x[2], x[3], t),
        Input.Length("t", 0.45, 5), Input.Length("t_1", 0.45, 20), Input.Length("d", 3, 8), Strength);

    public static readonly Rule PullOut = new("en1993_1_3.table_8_2.pull_out", Document, Edition, Clause, "Pull-out of self-tapping screws", "N",
        (x, t) => F_o_Rk(x[0], x[1], x[2], x[3], t),
        Input.Length("d", 3, 8), Input.Length("t_sup", 0.9, 20), Input.Length("s", 0.3, 5), Strength);

    public static readonly Rule PullThrough = new("en1993_1_3.table_8_2.pull_through", Document, Edition, Clause, "Pull-through of the sheet under the head", "N",
        (x, t) => F_p_Rk(x[0], x[1], x[2], x[3], t),
        Input.Length("d_w", 4, 30), Input.Length("t", 0.5, 1.5), Strength, Parameter.Choice("load", "static", "repeated_wind"));

    public static readonly Rule Design = new("en1993_1_3.8_1.design_resistance", Document, Edition, "EN 1993-1-3:2006 8.1", "Design resistance of a screw", "N",
        (x, t) => F_Rd(x[0], x[1], t), Input.Force("F_Rk"), Input.Number("gamma_M2", 1, 2, 1.25));

    public static IReadOnlyList<Rule> Rules => [Bearing, PullOut, PullThrough, Design];
}
