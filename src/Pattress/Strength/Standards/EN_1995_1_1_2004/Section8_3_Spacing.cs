using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.EN_1995_1_1_2004;

/// <summary>
/// EN 1995-1-1:2004+A1:2008, Table 8.2: least spacings and distances of laterally loaded nails, and of screws up to 6 mm,
/// in wood of rho_k up to 500 kg/m³ and up to 6 mm (beyond either holes must be drilled); alpha is the angle of the force to the grain. a_1 and a_2
/// are less where a board (0.85, 8.3.1.3) or a steel plate (0.7, 8.3.1.4) is fixed. From memory and a public program: no document seen.
/// </summary>
public static class Section8_3_Spacing
{
    private const string Clause = "EN 1995-1-1:2004+A1:2008 Table 8.2";

    /// <summary>The distance in mm; which: a_1, a_2, a_3_t, a_3_c, a_4_t, a_4_c.</summary>
    internal static double a(double which, double drilled, double d, double alpha, double rho_k, Trace? trace)
    {
        double cos = trace.Step("cos", Abs(Cos(alpha * PI / 180)), "", Clause, [In.Of(alpha)]);
        double sin = trace.Step("sin", Abs(Sin(alpha * PI / 180)), "", Clause, [In.Of(alpha)]);
        double factor = drilled > 0 ? Drilled(which, d, cos, sin, trace) : rho_k > 420 ? Dense(which, d, cos, sin, trace) : Plain(which, d, cos, sin, trace);
        return trace.Step("a", factor * d, "mm", Clause, [In.Of(factor), In.Of(d)]);
    }

    /// <summary>8.3.1.3 and 8.3.1.4: spacings under a board or a steel plate.</summary>
    internal static double a(double which, double drilled, double d, double alpha, double rho_k, double member, Trace? trace)
    {
        double a = Section8_3_Spacing.a(which, drilled, d, alpha, rho_k, trace);
        if (member == 0 || which > 1) return a;
        double k = trace.LookUp("k", member == 1 ? 0.85 : 0.7, "", member == 1 ? "EN 1995-1-1:2004+A1:2008 8.3.1.3" : "EN 1995-1-1:2004+A1:2008 8.3.1.4");
        return trace.Step("a_k", k * a, "mm", Clause, [In.Of(k), In.Of(a)]);
    }

    private static double Plain(double which, double d, double cos, double sin, Trace? trace) => which switch
    {
        0 => trace.Step("factor", d < 5 ? 5 + 5 * cos : 5 + 7 * cos, "", Clause, [In.Of(d), In.Of(cos)]),
        1 => trace.LookUp("factor", 5, "", Clause),
        2 => trace.Step("factor", 10 + 5 * cos, "", Clause, [In.Of(cos)]),
        3 => trace.LookUp("factor", 10, "", Clause),
        4 => trace.Step("factor", d < 5 ? 5 + 2 * sin : 5 + 5 * sin, "", Clause, [In.Of(d), In.Of(sin)]),
        _ => trace.LookUp("factor", 5, "", Clause),
    };

    // Without drilled holes, 420 < rho_k ≤ 500 kg/m³.
    private static double Dense(double which, double d, double cos, double sin, Trace? trace) => which switch
    {
        0 => trace.Step("factor", 7 + 8 * cos, "", Clause, [In.Of(cos)]),
        1 => trace.LookUp("factor", 7, "", Clause),
        2 => trace.Step("factor", 15 + 5 * cos, "", Clause, [In.Of(cos)]),
        3 => trace.LookUp("factor", 15, "", Clause),
        4 => trace.Step("factor", d < 5 ? 7 + 2 * sin : 7 + 5 * sin, "", Clause, [In.Of(d), In.Of(sin)]),
        _ => trace.LookUp("factor", 7, "", Clause),
    };

    private static double Drilled(double which, double d, double cos, double sin, Trace? trace) => which switch
    {
        0 => trace.Step("factor", 4 + cos, "", Clause, [In.Of(cos)]),
        1 => trace.Step("factor", 3 + sin, "", Clause, [In.Of(sin)]),
        2 => trace.Step("factor", 7 + 5 * cos, "", Clause, [In.Of(cos)]),
        3 => trace.LookUp("factor", 7, "", Clause),
        4 => trace.Step("factor", d < 5 ? 3 + 2 * sin : 3 + 4 * sin, "", Clause, [In.Of(d), In.Of(sin)]),
        _ => trace.LookUp("factor", 3, "", Clause),
    };

    public static readonly Rule Spacings = new("en1995_1_1.8_3_1.spacing", "EN 1995-1-1", "2004+A1:2008", Clause,
        "Least spacings and distances of nails and of screws up to 6 mm under lateral load", "mm",
        (x, t) => MustDrill(x) ?? (RuleResult)a(x[0], x[1], x[2], x[3], x[4], x[5], t),
        Parameter.Choice("which", "a_1", "a_2", "a_3_t", "a_3_c", "a_4_t", "a_4_c"), Parameter.Choice("hole", "none", "drilled"),
        Input.Length("d", 0.5, 8), Input.Angle("alpha", 0, 90), Input.Density("rho_k", 100, 1200), Parameter.Choice("member", "timber", "board", "steel") with { Default = 0 });

    // 8.3.1.1(2): dense wood and thick nails are drilled for.
    private static RuleResult? MustDrill(ReadOnlySpan<double> x)
    {
        if (x[1] > 0) return null;
        if (x[4] > 500) return new NotCovered(Clause, "above_limit", Said.Words("rho_k"), Said.Plain(x[4]), Said.Plain(500));
        if (x[2] > 6) return new NotCovered(Clause, "above_limit", Said.Words("d"), Said.Plain(x[2]), Said.Plain(6));
        return null;
    }
}
