using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.EN_1995_1_1_2004;

/// <summary>
/// EN 1995-1-1:2004+A1:2008, 8.5.1.1: embedment and effective number of bolts, and by 8.7.1(4) of laterally loaded screws over 6 mm, such as coach
/// screws: their strength falls with the angle to the grain. From memory and a public program: no document seen.
/// </summary>
public static class Section8_5
{
    private const string Document = "EN 1995-1-1", Edition = "2004+A1:2008", Head = "EN 1995-1-1:2004+A1:2008 ";
    private static readonly double[] Bases = [1.35, 1.30, 0.90];

    /// <summary>(8.31) to (8.33), N/mm²; d in mm, rho_k in kg/m³, alpha to the grain.</summary>
    internal static double f_h_alpha(double rho_k, double d, double alpha, double wood, Trace? trace)
    {
        double f_h_0 = trace.Step("f_h_0", 0.082 * (1 - 0.01 * d) * rho_k, "N/mm²", Head + "(8.32)", [In.Of(d), In.Of(rho_k)]);
        double k_wood = trace.LookUp("k_wood", Bases[(int)wood], "", Head + "(8.33)");
        double k_90 = trace.Step("k_90", k_wood + 0.015 * d, "", Head + "(8.33)", [In.Of(k_wood), In.Of(d)]);
        return trace.Step("f_h_alpha", f_h_0 / (k_90 * Pow(Sin(alpha * PI / 180), 2) + Pow(Cos(alpha * PI / 180), 2)), "N/mm²", Head + "(8.31)",
            [In.Of(f_h_0), In.Of(k_90), In.Of(alpha)]);
    }

    /// <summary>(8.34): effective number of n in a row along the grain, a_1 (mm) apart.</summary>
    internal static double n_ef(double n, double a_1, double d, Trace? trace) =>
        trace.Step("n_ef", Min(n, Pow(n, 0.9) * Pow(a_1 / (13 * d), 0.25)), "", Head + "(8.34)", [In.Of(n), In.Of(a_1), In.Of(d)]);

    public static readonly Rule Embedment = new("en1995_1_1.8_5_1.embedment", Document, Edition, Head + "8.5.1.1 (8.31) to (8.33)",
        "Embedment strength of bolts and of screws over 6 mm, at an angle to the grain", "N/mm²", (x, t) => f_h_alpha(x[0], x[1], x[2], x[3], t),
        Input.Density("rho_k"), Input.Length("d", 6, 30), Input.Angle("alpha", 0, 90, 0), Parameter.Choice("wood", "softwood", "lvl", "hardwood") with { Default = 0 });

    public static readonly Rule EffectiveNumber = new("en1995_1_1.8_5_1.effective_number", Document, Edition, Head + "8.5.1.1 (8.34)",
        "Effective number of bolts or of screws over 6 mm in a row along the grain", "",
        (x, t) => x[1] < 5 * x[2] ? new NotCovered(Head + "Table 8.4", "too_close", Said.Length(x[1]), Said.Length(5 * x[2])) : n_ef(x[0], x[1], x[2], t),
        Input.Count("n", 100), Input.Length("a_1", 1, 10000), Input.Length("d", 6, 30));

    public static IReadOnlyList<Rule> Rules => [Embedment, EffectiveNumber];
}
