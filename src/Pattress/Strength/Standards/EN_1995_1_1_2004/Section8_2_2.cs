using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.EN_1995_1_1_2004;

/// <summary>The two members and the fastener of a timber joint: t_1 head side, t_2 point side (mm), f_h_1, f_h_2 (N/mm²), M_y (Nmm), F_ax (N).</summary>
/// <param name="rope">Largest rope effect as a share of the Johansen part, see <see cref="RopeLimit"/>.</param>
internal readonly record struct Joint(double t_1, double t_2, double d, double f_h_1, double f_h_2, double M_y, double F_ax, double rope)
{
    internal static Joint From(ReadOnlySpan<double> x) => new(x[0], x[1], x[2], x[3], x[4], x[5], x[6], RopeLimit.Of(x[7]));
}

/// <summary>8.2.2(2): the largest rope effect as a share of the Johansen part: screws 1, round nails 0.15, bolts 0.25, square and grooved nails 0.25, other nails 0.5, dowels none.</summary>
internal static class RopeLimit
{
    private static readonly double[] Shares = [1, 0.15, 0.25, 0.25, 0.5, 0];

    internal static double Of(double fastener) => Shares[(int)fastener];

    internal static Parameter Fastener { get; } = Parameter.Choice("fastener", "screw", "round_nail", "bolt", "square_nail", "other_nail", "dowel") with { Default = 0 };
}

/// <summary>EN 1995-1-1:2004+A1:2008, 8.2.2: timber to timber, the modes of (8.6) a to f and (8.7) g, h, j, k, for each shear plane.</summary>
public static class Section8_2_2
{
    private const string Head = "EN 1995-1-1:2004+A1:2008 ", C6 = Head + "(8.6)", C7 = Head + "(8.7)";

    /// <summary>8.2.2(2): a mode and its rope effect, which is capped at a share of the Johansen part.</summary>
    internal static double Roped(string mode, double F_J, double F_ax, double rope, Trace? trace) =>
        trace.Step(mode, F_J + Min(F_ax / 4, rope * F_J), "N", Head + "8.2.2(2)", [In.Of(F_J), In.Of(F_ax), In.Of(rope)]);

    internal static double a(in Joint j, Trace? trace)
    {
        double f_h_1 = j.f_h_1, t_1 = j.t_1, d = j.d;
        return trace.Step("F_a", f_h_1 * t_1 * d, "N", C6 + " a", [In.Of(f_h_1), In.Of(t_1), In.Of(d)]);
    }

    internal static double b(in Joint j, Trace? trace)
    {
        double f_h_2 = j.f_h_2, t_2 = j.t_2, d = j.d;
        return trace.Step("F_b", f_h_2 * t_2 * d, "N", C6 + " b", [In.Of(f_h_2), In.Of(t_2), In.Of(d)]);
    }

    internal static double c(in Joint j, double beta, Trace? trace)
    {
        double f_h_1 = j.f_h_1, t_1 = j.t_1, d = j.d;
        double r = j.t_2 / j.t_1;
        double F_J = trace.Step("F_J", f_h_1 * t_1 * d / (1 + beta) * (Sqrt(beta + 2 * Pow(beta, 2) * (1 + r + Pow(r, 2)) + Pow(beta, 3) * Pow(r, 2)) - beta * (1 + r)),
            "N", C6 + " c", [In.Of(f_h_1), In.Of(t_1), In.Of(d), In.Of(beta), In.Of(r)]);
        return Roped("F_c", F_J, j.F_ax, j.rope, trace);
    }

    internal static double d(in Joint j, double beta, string clause, Trace? trace)
    {
        double f_h_1 = j.f_h_1, t_1 = j.t_1, d = j.d, M_y = j.M_y;
        double F_J = trace.Step("F_J", 1.05 * f_h_1 * t_1 * d / (2 + beta) * (Sqrt(2 * beta * (1 + beta) + 4 * beta * (2 + beta) * M_y / (f_h_1 * d * Pow(t_1, 2))) - beta),
            "N", clause, [In.Of(f_h_1), In.Of(t_1), In.Of(d), In.Of(beta), In.Of(M_y)]);
        return Roped("F_d", F_J, j.F_ax, j.rope, trace);
    }

    internal static double e(in Joint j, double beta, Trace? trace)
    {
        double f_h_1 = j.f_h_1, t_2 = j.t_2, d = j.d, M_y = j.M_y;
        double F_J = trace.Step("F_J", 1.05 * f_h_1 * t_2 * d / (1 + 2 * beta) * (Sqrt(2 * Pow(beta, 2) * (1 + beta) + 4 * beta * (1 + 2 * beta) * M_y / (f_h_1 * d * Pow(t_2, 2))) - beta),
            "N", C6 + " e", [In.Of(f_h_1), In.Of(t_2), In.Of(d), In.Of(beta), In.Of(M_y)]);
        return Roped("F_e", F_J, j.F_ax, j.rope, trace);
    }

    internal static double f(in Joint j, double beta, string clause, Trace? trace)
    {
        double f_h_1 = j.f_h_1, d = j.d, M_y = j.M_y;
        double F_J = trace.Step("F_J", 1.15 * Sqrt(2 * beta / (1 + beta)) * Sqrt(2 * M_y * f_h_1 * d),
            "N", clause, [In.Of(beta), In.Of(M_y), In.Of(f_h_1), In.Of(d)]);
        return Roped("F_f", F_J, j.F_ax, j.rope, trace);
    }

    internal static double beta(in Joint j, Trace? trace)
    {
        double f_h_1 = j.f_h_1, f_h_2 = j.f_h_2;
        return trace.Step("beta", f_h_2 / f_h_1, "", Head + "(8.8)", [In.Of(f_h_1), In.Of(f_h_2)]);
    }

    /// <summary>(8.6): the least of the six modes of a fastener in single shear, N.</summary>
    internal static double Single(in Joint j, Trace? trace)
    {
        double beta = Section8_2_2.beta(j, trace);
        double F_a = a(j, trace), F_b = b(j, trace), F_c = c(j, beta, trace);
        double F_d = d(j, beta, C6 + " d", trace), F_e = e(j, beta, trace), F_f = f(j, beta, C6 + " f", trace);
        return trace.Step("F_v_Rk", Min(Min(Min(F_a, F_b), Min(F_c, F_d)), Min(F_e, F_f)), "N", C6,
            [In.Of(F_a), In.Of(F_b), In.Of(F_c), In.Of(F_d), In.Of(F_e), In.Of(F_f)]);
    }

    /// <summary>(8.7): the least of the four modes of a fastener in double shear, N for each shear plane; t_2 is the middle member.</summary>
    internal static double Double(in Joint j, Trace? trace)
    {
        double beta = Section8_2_2.beta(j, trace);
        double F_g = a(j, trace), F_2 = b(j, trace);
        double F_h = trace.Step("F_h", 0.5 * F_2, "N", C7 + " h", [In.Of(F_2)]);
        double F_j = d(j, beta, C7 + " j", trace), F_k = f(j, beta, C7 + " k", trace);
        return trace.Step("F_v_Rk", Min(Min(F_g, F_h), Min(F_j, F_k)), "N", C7, [In.Of(F_g), In.Of(F_h), In.Of(F_j), In.Of(F_k)]);
    }

    public static IReadOnlyList<Rule> Rules => Section8_2_2_Rules.All;
}
