namespace Pattress.Supports;

/// <summary>Slope of a scan's log evidence by each rate, and how it bends (less its second derivative).</summary>
internal readonly record struct RateSlopes(Four Slope, Four Bend)
{
    /// <summary>Rates are moved this far to either side to see.</summary>
    private const double By = 0.1;

    /// <summary>Grid for it, mm: twice the answer's.</summary>
    private const double StepMm = 2;

    public RateSlopes Plus(RateSlopes other) => new(Slope + other.Slope, Bend + other.Bend);

    public static RateSlopes Of(LineReader reader, LineScan scan, LineRates rates, LinePriors priors, RatePoint at)
    {
        double Evidence(Four off) => reader.Evidence(scan, new RatePoint(at.Log + off).Apply(rates), priors, StepMm);
        double here = Evidence(default);
        var (a, b, c) = (Sides(x => new(x, 0, 0, 0)), Sides(x => new(0, x, 0, 0)), Sides(x => new(0, 0, x, 0)));
        var (hits, expected) = Clear(reader, scan, at.Apply(rates), priors);
        return new(new(a.Slope, b.Slope, c.Slope, hits - expected), new(a.Bend, b.Bend, c.Bend, expected));
        (double Slope, double Bend) Sides(Func<double, Four> moved)
        {
            double up = Evidence(moved(By)), down = Evidence(moved(-By));
            return ((up - down) / (2 * By), ((2 * here) - up - down) / (By * By));
        }
    }

    /// <summary>False hits found and to be expected by their rate, where no support is near: each hit and each step by the chance that none is.</summary>
    private static (double Hits, double Expected) Clear(LineReader reader, LineScan scan, LineRates rates, LinePriors priors)
    {
        var sweeps = SweepJoin.Of(scan.Readings.OfType<MagnetSweep>().DistinctBy(s => s.Id), rates);
        if (sweeps.Count == 0) return (0, 0);
        var (sums, across) = reader.Expected(scan, rates, priors, StepMm);
        var rows = NogginRows.Of(scan, priors);
        double None(double at) => Math.Max(0, across - Sum(sums, at + priors.ExtraClearMm) + Sum(sums, at - priors.ExtraClearMm));
        double hits = 0, length = 0;
        foreach (var s in sweeps)
        {
            // At the height of a row of noggins some of the hits are their screws.
            double own = rates.MagnetFalsePerMm / rows.Sweep(rates, s.HeightMm).MagnetFalsePerMm;
            hits += own * s.HitsMm.Sum(None);
            for (double x = Math.Max(0, s.FromMm) + (StepMm / 2); x < Math.Min(s.ToMm, scan.LengthMm); x += StepMm) length += StepMm * None(x);
        }
        return (hits, rates.MagnetFalsePerMm * length);
    }

    private static double Sum(double[] sums, double at) => sums[Math.Clamp((int)(at / StepMm), 0, sums.Length - 1)];
}
