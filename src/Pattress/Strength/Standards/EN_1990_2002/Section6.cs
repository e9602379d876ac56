using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.EN_1990_2002;

/// <summary>EN 1990:2002+A1:2005, 6.4.3.2 with Table A1.2: combinations of permanent G and variable Q actions (N), for the structure's own strength.</summary>
public static class Section6
{
    private const string Document = "EN 1990", Edition = "2002+A1:2005", Head = "EN 1990:2002+A1:2005 ";

    /// <summary>(6.10).</summary>
    internal static double E_d(double G, double Q, double gamma_G, double gamma_Q, Trace? trace) =>
        trace.Step("E_d", gamma_G * G + gamma_Q * Q, "N", Head + "(6.10)", [In.Of(gamma_G), In.Of(G), In.Of(gamma_Q), In.Of(Q)]);

    /// <summary>(6.10a): the variable action reduced by psi_0.</summary>
    internal static double E_d_a(double G, double Q, double gamma_G, double gamma_Q, double psi_0, Trace? trace) => trace.Step(
        "E_d_a", gamma_G * G + gamma_Q * psi_0 * Q, "N", Head + "(6.10a)", [In.Of(gamma_G), In.Of(G), In.Of(gamma_Q), In.Of(psi_0), In.Of(Q)]);

    /// <summary>(6.10b): the permanent action reduced by xi (0.85; 0.925 in the UK).</summary>
    internal static double E_d_b(double G, double Q, double gamma_G, double gamma_Q, double xi, Trace? trace) => trace.Step(
        "E_d_b", xi * gamma_G * G + gamma_Q * Q, "N", Head + "(6.10b)", [In.Of(xi), In.Of(gamma_G), In.Of(G), In.Of(gamma_Q), In.Of(Q)]);

    /// <summary>The less favourable of (6.10a) and (6.10b).</summary>
    internal static double E_d_ab(double G, double Q, double gamma_G, double gamma_Q, double psi_0, double xi, Trace? trace)
    {
        double E_d_a = Section6.E_d_a(G, Q, gamma_G, gamma_Q, psi_0, trace), E_d_b = Section6.E_d_b(G, Q, gamma_G, gamma_Q, xi, trace);
        return trace.Step("E_d", Max(E_d_a, E_d_b), "N", Head + "(6.10a/b)", [In.Of(E_d_a), In.Of(E_d_b)]);
    }

    /// <summary>A permanent action that helps: gamma_G,inf 0.9 for balance (EQU), 1.0 for strength (STR).</summary>
    internal static double Favourable(double G, double state, Trace? trace)
    {
        double gamma_G_inf = trace.Step("gamma_G_inf", state == 0 ? 0.9 : 1.0, "", Head + "Table A1.2", [In.Of(state)]);
        return trace.Step("E_stb", gamma_G_inf * G, "N", Head + "Table A1.2", [In.Of(gamma_G_inf), In.Of(G)]);
    }

    private static readonly Parameter G = Input.Force("G"), Q = Input.Force("Q"), gamma_G = Input.Number("gamma_G", 0.8, 2, 1.35), gamma_Q = Input.Number("gamma_Q", 0, 2, 1.5),
        psi_0 = Input.Number("psi_0", 0, 1, 0.7), xi = Input.Number("xi", 0.5, 1, 0.925);

    public static readonly Rule Combination = new("en1990.6_4_3_2.6_10", Document, Edition, Head + "(6.10)", "Design effect of actions", "N",
        (x, t) => E_d(x[0], x[1], x[2], x[3], t), G, Q, gamma_G, gamma_Q);

    public static readonly Rule CombinationA = new("en1990.6_4_3_2.6_10a", Document, Edition, Head + "(6.10a)", "Design effect, variable action reduced", "N",
        (x, t) => E_d_a(x[0], x[1], x[2], x[3], x[4], t), G, Q, gamma_G, gamma_Q, psi_0);

    public static readonly Rule CombinationB = new("en1990.6_4_3_2.6_10b", Document, Edition, Head + "(6.10b)", "Design effect, permanent action reduced", "N",
        (x, t) => E_d_b(x[0], x[1], x[2], x[3], x[4], t), G, Q, gamma_G, gamma_Q, xi);

    public static readonly Rule CombinationAB = new("en1990.6_4_3_2.6_10ab", Document, Edition, Head + "(6.10a/b)", "Design effect, the worse of (6.10a) and (6.10b)", "N",
        (x, t) => E_d_ab(x[0], x[1], x[2], x[3], x[4], x[5], t), G, Q, gamma_G, gamma_Q, psi_0, xi);

    public static readonly Rule Stabilising = new("en1990.a1.favourable", Document, Edition, Head + "Table A1.2", "A permanent action that helps", "N",
        (x, t) => Favourable(x[0], x[1], t), G, Parameter.Choice("state", "equ", "str"));

    public static IReadOnlyList<Rule> Rules => [Combination, CombinationA, CombinationB, CombinationAB, Stabilising, AnnexB.TargetIndex];
}
