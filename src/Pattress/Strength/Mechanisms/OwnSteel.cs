using Pattress.Strength.Standards.EN_1993_1_8_2005;
using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Mechanisms;

/// <summary>The fixing's own steel: EN 1993-1-8 Table 3.4 on the core of a screw or the stress area of a bolt.</summary>
public static class OwnSteel
{
    private static double Core(double root, Trace? trace) => trace.Step("A_s", PI / 4 * Pow(root, 2), "mm²", "geometry", [In.Of(root)]);

    /// <summary>A screw of core diameter root (mm) and strength f_ub (N/mm²) in tension, N; countersunk heads.</summary>
    public static MechanismResult ScrewTension(double root, double f_ub, Trace? trace = null) => BoltTension(Core(root, trace), f_ub, true, trace);

    /// <summary>The same in shear.</summary>
    public static MechanismResult ScrewShear(double root, double f_ub, Trace? trace = null) => BoltShear(Core(root, trace), f_ub, 0, trace);

    /// <summary>A bolt of stress area A_s (mm²) in tension, N.</summary>
    public static MechanismResult BoltTension(double A_s, double f_ub, bool countersunk = false, Trace? trace = null) =>
        Of("steel_tension", Table3_4.Tension, [f_ub, A_s, countersunk ? 1 : 0, 1.25], A_s * f_ub, trace);

    /// <summary>A bolt in shear through its thread, N; propertyClass as the rule's choice, 0 for 4.6.</summary>
    public static MechanismResult BoltShear(double A_s, double f_ub, int propertyClass = 0, Trace? trace = null) =>
        Of("steel_shear", Table3_4.Shear, [f_ub, A_s, propertyClass, 1.25], 0.6 * A_s * f_ub, trace);

    private static MechanismResult Of(string mechanism, Rule rule, ReadOnlySpan<double> x, double mean, Trace? trace) =>
        new(mechanism, rule.Evaluate(x, trace), Basis.Rule, rule.Clause, mean, Factors.Value("variation_steel", "V", "", trace));
}
