using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.NDS_2018;

/// <summary>NDS 2018, lateral adjustment and 12.4: a screw under withdrawal and lateral load at once. N.</summary>
public static class Section12_4
{
    private const string Document = "NDS", Edition = "2018", Head = "NDS 2018 ";
    private static readonly StandardTable Durations = StandardTable.Read("nds_load_duration");
    private static readonly double[] DurationFactors = Durations.Column("c_d");

    /// <summary>Table 11.3.1: adjusted lateral value, Z' = Z C_D C_M C_t (one fastener below 1/4 in: C_g and C_delta are 1); wet in service 0.7.</summary>
    internal static double Z_adj(double Z, double duration, double wet, double C_t, Trace? trace)
    {
        double C_D = trace.LookUp("C_D", DurationFactors[(int)duration], "", Head + "Table 2.3.2");
        double C_M = trace.Step("C_M", wet > 0 ? 0.7 : 1, "", Head + "Table 11.3.3", [In.Of(wet)]);
        return trace.Step("Z_adj", Z * C_D * C_M * C_t, "N", Head + "Table 11.3.1", [In.Of(Z), In.Of(C_D), In.Of(C_M), In.Of(C_t)]);
    }

    /// <summary>The same in end grain, 0.67 (12.5.2.2), and toe-nailed, 0.83 (12.5.4.2). From memory.</summary>
    internal static double Z_adj(double Z, double duration, double wet, double C_t, double grain, double toe_nailed, Trace? trace)
    {
        double Z_adj = Section12_4.Z_adj(Z, duration, wet, C_t, trace);
        if (grain == 0 && toe_nailed == 0) return Z_adj;
        double C_eg = trace.LookUp("C_eg", grain == 1 ? 0.67 : 1, "", Head + "12.5.2.2"), C_tn = trace.LookUp("C_tn", toe_nailed == 1 ? 0.83 : 1, "", Head + "12.5.4.2");
        return trace.Step("Z_set", Z_adj * C_eg * C_tn, "N", Head + "Table 11.3.1", [In.Of(Z_adj), In.Of(C_eg), In.Of(C_tn)]);
    }

    /// <summary>(12.4-2): the same for nails, without the squares. From memory.</summary>
    internal static double Z_alpha_nail(double W_p, double Z_adj, double alpha, Trace? trace) => trace.Step(
        "Z_alpha", W_p * Z_adj / (W_p * Cos(PI * alpha / 180) + Z_adj * Sin(PI * alpha / 180)), "N", Head + "(12.4-2)", [In.Of(W_p), In.Of(Z_adj), In.Of(alpha)]);

    /// <summary>(12.4-1): allowable load at an angle alpha between the wood's surface and the load; W_p = W' p. N, degrees.</summary>
    internal static double Z_alpha(double W_p, double Z_adj, double alpha, Trace? trace) => trace.Step(
        "Z_alpha", W_p * Z_adj / (W_p * Pow(Cos(PI * alpha / 180), 2) + Z_adj * Pow(Sin(PI * alpha / 180), 2)), "N", Head + "(12.4-1)", [In.Of(W_p), In.Of(Z_adj), In.Of(alpha)]);

    public static readonly Rule Adjusted = new("nds.11_3.lateral", Document, Edition, Head + "Table 11.3.1", "Adjusted lateral design value", "N",
        (x, t) => Z_adj(x[0], x[1], x[2], x[3], x[4], x[5], t), Input.Force("Z"), Parameter.Choice("duration", [.. Durations.Words]),
        Parameter.Choice("wet", "no", "yes") with { Default = 0 }, Input.Number("C_t", 0.5, 1, 1),
        Parameter.Choice("grain", "side", "end") with { Default = 0 }, Parameter.Choice("toe_nailed", "no", "yes") with { Default = 0 });

    public static readonly Rule Combined = new("nds.12_4.combined", Document, Edition, Head + "12.4.1 (12.4-1)", "Withdrawal and lateral load at once", "N",
        (x, t) => x[3] == 0 ? Z_alpha(x[0], x[1], x[2], t) : Z_alpha_nail(x[0], x[1], x[2], t),
        Input.Force("W_p", 1e-3), Input.Force("Z_adj", 1e-3), Input.Angle("alpha", 0, 90), Parameter.Choice("fastener", "screw", "nail") with { Default = 0 });

    public static IReadOnlyList<Rule> Rules => [Adjusted, Combined];
}
