using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.EN_1995_1_1_2004;

/// <summary>EN 1995-1-1:2004+A1:2008, 8.2.3: a steel plate on timber in single shear; t_1 is the fastener's depth in the wood (mm).</summary>
public static class Section8_2_3
{
    private const string Head = "EN 1995-1-1:2004+A1:2008 ";

    private static readonly Parameter[] Inputs =
    [
        Input.Length("t_1", 1, 1000), Input.Length("d", 0.5, 24), Input.Stress("f_h", 1, 200), Input.Moment("M_y", 1, 1e7), Input.Force("F_ax", 0, 1e6, 0),
        RopeLimit.Fastener,
    ];

    /// <summary>(8.9): plate thinner than 0.5 d, N: crushing a, or one hinge b.</summary>
    internal static double Thin(double t_1, double d, double f_h, double M_y, double F_ax, double rope, Trace? trace)
    {
        double F_a = trace.Step("F_a", 0.4 * f_h * t_1 * d, "N", Head + "(8.9) a", [In.Of(f_h), In.Of(t_1), In.Of(d)]);
        double F_J = trace.Step("F_J", 1.15 * Sqrt(2 * M_y * f_h * d), "N", Head + "(8.9) b", [In.Of(M_y), In.Of(f_h), In.Of(d)]);
        double F_b = Section8_2_2.Roped("F_b", F_J, F_ax, rope, trace);
        return trace.Step("F_v_Rk", Min(F_a, F_b), "N", Head + "(8.9)", [In.Of(F_a), In.Of(F_b)]);
    }

    /// <summary>(8.10) d: one hinge at the thick plate, N.</summary>
    internal static double OneHinge(double t_1, double d, double f_h, double M_y, double F_ax, double rope, Trace? trace, string equation = "(8.10) d")
    {
        double F_J = trace.Step("F_J", f_h * t_1 * d * (Sqrt(2 + 4 * M_y / (f_h * d * Pow(t_1, 2))) - 1), "N", Head + equation,
            [In.Of(f_h), In.Of(t_1), In.Of(d), In.Of(M_y)]);
        return Section8_2_2.Roped("F_d", F_J, F_ax, rope, trace);
    }

    /// <summary>(8.10) e: two hinges, N.</summary>
    internal static double TwoHinges(double d, double f_h, double M_y, double F_ax, double rope, Trace? trace, string equation = "(8.10) e")
    {
        double F_J = trace.Step("F_J", 2.3 * Sqrt(M_y * f_h * d), "N", Head + equation, [In.Of(M_y), In.Of(f_h), In.Of(d)]);
        return Section8_2_2.Roped("F_e", F_J, F_ax, rope, trace);
    }

    /// <summary>(8.10) c: the wood is crushed along the whole depth, N.</summary>
    internal static double Crushing(double t_1, double d, double f_h, Trace? trace) =>
        trace.Step("F_c", f_h * t_1 * d, "N", Head + "(8.10) c", [In.Of(f_h), In.Of(t_1), In.Of(d)]);

    /// <summary>(8.10): plate at least d thick, N.</summary>
    internal static double Thick(double t_1, double d, double f_h, double M_y, double F_ax, double rope, Trace? trace)
    {
        double F_c = Crushing(t_1, d, f_h, trace);
        double F_d = OneHinge(t_1, d, f_h, M_y, F_ax, rope, trace), F_e = TwoHinges(d, f_h, M_y, F_ax, rope, trace);
        return trace.Step("F_v_Rk", Min(F_c, Min(F_d, F_e)), "N", Head + "(8.10)", [In.Of(F_c), In.Of(F_d), In.Of(F_e)]);
    }

    /// <summary>8.2.3(1): between thin (t ≤ 0.5 d) and thick (t ≥ d), linear, N.</summary>
    internal static double Between(double t, double d, double F_thin, double F_thick, Trace? trace) => trace.Step(
        "F_v_Rk", t <= 0.5 * d ? F_thin : t >= d ? F_thick : F_thin + (F_thick - F_thin) * (t / d - 0.5) / 0.5, "N", Head + "8.2.3(1)",
        [In.Of(t), In.Of(d), In.Of(F_thin), In.Of(F_thick)]);

    private static Rule Of(string name, string clause, string title, RuleFunction function) =>
        new("en1995_1_1.8_2_3." + name, "EN 1995-1-1", "2004+A1:2008", Head + clause, title, "N", function, Inputs);

    public static readonly Rule ThinPlate = Of("thin_plate", "8.2.3 (8.9)", "Thin steel plate on timber", (x, t) => Thin(x[0], x[1], x[2], x[3], x[4], RopeLimit.Of(x[5]), t));

    public static readonly Rule ThickPlate = Of("thick_plate", "8.2.3 (8.10)", "Thick steel plate on timber", (x, t) => Thick(x[0], x[1], x[2], x[3], x[4], RopeLimit.Of(x[5]), t));

    public static readonly Rule Interpolated = new("en1995_1_1.8_2_3.between", "EN 1995-1-1", "2004+A1:2008", Head + "8.2.3(1)",
        "Steel plate between thin and thick", "N", (x, t) => Between(x[0], x[1], x[2], x[3], t),
        Input.Length("t", 0.1, 100), Input.Length("d", 0.5, 24), Input.Force("F_thin"), Input.Force("F_thick"));

    public static IReadOnlyList<Rule> Rules =>
    [
        ThinPlate, ThickPlate, Interpolated,
        Of("thick_mode_c", "8.2.3 (8.10) c", "Mode c: crushing", (x, t) => Crushing(x[0], x[1], x[2], t)),
        Of("thick_mode_d", "8.2.3 (8.10) d", "Mode d: one hinge", (x, t) => OneHinge(x[0], x[1], x[2], x[3], x[4], RopeLimit.Of(x[5]), t)),
        Of("thick_mode_e", "8.2.3 (8.10) e", "Mode e: two hinges", (x, t) => TwoHinges(x[1], x[2], x[3], x[4], RopeLimit.Of(x[5]), t)),
    ];
}
