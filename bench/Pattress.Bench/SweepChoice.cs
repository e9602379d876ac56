using Pattress.Supports;

namespace Pattress.Bench;

/// <summary>Where to draw the magnet: the sweep after which the first hole is expected to be surest, over its possible findings.</summary>
internal static class SweepChoice
{
    private const double Step = 4, Apart = 35;
    private const int Parts = 7;

    /// <summary>Middle of the best sweep of twice <paramref name="half"/>, and what it is expected to bring.</summary>
    public static (double At, double Gain) Best(LineReader reader, LineScan scan, ZoneBelief z, double half, LineRates rates, LinePriors priors)
    {
        var (log, _, usable) = reader.Begin(scan, rates, priors, Step);
        double now = Most(usable, z), best = z.BestMm, most = double.NegativeInfinity;
        foreach (double at in Places(z, scan.LengthMm, half))
        {
            double after = After(reader, scan, z, at, half, rates, priors, log);
            if (after > most + 1e-9) (most, best) = (after, at);
        }
        return (best, most - now);
    }

    private static IEnumerable<double> Places(ZoneBelief z, double length, double half)
    {
        yield return z.BestMm;
        for (double x = Math.Max(half, z.FromMm); x <= Math.Min(length - half, z.ToMm); x += Apart) yield return x;
    }

    private static double After(LineReader reader, LineScan scan, ZoneBelief z, double at, double half, LineRates rates, LinePriors priors, double log)
    {
        double from = Math.Max(0, at - half), to = Math.Min(scan.LengthMm, at + half), part = (to - from) / Parts, total = 0, sum = 0;
        for (int i = -1; i < Parts; i++)
        {
            MagnetSweep found = new("?", from, to, i < 0 ? [] : [from + ((i + 0.5) * part)]);
            var (with, _, usable) = reader.Try(found, rates, priors);
            double chance = Math.Exp(with - log) * (i < 0 ? 1 : part);
            (total, sum) = (total + chance, sum + (chance * Most(usable, z)));
        }
        return sum / total;
    }

    private static double Most(double[] row, ZoneBelief z)
    {
        int from = Math.Clamp((int)Math.Ceiling(z.FromMm / Step), 0, row.Length - 1), to = Math.Clamp((int)(z.ToMm / Step), from, row.Length - 1);
        return row.AsSpan(from, to - from + 1).ToArray().Max();
    }
}
