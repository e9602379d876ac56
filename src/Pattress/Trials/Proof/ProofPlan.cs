namespace Pattress.Trials.Proof;

/// <summary>How many are pulled, and how hard.</summary>
public enum ProofRate
{
    /// <summary>2.5 % of the fixings at 1.5 times the characteristic action.</summary>
    FewHard,

    /// <summary>5 % at 1.25 times.</summary>
    MoreGentle,
}

/// <summary>A plan of pull tests.</summary>
/// <param name="Count">How many fixings.</param>
/// <param name="LoadN">Pull on each (N).</param>
/// <param name="HoldSeconds">How long it is held; assumed.</param>
/// <param name="MovementMm">Movement against the pencil mark that still passes; assumed.</param>
/// <param name="Reasons">What the plan rests on and cannot show.</param>
public sealed record ProofPlan(int Count, double LoadN, double HoldSeconds, double MovementMm, IReadOnlyList<Reason> Reasons)
{
    /// <summary>Sacrificial tests in the board itself before its resistance is relied on.</summary>
    public const int LeastSacrificial = 5;

    private const int LeastPerArea = 3;

    /// <summary>Thirty seconds on the clock (common practice, no source).</summary>
    private const double Hold = 30, Movement = 0.5;

    /// <summary>A sample of one area's fixings, rates borrowed from BS 8539 (written for concrete and masonry); at least 3, or all.</summary>
    /// <param name="fixings">Fixings of the area, at least 1.</param>
    /// <param name="actionN">Characteristic action on one fixing (N), above 0.</param>
    public static Outcome<ProofPlan> Sample(int fixings, double actionN, ProofRate rate)
    {
        if (fixings < 1) return Refused("fixings", "at least 1");
        if (!(actionN > 0 && double.IsFinite(actionN))) return Refused("action_n", "above 0");
        var (share, factor) = rate == ProofRate.FewHard ? (0.025, 1.5) : (0.05, 1.25);
        int count = Math.Min(fixings, Math.Max(LeastPerArea, (int)Math.Ceiling(share * fixings - 1e-9)));
        return Outcome<ProofPlan>.Of(new(count, factor * actionN, Hold, Movement, [new("proof_borrowed"), .. Always()]));
    }

    /// <summary>Every accessible fixing in service: a factor times its action, never above what could damage it.</summary>
    /// <param name="actionN">Characteristic action on the fixing (N), above 0.</param>
    /// <param name="damageCapN">Pull above which the test itself may harm (N), above 0.</param>
    /// <param name="factor">1 or more; 1.25 unless told, assumed.</param>
    public static Outcome<ProofPlan> InService(int fixings, double actionN, double damageCapN, double factor = 1.25)
    {
        if (fixings < 1) return Refused("fixings", "at least 1");
        if (!(actionN > 0 && double.IsFinite(actionN))) return Refused("action_n", "above 0");
        if (!(factor is >= 1 and <= 3)) return Refused("factor", "from 1 to 3");
        if (!(damageCapN >= actionN)) return Outcome<ProofPlan>.Refused(new Problem("proof_cap_below_action", "damage_cap_n", "", "at least the action: below it a pull proves nothing"));
        bool capped = factor * actionN > damageCapN;
        return Outcome<ProofPlan>.Of(new(fixings, Math.Min(factor * actionN, damageCapN), Hold, Movement, [new(capped ? "proof_capped" : "proof_factor_assumed"), .. Always()]));
    }

    /// <summary>What a result demands: <c>proof_passed</c>, <c>proof_test_more</c> (as many again, and the failed one replaced), or <c>proof_stop</c>.</summary>
    public static Reason After(int failed, int tested) => new(failed == 0 ? "proof_passed" : failed == 1 && tested >= LeastPerArea ? "proof_test_more" : "proof_stop");

    private static IEnumerable<Reason> Always() => [new("proof_says_nothing_of_creep"), new("proof_no_foot_beside_hole"), new("proof_hold_assumed")];

    private static Outcome<ProofPlan> Refused(string path, string allowed) => Outcome<ProofPlan>.Refused(new Problem("out_of_range", path, "", allowed));
}
