using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.USDA_Wood_Handbook_2010;

/// <summary>Wood Handbook (USDA), chapter 8: mean ultimate withdrawal of wood screws from side grain, N. From memory: no document seen.</summary>
public static class Chapter8
{
    private const string Clause = "Wood Handbook 2010 (8-11)";

    /// <summary>G specific gravity (oven dry), D shank diameter, L thread in the wood (mm).</summary>
    internal static double p(double G, double D, double L, Trace? trace) =>
        trace.Step("p", 108.25 * Pow(G, 2) * D * L, "N", Clause, [In.Of(G), In.Of(D), In.Of(L)]);

    public static readonly Rule Withdrawal = new("wood_handbook.8.screw_withdrawal", "Wood Handbook", "2010", Clause, "Mean ultimate withdrawal of wood screws", "N",
        (x, t) => p(x[0], x[1], x[2], t), Input.Number("G", 0.2, 0.9), Input.Length("D", 1.5, 10), Input.Length("L", 1, 150));

    public static IReadOnlyList<Rule> Rules => [Withdrawal];
}
