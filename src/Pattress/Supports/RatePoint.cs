using Pattress.Walls;

namespace Pattress.Supports;

/// <summary>Four numbers that belong to the four rates that are learned.</summary>
internal readonly record struct Four(double A, double B, double C, double D)
{
    public static Four operator +(Four x, Four y) => new(x.A + y.A, x.B + y.B, x.C + y.C, x.D + y.D);
}

/// <summary>The rates that are learned: log odds of the three chances, log of the false hits per mm.</summary>
internal readonly record struct RatePoint(Four Log)
{
    /// <summary>A step in log odds is no longer than this.</summary>
    private const double Longest = 1;

    public double On => Chance(Log.A);

    public double Off => Chance(Log.B);

    public double Finds => Chance(Log.C);

    public double False => Math.Exp(Log.D);

    public static RatePoint Of(LineRates r) => new(new(Odds(r.TapSolidOn), Odds(r.TapSolidOff), Odds(r.MagnetFinds), Math.Log(r.MagnetFalsePerMm)));

    public LineRates Apply(LineRates r) => r with { TapSolidOn = On, TapSolidOff = Off, MagnetFinds = Finds, MagnetFalsePerMm = False };

    /// <summary>The nearest point that lies whole steps from another.</summary>
    public RatePoint InSteps(RatePoint from, double step)
    {
        double Of(double log, double start) => start + (step * Math.Round((log - start) / step));
        return new(new(Of(Log.A, from.Log.A), Of(Log.B, from.Log.B), Of(Log.C, from.Log.C), Of(Log.D, from.Log.D)));
    }

    public double FarFrom(RatePoint other) =>
        Math.Max(Math.Max(Math.Abs(Log.A - other.Log.A), Math.Abs(Log.B - other.Log.B)), Math.Max(Math.Abs(Log.C - other.Log.C), Math.Abs(Log.D - other.Log.D)));

    /// <summary>
    /// One step of Newton's, each rate by itself. A prior of mean m that weighs n counts has the slope n (m - p) in log odds and bends by
    /// n p (1 - p); that of false hits n - (n / m) r and (n / m) r.
    /// </summary>
    public RatePoint Step(RatePoint prior, IReadOnlyList<RateSlopes> scans)
    {
        var all = scans.Aggregate(default(RateSlopes), (a, b) => a.Plus(b));
        double hits = LineLearning.PriorHits * False / prior.False;
        return new(new(
            Within(Log.A + Beta(On, prior.On, all.Slope.A, all.Bend.A), "tap_solid_on"),
            Within(Log.B + Beta(Off, prior.Off, all.Slope.B, all.Bend.B), "tap_solid_off"),
            Within(Log.C + Beta(Finds, prior.Finds, all.Slope.C, all.Bend.C), "magnet_finds"),
            WithinLog(Log.D + Move(LineLearning.PriorHits - hits + all.Slope.D, hits, all.Bend.D))));
    }

    private static double Beta(double p, double mean, double slope, double bend) =>
        Move((LineLearning.PriorWeight * (mean - p)) + slope, LineLearning.PriorWeight * p * (1 - p), bend);

    /// <summary>Where the scans bend the wrong way the prior's bend alone keeps the step going uphill.</summary>
    private static double Move(double slope, double priorBend, double bend) => Math.Clamp(slope / (priorBend + Math.Max(0, bend)), -Longest, Longest);

    private static double Within(double log, string rate) => Math.Clamp(log, Odds(RateOf(rate).Low), Odds(RateOf(rate).High));

    private static double WithinLog(double log) => Math.Clamp(log, Math.Log(RateOf("magnet_false_per_m").Low / 1000), Math.Log(RateOf("magnet_false_per_m").High / 1000));

    private static Rate RateOf(string name) => RateTable.All.First(r => r.Name == name);

    private static double Odds(double p) => Math.Log(p / (1 - p));

    private static double Chance(double log) => 1 / (1 + Math.Exp(-log));
}
