using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.NDS_2018;

/// <summary>
/// NDS 2018, 12.2 and 11.3: reference withdrawal, for each length of thread in the wood, N/mm (allowable; G specific gravity,
/// D in mm), and its adjustment. Written with psi in N/mm² so that inches and millimetres give the same.
/// </summary>
public static class Section12_2
{
    internal const double Psi = 0.0068947572931683613;
    private const string Document = "NDS", Edition = "2018", Head = "NDS 2018 ";

    /// <summary>(12.2-1): lag screws, 1800 G^1.5 D^0.75 lb/in with D in inches.</summary>
    internal static double W_lag(double G, double D, Trace? trace) =>
        trace.Step("W", 1800 * Pow(G, 1.5) * Pow(D / 25.4, 0.75) * 0.17512683524647638, "N/mm", Head + "(12.2-1)", [In.Of(G), In.Of(D)]);

    /// <summary>(12.2-2): wood screws, 2850 G² D lb/in.</summary>
    internal static double W_screw(double G, double D, Trace? trace) =>
        trace.Step("W", 2850 * Pow(G, 2) * D * 0.0068947572931683613, "N/mm", Head + "(12.2-2)", [In.Of(G), In.Of(D)]);

    /// <summary>(12.2-3): smooth nails, 1380 G^2.5 D lb/in.</summary>
    internal static double W_nail(double G, double D, Trace? trace) =>
        trace.Step("W", 1380 * Pow(G, 2.5) * D * 0.0068947572931683613, "N/mm", Head + "(12.2-3)", [In.Of(G), In.Of(D)]);

    private static readonly StandardTable Durations = StandardTable.Read("nds_load_duration");
    private static readonly double[] DurationFactors = Durations.Column("c_d");

    /// <summary>Table 11.3.1: adjusted value, W' = W p C_D C_M C_t; wet in service 0.7 (0.25 for nails); end grain not for screws.</summary>
    internal static double Adjusted(double W, double p, double duration, double wet, double C_t, Trace? trace)
    {
        double C_D = trace.LookUp("C_D", DurationFactors[(int)duration], "", Head + "Table 2.3.2");
        double C_M = trace.Step("C_M", wet > 0 ? 0.7 : 1, "", Head + "Table 11.3.3", [In.Of(wet)]);
        return trace.Step("W_adj", W * p * C_D * C_M * C_t, "N", Head + "Table 11.3.1", [In.Of(W), In.Of(p), In.Of(C_D), In.Of(C_M), In.Of(C_t)]);
    }

    private static readonly Parameter G = Input.Number("G", 0.31, 0.73);

    private static Rule Of(string id, string clause, string title, RuleFunction function, double least, double most) =>
        new("nds.12_2." + id, Document, Edition, Head + clause, title, "N/mm", function, G, Input.Length("D", least, most));

    public static readonly Rule LagScrew = Of("lag_screw", "12.2.1 (12.2-1)", "Withdrawal of lag screws", (x, t) => W_lag(x[0], x[1], t), 6.35, 31.75);

    public static readonly Rule WoodScrew = Of("wood_screw", "12.2.2 (12.2-2)", "Withdrawal of wood screws", (x, t) => W_screw(x[0], x[1], t), 2.1, 9.45);

    public static readonly Rule Nail = Of("nail", "12.2.3 (12.2-3)", "Withdrawal of smooth nails", (x, t) => W_nail(x[0], x[1], t), 2.5, 9.53);

    public static readonly Rule AdjustedWithdrawal = new("nds.11_3.withdrawal", Document, Edition, Head + "Table 11.3.1", "Adjusted withdrawal design value", "N",
        (x, t) => Adjusted(x[0], x[1], x[2], x[3], x[4], t),
        Input.Number("W", 0, 1000), Input.Length("p", 1, 300), Parameter.Choice("duration", [.. Durations.Words]), Parameter.Choice("wet", "no", "yes") with { Default = 0 }, Input.Number("C_t", 0.5, 1, 1));

    public static IReadOnlyList<Rule> Rules => [LagScrew, WoodScrew, Nail, AdjustedWithdrawal];
}
