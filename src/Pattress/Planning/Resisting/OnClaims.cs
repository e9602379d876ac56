using System.Globalization;
using Pattress.Jobs;
using Pattress.Strength.Mechanisms;
using Pattress.Trials.Claims;
using Pattress.Trials.Special;
using Pattress.Working;

namespace Pattress.Planning.Resisting;

/// <summary>
/// What the user's packet claims, held against the mechanics: a recommended load is never exceeded; any other number becomes a law of the mean strength, and its
/// 5 % fractile over the partial factor on tests is not. A claim never raises: own tests do that.
/// </summary>
internal static class OnClaims
{
    public static MechanismResult Capped(MechanismResult r, string load, Asked a, double creep, Trace? trace)
    {
        if (a.Size.Claim is not { } claim || claim.Load != load && claim.Load != "not_said" || r.Basis == Basis.Trial || !r.Design.Covered) return r;
        double most = MostN(claim) is { } n ? claim.Basis == "recommended" ? n : n * Factors.OnDuration(a.Duration, null) * Factors.OnDamp(a.Damp, null) * creep : double.PositiveInfinity;
        return most < r.Design.Value ? OnBoard.Scaled(r, most / r.Design.Value, trace) : r;
    }

    /// <summary>The greatest design load the claim leaves, N, before duration, damp and creep; null where it cannot be read.</summary>
    internal static double? MostN(OwnClaim claim)
    {
        if (claim.Basis == "recommended") return claim.LoadN;
        var basis = claim.Basis switch { "ultimate" => ClaimBasis.Ultimate, "mean" => ClaimBasis.Mean, "characteristic" => ClaimBasis.Characteristic, _ => ClaimBasis.NotSaid };
        var said = new Claim("", claim.LoadN, claim.Load switch { "tension" => ClaimedLoad.Tension, "shear" => ClaimedLoad.Shear, _ => ClaimedLoad.NotSaid }, basis, claim.Factor, claim.BoardMm?.ToString(CultureInfo.InvariantCulture));
        if (ClaimReading.OnCommonBasis(said).Value is not { } common) return null;
        double scatter = Factors.Of("variation_trials_least"), sd = Math.Sqrt(common.LogSd * common.LogSd + Math.Log(1 + scatter * scatter));
        return common.MedianN * Math.Exp(-Normal.NinetyFive * sd) / Factors.Of("board_trials_gamma_m");
    }
}
