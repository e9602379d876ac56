using Pattress.Trials.Special;

namespace Pattress.Trials.Claims;

/// <summary>
/// Brings claims to one basis: the mean strength of one fixing. The ratios of mean to claimed number are ranges (90 %) in
/// data/trials/claim_basis.csv, assumed but for the trade's recommended load, a quarter to a fifth of the mean.
/// </summary>
public static class ClaimReading
{
    private static readonly Lazy<Dictionary<string, (double Low, double High)>> Ranges = new(() =>
        CsvTable.FromEmbedded("data/trials/claim_basis.csv").Rows.ToDictionary(r => r["what"], r => (r.Number("low"), r.Number("high"))));

    /// <summary>The claim on the common basis; refused where it cannot be converted (<c>claim_cantilever</c>) or makes no sense.</summary>
    public static Outcome<CommonBasis> OnCommonBasis(Claim claim)
    {
        if (!(claim.LoadN > 0 && double.IsFinite(claim.LoadN))) return Refused("out_of_range", "load_n", "a load above 0");
        if (claim.SafetyFactor is { } f && !(f is >= 1 and <= 20)) return Refused("out_of_range", "safety_factor", "from 1 to 20");
        if (claim.Load == ClaimedLoad.Cantilever) return Refused("claim_cantilever", "load", "tension or shear; a weight on an arm needs arm and bracket");
        var parts = Parts(claim).ToList();
        double centre = parts.Sum(p => Centre(p.Range)), variance = parts.Sum(p => Sd(p.Range) * Sd(p.Range));
        return Outcome<CommonBasis>.Of(new(claim.LoadN * Math.Exp(centre), Math.Sqrt(variance), [.. parts.Where(p => p.Code.Length > 0).Select(p => new Reason(p.Code))]));
    }

    private static IEnumerable<((double Low, double High) Range, string Code)> Parts(Claim claim)
    {
        if (claim is { Basis: ClaimBasis.Recommended, SafetyFactor: { } factor })
        {
            var (low, high) = Ranges.Value["recommended_with_factor"];
            yield return ((low * factor, high * factor), "claim_factor_on_what");
        }
        else yield return (Ranges.Value[Name(claim.Basis)], claim.Basis switch
        {
            ClaimBasis.NotSaid => "claim_basis_not_said",
            ClaimBasis.Recommended => "claim_factor_not_said",
            _ => "claim_ratio_assumed",
        });
        if (claim.Board is null) yield return (Ranges.Value["board_not_said"], "claim_board_not_said");
        if (claim.Load == ClaimedLoad.NotSaid) yield return (Ranges.Value["load_not_said"], "claim_load_not_said");
    }

    /// <summary>Why two claims cannot be set beside each other as they stand; empty where they can.</summary>
    public static IReadOnlyList<Reason> WhyNotComparable(Claim a, Claim b) => [.. Differences(a, b).Select(code => new Reason(code))];

    private static IEnumerable<string> Differences(Claim a, Claim b)
    {
        if (a.Load == ClaimedLoad.NotSaid || b.Load == ClaimedLoad.NotSaid) yield return "claims_load_not_said";
        else if (a.Load != b.Load) yield return "claims_load_differs";
        else if (a.Load == ClaimedLoad.Cantilever) yield return "claims_cantilever";
        if (a.Basis == ClaimBasis.NotSaid || b.Basis == ClaimBasis.NotSaid) yield return "claims_basis_not_said";
        else if (a.Basis != b.Basis) yield return "claims_basis_differs";
        if (a.Basis == ClaimBasis.Recommended && b.Basis == ClaimBasis.Recommended && (a.SafetyFactor is null || a.SafetyFactor != b.SafetyFactor)) yield return "claims_factor_differs";
        if (a.Board is null || b.Board is null) yield return "claims_board_not_said";
        else if (a.Board != b.Board) yield return "claims_board_differs";
    }

    private static string Name(ClaimBasis basis) => basis switch
    {
        ClaimBasis.Ultimate => "ultimate",
        ClaimBasis.Mean => "mean",
        ClaimBasis.Characteristic => "characteristic",
        ClaimBasis.Recommended => "recommended",
        _ => "not_said",
    };

    private static double Centre((double Low, double High) r) => 0.5 * Math.Log(r.Low * r.High);

    private static double Sd((double Low, double High) r) => Math.Log(r.High / r.Low) / (2 * Normal.NinetyFive);

    private static Outcome<CommonBasis> Refused(string code, string path, string allowed) =>
        Outcome<CommonBasis>.Refused(new Problem(code, path, "", allowed));
}
