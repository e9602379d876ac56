namespace Pattress.Supports;

/// <summary>How much one reading moved the answer.</summary>
/// <param name="LogOdds">Log odds of meeting a support at the best place (mean over the zones; without zones the surest support), with the reading less without it.</param>
/// <param name="AtMm">That place (the first of several); <paramref name="Without"/> the chance there without the reading, <paramref name="With"/> with it (of several places by their mean log odds).</param>
public sealed record LineInfluence(string Reading, double LogOdds, double AtMm, double Without, double With);

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
        return [.. scan.Readings.Take(Most).Select(r => Without(reader, bare, r, rates, priors, places, now, (b, p) => b.HitAt(p)))
            .OrderByDescending(i => Math.Abs(i.LogOdds)).ThenBy(i => i.Reading, StringComparer.Ordinal)];
    }

    private static LineInfluence Without(LineReader reader, LineScan scan, LineReading reading, LineRates rates, LinePriors priors, double[] places, double now, Func<SupportBelief, double, double> met)
    {
        var belief = reader.Read(scan with { Readings = [.. scan.Readings.Where(r => r.Id != reading.Id)] }, rates, priors);
        double without = places.Average(p => LogOdds(met(belief, p)));
        return new(reading.Id, now - without, places[0], Chance(without), Chance(now));
    }

    /// <summary>A support this near a reading is the one that it speaks of, mm.</summary>
    private const double NearMm = 60;

    /// <summary>What each reading moved where it was taken: at the surest support near it, or at its own place where none is near.</summary>
    public static IReadOnlyList<LineInfluence> Near(LineScan scan, LineRates rates, LinePriors priors, IReadOnlyCollection<string>? only)
    {
        var reader = new LineReader();
        var bare = scan with { Zones = [] };
        var all = reader.Read(bare, rates, priors);
        return [.. scan.Readings.Where(r => only is null || only.Contains(r.Id)).Take(Most).Select(r => (Reading: r, At: Place(r, all)))
            .Select(p => Without(reader, bare, p.Reading, rates, priors, [p.At], LogOdds(Met(p.Reading)(all, p.At)), Met(p.Reading)))
            .OrderByDescending(i => Math.Abs(i.LogOdds)).ThenBy(i => i.Reading, StringComparer.Ordinal)];
    }

    /// <summary>What a reading speaks of: a support along the line; a hole of whatever timber it met, a noggin too.</summary>
    private static Func<SupportBelief, double, double> Met(LineReading reading) => reading is ThinHole h ? (b, p) => b.MetBy(h, p) : (b, p) => b.HitAt(p);

    private static double Place(LineReading reading, SupportBelief all)
    {
        var (from, to) = Stretch(reading);
        var near = all.Supports.Where(s => s.CentreMm >= from - NearMm && s.CentreMm <= to + NearMm).OrderByDescending(s => s.Probability).FirstOrDefault();
        return near is null ? Math.Clamp((from + to) / 2, 0, all.StepMm * (all.Hit.Count - 1)) : near.CentreMm;
    }

    private static (double From, double To) Stretch(LineReading reading) => reading switch
    {
        Tap t => (t.AtMm, t.AtMm),
        ThinHole h => (h.AtMm, h.AtMm),
        SweepAlong a => (a.AtMm, a.AtMm),
        DetectorSignal d => (d.AtMm, d.AtMm),
        BoardJoint j => (j.AtMm, j.AtMm),
        MagnetSweep { HitsMm.Count: > 0 } m => (m.HitsMm.Min(), m.HitsMm.Max()),
        MagnetSweep m => (Math.Min(m.FromMm, m.ToMm) + NearMm, Math.Max(m.FromMm, m.ToMm) - NearMm),
        _ => (0, 0),
    };

    private static double Chance(double logOdds) => 1 / (1 + Math.Exp(-logOdds));

    private static double LogOdds(double p)
    {
        double kept = Math.Clamp(p, 1e-9, 1 - 1e-9);
        return Math.Log(kept / (1 - kept));
    }
}
