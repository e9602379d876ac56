namespace Pattress.Supports;

/// <summary>
/// Which check along the line to do next: for the zone most in doubt, the check whose expected gain in the chance of meeting
/// a support, at the price of a missed hole, is most above its own price. One step ahead; null when nothing is worth it.
/// </summary>
internal static class LineNextCheck
{
    /// <summary>Minutes that a hole in the wrong place costs, filling included (assumed).</summary>
    public const double MissedHoleMinutes = 12;

    private const double TapMinutes = 0.1, SweepMinutes = 0.5, HoleMinutes = 1.5, SweepHalfMm = 70, Step = 4;

    private readonly record struct Offer(string Kind, double At, double Minutes, IReadOnlyList<LineReading> Findings);

    public static LineCheck? Best(LineReader reader, LineScan scan, LineRates rates, LinePriors priors, SupportBelief now)
    {
        if (now.Zones.Count == 0 || scan.IsCeiling && now.ParallelProbability > 0.9) return null;
        int zone = now.Zones.Select((z, i) => (z.Probability, i)).MinBy(p => (p.Probability, p.i)).i;
        var z = now.Zones[zone];
        LineCheck? best = null;
        double bestNet = 0, log = reader.Hits(scan, rates, priors, Step).Log;
        foreach (var offer in Offers(scan, now, z, rates))
        {
            double after = After(reader, scan, rates, priors, z, offer, log);
            double net = ((after - z.Probability) * MissedHoleMinutes) - offer.Minutes;
            if (net > bestNet + 1e-6) (best, bestNet) = (Say(offer, zone, z.Probability, after), net);
        }
        return best;
    }

    private static LineCheck Say(Offer o, int zone, double before, double after) => new(o.Kind, o.At, zone, before, after, o.Minutes,
        new("locate_" + o.Kind, Said.Length(o.At), Said.Percent(before), Said.Percent(after)));

    private static IEnumerable<Offer> Offers(LineScan scan, SupportBelief now, ZoneBelief z, LineRates rates)
    {
        yield return Hole(z.BestMm);
        yield return Sweep(z.BestMm, scan.LengthMm);
        foreach (double at in new[] { z.BestMm, z.BestMm - 20, z.BestMm + 20 })
            if (at > 0 && at < scan.LengthMm && !scan.Readings.Any(r => r is Tap t && Math.Abs(t.AtMm - at) < rates.TapAlikeMm)) yield return TapAt(at);
        if (Second(now, z) is { } other) yield return Sweep(other, scan.LengthMm);
    }

    /// <summary>The next likeliest support in the zone, out of reach of a sweep over the best place.</summary>
    private static double? Second(SupportBelief now, ZoneBelief z) => now.Supports
        .Where(s => s.CentreMm >= z.FromMm && s.CentreMm <= z.ToMm && Math.Abs(s.CentreMm - z.BestMm) > SweepHalfMm)
        .OrderByDescending(s => s.Probability).Select(s => (double?)s.CentreMm).FirstOrDefault();

    private static Offer Hole(double at) => new("hole", at, HoleMinutes, [new ThinHole("?", at, HoleMet.Support), new ThinHole("?", at, HoleMet.Void)]);

    private static Offer TapAt(double at) => new("tap", at, TapMinutes, [new Tap("?", at, TapSound.Solid), new Tap("?", at, TapSound.Hollow)]);

    /// <summary>A sweep's findings: nothing, or one hit in one of three places, each standing for its stretch.</summary>
    private static Offer Sweep(double at, double length)
    {
        double from = Math.Max(0, at - SweepHalfMm), to = Math.Min(length, at + SweepHalfMm), part = (to - from) / 3;
        return new("magnet", at, SweepMinutes, [new MagnetSweep("?", from, to, []),
            .. Enumerable.Range(0, 3).Select(i => new MagnetSweep("?", from, to, [from + ((i + 0.5) * part)]))]);
    }

    /// <summary>Expected chance at the zone's best place after the check, over its possible findings.</summary>
    private static double After(LineReader reader, LineScan scan, LineRates rates, LinePriors priors, ZoneBelief z, Offer offer, double now)
    {
        double total = 0, sum = 0;
        foreach (var finding in offer.Findings)
        {
            var (log, hit) = reader.Hits(scan with { Readings = [.. scan.Readings, finding], Zones = [] }, rates, priors, Step);
            double chance = Math.Exp(log - now) * (finding is MagnetSweep { HitsMm.Count: > 0 } s ? (s.ToMm - s.FromMm) / 3 : 1);
            (total, sum) = (total + chance, sum + (chance * Most(hit, z)));
        }
        return sum / total;
    }

    private static double Most(double[] hit, ZoneBelief z)
    {
        int from = Math.Clamp((int)Math.Ceiling(z.FromMm / Step), 0, hit.Length - 1), to = Math.Clamp((int)(z.ToMm / Step), from, hit.Length - 1);
        return Vectors.Max(hit.AsSpan(from, to - from + 1));
    }
}
