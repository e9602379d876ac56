using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Plates;

/// <summary>
/// A circular plate of radius a with a load P (N) on a patch of radius r_0 at its middle (Roark, Table 11.2), and the punching
/// area of a disc through a board. Moments for each mm of width (N), lengths in mm.
/// </summary>
public static class Circle
{
    private const string Clause = "Roark, Table 11.2";

    internal static double M_simple(double P, double a, double r, double nu, Trace? trace) =>
        trace.Step("M_c", P / (4 * PI) * ((1 + nu) * Log(a / r) + 1), "N", Clause, [In.Of(P), In.Of(a), In.Of(r), In.Of(nu)]);

    internal static double M_clamped(double P, double a, double r, double nu, Trace? trace) =>
        trace.Step("M_c", P * (1 + nu) / (4 * PI) * Log(a / r), "N", Clause, [In.Of(P), In.Of(a), In.Of(r), In.Of(nu)]);

    internal static double w_simple(double P, double a, double D, double nu, Trace? trace) =>
        trace.Step("w_c", P * Pow(a, 2) * (3 + nu) / (16 * PI * D * (1 + nu)), "mm", Clause, [In.Of(P), In.Of(a), In.Of(D), In.Of(nu)]);

    internal static double w_clamped(double P, double a, double D, Trace? trace) =>
        trace.Step("w_c", P * Pow(a, 2) / (16 * PI * D), "mm", Clause, [In.Of(P), In.Of(a), In.Of(D)]);

    /// <summary>Mean area of the cone at 45° from a disc of diameter D through t, mm².</summary>
    internal static double PunchingArea(double D, double t, Trace? trace) => trace.Step("A_p", PI * (D + t) * t, "mm²", "geometry", [In.Of(D), In.Of(t)]);

    /// <summary>Area of the straight cylinder under the disc, mm².</summary>
    internal static double CylinderArea(double D, double t, Trace? trace) => trace.Step("A_c", PI * D * t, "mm²", "geometry", [In.Of(D), In.Of(t)]);

    /// <summary>Cylindrical bending of a strip of span L under q (N/mm²), N.</summary>
    internal static double M_cylinder(double q, double L, Trace? trace) => trace.Step("M", q * Pow(L, 2) / 8, "N", "statics", [In.Of(q), In.Of(L)]);

    private static readonly Parameter P = Input.Force("P"), A = Input.Length("a", 1, 5000), R = Input.Length("r_0", 0, 2000), T = Input.Length("t", 1, 200), Nu = Input.Number("nu", 0, 0.5, 0.2);

    private static Rule Of(string name, string clause, string title, string unit, RuleFunction function, params Parameter[] inputs) =>
        new("plates." + name, "Formulas for Stress and Strain", "7th ed.", clause, title, unit, function, inputs);

    private static RuleResult WithRadius(ReadOnlySpan<double> x, bool clamped, Trace? trace)
    {
        double r = Strip.r_0(x[2], x[3], trace);
        if (r >= x[1]) return new NotCovered(Clause, "patch_over_support", Said.Length(x[1]), Said.Length(r));
        return clamped ? M_clamped(x[0], x[1], r, x[4], trace) : M_simple(x[0], x[1], r, x[4], trace);
    }

    public static IReadOnlyList<Rule> Rules =>
    [
        Of("circle.moment_simple", Clause, "Moment at the middle, simply supported", "N", (x, t) => WithRadius(x, false, t), P, A, R, T, Nu),
        Of("circle.moment_clamped", Clause, "Moment at the middle, clamped", "N", (x, t) => WithRadius(x, true, t), P, A, R, T, Nu),
        Of("circle.deflection_simple", Clause, "Deflection at the middle, simply supported", "mm", (x, t) => w_simple(x[0], x[1], x[2], x[3], t), P, A, Input.Number("D", 1, 1e12), Nu),
        Of("circle.deflection_clamped", Clause, "Deflection at the middle, clamped", "mm", (x, t) => w_clamped(x[0], x[1], x[2], t), P, A, Input.Number("D", 1, 1e12)),
        Of("punching_area", "geometry", "Mean area of the cone under a disc", "mm²", (x, t) => PunchingArea(x[0], x[1], t), Input.Length("D", 0, 500), T),
        Of("cylinder_area", "geometry", "Area of the cylinder under a disc", "mm²", (x, t) => CylinderArea(x[0], x[1], t), Input.Length("D", 0.1, 500), T),
        Of("cylinder_moment", "statics", "Moment of a strip under a uniform load", "N", (x, t) => M_cylinder(x[0], x[1], t), Input.Stress("q", 0, 10), Input.Length("L", 1, 5000)),
    ];
}
