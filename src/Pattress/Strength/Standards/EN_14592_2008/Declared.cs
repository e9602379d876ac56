using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.EN_14592_2008;

/// <summary>
/// EN 14592:2008+A1:2012: what a maker declares of a screw from tests, and EN 1995-1-1 (8.40a), which uses it where the screw
/// lies outside 8.7.2(2), as all screws under 6 mm do.
/// </summary>
public static class Declared
{
    private const string Clause = "EN 14592:2008 with EN 1995-1-1:2004+A1:2008 (8.40a)";

    /// <summary>Withdrawal of one screw, N: f_ax_k (N/mm²) declared at density rho_a; d, l_ef in mm; alpha to the grain.</summary>
    internal static double F_ax_Rk(double f_ax_k, double d, double l_ef, double rho_k, double rho_a, double alpha, Trace? trace) => trace.Step(
        "F_ax_Rk", f_ax_k * d * l_ef / (1.2 * Pow(Cos(alpha * PI / 180), 2) + Pow(Sin(alpha * PI / 180), 2)) * Pow(rho_k / rho_a, 0.8), "N", Clause,
        [In.Of(f_ax_k), In.Of(d), In.Of(l_ef), In.Of(rho_k), In.Of(rho_a), In.Of(alpha)]);

    public static readonly Rule Withdrawal = new("en14592.declared.withdrawal", "EN 14592", "2008+A1:2012", Clause,
        "Withdrawal of a screw by its declared parameter", "N", (x, t) => F_ax_Rk(x[0], x[1], x[2], x[3], x[4], x[5], t),
        Input.Stress("f_ax_k", 0.1, 100), Input.Length("d", 2.4, 24), Input.Length("l_ef", 1, 1000), Input.Density("rho_k"), Input.Density("rho_a", or: 350),
        Input.Angle("alpha", 30, 90, 90));

    public static IReadOnlyList<Rule> Rules => [Withdrawal];
}
