using Pattress.Strength.Standards.NDS_2018;
using Pattress.Working;

namespace Pattress.Strength.Mechanisms;

/// <summary>
/// The American set is held to allowable stress design: every action counts once (D + L), timber takes NDS's load duration factor, thin
/// steel AISI's Omega. What has no American rule (masonry plugs, board, the screw's own steel, the toe) keeps its design value and is brought
/// to allowable by the factor on variable actions, 1.5, so that both sets permit the same load there.
/// </summary>
public static class AllowableStress
{
    /// <summary>AISI S100 J4: safety factor of screw connections.</summary>
    public const double Omega = 3.0;

    // EN 1995's classes as NDS's: long and medium as ten years (occupancy live load), short as seven days, instantaneous as ten minutes.
    private static readonly int[] Rows = [0, 1, 1, 3, 4];

    /// <summary>The row of NDS Table 2.3.2 for a duration class.</summary>
    internal static int DurationRow(Duration duration) => Rows[(int)duration];

    /// <summary>All results at the level of a set.</summary>
    public static IReadOnlyList<MechanismResult> For(RuleSet set, IReadOnlyList<MechanismResult> results, Trace? trace = null) =>
        set == RuleSet.UnitedStates ? [.. results.Select(r => Allowable(r, trace))] : results;

    /// <summary>A result brought to allowable level; one that is so already stays.</summary>
    public static MechanismResult Allowable(MechanismResult r, Trace? trace = null)
    {
        if (r.Level == Level.Allowable || !r.Design.Covered) return r with { Level = Level.Allowable };
        double R_d = r.Design.Value, gamma_Q = Factors.OnAction;
        return r with { Level = Level.Allowable, Design = trace.Step("R_a", R_d / gamma_Q, r.Mechanism == "toe" ? "N/mm²" : "N", "allowable stress design: design value over the factor on actions (ours)", [In.Of(R_d), In.Of(gamma_Q)]) };
    }

    internal static RuleResult Withdrawal(double W, double p, Duration duration, int serviceClass, Trace? trace) =>
        Section12_2.AdjustedWithdrawal.Evaluate([W, p, DurationRow(duration), serviceClass == 3 ? 1 : 0, 1, 0, 0, 0], trace);

    internal static RuleResult Lateral(double Z, Duration duration, int serviceClass, Trace? trace) =>
        Section12_4.Adjusted.Evaluate([Z, DurationRow(duration), serviceClass == 3 ? 1 : 0, 1, 0, 0], trace);
}
