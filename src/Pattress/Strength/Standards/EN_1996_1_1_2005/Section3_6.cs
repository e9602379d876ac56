using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.EN_1996_1_1_2005;

/// <summary>
/// EN 1996-1-1:2005+A1:2012, 3.6.1.2: compressive strength of masonry, N/mm², from units f_b and mortar f_m (N/mm²).
/// It says how well a wall stands, never how much a plug holds.
/// </summary>
public static class Section3_6
{
    private const string Document = "EN 1996-1-1", Edition = "2005+A1:2012", Head = "EN 1996-1-1:2005+A1:2012 ";

    private static readonly StandardTable Constants = StandardTable.Read("en1996_1_1_k");
    private static readonly double?[][] K = [.. new[] { "general", "thin_layer", "lightweight_600", "lightweight_800" }.Select(Constants.MaybeColumn)];
    private static readonly string[] Units = [.. Constants.Words], Clauses = [.. Constants.Words.Select(w => Head + "Table 3.3, " + w)];

    // Table 3.3, recommended values, from memory: a gap is a mortar that the table does not pair with the unit.
    private static RuleResult Constant(double unit, double mortar, Trace? trace) => K[(int)mortar][(int)unit] is { } k
        ? trace.LookUp("K", k, "", Clauses[(int)unit]) : new NotCovered(Head + "Table 3.3", "no_entry", Said.Words(Units[(int)unit]));

    /// <summary>(3.2): general purpose and lightweight mortar.</summary>
    internal static double f_k(double K, double f_b, double f_m, Trace? trace) =>
        trace.Step("f_k", K * Pow(f_b, 0.7) * Pow(f_m, 0.3), "N/mm²", Head + "(3.2)", [In.Of(K), In.Of(f_b), In.Of(f_m)]);

    /// <summary>(3.3): thin layer mortar, clay units of groups 1 and 4, calcium silicate, aggregate concrete, aerated.</summary>
    internal static double f_k_thin(double K, double f_b, Trace? trace) =>
        trace.Step("f_k", K * Pow(f_b, 0.85), "N/mm²", Head + "(3.3)", [In.Of(K), In.Of(f_b)]);

    /// <summary>(3.4): thin layer mortar, clay units of groups 2 and 3. From memory.</summary>
    internal static double f_k_thin_hollow(double K, double f_b, Trace? trace) =>
        trace.Step("f_k", K * Pow(f_b, 0.7), "N/mm²", Head + "(3.4)", [In.Of(K), In.Of(f_b)]);

    public static readonly Rule ThinLayerHollow = new("en1996_1_1.3_6_1_2.f_k_thin_layer_hollow", Document, Edition, Head + "3.6.1.2 (3.4)",
        "Strength of masonry of hollow clay units (groups 2, 3) in thin layer mortar", "N/mm²", (x, t) => f_k_thin_hollow(x[0], x[1], t), Input.Number("K", 0.2, 1), Input.Stress("f_b", 0.5, 50));

    public static readonly Rule Strength = new("en1996_1_1.3_6_1_2.f_k", Document, Edition, Head + "3.6.1.2 (3.2)", "Strength of masonry in general purpose mortar", "N/mm²",
        (x, t) => x[2] > 2 * x[1] ? new NotCovered(Head + "3.6.1.2(2)", "above_limit", Said.Words("f_m"), Said.Plain(x[2]), Said.Plain(2 * x[1])) : f_k(x[0], x[1], x[2], t),
        Input.Number("K", 0.2, 1), Input.Stress("f_b", 0.5, 75), Input.Stress("f_m", 0.5, 20));

    public static readonly Rule ThinLayerStrength = new("en1996_1_1.3_6_1_2.f_k_thin_layer", Document, Edition, Head + "3.6.1.2 (3.3)",
        "Strength of masonry in thin layer mortar", "N/mm²", (x, t) => f_k_thin(x[0], x[1], t), Input.Number("K", 0.2, 1), Input.Stress("f_b", 0.5, 50));

    public static readonly Rule TableConstant = new("en1996_1_1.table_3_3.k", Document, Edition, Head + "Table 3.3", "Constant K of masonry by unit, group and mortar (recommended value)", "",
        (x, t) => Constant(x[0], x[1], t), Parameter.Choice("unit", [.. Constants.Words]), Parameter.Choice("mortar", "general", "thin_layer", "lightweight_600", "lightweight_800"));

    public static IReadOnlyList<Rule> Rules => [Strength, ThinLayerStrength, ThinLayerHollow, TableConstant];
}
