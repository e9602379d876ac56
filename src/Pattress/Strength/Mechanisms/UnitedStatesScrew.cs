using Pattress.Strength.Standards.AWC_TR12_2015;
using Pattress.Strength.Standards.NDS_2018;
using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Mechanisms;

/// <summary>
/// Wood screws by NDS 2018: allowable stress design for the American set; where NDS only stands in for EN 1995, brought to design
/// level by its own LRFD conversion (Appendix N: K_F = 3.32, phi = 0.65, lambda by duration).
/// </summary>
internal static class UnitedStatesScrew
{
    private const string AppendixN = "NDS 2018 Appendix N", ByDensity = Factors.Assumed + "specific_gravity";

    /// <summary>Dowel bearing strength of the bracket's steel, N/mm²: 61,850 psi, ASTM A653 grade 33 (NDS 2018 12.3, from memory).</summary>
    private const double PlateBearing = 61850 * Section12_2.Psi;

    private static readonly double[] Lambdas = [0.6, 0.7, 0.8, 0.8, 1.0];

    /// <summary>Reference (allowable) withdrawal, N; specific gravity from the characteristic density as rho_k/0.84/1000 (mean, oven dry or nearly).</summary>
    internal static (RuleResult Value, string Basis) Withdrawal(WoodScrewInput s, Trace? trace)
    {
        var W = Strength(s, trace);
        if (W.Why is { } why) return (why, Section12_2.WoodScrew.Clause);
        double w = W.Value, p = Thread(s);
        return (trace.Step("W_p", w * p, "N", Section12_2.WoodScrew.Clause, [In.Of(w), In.Of(p)]), Section12_2.WoodScrew.Clause);
    }

    /// <summary>Allowable to design level, where NDS stands in for EN 1995.</summary>
    internal static double Lrfd(double R_ref, Duration duration, Trace? trace)
    {
        double lambda = trace.LookUp("lambda", Lambdas[(int)duration], "", AppendixN);
        return trace.Step("R_d", R_ref * 3.32 * 0.65 * lambda, "N", AppendixN, [In.Of(R_ref), In.Of(lambda)]);
    }

    /// <summary>Withdrawal in the American set: W' p = W p C_D C_M, allowable.</summary>
    internal static MechanismResult Tension(WoodScrewInput s, Trace? trace)
    {
        var W = Strength(s, trace);
        if (W.Why is { } why) return MechanismResult.None("withdrawal", why);
        var allowable = AllowableStress.Withdrawal(W.Value, Thread(s), s.Duration, s.ServiceClass, trace);
        double V = Factors.Value("variation_timber", "V", "", trace);
        return new("withdrawal", allowable, Basis.Rule, Section12_2.WoodScrew.Clause, Factors.Value("nds_withdrawal_mean", "k_mean", "", trace) * W.Value * Thread(s), V, WoodScrew.Marks(s)) { Level = Level.Allowable };
    }

    /// <summary>Lateral in the American set, allowable: the yield modes of NDS, across a board those of TR12, times C_D C_M; side member the bracket's steel.</summary>
    internal static MechanismResult Lateral(WoodScrewInput s, Trace? trace)
    {
        double p = Thread(s);
        if (p < 6 * s.D) return MechanismResult.None("lateral", new NotCovered("NDS 2018 12.1.5.6", "too_short", Said.Length(p), Said.Length(6 * s.D)));
        double rho_k = s.RhoK, plate = Max(s.Plate, 1);
        double G = trace.Step("G", Min(Max(rho_k / 0.84 / 1000, 0.31), 0.73), "", ByDensity, [In.Of(rho_k)]);
        double F_em = Section12_3.F_e(G, trace), F_yb = AppendixI.F_yb(s.D, trace);
        var rule = s.Gap > 0 ? GeneralDowel.Lateral : Section12_3_Rules.Lateral;
        var Z = s.Gap > 0 ? rule.Evaluate([s.Root, p, plate, F_em, PlateBearing, F_yb, s.Gap], trace) : rule.Evaluate([s.Root, p, plate, F_em, PlateBearing, F_yb, 0, 0], trace);
        if (Z.Why is { } why) return MechanismResult.None("lateral", why);
        double V = Factors.Value("variation_timber", "V", "", trace);
        IReadOnlyList<Reason> marks = s.Gap > 0 ? [new Reason("board_as_gap", Said.Length(s.Gap)), .. WoodScrew.Marks(s)] : WoodScrew.Marks(s);
        return new("lateral", AllowableStress.Lateral(Z.Value, s.Duration, s.ServiceClass, trace), Basis.Rule, rule.Clause, Factors.Value("nds_lateral_mean", "k_mean", "", trace) * Z.Value, V, marks) { Level = Level.Allowable };
    }

    private static double Thread(WoodScrewInput s) => Max(s.Thread - s.D, 0);

    // W for each mm of thread, N/mm.
    private static RuleResult Strength(WoodScrewInput s, Trace? trace)
    {
        double rho_k = s.RhoK, thread = Thread(s);
        double G = trace.Step("G", rho_k / 0.84 / 1000, "", ByDensity, [In.Of(rho_k)]);
        if (thread <= 0) return new NotCovered(Section12_2.WoodScrew.Clause, "too_short", Said.Length(thread), Said.Length(s.D));
        return Section12_2.WoodScrew.Evaluate([G, s.D], trace);
    }
}
