using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.NDS_2018;

/// <summary>NDS 2018, lateral adjustment and 12.4: a screw under withdrawal and lateral load at once. N.</summary>
public static class Section12_4
{
    private const string Document = "NDS", Edition = "2018", Head = "NDS 2018 ";
    private static readonly StandardTable Durations = StandardTable.Read("nds_load_duration");
    private static readonly double[] DurationFactors = Durations.Column("c_d");

    /// <summary>Table 11.3.1: adjusted lateral value, Z' = Z C_D C_M C_t (one screw in side grain, so C_g, C_delta, C_eg, C_di, C_tn are 1); wet in service 0.7.</summary>
    internal static double Z_adj(double Z, double duration, double wet, double C_t, Trace? trace)
    {
        double C_D = trace.LookUp("C_D", DurationFactors[(int)duration], "", Head + "Table 2.3.2");
        double C_M = trace.Step("C_M", wet > 0 ? 0.7 : 1, "", Head + "Table 11.3.3", [In.Of(wet)]);
        return trace.Step("Z_adj", Z * C_D * C_M * C_t, "N", Head + "Table 11.3.1", [In.Of(Z), In.Of(C_D), In.Of(C_M), In.Of(C_t)]);
    }

    /// <summary>(12.4-1): allowable load at an angle alpha between the wood's surface and the load; W_p = W' p. N, degrees.</summary>
    internal static double Z_alpha(double W_p, double Z_adj, double alpha, Trace? trace) => trace.Step(
        "Z_alpha", W_p * Z_adj / (W_p * Pow(Cos(PI * alpha / 180), 2) + Z_adj * Pow(Sin(PI * alpha / 180), 2)), "N", Head + "(12.4-1)", [In.Of(W_p), In.Of(Z_adj), In.Of(alpha)]);

    public static readonly Rule Adjusted = new("nds.11_3.lateral", Document, Edition, Head + "Table 11.3.1", "Adjusted lateral design value", "N",
        (x, t) => Z_adj(x[0], x[1], x[2], x[3], t), Input.Force("Z"), Parameter.Choice("duration", [.. Durations.Words]),
        Parameter.Choice("wet", "no", "yes") with { Default = 0 }, Input.Number("C_t", 0.5, 1, 1));

    public static readonly Rule Combined = new("nds.12_4.combined", Document, Edition, Head + "12.4.1 (12.4-1)", "Withdrawal and lateral load at once", "N",
        (x, t) => Z_alpha(x[0], x[1], x[2], t), Input.Force("W_p", 1e-3), Input.Force("Z_adj", 1e-3), Input.Angle("alpha", 0, 90));

    public static IReadOnlyList<Rule> Rules => [Adjusted, Combined];
}
