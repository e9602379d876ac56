using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.EN_1995_1_1_2004;

/// <summary>
/// EN 1995-1-1:2004+A1:2008, 8.2.3: steel and timber in double shear, for each shear plane and fastener, N: a steel plate between two
/// timbers (a tongue or flitch), or one on either side (a bracket that clasps a rail). From memory: no document seen.
/// </summary>
public static class Section8_2_3_Double
{
    private const string Head = "EN 1995-1-1:2004+A1:2008 ";

    private static readonly Parameter[] Inputs =
    [
        Input.Length("t", 1, 1000), Input.Length("d", 0.5, 24), Input.Stress("f_h", 1, 200), Input.Moment("M_y", 1, 1e7), Input.Force("F_ax", 0, 1e6, 0),
        RopeLimit.Fastener,
    ];

    /// <summary>(8.11): plate of any thickness in the middle; t the side timber's bearing length.</summary>
    internal static double Middle(double t_1, double d, double f_h, double M_y, double F_ax, double rope, Trace? trace)
    {
        double F_f = trace.Step("F_f", f_h * t_1 * d, "N", Head + "(8.11) f", [In.Of(f_h), In.Of(t_1), In.Of(d)]);
        double F_g = Section8_2_3.OneHinge(t_1, d, f_h, M_y, F_ax, rope, trace, "(8.11) g"), F_h = Section8_2_3.TwoHinges(d, f_h, M_y, F_ax, rope, trace, "(8.11) h");
        return trace.Step("F_v_Rk", Min(F_f, Min(F_g, F_h)), "N", Head + "(8.11)", [In.Of(F_f), In.Of(F_g), In.Of(F_h)]);
    }

    /// <summary>(8.12): thin plates outside; t_2 the middle timber's thickness.</summary>
    internal static double ThinOutside(double t_2, double d, double f_h, double M_y, double F_ax, double rope, Trace? trace)
    {
        double F_j = trace.Step("F_j", 0.5 * f_h * t_2 * d, "N", Head + "(8.12) j", [In.Of(f_h), In.Of(t_2), In.Of(d)]);
        double F_J = trace.Step("F_J", 1.15 * Sqrt(2 * M_y * f_h * d), "N", Head + "(8.12) k", [In.Of(M_y), In.Of(f_h), In.Of(d)]);
        double F_k = Section8_2_2.Roped("F_k", F_J, F_ax, rope, trace);
        return trace.Step("F_v_Rk", Min(F_j, F_k), "N", Head + "(8.12)", [In.Of(F_j), In.Of(F_k)]);
    }

    /// <summary>(8.13): thick plates outside.</summary>
    internal static double ThickOutside(double t_2, double d, double f_h, double M_y, double F_ax, double rope, Trace? trace)
    {
        double F_l = trace.Step("F_l", 0.5 * f_h * t_2 * d, "N", Head + "(8.13) l", [In.Of(f_h), In.Of(t_2), In.Of(d)]);
        double F_m = Section8_2_3.TwoHinges(d, f_h, M_y, F_ax, rope, trace, "(8.13) m");
        return trace.Step("F_v_Rk", Min(F_l, F_m), "N", Head + "(8.13)", [In.Of(F_l), In.Of(F_m)]);
    }

    private delegate double Joint(double t, double d, double f_h, double M_y, double F_ax, double rope, Trace? trace);

    private static Rule Of(string name, string clause, string title, Joint joint) => new("en1995_1_1.8_2_3." + name, "EN 1995-1-1", "2004+A1:2008", Head + clause, title, "N",
        (x, t) => joint(x[0], x[1], x[2], x[3], x[4], RopeLimit.Of(x[5]), t), Inputs);

    public static readonly Rule MiddlePlate = Of("middle_plate", "8.2.3 (8.11)", "Steel plate between two timbers, each shear plane", Middle);

    public static readonly Rule ThinPlates = Of("thin_plates_outside", "8.2.3 (8.12)", "Thin steel plates on both sides, each shear plane", ThinOutside);

    public static readonly Rule ThickPlates = Of("thick_plates_outside", "8.2.3 (8.13)", "Thick steel plates on both sides, each shear plane", ThickOutside);

    public static IReadOnlyList<Rule> Rules => [MiddlePlate, ThinPlates, ThickPlates];
}
