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

    /// <summary>
    /// Which readings moved the answer, and by how much: log odds of the likeliest family with each reading less without it,
    /// greatest first.
    /// </summary>
    public static IReadOnlyList<ReadingInfluence> Explain(WallEvidence evidence, WallRates? rates = null)
    {
        var belief = Infer(evidence, rates);
        string family = belief.BestFamily.Family;
        double odds = LogOdds(belief.Family(family));
        return [.. evidence.Readings.Select(r => new ReadingInfluence(r.Id, odds - LogOdds(Without(evidence, r, rates).Family(family))))
            .OrderByDescending(i => Math.Abs(i.LogOdds)).ThenBy(i => i.Reading, StringComparer.Ordinal)];
    }

    private static WallBelief Without(WallEvidence e, WallReading reading, WallRates? rates) =>
        Infer(e with { Readings = [.. e.Readings.Where(r => r.Id != reading.Id)] }, rates);

    private static double LogOdds(double p)
    {
        double kept = Math.Clamp(p, 1e-12, 1 - 1e-12);
        return Math.Log(kept / (1 - kept));
    }
}
