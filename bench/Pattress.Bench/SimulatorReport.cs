using System.Diagnostics;
using System.Globalization;
using Pattress.Supports;
using Pattress.Walls;

namespace Pattress.Bench;

/// <summary>Runs the simulator and prints what each fitter reached. On demand: <c>simulate [walls] [seed]</c>.</summary>
internal static class SimulatorReport
{
    /// <summary>Minutes of each thing done (assumed): tap, sweep, hole with its filling when it missed.</summary>
    private const double TapMin = 0.05, SweepMin = 0.5, HoleMin = 1.5, FillMin = 6;

    public static void Run(int walls, int seed)
    {
        foreach (var trouble in Enum.GetValues<WallTrouble>()) Scenario(trouble == WallTrouble.Plain ? walls : walls / 4, seed, trouble);
        Zones(walls / 2, seed);
        Wrong(walls / 4, seed);
        Console.WriteLine("A simulator proves the method, not houses: the log of predicted against found is what will.");
    }

    private static void Scenario(int walls, int seed, WallTrouble trouble)
    {
        var results = new Dictionary<string, List<ZoneResult>>(StringComparer.Ordinal) { ["tap, middle"] = [], ["tap, magnet"] = [], ["two, step"] = [], ["posterior"] = [] };
        var reader = new LineReader();
        var watch = Stopwatch.StartNew();
        for (int i = 0; i < walls; i++)
        {
            var wall = new SimulatorWall(new Random(seed + i), trouble);
            if (wall.Window() is not { } zone) continue;
            var taps = SimulatorFitters.Taps(wall, zone, "t");
            results["tap, middle"].Add(SimulatorFitters.TapMiddle(wall, zone, taps));
            results["tap, magnet"].Add(SimulatorFitters.TapMagnet(wall, zone, taps));
            results["two, step"].Add(SimulatorFitters.StepPitch(wall, zone, taps));
            results["posterior"].Add(SimulatorFitters.Posterior(wall, 0, [zone], taps, reader, LineRates.Default, LinePriors.Default));
        }
        Console.WriteLine($"\n{trouble}: {results["posterior"].Count} walls, seed {seed}, {watch.Elapsed.TotalSeconds:0.0} s");
        foreach (var (who, all) in results) Print(who, all);
    }

    /// <summary>Three windows of one wall, tapped one after another and inferred together; by hand each by itself.</summary>
    private static void Zones(int walls, int seed)
    {
        List<ZoneResult> joint = [], alone = [], hand = [];
        var reader = new LineReader();
        for (int i = 0; i < walls; i++)
        {
            var wall = new SimulatorWall(new Random(seed + 100000 + i), WallTrouble.Plain);
            if (wall.Length < 3200) continue;
            List<Zone?> found = [wall.Window(), wall.Window(), wall.Window()];
            if (found.Any(z => z is null)) continue;
            List<Zone> zones = [.. found.Select(z => z!)];
            List<LineReading> all = [.. zones.SelectMany((z, k) => SimulatorFitters.Taps(wall, z, $"z{k}t")).DistinctBy(t => ((Tap)t).AtMm)];
            for (int k = 0; k < 3; k++)
            {
                List<LineReading> own = [.. all.OfType<Tap>().Where(t => t.AtMm >= zones[k].FromMm && t.AtMm <= zones[k].ToMm)];
                hand.Add(SimulatorFitters.TapMagnet(wall, zones[k], own));
                alone.Add(SimulatorFitters.Posterior(wall, k, zones, own, reader, LineRates.Default, LinePriors.Default));
            }
            for (int k = 0; k < 3; k++) joint.Add(SimulatorFitters.Posterior(wall, k, zones, all, reader, LineRates.Default, LinePriors.Default));
        }
        Console.WriteLine($"\nThree zones of one wall: {joint.Count / 3} walls");
        Print("tap, magnet", hand);
        Print("each alone", alone);
        Print("jointly", joint);
    }

    /// <summary>Noise rates wrong by a factor of two, and what learning from holes makes of them.</summary>
    private static void Wrong(int walls, int seed)
    {
        var rates = LineRates.Default with { TapSolidOff = LineRates.Default.TapSolidOff * 2, MagnetFalsePerMm = LineRates.Default.MagnetFalsePerMm * 2, MagnetFinds = 0.6, TapSolidOn = 0.76 };
        foreach (int learn in new[] { 0, 20, 100 })
        {
            var learned = LineLearning.From(rates);
            var reader = new LineReader();
            for (int i = 0; learned.Holes < learn; i++)
            {
                var scan = One(seed + 500000 + i, learned.Apply(rates), reader).Scan;
                learned = learned.Plus(scan, reader.Read(scan, learned.Apply(rates), LinePriors.Default), rates);
            }
            List<ZoneResult> all = [.. Enumerable.Range(0, walls).Select(i => One(seed + 700000 + i, learned.Apply(rates), reader).Result)];
            Print($"rates x2, {learned.Holes} holes", all);
            Console.WriteLine(FormattableString.Invariant($"    solid on {learned.TapOn.Mean:0.00} off {learned.TapOff.Mean:0.000}, magnet finds {learned.MagnetFinds.Mean:0.00}, false {1000 * learned.FalseHits / learned.SweptMm:0.00} a metre"));
        }
    }

    private static (ZoneResult Result, LineScan Scan) One(int seed, LineRates rates, LineReader reader)
    {
        for (; ; seed += 1000000)
        {
            var wall = new SimulatorWall(new Random(seed), WallTrouble.Plain);
            if (wall.Window() is not { } zone) continue;
            var seen = SimulatorFitters.Taps(wall, zone, "t");
            return (SimulatorFitters.Posterior(wall, 0, [zone], seen, reader, rates, LinePriors.Default), new(wall.Length, seen, [zone]));
        }
    }

    private static void Print(string who, List<ZoneResult> all)
    {
        var report = Learning.Report([.. all.Where(r => !double.IsNaN(r.Predicted)).Select((r, i) => new PredictedFound($"{i}", r.Predicted, r.FirstHit))]);
        string line = string.Create(CultureInfo.InvariantCulture, $"  {who,-22} first hole {all.Average(r => r.FirstHit ? 1.0 : 0):0.000}  usable {all.Average(r => r.FirstUsable ? 1.0 : 0):0.000}  holes {all.Average(r => r.Holes):0.00}  taps {all.Average(r => r.Taps):0.0}  sweeps {all.Average(r => r.Sweeps):0.00}  minutes {all.Average(Minutes):0.0}");
        if (report.Count > 0) line += string.Create(CultureInfo.InvariantCulture, $"  Brier {report.Brier:0.000}  log {report.LogScore:0.000}  calibration {report.CalibrationError:0.000}");
        Console.WriteLine(line);
        if (who is "posterior" or "jointly")
            Console.WriteLine("    predicted/found: " + string.Join("  ", report.Bins.Select(b => string.Create(CultureInfo.InvariantCulture, $"{b.MeanPredicted:0.00}/{b.ShareFound:0.00} ({b.Count})"))));
    }

    private static double Minutes(ZoneResult r) => (r.Taps * TapMin) + (r.Sweeps * SweepMin) + (r.Holes * HoleMin) + ((r.Holes - 1) * FillMin);
}
