namespace Pattress.Supports;

/// <summary>A sweep that could be done, and what it is expected to make of a zone.</summary>
/// <param name="After">Expected chance that a hole at the then best place is clear of the support's edge; <paramref name="Before"/> the chance now.</param>
/// <param name="AfterHit">Expected chance that a hole at the likeliest place meets the support at all.</param>
internal readonly record struct SweepOffer(double FromMm, double ToMm, double Before, double After, double AfterHit)
{
    public double MiddleMm => (FromMm + ToMm) / 2;
}

/// <summary>
/// Where to draw the magnet: the sweep after which the zone's best hole is expected to be surest, over its possible findings
/// (nothing, or a hit in one of its parts). A sweep over the likeliest place is often not it: one beside it that tells two
/// likely places apart brings more.
/// </summary>
internal static class SweepSearch
{
    /// <summary>Half the length of a sweep, mm; grid of the search; parts in which a hit is told apart.</summary>
    public const double HalfMm = 70, Step = 4;

    private const int Parts = 5;

    /// <summary>Middles that are tried lie this far apart, mm.</summary>
    private const double ApartMm = 40;

    /// <summary>A sweep over a stretch that holds fewer supports than this is not tried: it would find nothing and tell nothing.</summary>
    private const double LeastSupports = 0.08;

    /// <summary>The best sweep for a zone.</summary>
    public static SweepOffer Best(LineReader reader, LineScan scan, double fromMm, double toMm, LineRates rates, LinePriors priors)
    {
        var (log, hit, usable) = reader.Begin(scan with { Zones = [] }, rates, priors, Step);
        double now = Most(usable, fromMm, toMm);
        SweepOffer best = new(0, 0, now, double.NegativeInfinity, 0);
        double[] middles = [.. Places(hit, fromMm, toMm).Where(at => reader.Supports(at - HalfMm, at + HalfMm) >= LeastSupports)];
        foreach (double at in middles)
        {
            double from = Math.Max(0, at - HalfMm), to = Math.Min(scan.LengthMm, at + HalfMm);
            var (after, afterHit) = After(reader, from, to, fromMm, toMm, rates, priors, log);
            if (after > best.After + 1e-9) best = new(from, to, now, after, afterHit);
        }
        return best;
    }

    private static (double Usable, double Hit) After(LineReader reader, double from, double to, double zoneFrom, double zoneTo, LineRates rates, LinePriors priors, double log)
    {
        double part = (to - from) / Parts, total = 0, clear = 0, met = 0;
        for (int i = -1; i < Parts; i++)
        {
            // What was swept has shown its screws.
            if (i >= 0 && reader.Swept(from + ((i + 0.5) * part))) continue;
            var (with, hit, usable) = reader.Try(new MagnetSweep("?", from, to, i < 0 ? [] : [from + ((i + 0.5) * part)]), rates, priors);
            double chance = Math.Exp(with - log) * (i < 0 ? 1 : part);
            (total, clear, met) = (total + chance, clear + (chance * Most(usable, zoneFrom, zoneTo)), met + (chance * Most(hit, zoneFrom, zoneTo)));
        }
        return (clear / total, met / total);
    }

    /// <summary>Middles worth trying: the likeliest place, and the zone from end to end.</summary>
    private static IEnumerable<double> Places(double[] hit, double fromMm, double toMm)
    {
        int best = Index(hit, fromMm, up: true), to = Index(hit, toMm, up: false);
        for (int i = best + 1; i <= to; i++) if (hit[i] > hit[best]) best = i;
        yield return best * Step;
        for (double x = fromMm; x <= toMm; x += ApartMm) yield return x;
    }

    private static double Most(double[] row, double fromMm, double toMm)
    {
        int from = Index(row, fromMm, up: true), to = Math.Max(from, Index(row, toMm, up: false));
        return Vectors.Max(row.AsSpan(from, to - from + 1));
    }

    private static int Index(double[] row, double mm, bool up) => Math.Clamp((int)(up ? Math.Ceiling(mm / Step) : Math.Floor(mm / Step)), 0, row.Length - 1);
}
