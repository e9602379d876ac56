namespace Pattress.Supports;

/// <summary>How much one reading moved the answer.</summary>
/// <param name="LogOdds">Log odds of meeting a support at the best place (mean over the zones; without zones the surest support), with the reading less without it.</param>
public sealed record LineInfluence(string Reading, double LogOdds);

/// <summary>Leaves out one reading after another to see what each moved.</summary>
internal static class LineExplain
{
    /// <summary>Beyond so many readings only these, by their order, are explained.</summary>
    public const int Most = 300;

    public static IReadOnlyList<LineInfluence> Of(LineScan scan, LineRates rates, LinePriors priors)
    {
        var reader = new LineReader();
        var bare = scan with { Zones = [] };
        var all = reader.Read(scan, rates, priors);
        double[] places = all.Zones.Count > 0 ? [.. all.Zones.Select(z => z.BestMm)] : [.. all.Supports.OrderByDescending(s => s.Probability).Take(1).Select(s => s.CentreMm)];
        if (places.Length == 0) return [];
        double now = places.Average(p => LogOdds(all.HitAt(p)));
        return [.. scan.Readings.Take(Most).Select(r => Without(reader, bare, r, rates, priors, places, now))
            .OrderByDescending(i => Math.Abs(i.LogOdds)).ThenBy(i => i.Reading, StringComparer.Ordinal)];
    }

    private static LineInfluence Without(LineReader reader, LineScan scan, LineReading reading, LineRates rates, LinePriors priors, double[] places, double now)
    {
        var belief = reader.Read(scan with { Readings = [.. scan.Readings.Where(r => r.Id != reading.Id)] }, rates, priors);
        return new(reading.Id, now - places.Average(p => LogOdds(belief.HitAt(p))));
    }

    private static double LogOdds(double p)
    {
        double kept = Math.Clamp(p, 1e-9, 1 - 1e-9);
        return Math.Log(kept / (1 - kept));
    }
}
