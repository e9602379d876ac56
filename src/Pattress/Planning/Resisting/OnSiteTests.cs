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

    /// <summary>
    /// The mechanisms of masonry brought down to what failed tests leave: their load over the same partial factor and creep. Shear follows the pull-out as the
    /// mechanics have it, and tests in shear besides.
    /// </summary>
    public static IReadOnlyList<MechanismResult> Lowered(IReadOnlyList<MechanismResult> results, Asked a, string material, Trace? trace)
    {
        double left = Factors.OnCreep(a.Duration, null) / Factors.Of("plug_gamma_m"), pull = left * Lowest(a, "tension", material);
        double shear = Math.Min(left * Lowest(a, "shear", material), Factors.Of("plug_shear_over_tension") * pull);
        double Most(MechanismResult r) => r.Mechanism switch { "pull_out_masonry" => pull, "bearing_masonry" => shear, _ => double.PositiveInfinity };
        return [.. results.Select(r => r.Design.Covered && Most(r) < r.Design.Value ? OnBoard.Scaled(r, Most(r) / r.Design.Value, trace) : r)];
    }

    /// <summary>The lowest load at which one failed, N, where there are too few tests to rest on; infinite where none did.</summary>
    private static double Lowest(Asked a, string load, string material) =>
        a.Trials.ForMasonry(a.Size.Id, load, material) is { RelyOnN: null, LowestFailureN: { } lowest } ? lowest : double.PositiveInfinity;
}
