using Pattress.Supports;

namespace Pattress.Bench;

/// <summary>
/// The posterior of the simulator's own model by brute force: walls drawn from the simulator itself, each weighted by how well
/// it explains what was heard and found. Nothing of the library is in it but the normal distribution.
/// </summary>
internal sealed class ExactModel
{
    private const double Finds = 0.8, FalsePerMm = 1.0 / 5000, Reach = 90;
    private readonly double[] _tap = new double[200];
    private readonly double[] _masks = new double[1 << MostHits], _next = new double[1 << MostHits];
    private const int MostHits = 8;

    public ExactModel()
    {
        for (int d = 0; d < _tap.Length; d++) _tap[d] = 0.08 + (0.80 / (1 + Math.Exp((d - 50 - 6) / 7.0)));
    }

    /// <summary>Effective number of walls behind the last answer.</summary>
    public double Effective { get; private set; }

    /// <summary>Chance of meeting a support (and of a usable hole) at each mm of a zone.</summary>
    public (double[] Hit, double[] Usable) Posterior(double length, Zone zone, IReadOnlyList<LineReading> seen, int walls, Random random)
    {
        int n = (int)(zone.ToMm - zone.FromMm) + 1;
        double[] hit = new double[n + 1], usable = new double[n + 1];
        Tap[] taps = [.. seen.OfType<Tap>()];
        var swept = Swept(seen);
        double[] hits = [.. seen.OfType<MagnetSweep>().SelectMany(s => s.HitsMm).Distinct().Take(MostHits)];
        double total = 0, square = 0;
        for (int i = 0; i < walls; i++)
        {
            var wall = new SimulatorWall(random, WallTrouble.Plain, length, screws: false);
            if (!wall.Studs.Any(s => s >= zone.FromMm + 20 && s <= zone.ToMm - 20)) continue;
            double w = Taps(wall, taps) * Sweeps(wall, swept, hits) * Holes(wall, seen);
            (total, square) = (total + w, square + (w * w));
            foreach (double s in wall.Studs) { Add(hit, zone, s, wall.Half, w); Add(usable, zone, s, wall.Half - 10, w); }
        }
        Effective = total * total / square;
        return (Running(hit, total), Running(usable, total));
    }

    private double Taps(SimulatorWall wall, Tap[] taps)
    {
        double w = 1;
        foreach (var t in taps)
        {
            double d = double.PositiveInfinity;
            foreach (double s in wall.Studs) d = Math.Min(d, Math.Abs(s - t.AtMm));
            double p = Solid(d - wall.Half);
            foreach (var (from, to, solid) in wall.SolidPatches) if (t.AtMm >= from && t.AtMm <= to) p = Math.Max(p, solid);
            w *= t.Sound == TapSound.Solid ? p : 1 - p;
        }
        return w;
    }

    private double Solid(double outside)
    {
        double d = Math.Min(outside + 50, 198);
        int i = (int)d;
        return _tap[i] + ((d - i) * (_tap[i + 1] - _tap[i]));
    }

    private static double Holes(SimulatorWall wall, IReadOnlyList<LineReading> seen)
    {
        double w = 1;
        foreach (var h in seen.OfType<ThinHole>())
        {
            double p = wall.Hits(h.AtMm) ? 0.98 : 0.01;
            w *= h.Met == HoleMet.Support ? p : 1 - p;
        }
        return w;
    }

    /// <summary>Every way the hits can belong to screws or to nothing, summed.</summary>
    private double Sweeps(SimulatorWall wall, List<(double From, double To)> swept, double[] hits)
    {
        if (swept.Count == 0) return 1;
        Array.Clear(_masks, 0, 1 << hits.Length);
        _masks[0] = 1;
        foreach (double s in wall.Studs)
        {
            if (!swept.Any(r => s > r.From - Reach && s < r.To + Reach)) continue;
            if (wall.Steel) Steel(s, swept, hits);
            else Source([(s, 5.0, Finds)], 1 - Finds, swept, hits, both: false);
        }
        double sum = 0, length = swept.Sum(r => r.To - r.From);
        for (int m = 0; m < 1 << hits.Length; m++) sum += _masks[m] * Math.Pow(FalsePerMm, hits.Length - System.Numerics.BitOperations.PopCount((uint)m));
        return sum * Math.Exp(-FalsePerMm * length);
    }

    /// <summary>A steel stud: nothing .2, one line .2 each, both .4.</summary>
    private void Steel(double s, List<(double From, double To)> swept, double[] hits) =>
        Source([(s - 19, 6.0, 0.2), (s + 19, 6.0, 0.2)], 0.2, swept, hits, both: true);

    private void Source((double At, double Sd, double P)[] lines, double none, List<(double From, double To)> swept, double[] hits, bool both)
    {
        int all = 1 << hits.Length;
        Array.Clear(_next, 0, all);
        double[] off = [.. lines.Select(l => 1 - swept.Sum(r => Normal.Below((r.To - l.At) / l.Sd) - Normal.Below((r.From - l.At) / l.Sd)))];
        for (int m = 0; m < all; m++)
        {
            if (_masks[m] == 0) continue;
            double still = none + lines.Select((l, k) => l.P * off[k]).Sum() + (both ? 0.4 * off[0] * off[1] : 0);
            _next[m] += _masks[m] * still;
            for (int k = 0; k < lines.Length; k++)
                for (int h = 0; h < hits.Length; h++)
                {
                    if ((m >> h & 1) == 1) continue;
                    double here = Normal.Density(hits[h] - lines[k].At, lines[k].Sd);
                    _next[m | (1 << h)] += _masks[m] * here * (lines[k].P + (both ? 0.4 * off[1 - k] : 0));
                    if (!both || k == 1) continue;
                    for (int o = 0; o < hits.Length; o++)
                        if (o != h && (m >> o & 1) == 0) _next[m | (1 << h) | (1 << o)] += _masks[m] * 0.4 * here * Normal.Density(hits[o] - lines[1].At, lines[1].Sd);
                }
        }
        Array.Copy(_next, _masks, all);
    }

    /// <summary>What was swept, overlaps joined: a screw is there once.</summary>
    private static List<(double From, double To)> Swept(IReadOnlyList<LineReading> seen)
    {
        List<(double From, double To)> all = [];
        foreach (var s in seen.OfType<MagnetSweep>().OrderBy(s => s.FromMm))
            if (all.Count > 0 && s.FromMm <= all[^1].To) all[^1] = (all[^1].From, Math.Max(all[^1].To, s.ToMm));
            else all.Add((s.FromMm, s.ToMm));
        return all;
    }

    private static void Add(double[] row, Zone zone, double stud, double half, double weight)
    {
        int from = (int)Math.Ceiling(stud - half - zone.FromMm), to = (int)Math.Floor(stud + half - zone.FromMm) + 1;
        if (to <= 0 || from >= row.Length - 1) return;
        row[Math.Max(0, from)] += weight;
        row[Math.Min(to, row.Length - 1)] -= weight;
    }

    private static double[] Running(double[] steps, double total)
    {
        var row = new double[steps.Length - 1];
        double sum = 0;
        for (int i = 0; i < row.Length; i++) row[i] = Math.Min(1, (sum += steps[i]) / total);
        return row;
    }
}
