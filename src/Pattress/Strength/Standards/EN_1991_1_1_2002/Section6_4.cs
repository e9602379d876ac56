using Pattress.Working;

namespace Pattress.Strength.Standards.EN_1991_1_1_2002;

/// <summary>EN 1991-1-1:2002, 6.4 Table 6.12 (horizontal line loads on partition walls and parapets) and Annex A (weights of stored things).</summary>
public static class Section6_4
{
    private const string Document = "EN 1991-1-1", Edition = "2002", Head = "EN 1991-1-1:2002 ";
    private static readonly StandardTable Lines = StandardTable.Read("en1991_1_1_line_load"), Weights = StandardTable.Read("en1991_1_1_weight");
    private static readonly double[] LineLoads = Lines.Column("q_k_kn_per_m"), UnitWeights = Weights.Column("gamma_kn_per_m3");

    internal static double q_k(double category, Trace? trace) => trace.LookUp("q_k", LineLoads[(int)category], "N/mm", Head + "Table 6.12");

    /// <summary>Annex A: weight of a thing, N, from its volume in mm³; gamma in kN/m³ is 1e-6 N/mm³.</summary>
    internal static double Weight(double of, double a, double b, double c, Trace? trace)
    {
        double gamma = trace.LookUp("gamma", UnitWeights[(int)of], "kN/m³", Head + "Annex A");
        return trace.Step("G", gamma * 1e-6 * a * b * c, "N", Head + "Annex A", [In.Of(gamma), In.Of(a), In.Of(b), In.Of(c)]);
    }

    public static readonly Rule LineLoad = new("en1991_1_1.6_4.line_load", Document, Edition, Head + "6.4 Table 6.12",
        "Horizontal line load on a partition or parapet (recommended value)", "N/mm", (x, t) => q_k(x[0], t), Parameter.Choice("category", [.. Lines.Words]));

    public static readonly Rule StoredWeight = new("en1991_1_1.a.weight", Document, Edition, Head + "Annex A",
        "Weight of stored books, glass, timber, boards, metal and water by volume", "N", (x, t) => Weight(x[0], x[1], x[2], x[3], t),
        Parameter.Choice("of", [.. Weights.Words]), Input.Length("length"), Input.Length("depth"), Input.Length("height"));

    public static IReadOnlyList<Rule> Rules => [LineLoad, StoredWeight];
}
