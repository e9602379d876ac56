using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.ISO_898_1_2013;

/// <summary>ISO 898-1:2013: stress area, proof load and ultimate load of bolts and screws; d and pitch P in mm, A_s in mm².</summary>
public static class Section9
{
    private const string Document = "ISO 898-1", Edition = "2013", Head = "ISO 898-1:2013 ";
    private static readonly StandardTable Classes = StandardTable.Read("iso898_1_classes");
    private static readonly double[] Proof = Classes.Column("s_p"), Strength = Classes.Column("r_m"), Nominal = Classes.Column("r_m_nominal"),
        ThickProof = Classes.Column("s_p_over_16"), ThickStrength = Classes.Column("r_m_over_16");

    /// <summary>Class 8.8 is stronger over 16 mm. Between M16 × 1.5 (167 mm²) and M18 × 2.5 (192 mm²) there is no thread.</summary>
    private const double UpTo16 = 180;

    /// <summary>9.1.6.1: nominal stress area.</summary>
    internal static double A_s(double d, double P, Trace? trace) =>
        trace.Step("A_s", PI / 4 * Pow(d - 0.9382 * P, 2), "mm²", Head + "9.1.6.1", [In.Of(d), In.Of(P)]);

    /// <summary>Table 3: least tensile strength, N/mm², by the stress area (mm²), which says whether the bolt is thicker than 16 mm.</summary>
    internal static double R_m(double A_s, double property_class, Trace? trace) =>
        trace.LookUp("R_m", (A_s > UpTo16 ? ThickStrength : Strength)[(int)property_class], "N/mm²", Head + "Table 3");

    /// <summary>Table 3: nominal tensile strength, N/mm², as the Eurocodes take it.</summary>
    internal static double R_m_nom(double property_class, Trace? trace) => trace.LookUp("R_m_nom", Nominal[(int)property_class], "N/mm²", Head + "Table 3");

    /// <summary>Tables 4 and 5: proof load of a stress area. The printed tables round; M10 of 8.8 prints 33 700 N (decision on the flags).</summary>
    internal static double F_p(double A_s, double property_class, Trace? trace)
    {
        double S_p = trace.LookUp("S_p", (A_s > UpTo16 ? ThickProof : Proof)[(int)property_class], "N/mm²", Head + "Table 3");
        return trace.Step("F_p", A_s * S_p, "N", Head + "Table 5", [In.Of(A_s), In.Of(S_p)]);
    }

    internal static double F_m(double A_s, double property_class, Trace? trace)
    {
        double R_m = Section9.R_m(A_s, property_class, trace);
        return trace.Step("F_m", A_s * R_m, "N", Head + "Table 4", [In.Of(A_s), In.Of(R_m)]);
    }

    private static readonly Parameter Class = Parameter.Choice("class", [.. Classes.Words]);

    public static readonly Rule StressArea = new("iso898_1.9_1.stress_area", Document, Edition, Head + "9.1.6.1", "Nominal stress area", "mm²",
        (x, t) => A_s(x[0], x[1], t), Input.Length("d", 1.6, 39), Input.Length("P", 0.35, 4));

    public static readonly Rule ProofLoad = new("iso898_1.table_5.proof_load", Document, Edition, Head + "Table 5", "Proof load (product of strength and area)", "N",
        (x, t) => F_p(x[0], x[1], t), Input.Area("A_s", 1, 1000), Class);

    public static readonly Rule UltimateLoad = new("iso898_1.table_4.ultimate_load", Document, Edition, Head + "Table 4", "Least ultimate load (product of strength and area)", "N",
        (x, t) => F_m(x[0], x[1], t), Input.Area("A_s", 1, 1000), Class);

    public static IReadOnlyList<Rule> Rules => [StressArea, ProofLoad, UltimateLoad];
}
