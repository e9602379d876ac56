using Pattress.Supports;

namespace Pattress.Bench;

/// <summary>Runs a piece of a scenario and appends its results to a file: <c>simulate SCENARIO FROM COUNT FILE [SEED]</c>.</summary>
internal static class SimulatorRun
{
    public const int Seed = 20240601;

    /// <summary>Walls drawn for the exact model, per zone.</summary>
    private const int ExactWalls = 60_000;

    public static void Run(string scenario, int from, int count, string file, int seed)
    {
        using var output = new StreamWriter(file, append: true);
        var reader = new LineReader();
        for (int i = from; i < from + count; i++)
            foreach (var row in One(scenario, i, seed, reader)) output.WriteLine(row.Line);
    }

    private static IEnumerable<SimulatorRow> One(string scenario, int i, int seed, LineReader reader) => scenario switch
    {
        "three" => ThreeZones(i, seed, reader),
        "exact" => Exact(i, seed, reader),
        "wrong0" or "wrong20" or "wrong100" => WrongRates.One(scenario, i, seed, reader),
        "dabs" => DabHouse.One(i, seed, reader),
        "ceiling" => CeilingHouse.One(i, seed),
        "identity" => IdentityHouse.One(i, seed),
        _ => Plain(Enum.Parse<WallTrouble>(scenario, ignoreCase: true), scenario, i, seed, reader),
    };

    private static IEnumerable<SimulatorRow> Plain(WallTrouble trouble, string scenario, int i, int seed, LineReader reader)
    {
        var wall = new SimulatorWall(new Random(seed + i), trouble);
        if (wall.Window() is not { } zone) yield break;
        var seen = SimulatorFitters.Taps(wall, zone, "t");
        yield return SimulatorRow.Of(scenario, "tap, middle", i, SimulatorFitters.TapMiddle(wall, zone, seen));
        yield return SimulatorRow.Of(scenario, "tap, magnet", i, SimulatorFitters.TapMagnet(wall, zone, seen));
        yield return SimulatorRow.Of(scenario, "two, step", i, SimulatorFitters.StepPitch(wall, zone, seen));
        var scan = new LineScan(wall.Length, seen, [zone]);
        var z = SimulatorFitters.Sweeps(wall, 0, scan, seen, reader, LineRates.Default, LinePriors.Default);
        foreach (var none in Nones(wall, scan, zone, i, scenario, reader)) yield return none;
        yield return SimulatorRow.Of(scenario, "posterior", i, SimulatorFitters.Drill(wall, 0, scan, seen, z, 17, reader, LineRates.Default, LinePriors.Default));
    }

    /// <summary>"No stud here" in each quarter of the window, before any hole.</summary>
    private static IEnumerable<SimulatorRow> Nones(SimulatorWall wall, LineScan scan, Zone zone, int i, string scenario, LineReader reader)
    {
        List<Zone> quarters = [.. Enumerable.Range(0, 4).Select(k => new Zone(zone.FromMm + (k * 160), zone.FromMm + ((k + 1) * 160)))];
        var belief = reader.Read(scan with { Zones = quarters }, LineRates.Default, LinePriors.Default);
        for (int k = 0; k < 4; k++)
            yield return SimulatorRow.Stated(scenario, "no stud here", i, belief.Zones[k].NoneProbability, !wall.Studs.Any(s => s + wall.Half >= quarters[k].FromMm && s - wall.Half <= quarters[k].ToMm));
    }

    /// <summary>The simulator's own model by brute force, on the readings that the posterior chose.</summary>
    private static IEnumerable<SimulatorRow> Exact(int i, int seed, LineReader reader)
    {
        var wall = new SimulatorWall(new Random(seed + i), WallTrouble.Plain);
        if (wall.Window() is not { } zone) yield break;
        var seen = SimulatorFitters.Taps(wall, zone, "t");
        var scan = new LineScan(wall.Length, seen, [zone]);
        var z = SimulatorFitters.Sweeps(wall, 0, scan, seen, reader, LineRates.Default, LinePriors.Default);
        var (hit, usable) = new ExactModel().Posterior(wall.Length, zone, seen, ExactWalls, new Random(77 + i));
        int best = Enumerable.Range(0, usable.Length).MaxBy(k => usable[k]), ours = (int)Math.Round(z.BestUsableMm - zone.FromMm);
        yield return new("exact", "exact", i, wall.Hits(zone.FromMm + best), wall.Usable(zone.FromMm + best), 1, 17, 0, hit[best], 0, usable[best]);
        yield return new("exact", "posterior", i, wall.Hits(z.BestUsableMm), wall.Usable(z.BestUsableMm), 1, 17, 0, hit[ours], 0, usable[ours]);
        yield return SimulatorRow.Stated("exact", "stated", i, reader.Read(scan, LineRates.Default, LinePriors.Default).HitAt(z.BestUsableMm), wall.Hits(z.BestUsableMm));
    }

    /// <summary>Three windows of one wall, tapped one after another and inferred together; by hand each by itself.</summary>
    private static IEnumerable<SimulatorRow> ThreeZones(int i, int seed, LineReader reader)
    {
        var wall = new SimulatorWall(new Random(seed + 100000 + i), WallTrouble.Plain);
        if (wall.Length < 3200) yield break;
        List<Zone?> found = [wall.Window(), wall.Window(), wall.Window()];
        if (found.Any(z => z is null)) yield break;
        List<Zone> zones = [.. found.Select(z => z!)];
        List<LineReading> all = [.. zones.SelectMany((z, k) => SimulatorFitters.Taps(wall, z, $"z{k}t")).DistinctBy(t => ((Tap)t).AtMm)];
        for (int k = 0; k < 3; k++)
        {
            List<LineReading> own = [.. all.OfType<Tap>().Where(t => t.AtMm >= zones[k].FromMm && t.AtMm <= zones[k].ToMm)];
            yield return SimulatorRow.Of("three", "tap, magnet", i, SimulatorFitters.TapMagnet(wall, zones[k], own));
            yield return SimulatorRow.Of("three", "each alone", i, SimulatorFitters.Posterior(wall, k, zones, own, reader, LineRates.Default, LinePriors.Default));
        }
        for (int k = 0; k < 3; k++) yield return SimulatorRow.Of("three", "jointly", i, SimulatorFitters.Posterior(wall, k, zones, all, reader, LineRates.Default, LinePriors.Default) with { Taps = 17 });
    }
}
