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

    private static LineRates Learn(int holes, int seed, LineReader reader)
    {
        var learned = LineLearning.From(Wrong);
        List<LineScan> scans = [];
        for (int i = 0; learned.Holes < holes; i++)
        {
            var scan = Fit(seed + 500000 + i, learned.Apply(Wrong), reader).Scan;
            scans.Add(scan);
            learned = learned.Plus(scan, reader.Read(scan, learned.Apply(Wrong), LinePriors.Default), Wrong);
        }
        var rates = LineLearning.Of(scans, Wrong, LinePriors.Default).Apply(Wrong);
        Console.Error.WriteLine(FormattableString.Invariant($"{holes} holes: taps on {rates.TapSolidOn:0.000}, off {rates.TapSolidOff:0.000}, magnet finds {rates.MagnetFinds:0.000}, false a metre {rates.MagnetFalsePerMm * 1000:0.000}"));
        return rates;
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
