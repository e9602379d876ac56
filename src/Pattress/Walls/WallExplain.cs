namespace Pattress.Walls;

/// <summary>Leaves out one reading after another to see what each moved.</summary>
internal static class WallExplain
{
    /// <summary>Beyond so many readings only these, by their order, are explained.</summary>
    public const int Most = 300;

    /// <summary>Influence of each reading on the family that is likeliest with all of them, greatest first, then by id.</summary>
    /// <param name="only">Readings to explain; null: all.</param>
    public static IReadOnlyList<ReadingInfluence> Of(WallEvidence evidence, Func<WallEvidence, WallBelief> believe, IReadOnlyCollection<string>? only = null)
    {
        var (family, now) = believe(evidence).BestFamily;
        return [.. evidence.Readings.Where(r => only is null || only.Contains(r.Id)).Take(Most).Select(r => One(r.Id, family, Without(evidence, r, believe).Family(family), now))
            .OrderByDescending(i => Math.Abs(i.LogOdds)).ThenBy(i => i.Reading, StringComparer.Ordinal)];
    }

    private static ReadingInfluence One(string reading, string family, double without, double with) =>
        new(reading, LogOdds(with) - LogOdds(without), family, without, with);

    private static WallBelief Without(WallEvidence e, WallReading reading, Func<WallEvidence, WallBelief> believe) =>
        believe(e with { Readings = [.. e.Readings.Where(r => r.Id != reading.Id)] });

    private static double LogOdds(double p)
    {
        double kept = Math.Clamp(p, 1e-12, 1 - 1e-12);
        return Math.Log(kept / (1 - kept));
    }
}
