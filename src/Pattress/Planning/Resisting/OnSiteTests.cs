using Pattress.Strength.Mechanisms;
using Pattress.Working;

namespace Pattress.Planning.Resisting;

/// <summary>Lets the user's own tests on a wall carry a plug in its masonry; a failure lowers the plug there and in the same material elsewhere.</summary>
internal static class OnSiteTests
{
    /// <summary>What a working says where it rests on them.</summary>
    public const string Clause = "tests on this wall";

    /// <summary>What five or more tests on this wall give the plug, N, for the depth that it reaches; null with fewer.</summary>
    public static double? Tested(Asked a, string material, double depthMm) =>
        a.Trials.ForMasonry(a.Size.Id, "tension", material) is { RelyOnN: { } tested } ? tested * Math.Min(1, depthMm / a.Size.EmbedMm) : null;

    /// <summary>The mechanisms of masonry brought down to what a failed test leaves: its load over the same partial factor and creep.</summary>
    public static IReadOnlyList<MechanismResult> Lowered(IReadOnlyList<MechanismResult> results, Asked a, string load, string material, Trace? trace)
    {
        if (a.Trials.ForMasonry(a.Size.Id, load, material) is not { RelyOnN: null, LowestFailureN: { } lowest }) return results;
        double most = lowest * Factors.OnCreep(a.Duration, null) / Factors.Of("plug_gamma_m");
        return [.. results.Select(r => OfMasonry(r) && r.Design.Covered && most < r.Design.Value ? OnBoard.Scaled(r, most / r.Design.Value, trace) : r)];
    }

    private static bool OfMasonry(MechanismResult r) => r.Mechanism is "pull_out_masonry" or "bearing_masonry";
}
