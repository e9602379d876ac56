using Pattress.Working;

namespace Pattress.Strength.Standards.EN_1995_1_1_2004;

/// <summary>The modes of 8.2.2 as rules, each on its own and the least of them.</summary>
public static class Section8_2_2_Rules
{
    private const string Head = "EN 1995-1-1:2004+A1:2008 ";

    private delegate double Mode(in Joint joint, Trace? trace);

    private static readonly Parameter[] Inputs =
    [
        Input.Length("t_1", 1, 1000), Input.Length("t_2", 1, 1000), Input.Length("d", 0.5, 24), Input.Stress("f_h_1", 1, 200), Input.Stress("f_h_2", 1, 200),
        Input.Moment("M_y", 1, 1e7), Input.Force("F_ax", 0, 1e6, 0), RopeLimit.Fastener,
    ];

    private static Rule Of(string mode, string clause, string title, Mode function) => new(
        "en1995_1_1.8_2_2." + mode, "EN 1995-1-1", "2004+A1:2008", Head + clause, title, "N", (x, t) => function(Joint.From(x), t), Inputs);

    public static readonly Rule SingleShear = Of("single_shear", "8.2.2 (8.6)", "Timber to timber in single shear", Section8_2_2.Single);

    public static readonly Rule DoubleShear = Of("double_shear", "8.2.2 (8.7)", "Timber to timber in double shear, each plane", Section8_2_2.Double);

    internal static readonly Rule[] All =
    [
        SingleShear, DoubleShear,
        Of("mode_a", "8.2.2 (8.6) a", "Mode a: crushing on the head side", Section8_2_2.a),
        Of("mode_b", "8.2.2 (8.6) b", "Mode b: crushing on the point side", Section8_2_2.b),
        Of("mode_c", "8.2.2 (8.6) c", "Mode c: the stiff fastener turns", (in j, t) => Section8_2_2.c(j, Section8_2_2.beta(j, t), t)),
        Of("mode_d", "8.2.2 (8.6) d", "Mode d: hinge on the point side", (in j, t) => Section8_2_2.d(j, Section8_2_2.beta(j, t), Head + "(8.6) d", t)),
        Of("mode_e", "8.2.2 (8.6) e", "Mode e: hinge on the head side", (in j, t) => Section8_2_2.e(j, Section8_2_2.beta(j, t), t)),
        Of("mode_f", "8.2.2 (8.6) f", "Mode f: two hinges", (in j, t) => Section8_2_2.f(j, Section8_2_2.beta(j, t), Head + "(8.6) f", t)),
        new("en1995_1_1.8_2_2.rope", "EN 1995-1-1", "2004+A1:2008", Head + "8.2.2(2)", "A mode and its capped rope effect", "N",
            (x, t) => Section8_2_2.Roped("F_v_Rk", x[0], x[1], RopeLimit.Of(x[2]), t),
            Input.Force("F_J"), Input.Force("F_ax"), RopeLimit.Fastener),
    ];
}
