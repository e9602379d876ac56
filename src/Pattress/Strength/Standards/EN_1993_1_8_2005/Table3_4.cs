using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.EN_1993_1_8_2005;

/// <summary>EN 1993-1-8:2005, Table 3.4: design resistance of one bolt, N; stress area A_s in mm², f_ub the nominal strength (N/mm²), gamma_M2 = 1.25.</summary>
public static class Table3_4
{
    private const string Document = "EN 1993-1-8", Edition = "2005", Clause = "EN 1993-1-8:2005 Table 3.4";

    /// <summary>Tension; k_2 is 0.9, or 0.63 for a countersunk head.</summary>
    internal static double F_t_Rd(double f_ub, double A_s, double head, double gamma_M2, Trace? trace)
    {
        double k_2 = trace.Step("k_2", head == 0 ? 0.9 : 0.63, "", Clause, [In.Of(head)]);
        return trace.Step("F_t_Rd", k_2 * f_ub * A_s / gamma_M2, "N", Clause, [In.Of(k_2), In.Of(f_ub), In.Of(A_s), In.Of(gamma_M2)]);
    }

    /// <summary>Shear through the thread; alpha_v is 0.6, or 0.5 for classes 4.8, 5.8, 6.8 and 10.9.</summary>
    internal static double F_v_Rd(double f_ub, double A_s, double property_class, double gamma_M2, Trace? trace)
    {
        double alpha_v = trace.Step("alpha_v", property_class < 3 ? 0.6 : 0.5, "", Clause, [In.Of(property_class)]);
        return trace.Step("F_v_Rd", alpha_v * f_ub * A_s / gamma_M2, "N", Clause, [In.Of(alpha_v), In.Of(f_ub), In.Of(A_s), In.Of(gamma_M2)]);
    }

    /// <summary>Shear and tension together; at most 1. Nor may tension alone pass its own resistance, which governs where there is little shear.</summary>
    internal static double Together(double F_v_Ed, double F_v_Rd, double F_t_Ed, double F_t_Rd, Trace? trace) => trace.Step(
        "utilisation", Max(F_v_Ed / F_v_Rd + F_t_Ed / (1.4 * F_t_Rd), F_t_Ed / F_t_Rd), "", Clause, [In.Of(F_v_Ed), In.Of(F_v_Rd), In.Of(F_t_Ed), In.Of(F_t_Rd)]);

    private static readonly Parameter Ultimate = Input.Stress("f_ub", 300, 1200), Area = Input.Area("A_s", 1, 1000), Factor = Input.Number("gamma_M2", 1, 2, 1.25);

    public static readonly Rule Tension = new("en1993_1_8.table_3_4.tension", Document, Edition, Clause, "Bolt in tension", "N",
        (x, t) => F_t_Rd(x[0], x[1], x[2], x[3], t), Ultimate, Area, Parameter.Choice("head", "hexagon", "countersunk") with { Default = 0 }, Factor);

    public static readonly Rule Shear = new("en1993_1_8.table_3_4.shear", Document, Edition, Clause, "Bolt in shear through the thread", "N",
        (x, t) => F_v_Rd(x[0], x[1], x[2], x[3], t), Ultimate, Area, Parameter.Choice("class", "4.6", "5.6", "8.8", "4.8", "5.8", "6.8", "10.9"), Factor);

    public static readonly Rule Combined = new("en1993_1_8.table_3_4.combined", Document, Edition, Clause, "Shear and tension together", "",
        (x, t) => Together(x[0], x[1], x[2], x[3], t), Input.Force("F_v_Ed"), Input.Force("F_v_Rd", 1), Input.Force("F_t_Ed"), Input.Force("F_t_Rd", 1));

    public static IReadOnlyList<Rule> Rules => [Tension, Shear, Combined];
}
