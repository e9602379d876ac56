using Pattress.Strength.Standards.NDS_2018;
using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Mechanisms;

/// <summary>Screws by NDS 2018, brought to design level by its own LRFD conversion (Appendix N: K_F = 3.32, phi = 0.65, lambda by duration).</summary>
internal static class UnitedStatesScrew
{
    private const string AppendixN = "NDS 2018 Appendix N";
    private static readonly double[] Lambdas = [0.6, 0.7, 0.8, 0.8, 1.0];

    /// <summary>Reference (allowable) withdrawal, N; specific gravity from the characteristic density as rho_k/0.84/1000 (mean, oven dry or nearly).</summary>
    internal static (RuleResult Value, string Basis) Withdrawal(WoodScrewInput s, Trace? trace)
    {
        double rho_k = s.RhoK, thread = Max(s.Thread - s.D, 0);
        double G = trace.Step("G", rho_k / 0.84 / 1000, "", "NDS 2018 Table 12.3.3A, by density (assumed)", [In.Of(rho_k)]);
        var W = Section12_2.WoodScrew.Evaluate([G, s.D], trace);
        if (!W.Covered || thread <= 0) return (W.Why ?? new NotCovered(Section12_2.WoodScrew.Clause, "too_short", Said.Length(thread), Said.Length(s.D)), Section12_2.WoodScrew.Clause);
        double w = W.Value;
        return (trace.Step("W_p", w * thread, "N", Section12_2.WoodScrew.Clause, [In.Of(w), In.Of(thread)]), Section12_2.WoodScrew.Clause);
    }

    /// <summary>Allowable to design level.</summary>
    internal static double Lrfd(double R_ref, Duration duration, Trace? trace)
    {
        double lambda = trace.LookUp("lambda", Lambdas[(int)duration], "", AppendixN);
        return trace.Step("R_d", R_ref * 3.32 * 0.65 * lambda, "N", AppendixN, [In.Of(R_ref), In.Of(lambda)]);
    }

    /// <summary>Lateral by the yield modes, allowable N; side member the bracket's steel is taken as 87 ksi bearing.</summary>
    internal static (RuleResult Value, string Basis) Lateral(WoodScrewInput s, Trace? trace)
    {
        double rho_k = s.RhoK;
        double G = trace.Step("G", Min(Max(rho_k / 0.84 / 1000, 0.31), 0.73), "", "NDS 2018 Table 12.3.3A, by density (assumed)", [In.Of(rho_k)]);
        double F_em = Section12_3.F_e(G, trace);
        return (Section12_3_Rules.Lateral.Evaluate([s.Root, s.Thread, Max(s.Plate, 1), F_em, 200, s.Fu], trace), Section12_3_Rules.Lateral.Clause);
    }
}
