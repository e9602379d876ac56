using Pattress.Working;

namespace Pattress.Strength.Standards.ASME_B18_6_1_1981;

/// <summary>ASME B18.6.1: diameter of wood screws by gauge. The trade's metric names (No. 8 as 4.0 mm) are another thing; both are kept.</summary>
public static class Gauge
{
    private const string Clause = "ASME B18.6.1";

    /// <summary>Diameter in mm: 0.060 + 0.013 n inches.</summary>
    internal static double D(double n, Trace? trace) => trace.Step("D", (0.060 + 0.013 * n) * 25.4, "mm", Clause, [In.Of(n)]);

    public static readonly Rule Diameter = new("asme_b18_6_1.diameter", "ASME B18.6.1", "1981 (R2016)", Clause, "Diameter of a wood screw by its gauge", "mm",
        (x, t) => D(x[0], t), Input.Whole("n", 0, 24));

    public static IReadOnlyList<Rule> Rules => [Diameter];
}
