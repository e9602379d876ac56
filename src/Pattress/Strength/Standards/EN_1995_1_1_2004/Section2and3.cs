using Pattress.Working;

namespace Pattress.Strength.Standards.EN_1995_1_1_2004;

/// <summary>EN 1995-1-1:2004+A1:2008, 2.4 and Tables 2.3 and 3.1: from characteristic to design resistance.</summary>
public static class Section2and3
{
    private const string Document = "EN 1995-1-1", Edition = "2004+A1:2008", Head = "EN 1995-1-1:2004+A1:2008 ";

    private static readonly StandardTable Kmod = StandardTable.Read("en1995_1_1_k_mod"), GammaM = StandardTable.Read("en1995_1_1_gamma_m");
    private static readonly double[][] KmodColumns = [Kmod.Column("service_class_1"), Kmod.Column("service_class_2"), Kmod.Column("service_class_3")];
    private static readonly double[] GammaMs = GammaM.Column("gamma_m");

    /// <summary>Table 3.1, solid timber: k_mod by duration (permanent, long, medium, short, instantaneous) and service class 1 to 3.</summary>
    internal static double k_mod(double duration, double service_class, Trace? trace) =>
        trace.LookUp("k_mod", KmodColumns[(int)service_class - 1][(int)duration], "", Head + "Table 3.1, solid timber");

    /// <summary>Table 2.3: gamma_M by what it is applied to.</summary>
    internal static double gamma_M(double of, Trace? trace) => trace.LookUp("gamma_M", GammaMs[(int)of], "", Head + "Table 2.3");

    /// <summary>(2.17): design resistance, N.</summary>
    internal static double R_d(double R_k, double k_mod, double gamma_M, Trace? trace) =>
        trace.Step("R_d", k_mod * R_k / gamma_M, "N", Head + "(2.17)", [In.Of(k_mod), In.Of(R_k), In.Of(gamma_M)]);

    public static readonly Rule Modification = new("en1995_1_1.3_1.k_mod", Document, Edition, Head + "3.1.3 Table 3.1",
        "Modification for duration and service class, solid timber, glulam and LVL", "",
        (x, t) => k_mod(x[0], x[1], t),
        Parameter.Choice("duration", [.. Kmod.Words]), Input.Whole("service_class", 1, 3));

    public static readonly Rule PartialFactor = new("en1995_1_1.2_3.gamma_m", Document, Edition, Head + "2.4.1 Table 2.3",
        "Partial factor for a material", "", (x, t) => gamma_M(x[0], t), Parameter.Choice("of", [.. GammaM.Words]));

    public static readonly Rule Design = new("en1995_1_1.2_4.design_resistance", Document, Edition, Head + "2.4.3 (2.17)",
        "Design resistance", "N", (x, t) => R_d(x[0], x[1], x[2], t), Input.Force("R_k"), Input.Number("k_mod", 0.1, 1.1), Input.Number("gamma_M", 1, 2, 1.3));

    public static IReadOnlyList<Rule> Rules => [Modification, PartialFactor, Design];
}
