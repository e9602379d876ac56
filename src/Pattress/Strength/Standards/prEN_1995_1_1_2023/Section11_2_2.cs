using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.prEN_1995_1_1_2023;

/// <summary>prEN 1995-1-1:2023, 11.2.2.3: the second generation's withdrawal rule. A draft, and named as one wherever it is used.</summary>
public static class Section11_2_2
{
    private const string Document = "prEN 1995-1-1", Edition = "2023 (draft)", Clause = "prEN 1995-1-1:2023 11.2.2.3";

    /// <summary>Withdrawal strength, N/mm², over d times l_w; d in mm, rho_k in kg/m³.</summary>
    internal static double f_w_k(double d, double rho_k, Trace? trace) =>
        trace.Step("f_w_k", 20 * Pow(rho_k / 350, 0.8) * Pow(d, -0.2), "N/mm²", Clause, [In.Of(rho_k), In.Of(d)]);

    /// <summary>Withdrawal of one screw square to the grain, N; l_w is the length of thread in the wood without the point, mm.</summary>
    internal static double F_w_k(double d, double l_w, double rho_k, Trace? trace)
    {
        double f_w_k = Section11_2_2.f_w_k(d, rho_k, trace);
        return trace.Step("F_w_k", f_w_k * d * l_w, "N", Clause, [In.Of(f_w_k), In.Of(d), In.Of(l_w)]);
    }

    public static readonly Rule Strength = new("pren1995_1_1.11_2_2_3.withdrawal_strength", Document, Edition, Clause,
        "Withdrawal strength of screws (draft)", "N/mm²", (x, t) => f_w_k(x[0], x[1], t), Input.Length("d", 3, 14), Input.Density("rho_k"));

    public static readonly Rule Withdrawal = new("pren1995_1_1.11_2_2_3.withdrawal", Document, Edition, Clause,
        "Withdrawal of a screw (draft)", "N",
        (x, t) => x[1] < 4 * x[0] ? new NotCovered(Clause, "too_short", Said.Length(x[1]), Said.Length(4 * x[0])) : F_w_k(x[0], x[1], x[2], t),
        Input.Length("d", 3, 14), Input.Length("l_w", 1, 1000), Input.Density("rho_k"));

    public static IReadOnlyList<Rule> Rules => [Strength, Withdrawal];
}
