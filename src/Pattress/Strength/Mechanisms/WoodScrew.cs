using Pattress.Strength.Standards.EN_1995_1_1_2004;
using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Mechanisms;

/// <summary>Which set of rules a job is held to.</summary>
public enum RuleSet { Eurocode, UnitedStates }

/// <summary>Which documents may stand in, by name, where the set's own says nothing: the draft prEN 1995-1-1:2023, NDS 2018, AISI S100-16.</summary>
[Flags]
public enum StandIns { None = 0, Draft = 1, Nds = 2, Aisi = 4, All = Draft | Nds | Aisi }

/// <summary>A wood screw in a stud, joist or noggin, through a board. Lengths in mm.</summary>
/// <param name="D">Outer thread diameter.</param>
/// <param name="Root">Inner diameter.</param>
/// <param name="Thread">Length of thread in the wood, the point included; one D is taken off for it.</param>
/// <param name="Gap">Board or void between bracket and wood.</param>
/// <param name="Edge">Distance to the nearest edge of the wood.</param>
/// <param name="RhoK">Characteristic density, kg/m³; C16 (310) where nobody knows.</param>
/// <param name="Plate">Thickness of the bracket's steel; 0 where unknown counts as thin.</param>
/// <param name="DeclaredFax">Declared withdrawal parameter to EN 14592 at 350 kg/m³, N/mm²; null where there is none.</param>
/// <param name="Fu">Tensile strength of the screw, N/mm².</param>
/// <param name="BoardBears">The gap is sound gypsum board fixed to the wood, which bears on the screw; else it carries nothing.</param>
/// <param name="Damp">State of that board.</param>
public sealed record WoodScrewInput(
    double D, double Root, double Thread, double Gap, double Edge, double RhoK, Duration Duration, int ServiceClass = 1,
    double Plate = 0, double? DeclaredFax = null, double Fu = 600, RuleSet Set = RuleSet.Eurocode, StandIns StandIns = StandIns.All,
    bool BoardBears = false, Dampness Damp = Dampness.Dry);

/// <summary>
/// Screw in wood. Below 6 mm EN 1995-1-1 8.7.2 says nothing: a declared parameter is taken, else the second generation's draft rule
/// (never more than 8.7.2 would give a 6 mm screw), else NDS; which of them, the clause says. k_mod by duration and service class, gamma_M 1.3.
/// </summary>
public static class WoodScrew
{
    /// <summary>Withdrawal of the thread, N.</summary>
    public static MechanismResult Tension(WoodScrewInput s, Trace? trace = null)
    {
        if (s.Set == RuleSet.UnitedStates) return UnitedStatesScrew.Tension(s, trace);
        var (R_k, basis) = Characteristic(s, trace);
        if (R_k.Why is { } why) return MechanismResult.None("withdrawal", why);
        double V = Factors.Value("variation_timber", "V", "", trace), mean = Factors.Mean(R_k.Value, V, trace);
        double design = basis.StartsWith("NDS", StringComparison.Ordinal) ? UnitedStatesScrew.Lrfd(R_k.Value, s.Duration, trace) : Design(R_k.Value, s, trace);
        return new("withdrawal", design, Basis.Rule, basis, basis.StartsWith("NDS", StringComparison.Ordinal) ? Factors.Value("nds_withdrawal_mean", "k_mean", "", trace) * R_k.Value : mean, V, Marks(s));
    }

    /// <summary>All ways in which the screw fails in tension.</summary>
    public static IReadOnlyList<MechanismResult> InTension(WoodScrewInput s, Trace? trace = null) => [Tension(s, trace), OwnSteel.ScrewTension(s.Root, s.Fu, trace)];

    /// <summary>All ways in which the screw fails in shear.</summary>
    public static IReadOnlyList<MechanismResult> InShear(WoodScrewInput s, Trace? trace = null) => [WoodScrewShear.Lateral(s, trace), OwnSteel.ScrewShear(s.Root, s.Fu, trace)];

    internal static double Design(double R_k, WoodScrewInput s, Trace? trace)
    {
        double k_mod = Section2and3.k_mod((int)s.Duration, s.ServiceClass, trace), gamma_M = Section2and3.gamma_M(1, trace);
        return Section2and3.R_d(R_k, k_mod, gamma_M, trace);
    }

    private static (RuleResult Value, string Basis) Characteristic(WoodScrewInput s, Trace? trace)
    {
        double l_ef = Max(s.Thread - s.D, 0);
        if (s.DeclaredFax is { } f) return Named(Standards.EN_14592_2008.Declared.Withdrawal, [f, s.D, l_ef, s.RhoK, 350, 90], trace);
        var first = Section8_7.Withdrawal.Evaluate([s.D, l_ef, s.RhoK, 90, 1, 0.7], trace);
        if (first.Covered) return (first, Section8_7.Withdrawal.Clause);
        if (!s.StandIns.HasFlag(StandIns.Draft)) return StandIn(first, s, trace);
        var second = Named(Standards.prEN_1995_1_1_2023.Section11_2_2.Withdrawal, [s.D, l_ef, s.RhoK], trace);
        return second.Value.Covered ? (Capped(second.Value.Value, s, l_ef, trace), second.Basis) : StandIn(first, s, trace);
    }

    private static (RuleResult Value, string Basis) StandIn(RuleResult refused, WoodScrewInput s, Trace? trace) =>
        s.StandIns.HasFlag(StandIns.Nds) ? UnitedStatesScrew.Withdrawal(s, trace) : (refused, Section8_7.Withdrawal.Clause);

    // A thinner screw is never credited with more than the standard in force gives one of 6 mm.
    private static double Capped(double F_draft, WoodScrewInput s, double l_ef, Trace? trace)
    {
        double d = Max(s.D, 6), f_ax_k = Section8_7.f_ax_k(d, l_ef, s.RhoK, trace), k_d = Section8_7.k_d(d, trace);
        double F_6 = trace.Step("F_6", f_ax_k * d * l_ef * k_d, "N", "EN 1995-1-1:2004+A1:2008 (8.38), as a cap", [In.Of(f_ax_k), In.Of(d), In.Of(l_ef), In.Of(k_d)]);
        return trace.Step("F_ax_k", Min(F_draft, F_6), "N", "the lesser", [In.Of(F_draft), In.Of(F_6)]);
    }

    private static (RuleResult Value, string Basis) Named(Rule rule, ReadOnlySpan<double> x, Trace? trace) => (rule.Evaluate(x, trace), rule.Clause);

    /// <summary>What departs from the rule and is marked, never silent.</summary>
    internal static IReadOnlyList<Reason> Marks(WoodScrewInput s) =>
        s.Edge < 4 * s.D ? [new Reason("edge_distance_departure", Said.Length(s.Edge), Said.Length(4 * s.D))] : [];
}
