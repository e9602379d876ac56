using Pattress.Jobs.Doors;
using Pattress.Trials.Claims;
using Pattress.Trials.Special;

namespace Pattress.Jobs.Certain;

/// <summary>A claim as it was read, and on the common basis where it can be brought there.</summary>
/// <param name="Common">Null for an order of merit.</param>
/// <param name="Reasons">What was not said, assumed, or stands in the way.</param>
internal sealed record ClaimAsRead(Claim Claim, CommonBasis? Common, IReadOnlyList<Reason> Reasons);

/// <summary>Reads claims; a weight on a stated arm and bracket becomes the pull on its fixing.</summary>
internal static class ClaimsRead
{
    public static IReadOnlyList<ClaimAsRead> Of(Entry document, ProblemList problems) => [.. document.ItemsOf("claims").Select(e => Read(e, problems)).OfType<ClaimAsRead>()];

    private static ClaimAsRead? Read(Entry e, ProblemList problems)
    {
        if ((e["load_n"] is null) == (e["load_kg"] is null))
        {
            problems.Add("claim_one_load", e.Path, "", "load_n or load_kg, one of the two");
            return null;
        }
        double load = e.MaybeNumber("load_n") ?? e.NumberOf("load_kg") * Quantities.Units.Gravity;
        var claim = new Claim(e.TextOf("kind"), load, Load(e.TextOr("load", "not_said")), Basis(e.TextOr("basis", "not_said")), e.MaybeNumber("safety_factor"), e.MaybeText("board"));
        return claim.Load == ClaimedLoad.Cantilever ? Cantilevered(claim, e) : OnBasis(claim, ClaimReading.OnCommonBasis(claim));
    }

    private static ClaimAsRead OnBasis(Claim claim, Outcome<CommonBasis> common) => new(claim, common.Value, common.Value?.Reasons ?? [new Reason("claim_order_of_merit")]);

    private static ClaimAsRead Cantilevered(Claim claim, Entry e)
    {
        var plate = e["plate"] is { } p ? new TestBracket(p.NumberOf("width_mm"), p.NumberOf("height_mm"), [.. p.ItemsOf("fixing_heights_mm").Select(h => h.Number)]) : null;
        if (Cantilever.Pull(claim.LoadN, e.MaybeNumber("arm_mm"), plate).Value is not { } pull) return new(claim, null, [new Reason("claim_order_of_merit")]);
        var common = ClaimReading.OnCommonBasis(claim with { LoadN = pull.MiddleN, Load = ClaimedLoad.Tension }).Value!;
        double sd = Math.Log(pull.HighN / pull.LowN) / (2 * Normal.NinetyFive);
        return new(claim, common with { LogSd = Math.Sqrt(common.LogSd * common.LogSd + sd * sd) }, [.. common.Reasons, new Reason("claim_by_bracket_model", Said.Force(pull.LowN), Said.Force(pull.HighN))]);
    }

    private static ClaimedLoad Load(string word) => word switch
    {
        "tension" => ClaimedLoad.Tension,
        "shear" => ClaimedLoad.Shear,
        "cantilever" => ClaimedLoad.Cantilever,
        _ => ClaimedLoad.NotSaid,
    };

    private static ClaimBasis Basis(string word) => word switch
    {
        "ultimate" => ClaimBasis.Ultimate,
        "mean" => ClaimBasis.Mean,
        "characteristic" => ClaimBasis.Characteristic,
        "recommended" => ClaimBasis.Recommended,
        _ => ClaimBasis.NotSaid,
    };
}
