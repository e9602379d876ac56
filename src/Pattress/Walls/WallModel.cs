namespace Pattress.Walls;

/// <summary>What a wall is: a posterior over composite build-ups, and their depths, from everything seen.</summary>
public static class WallModel
{
    /// <summary>Infers one wall, ceiling or zone by itself. A kind without rows falls back to <c>wall</c>.</summary>
    public static WallBelief Infer(WallEvidence evidence, WallRates? rates = null)
    {
        var one = new WallPosterior(evidence, rates ?? WallRates.Default);
        return one.Belief(one.Prior);
    }

    /// <summary>The wall with its zones: lintels over openings, and the parts that were named; each with a belief of its own.</summary>
    public static ZonedWall InferZones(WallEvidence evidence, WallRates? rates = null) => ZoneModel.Infer(evidence, rates ?? WallRates.Default);

    /// <summary>The zones alone; none without openings and parts.</summary>
    internal static IReadOnlyList<ZoneOfWall> Zones(WallEvidence evidence, WallPosterior plain) =>
        evidence.Openings.Count + evidence.Parts.Count == 0 ? [] : ZoneModel.Infer(evidence, WallRates.Default, plain).Zones;

    /// <summary>
    /// Which readings moved the answer, and by how much: log odds of the likeliest family with each reading less without it,
    /// greatest first.
    /// </summary>
    public static IReadOnlyList<ReadingInfluence> Explain(WallEvidence evidence, WallRates? rates = null) =>
        WallExplain.Of(evidence, e => Infer(e, rates));
}
