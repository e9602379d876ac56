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

    /// <summary>
    /// Table 11.3.1: adjusted value, W' = W p C_D C_M C_t; wet in service 0.7, for smooth nails 0.25. Toe-nailed 0.67, without C_M (12.5.4.1).
    /// In end grain a lag screw holds 0.75 (12.5.2.1); wood screws and nails may not be pulled there. From memory.
    /// </summary>
    internal static double Adjusted(double W, double p, double duration, double wet, double C_t, Setting setting, Trace? trace)
    {
        double C_D = trace.LookUp("C_D", DurationFactors[(int)duration], "", Head + "Table 2.3.2");
        double C_M = setting.Nail
            ? trace.Step("C_M", wet > 0 ? 0.25 : 1, "", Head + "Table 11.3.3", [In.Of(wet)])
            : trace.Step("C_M", wet > 0 ? 0.7 : 1, "", Head + "Table 11.3.3", [In.Of(wet)]);
        if (setting.Toe)
        {
            double C_tn = trace.LookUp("C_tn", 0.67, "", Head + "12.5.4.1");
            return trace.Step("W_adj", W * p * C_D * C_t * C_tn, "N", Head + "Table 11.3.1", [In.Of(W), In.Of(p), In.Of(C_D), In.Of(C_t), In.Of(C_tn)]);
        }
        double W_adj = trace.Step("W_adj", W * p * C_D * C_M * C_t, "N", Head + "Table 11.3.1", [In.Of(W), In.Of(p), In.Of(C_D), In.Of(C_M), In.Of(C_t)]);
        if (!setting.End) return W_adj;
        double C_eg = trace.LookUp("C_eg", 0.75, "", Head + "12.5.2.1");
        return trace.Step("W_eg", C_eg * W_adj, "N", Head + "Table 11.3.1", [In.Of(C_eg), In.Of(W_adj)]);
    }

    /// <summary>How a fastener stands: a smooth nail, in end grain, driven as a toe-nail.</summary>
    internal readonly record struct Setting(bool Nail, bool End, bool Toe);

    private static RuleResult Pulled(ReadOnlySpan<double> x, Trace? trace)
    {
        bool nail = x[5] == 1, end = x[6] == 1, toe = x[7] == 1;
        if (end && x[5] != 2) return new NotCovered(Head + (nail ? "12.2.3" : "12.2.2.3"), "no_entry", Said.Words("end"));
        if (toe && !nail) return new NotCovered(Head + "12.5.4", "no_entry", Said.Words("toe_nailed"));
        return Adjusted(x[0], x[1], x[2], x[3], x[4], new Setting(nail, end, toe), trace);
    }

    /// <summary>(12.2-4): smooth nails of stainless steel, 465 G^1.5 D lb/in. From memory.</summary>
    internal static double W_stainless(double G, double D, Trace? trace) =>
        trace.Step("W", 465 * Pow(G, 1.5) * D * 0.0068947572931683613, "N/mm", Head + "(12.2-4)", [In.Of(G), In.Of(D)]);

    /// <summary>(12.2-5): ring-shank nails (roof sheathing, post frame), 1800 G² D lb/in. From memory.</summary>
    internal static double W_ring(double G, double D, Trace? trace) =>
        trace.Step("W", 1800 * Pow(G, 2) * D * 0.0068947572931683613, "N/mm", Head + "(12.2-5)", [In.Of(G), In.Of(D)]);

    /// <summary>(12.2-6): a round head of D_H pulled through a side member of t_ns (mm), N. From memory.</summary>
    internal static double W_H(double G, double D_H, double t_ns, Trace? trace) => trace.Step("W_H",
        t_ns <= 2.5 * D_H ? 690 * PI * D_H * Pow(G, 2) * t_ns * 0.0068947572931683613 : 1725 * PI * Pow(D_H, 2) * Pow(G, 2) * 0.0068947572931683613, "N", Head + "(12.2-6)",
        [In.Of(G), In.Of(D_H), In.Of(t_ns)]);

    private static readonly Parameter G = Input.Number("G", 0.31, 0.73);

    private static Rule Of(string id, string clause, string title, RuleFunction function, double least, double most) =>
        new("nds.12_2." + id, Document, Edition, Head + clause, title, "N/mm", function, G, Input.Length("D", least, most));

    public static readonly Rule LagScrew = Of("lag_screw", "12.2.1 (12.2-1)", "Withdrawal of lag screws", (x, t) => W_lag(x[0], x[1], t), 6.35, 31.75);

    public static readonly Rule WoodScrew = Of("wood_screw", "12.2.2 (12.2-2)", "Withdrawal of wood screws", (x, t) => W_screw(x[0], x[1], t), 2.1, 9.45);

    public static readonly Rule Nail = Of("nail", "12.2.3 (12.2-3)", "Withdrawal of smooth nails", (x, t) => W_nail(x[0], x[1], t), 2.5, 9.53);

    public static readonly Rule AdjustedWithdrawal = new("nds.11_3.withdrawal", Document, Edition, Head + "Table 11.3.1", "Adjusted withdrawal design value", "N",
        Pulled,
        Input.Number("W", 0, 1000), Input.Length("p", 1, 300), Parameter.Choice("duration", [.. Durations.Words]), Parameter.Choice("wet", "no", "yes") with { Default = 0 }, Input.Number("C_t", 0.5, 1, 1),
        Parameter.Choice("fastener", "wood_screw", "nail", "lag_screw") with { Default = 0 }, Parameter.Choice("grain", "side", "end") with { Default = 0 }, Parameter.Choice("toe_nailed", "no", "yes") with { Default = 0 });

    public static readonly Rule StainlessNail = Of("nail_stainless", "12.2.3 (12.2-4)", "Withdrawal of smooth nails of stainless steel", (x, t) => W_stainless(x[0], x[1], t), 2.5, 9.53);

    public static readonly Rule RingShankNail = Of("nail_ring_shank", "12.2.3 (12.2-5)", "Withdrawal of ring-shank nails", (x, t) => W_ring(x[0], x[1], t), 2.5, 9.53);

    public static readonly Rule HeadPullThrough = new("nds.12_2.head_pull_through", Document, Edition, Head + "12.2.5 (12.2-6)", "Pull-through of a round head", "N",
        (x, t) => W_H(x[0], x[1], x[2], t), G, Input.Length("D_H", 2, 25.4), Input.Length("t_ns", 1, 150));

    public static IReadOnlyList<Rule> Rules => [LagScrew, WoodScrew, Nail, StainlessNail, RingShankNail, HeadPullThrough, AdjustedWithdrawal];
}
