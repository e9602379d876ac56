namespace Pattress.Supports;

/// <summary>
/// Sweeps of one height that overlap are one sweep: a screw is there once, and drawing the magnet over it again is no second
/// opinion. Hits of two of them that lie nearer than <c>MagnetSameMm</c> are one screw.
/// </summary>
internal static class SweepJoin
{
    /// <summary>Sweeps within this height of each other are over the same screws, mm.</summary>
    public const double SameLineMm = 60;

    /// <summary>The sweeps that count, none of them overlapping another of its height.</summary>
    public static List<MagnetSweep> Of(IEnumerable<MagnetSweep> sweeps, LineRates rates)
    {
        List<MagnetSweep> joined = [];
        foreach (var s in sweeps.Select(Turned).OrderBy(s => s.FromMm).ThenBy(s => s.ToMm).ThenBy(s => s.Id, StringComparer.Ordinal))
        {
            int at = joined.FindIndex(j => Math.Abs(j.HeightMm - s.HeightMm) <= SameLineMm && s.FromMm <= j.ToMm);
            if (at < 0) joined.Add(s);
            else joined[at] = joined[at] with { ToMm = Math.Max(joined[at].ToMm, s.ToMm), HitsMm = Hits(joined[at].HitsMm, s.HitsMm, rates.MagnetSameMm) };
        }
        return joined;
    }

    private static MagnetSweep Turned(MagnetSweep s) => s.FromMm <= s.ToMm ? s : s with { FromMm = s.ToMm, ToMm = s.FromMm };

    private static List<double> Hits(IReadOnlyList<double> first, IReadOnlyList<double> second, double same)
    {
        List<double> all = [.. first];
        foreach (double h in second)
        {
            int at = all.FindIndex(a => Math.Abs(a - h) < same);
            if (at < 0) all.Add(h);
            else all[at] = (all[at] + h) / 2;
        }
        return all;
    }
}
