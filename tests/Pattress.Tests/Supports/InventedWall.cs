using Pattress.Supports;

namespace Pattress.Tests.Supports;

/// <summary>A wall of timber studs at 600 or 400 mm whose taps and screws follow the given rates, without patches; all invented.</summary>
internal sealed class InventedWall
{
    private const double Length = 4200, Half = 19;

    private readonly LineRates _rates;
    private readonly List<double> _studs = [Half, Length - Half], _hits = [];

    public InventedWall(Random random, LineRates rates)
    {
        _rates = rates;
        double pitch = random.NextDouble() < 0.5 ? 600 : 400;
        for (double x = pitch; x < Length - 150; x += pitch) _studs.Add(x + (5 * Gauss(random)));
        foreach (double s in _studs) if (random.NextDouble() < rates.MagnetFinds) _hits.Add(s + (rates.MagnetSdMm * Gauss(random)));
        for (double x = Apart(random); x < Length; x += Apart(random)) _hits.Add(x);
    }

    /// <summary>Taps each 40 mm, the magnet drawn along the whole, one hole at a stud and one between two.</summary>
    public LineScan Scan(Random random)
    {
        List<LineReading> seen = [new MagnetSweep("m", 0, Length, [.. _hits.Where(h => h is > 0 and < Length).Order()])];
        for (double x = 40; x < Length; x += 40) seen.Add(new Tap($"t{x}", x, random.NextDouble() < Solid(x) ? TapSound.Solid : TapSound.Hollow));
        foreach (double at in new[] { Math.Round(_studs[4]), Math.Round(_studs[3] + 150) })
            seen.Add(new ThinHole($"h{at}", at, random.NextDouble() < (_studs.Any(s => Math.Abs(s - at) <= Half) ? _rates.HoleMeetsOn : _rates.HoleMeetsOff) ? HoleMet.Support : HoleMet.Void));
        return new(Length, seen, []);
    }

    private double Solid(double x) => _rates.TapSolidOff
        + ((_rates.TapSolidOn - _rates.TapSolidOff) / (1 + Math.Exp((_studs.Min(s => Math.Abs(s - x)) - Half - _rates.TapEdgeMm) / _rates.TapBlurMm)));

    private double Apart(Random random) => -Math.Log(1 - random.NextDouble()) / _rates.MagnetFalsePerMm;

    private static double Gauss(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
