namespace Pattress.Supports;

/// <summary>Slope of a scan's log evidence by each rate, and how it bends (less its second derivative).</summary>
internal readonly record struct RateSlopes(Four Slope, Four Bend)
{
    /// <summary>Rates are moved this far to either side to see.</summary>
    private const double By = 0.1;

    /// <summary>Grid for it, mm: that of the search for the next check.</summary>
    private const double StepMm = SweepSearch.Step;

    public RateSlopes Plus(RateSlopes other) => new(Slope + other.Slope, Bend + other.Bend);

    /// <summary>From both sides of each rate: the slopes, and how they bend.</summary>
    public static RateSlopes Both(LineReader reader, LineScan scan, LineRates rates, LinePriors priors, RatePoint at) => Of(reader, scan, rates, priors, at, null);

    /// <summary>From one side, the bend being known: half the work.</summary>
    public static RateSlopes Up(LineReader reader, LineScan scan, LineRates rates, LinePriors priors, RatePoint at, Four bend) => Of(reader, scan, rates, priors, at, bend);

    private static RateSlopes Of(LineReader reader, LineScan scan, LineRates rates, LinePriors priors, RatePoint at, Four? known)
    {
        double Evidence(Four off) => reader.Evidence(scan, new RatePoint(at.Log + off).Apply(rates), priors, StepMm);
        var (here, sums, across) = reader.Expected(scan, at.Apply(rates), priors, StepMm);
        // A rate that no reading speaks of is not asked about.
        bool taps = scan.Readings.Any(r => r is Tap), sweeps = scan.Readings.Any(r => r is MagnetSweep);
        var on = Sides(taps, x => new(x, 0, 0, 0), known?.A);
        var off = Sides(taps, x => new(0, x, 0, 0), known?.B);
        var finds = Sides(sweeps, x => new(0, 0, x, 0), known?.C);
        var (hits, expected) = sweeps ? Clear(scan, at.Apply(rates), priors, sums, across) : default;
        return new(new(on.Slope, off.Slope, finds.Slope, hits - expected), new(on.Bend, off.Bend, finds.Bend, expected));
        (double Slope, double Bend) Sides(bool spoken, Func<double, Four> moved, double? bend)
        {
            if (!spoken) return default;
            double up = Evidence(moved(By));
            if (bend is { } bent) return (((up - here) / By) + (bent * By / 2), bent);
            double down = Evidence(moved(-By));
            return ((up - down) / (2 * By), ((2 * here) - up - down) / (By * By));
        }
    }

    /// <summary>False hits found and to be expected by their rate, where no support is near: each hit and each step by the chance that none is.</summary>
    private static (double Hits, double Expected) Clear(LineScan scan, LineRates rates, LinePriors priors, double[] sums, double across)
    {
        var sweeps = SweepJoin.Of(scan.Readings.OfType<MagnetSweep>().DistinctBy(s => s.Id), rates);
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
