using Pattress.Supports;
namespace Pattress.Bench;
internal static class Experiment
{
    static double Mid(SweepOffer o) => (o.FromMm + o.ToMm) / 2;
    public static void Run(int walls, int seed, int samples, int way)
    {
        var reader = new LineReader(); var exact = new ExactModel();
        int n = 0; double a = 0, b = 0, au = 0, bu = 0, eh = 0, ess = 0, pa = 0, pb = 0; double difference = 0, ua = 0, ub = 0; var watch = new System.Diagnostics.Stopwatch(); int sweeps = 0;
        for (int i = 0; i < walls; i++)
        {
            var wall = new SimulatorWall(new Random(seed + i), WallTrouble.Plain);
            if (wall.Window() is not { } zone) continue;
            var seen = SimulatorFitters.Taps(wall, zone, "t");
            watch.Start();
            var scan = new LineScan(wall.Length, seen, [zone]);
            var z = reader.Read(scan, LineRates.Default, LinePriors.Default).Zones[0];
            for (int k = 0; k < 2 && z.BestUsableProbability < (way == 0 ? 0.9 : 0.97); k++)
            {
                double c = way == 0 ? z.BestMm : way == 2 ? Mid(SweepSearch.Best(reader, scan, zone.FromMm, zone.ToMm, LineRates.Default, LinePriors.Default)) : SweepChoice.Best(reader, scan, z, 70, LineRates.Default, LinePriors.Default).At;
                double from = Math.Max(0, c - 70), to = Math.Min(wall.Length, c + 70);
                seen.Add(new MagnetSweep($"m-{k}", from, to, wall.Sweep(from, to)));
                z = reader.Read(scan, LineRates.Default, LinePriors.Default).Zones[0];
            }
            watch.Stop();
            var (hit, usable) = exact.Posterior(wall.Length, zone, seen, samples, new Random(77 + i));
            int best = 0, bestHit = 0; for (int j = 1; j < usable.Length; j++) { if (usable[j] > usable[best]) best = j; if (hit[j] > hit[bestHit]) bestHit = j; }
            n++;
            a += wall.Hits(z.BestUsableMm) ? 1 : 0; au += wall.Usable(z.BestUsableMm) ? 1 : 0;
            b += wall.Hits(zone.FromMm + best) ? 1 : 0; bu += wall.Usable(zone.FromMm + best) ? 1 : 0; eh += wall.Hits(zone.FromMm + bestHit) ? 1 : 0;
            pa += hit[(int)(z.BestUsableMm - zone.FromMm)]; pb += hit[best]; ua += usable[(int)(z.BestUsableMm - zone.FromMm)]; ub += usable[best]; sweeps += seen.Count(r => r is MagnetSweep);
            ess += Math.Min(exact.Effective, 1000);
            difference += Math.Abs(hit[(int)(z.BestUsableMm - zone.FromMm)] - reader.Read(scan, LineRates.Default, LinePriors.Default).HitAt(z.BestUsableMm));
        }
        Console.WriteLine($"way {way}");
        Console.WriteLine(FormattableString.Invariant($"{n} walls: ours {a / n:0.000} usable {au / n:0.000}; exact {b / n:0.000} usable {bu / n:0.000}, at its likeliest {eh / n:0.000}; exact model's own expectation of ours {pa / n:0.000}, of its own {pb / n:0.000}; usable {ua / n:0.000} {ub / n:0.000}; {sweeps / (double)n:0.00} sweeps, {watch.ElapsedMilliseconds / n} ms a wall; mean difference of stated chance {difference / n:0.000}; effective {ess / n:0}"));
    }
}
