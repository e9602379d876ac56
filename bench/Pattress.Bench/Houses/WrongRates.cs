using Pattress.Supports;

namespace Pattress.Bench;

/// <summary>Noise rates that are wrong by a factor of two, and what learning from holes makes of them.</summary>
internal static class WrongRates
{
    private static readonly LineRates Wrong = LineRates.Default with
    {
        TapSolidOff = LineRates.Default.TapSolidOff * 2, MagnetFalsePerMm = LineRates.Default.MagnetFalsePerMm * 2,
        MagnetFinds = 1 - (2 * (1 - LineRates.Default.MagnetFinds)), TapSolidOn = 1 - (2 * (1 - LineRates.Default.TapSolidOn)),
    };

    private static readonly Dictionary<int, LineRates> Learned = [];

    public static IEnumerable<SimulatorRow> One(string scenario, int i, int seed, LineReader reader)
    {
        int holes = int.Parse(scenario.AsSpan(5), System.Globalization.CultureInfo.InvariantCulture);
        if (!Learned.TryGetValue(holes, out var rates)) Learned[holes] = rates = Learn(holes, seed, reader);
        yield return SimulatorRow.Of(scenario, "posterior", i, Fit(seed + 700000 + i, rates, reader).Result);
    }

    /// <summary>Walls after which the rates are learned anew, as from one job to the next.</summary>
    private const int Walls = 15;

    private static LineRates Learn(int holes, int seed, LineReader reader)
    {
        var learned = LineLearning.Of([], Wrong, LinePriors.Default);
        List<LineScan> scans = [];
        for (int i = 0; scans.Sum(LineLearning.Met) < holes; i++)
        {
            scans.Add(Fit(seed + 500000 + i, learned.Rates, reader).Scan);
            if (scans.Count % Walls == 0) learned = LineLearning.Of(scans, Wrong, LinePriors.Default);
        }
        learned = LineLearning.Of(scans, Wrong, LinePriors.Default);
        Console.Error.WriteLine($"{holes} holes: " + string.Join(", ", learned.Learned.Select(r => FormattableString.Invariant($"{r.Name} {r.Now:0.000} (weighs {r.Weight:0.0})"))));
        return learned.Rates;
    }

    private static (ZoneResult Result, LineScan Scan) Fit(int seed, LineRates rates, LineReader reader)
    {
        for (; ; seed += 1000000)
        {
            var wall = new SimulatorWall(new Random(seed), WallTrouble.Plain);
            if (wall.Window() is not { } zone) continue;
            var seen = SimulatorFitters.Taps(wall, zone, "t");
            return (SimulatorFitters.Posterior(wall, 0, [zone], seen, reader, rates, LinePriors.Default), new(wall.Length, seen, [zone]));
        }
    }
}
