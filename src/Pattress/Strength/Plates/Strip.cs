using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Plates;

/// <summary>
/// A board between two studs as an endless strip of span a, simply supported, with a load P (N) on a circular patch of radius c
/// at xi from one support (mm): Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., art. 37. Moments for each
/// mm of width (N). With gamma_1 and gamma_2 of its table the same formula serves a plate of sides a and b.
/// </summary>
public static class Strip
{
    private const string Clause = "Timoshenko and Woinowsky-Krieger, art. 37";

    /// <summary>Westergaard's radius: a small patch acts as if it were wider, 0.325 t at the least.</summary>
    internal static double r_0(double c, double t, Trace? trace) =>
        trace.Step("r_0", c < 0.5 * t ? Sqrt(1.6 * Pow(c, 2) + Pow(t, 2)) - 0.675 * t : c, "mm", "Westergaard", [In.Of(c), In.Of(t)]);

    internal static double M_x(double P, double a, double c, double xi, double nu, double gamma_1, Trace? trace) => trace.Step(
        "M_x", P / (4 * PI) * ((1 + nu) * Log(2 * a * Sin(PI * xi / a) / (PI * c)) + 1 + gamma_1), "N", Clause,
        [In.Of(P), In.Of(a), In.Of(c), In.Of(xi), In.Of(nu), In.Of(gamma_1)]);

    internal static double M_y(double P, double a, double c, double xi, double nu, double gamma_2, Trace? trace) => trace.Step(
        "M_y", P / (4 * PI) * ((1 + nu) * Log(2 * a * Sin(PI * xi / a) / (PI * c)) + nu + gamma_2), "N", Clause,
        [In.Of(P), In.Of(a), In.Of(c), In.Of(xi), In.Of(nu), In.Of(gamma_2)]);

    internal static double sigma(double M, double t, Trace? trace) => trace.Step("sigma", 6 * M / Pow(t, 2), "N/mm²", "statics", [In.Of(M), In.Of(t)]);

    /// <summary>Plate stiffness, Nmm.</summary>
    internal static double D(double E, double t, double nu, Trace? trace) =>
        trace.Step("D", E * Pow(t, 3) / (12 * (1 - Pow(nu, 2))), "Nmm", "plate theory", [In.Of(E), In.Of(t), In.Of(nu)]);

    /// <summary>Deflection under a point load at mid span of the strip, mm.</summary>
    internal static double w(double P, double a, double D, Trace? trace) =>
        trace.Step("w", 0.01695 * P * Pow(a, 2) / D, "mm", "Timoshenko and Woinowsky-Krieger, Table 23", [In.Of(P), In.Of(a), In.Of(D)]);

    private static readonly Parameter P = Input.Force("P"), A = Input.Length("a", 0.1, 5000), C = Input.Length("c", 0.001, 500), Xi = Input.Length("xi", 0.001, 5000), Nu = Input.Number("nu", 0, 0.5, 0.2);

    private static Rule Of(string name, string title, string unit, RuleFunction function, params Parameter[] inputs) =>
        new("plates.strip." + name, "Theory of Plates and Shells", "2nd ed.", Clause, title, unit, function, inputs);

    public static readonly Rule MomentX = Of("moment_x", "Moment across the studs under a patch", "N",
        (x, t) => Guard(x) ? M_x(x[0], x[1], x[2], x[3], x[4], x[5], t) : Over(x), P, A, C, Xi, Nu, Input.Number("gamma_1", -1, 1, 0));

    public static readonly Rule MomentY = Of("moment_y", "Moment along the studs under a patch", "N",
        (x, t) => Guard(x) ? M_y(x[0], x[1], x[2], x[3], x[4], x[5], t) : Over(x), P, A, C, Xi, Nu, Input.Number("gamma_2", -1, 1, 0));

    // The formula holds for a patch that is small against its distance from the support.
    private static bool Guard(ReadOnlySpan<double> x) => x[3] >= x[2] && x[1] - x[3] >= x[2];

    private static NotCovered Over(ReadOnlySpan<double> x) => new(Clause, "patch_over_support", Said.Length(Min(x[3], x[1] - x[3])), Said.Length(x[2]));

    public static readonly Rule Stress = Of("stress", "Bending stress of a plate from its moment", "N/mm²", (x, t) => sigma(x[0], x[1], t), Input.Force("M"), Input.Length("t", 1, 200));

    public static readonly Rule Stiffness = Of("stiffness", "Stiffness of a plate", "Nmm", (x, t) => D(x[0], x[1], x[2], t), Input.Stress("E", 1, 300000), Input.Length("t", 1, 200), Nu);

    public static readonly Rule Deflection = Of("deflection", "Deflection at mid span under a point load", "mm", (x, t) => w(x[0], x[1], x[2], t), P, A, Input.Number("D", 1, 1e12));

    public static readonly Rule Westergaard = new("plates.westergaard_radius", "Westergaard", "1926", "Westergaard", "Radius that stands for a small patch", "mm",
        (x, t) => r_0(x[0], x[1], t), Input.Length("c", 0, 500), Input.Length("t", 1, 200));

    public static IReadOnlyList<Rule> Rules => [MomentX, MomentY, Stress, Stiffness, Deflection, Westergaard];
}
