using Pattress.Actions;
using Pattress.Strength.Mechanisms;
using Pattress.Working;

namespace Pattress.Planning.Resisting;

/// <summary>Lets the user's own tests stand in for the mechanics of board, and says whether they do.</summary>
internal static class OnTrials
{
    private const string Clause = "own tests";

    /// <summary>
    /// With enough tests in such a board the resistance rests on them; with fewer it stays with the mechanics. A failure below either lowers it.
    /// </summary>
    public static MechanismResult Rests(MechanismResult mechanics, string load, BoardInput board, Asked a, double creep, Trace? trace)
    {
        if (a.Trials.For(a.Size.Id, load, a.Spot.Face.Mean) is not { } tested || !mechanics.Design.Covered) return mechanics;
        return tested.RelyOnN is { } characteristic
            ? OnTests(characteristic, tested, board, a, creep, trace)
            : Lowered(mechanics, tested, a, trace);
    }

    private static MechanismResult OnTests(double characteristic, Tested tested, BoardInput board, Asked a, double creep, Trace? trace)
    {
        double R_k = trace.LookUp("R_k", characteristic, "N", Clause + ", 5 % at 75 % confidence, lognormal"), k_damp = tested.InDamp ? 1 : Factors.OnDamp(a.Damp, trace);
        double k_duration = Factors.OnDuration(a.Duration, trace), k_creep = creep, k_spacing = Board.Share(board, trace);
        double gamma_M = Factors.Value("board_trials_gamma_m", "gamma_M", "", trace);
        double R_d = trace.Step("R_d", R_k * k_damp * k_duration * k_creep * k_spacing / gamma_M, "N", Clause,
            [In.Of(R_k), In.Of(k_damp), In.Of(k_duration), In.Of(k_creep), In.Of(k_spacing), In.Of(gamma_M)]);
        double cov = Math.Max(tested.Cov, Factors.Value("variation_trials_least", "V_least", "", trace));
        return new("own_trials", R_d, Basis.Trial, Clause, tested.MedianN * k_damp * k_spacing * Math.Sqrt(1 + cov * cov), cov);
    }

    /// <summary>Too few to rest on, yet one failed below what the mechanics call its characteristic strength.</summary>
    private static MechanismResult Lowered(MechanismResult mechanics, Tested tested, Asked a, Trace? trace)
    {
        double characteristic = mechanics.Design.Value * Factors.Of("board_gamma_m") / Factors.OnDuration(a.Duration, null);
        return tested.LowestFailureN is { } lowest && lowest < characteristic ? OnBoard.Scaled(mechanics, lowest / characteristic, trace) : mechanics;
    }

    /// <summary>For each board fixing of a plan: that it rests on tests, or that it does not; for each plug in masonry that it does.</summary>
    public static IEnumerable<Assumption> Said(IReadOnlyList<BracketPlan> brackets)
    {
        foreach (string size in brackets.Where(b => b.Picked is not null && b.Answer.Working.Any(s => s.Clause == OnSiteTests.Clause)).Select(b => b.Picked!.Size.Id).Distinct(StringComparer.Ordinal))
            yield return new("assume_site_tests", [Pattress.Said.Name(size)], "own tests");
        foreach (string size in brackets.Where(b => b.Picked?.Size.Claim is not null).Select(b => b.Picked!.Size.Id).Distinct(StringComparer.Ordinal))
            yield return new("assume_claim", [Pattress.Said.Name(size)], "own claims");
        foreach (var group in brackets.Where(b => b.Picked?.Spot is { } spot && HouseRules.OnBoard(spot.Behind)).GroupBy(b => (b.Picked!.Size.Id, b.Picked.Hold!.Basis == "trial")).OrderBy(g => g.Key.Id, StringComparer.Ordinal))
            yield return group.Key.Item2 ? new("assume_own_trials", [Pattress.Said.Name(group.Key.Id)], "own tests") : new("assume_no_trials", [Pattress.Said.Name(group.Key.Id), .. Doubt], "assumed");
    }

    // All scatter of a fixing in board, and of it what the least loads that are printed show of the mechanics alone.
    private static Said[] Doubt => [Pattress.Said.Percent(Factors.Of("variation_board")), Pattress.Said.Percent(BoardModelError.Punching.V), Pattress.Said.Percent(BoardModelError.Flexure.V)];
}
