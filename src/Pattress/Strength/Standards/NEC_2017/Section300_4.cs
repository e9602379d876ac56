using Pattress.Working;

namespace Pattress.Strength.Standards.NEC_2017;

/// <summary>NEC 300.4(A)(1) and (D): a cable keeps 1-1/4 in from the edge of its stud, else a plate of 1/16 in stands before it.</summary>
public static class Section300_4
{
    internal const double FreeDepth = 31.75, Plate = 1.5875;
    private const string Clause = "NEC 300.4(A)(1)";

    /// <summary>How far a screw of length L through boards of t reaches beyond the free depth of the stud, mm; above 0 it may meet a compliant cable.</summary>
    internal static double Beyond(double L, double t, Trace? trace) => trace.Step("beyond", L - t - 31.75, "mm", Clause, [In.Of(L), In.Of(t)]);

    /// <summary>Depth into the stud, mm.</summary>
    internal static double Penetration(double L, double t, Trace? trace) => trace.Step("p", L - t, "mm", Clause, [In.Of(L), In.Of(t)]);

    private static readonly Parameter Length = Input.Length("L", 1, 500), T = Input.Length("t", 0, 200);

    public static readonly Rule Reach = new("nec.300_4.penetration", "NEC", "2017", Clause, "Depth of a screw in the stud", "mm", (x, t) => Penetration(x[0], x[1], t), Length, T);

    public static readonly Rule BeyondFreeDepth = new("nec.300_4.beyond_free_depth", "NEC", "2017", Clause, "Depth beyond the free 1-1/4 in", "mm", (x, t) => Beyond(x[0], x[1], t), Length, T);

    public static readonly Rule Depth = new("nec.300_4.free_depth", "NEC", "2017", Clause, "Free depth of a stud's edge, and thickness of a plate", "mm",
        (x, t) => x[0] == 0 ? t.LookUp("free_depth", FreeDepth, "mm", Clause) : t.LookUp("plate", Plate, "mm", Clause), Parameter.Choice("of", "free_depth", "plate"));

    public static IReadOnlyList<Rule> Rules => [Reach, BeyondFreeDepth, Depth];
}
