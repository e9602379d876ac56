using Pattress.Supports;

namespace Pattress.Bench;

/// <summary>What one fitter did in one zone.</summary>
/// <param name="Predicted">Chance stated for the first hole; NaN where none was.</param>
internal sealed record ZoneResult(bool FirstHit, bool FirstUsable, int Holes, int Taps, int Sweeps, double Predicted);

/// <summary>Fitters by hand, and the one with the posterior. Taps each 40 mm over the zone, at most two sweeps of 140 mm.</summary>
internal static class SimulatorFitters
{
    public const double TapStep = 40, SweepHalf = 70, SureEnough = 0.97;

    /// <summary>A sweep expected to bring less than this is not done.</summary>
    private const double LeastGain = 0.01;

    private const int MostHoles = 20;

    public static List<LineReading> Taps(SimulatorWall wall, Zone zone, string prefix)
    {
        List<LineReading> taps = [];
        for (double x = zone.FromMm; x <= zone.ToMm; x += TapStep)
            taps.Add(new Tap($"{prefix}{x}", x, wall.Tap(x) ? TapSound.Solid : TapSound.Hollow));
        return taps;
    }

    /// <summary>Taps, drills the middle of the longest run of solid taps, then beside it to both sides.</summary>
    public static ZoneResult TapMiddle(SimulatorWall wall, Zone zone, List<LineReading> taps) => Drill(wall, zone, Runs(taps, zone)[0], taps.Count, 0);

    /// <summary>Taps, draws the magnet over the middle of the longest run (and of the next), drills where it was drawn.</summary>
    public static ZoneResult TapMagnet(SimulatorWall wall, Zone zone, List<LineReading> taps)
    {
        var runs = Runs(taps, zone);
        for (int i = 0; i < Math.Min(2, runs.Count); i++)
            if (wall.Sweep(runs[i] - SweepHalf, runs[i] + SweepHalf) is { Count: > 0 } hits)
                return Drill(wall, zone, Math.Clamp(hits.MinBy(h => Math.Abs(h - runs[i])), zone.FromMm, zone.ToMm), taps.Count, i + 1);
        return Drill(wall, zone, runs[0], taps.Count, 2);
    }

    /// <summary>Finds two studs by tap and magnet in and beside the zone, steps their pitch to the zone's middle.</summary>
    public static ZoneResult StepPitch(SimulatorWall wall, Zone zone, List<LineReading> taps)
    {
        var hits = Runs(taps, zone).Take(2).SelectMany(r => wall.Sweep(r - SweepHalf, r + SweepHalf)).Order().ToList();
        if (hits.Count < 2 || hits[^1] - hits[0] < 350) return TapMagnet(wall, zone, taps);
        double pitch = new[] { 400.0, 450, 600 }.MinBy(p => Math.Abs(p - (hits[^1] - hits[0]))), middle = (zone.FromMm + zone.ToMm) / 2;
        double at = hits[0] + (pitch * Math.Round((middle - hits[0]) / pitch));
        return Drill(wall, zone, Math.Clamp(at, zone.FromMm, zone.ToMm), taps.Count, 2);
    }

    /// <summary>Sweeps where it is expected to bring most, as the library's next check does; the readings are added to.</summary>
    public static ZoneBelief Sweeps(SimulatorWall wall, int zone, LineScan scan, List<LineReading> seen, LineReader reader, LineRates rates, LinePriors priors)
    {
        var z = reader.Read(scan, rates, priors).Zones[0];
        for (int k = 0; k < 2 && z.BestUsableProbability < SureEnough; k++)
        {
            var sweep = SweepSearch.Best(reader, scan, z.FromMm, z.ToMm, rates, priors);
            if (sweep.After - sweep.Before < LeastGain) break;
            seen.Add(new MagnetSweep($"m{zone}-{k}", sweep.FromMm, sweep.ToMm, wall.Sweep(sweep.FromMm, sweep.ToMm)));
            z = reader.Read(scan, rates, priors).Zones[0];
        }
        return z;
    }

    /// <summary>The posterior: sweeps, drills where the hole is likeliest to be usable, learns from every hole. All zones' readings count.</summary>
    public static ZoneResult Posterior(SimulatorWall wall, int zone, IReadOnlyList<Zone> zones, List<LineReading> seen, LineReader reader, LineRates rates, LinePriors priors)
    {
        int taps = seen.Count(r => r is Tap);
        var scan = new LineScan(wall.Length, seen, [zones[zone]]);
        var z = Sweeps(wall, zone, scan, seen, reader, rates, priors);
        return Drill(wall, zone, scan, seen, z, taps, reader, rates, priors);
    }

    /// <summary>Drills where the hole is likeliest to be usable, then where a support is likeliest to be met.</summary>
    public static ZoneResult Drill(SimulatorWall wall, int zone, LineScan scan, List<LineReading> seen, ZoneBelief z, int taps, LineReader reader, LineRates rates, LinePriors priors)
    {
        int sweeps = seen.Count(r => r is MagnetSweep && r.Id.StartsWith($"m{zone}-", StringComparison.Ordinal)), holes = 0;
        double first = z.BestUsableMm, predicted = reader.Read(scan, rates, priors).HitAt(first);
        bool hit = false;
        for (; !hit && holes < MostHoles; holes++)
        {
            double at = holes == 0 ? first : z.BestMm;
            hit = wall.Hits(at);
            seen.Add(new ThinHole($"h{zone}-{holes}", at, wall.Probe(at) ? HoleMet.Support : HoleMet.Void));
            if (!hit) z = reader.Read(scan, rates, priors).Zones[0];
        }
        return new(wall.Hits(first), wall.Usable(first), holes, taps, sweeps, predicted);
    }

    /// <summary>Middles of the runs of solid taps, longest first; the zone's middle when there is none.</summary>
    private static List<double> Runs(List<LineReading> taps, Zone zone)
    {
        List<(double From, double To)> runs = [];
        foreach (var t in taps.OfType<Tap>().Where(t => t.Sound == TapSound.Solid))
            if (runs.Count > 0 && t.AtMm - runs[^1].To <= TapStep + 1) runs[^1] = (runs[^1].From, t.AtMm);
            else runs.Add((t.AtMm, t.AtMm));
        return runs.Count == 0 ? [(zone.FromMm + zone.ToMm) / 2] : [.. runs.OrderByDescending(r => r.To - r.From).Select(r => (r.From + r.To) / 2)];
    }

    private static ZoneResult Drill(SimulatorWall wall, Zone zone, double first, int taps, int sweeps)
    {
        int holes = 0;
        for (bool hit = false; !hit && holes < MostHoles; holes++)
            hit = wall.Hits(Math.Clamp(first + (15 * ((holes + 1) / 2) * (holes % 2 == 0 ? 1 : -1)), zone.FromMm, zone.ToMm));
        return new(wall.Hits(first), wall.Usable(first), holes, taps, sweeps, double.NaN);
    }
}
