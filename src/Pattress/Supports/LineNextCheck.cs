using static Pattress.Walls.RateTable;

namespace Pattress.Supports;

/// <summary>
/// Which check along the line to do next: for the zone most in doubt, the check whose expected gain in the chance of meeting
/// a support, at the price of a missed hole, is most above its own price. One step ahead; null when nothing is worth it.
/// </summary>
internal static class LineNextCheck
{
    private const double Step = SweepSearch.Step;

    private static readonly double MissedHoleMinutes = Value("minutes_missed_hole"), TapMinutes = Value("minutes_one_tap"), SweepMinutes = Value("minutes_sweep"), HoleMinutes = Value("minutes_probe");

    private readonly record struct Offer(string Kind, double At, double Minutes, IReadOnlyList<LineReading> Findings);

    public static LineCheck? Best(LineReader reader, LineScan scan, LineRates rates, LinePriors priors, SupportBelief now)
    {
        if (now.Zones.Count == 0 || scan.IsCeiling && now.ParallelProbability > 0.9) return null;
        if (scan.OtherWay is not null)
        {
            // The search is along this line alone.
            scan = scan with { OtherWay = null };
            now = reader.Read(scan, rates, priors);
        }
        int zone = now.Zones.Select((z, i) => (z.Probability, i)).MinBy(p => (p.Probability, p.i)).i;
        var z = now.Zones[zone];
        LineCheck? best = null;
        double bestNet = 0, log = reader.Hits(scan, rates, priors, Step).Log;
        if ((1 - z.Probability) * MissedHoleMinutes > SweepMinutes && Sweep(reader, scan, rates, priors, z) is var (sweep, met) && ((met - z.Probability) * MissedHoleMinutes) - SweepMinutes is var worth and > 1e-6)
            (best, bestNet) = (Say(sweep, zone, z.Probability, met), worth);
        foreach (var offer in Offers(scan, z, rates))
        {
            double after = After(reader, scan, rates, priors, z, offer, log);
            double net = ((after - z.Probability) * MissedHoleMinutes) - offer.Minutes;
            if (net > bestNet + 1e-6) (best, bestNet) = (Say(offer, zone, z.Probability, after), net);
        }
        return best;
    }

    private static LineCheck Say(Offer o, int zone, double before, double after) => new(o.Kind, o.At, zone, before, after, o.Minutes,
        new("locate_" + o.Kind, Said.Length(o.At), Said.Percent(before), Said.Percent(after)));

    private static IEnumerable<Offer> Offers(LineScan scan, ZoneBelief z, LineRates rates)
    {
        yield return Hole(z.BestMm);
        foreach (double at in new[] { z.BestMm, z.BestMm - 20, z.BestMm + 20 })
            if (at > 0 && at < scan.LengthMm && !scan.Readings.Any(r => r is Tap t && Math.Abs(t.AtMm - at) < rates.TapAlikeMm)) yield return TapAt(at);
    }

    private static (Offer Offer, double Met) Sweep(LineReader reader, LineScan scan, LineRates rates, LinePriors priors, ZoneBelief z)
    {
        var found = SweepSearch.Best(reader, scan, z.FromMm, z.ToMm, rates, priors);
        return (new("magnet", found.MiddleMm, SweepMinutes, []), found.AfterHit);
    }

    private static Offer Hole(double at) => new("hole", at, HoleMinutes, [new ThinHole("?", at, HoleMet.Support), new ThinHole("?", at, HoleMet.Void)]);

    private static Offer TapAt(double at) => new("tap", at, TapMinutes, [new Tap("?", at, TapSound.Solid), new Tap("?", at, TapSound.Hollow)]);

    /// <summary>Expected chance at the zone's best place after the check, over its possible findings.</summary>
    private static double After(LineReader reader, LineScan scan, LineRates rates, LinePriors priors, ZoneBelief z, Offer offer, double now)
    {
        double total = 0, sum = 0;
        foreach (var finding in offer.Findings)
        {
            var (log, hit) = reader.Hits(scan with { Readings = [.. scan.Readings, finding], Zones = [] }, rates, priors, Step);
            double chance = Math.Exp(log - now);
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
