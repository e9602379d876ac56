using Pattress.Walls;

namespace Pattress.Supports;

/// <summary>
/// Re-estimates the rates of taps and magnets from scans whose holes have told what is there: expected counts, each reading
/// counted by the chance, all holes known, that a support is or is not behind it. Counting only taps beside holes would be
/// wrong: holes are drilled where taps sounded solid. The prior is the rates in use, weighing <see cref="PriorWeight"/> each.
/// </summary>
public sealed record LineLearning
{
    /// <summary>Observations that the assumed rates weigh (assumed).</summary>
    public const double PriorWeight = 20;

    public required BetaCount TapOn { get; init; }

    public required BetaCount TapOff { get; init; }

    public required BetaCount MagnetFinds { get; init; }

    /// <summary>False hits, and the length swept, mm (gamma).</summary>
    public required double FalseHits { get; init; }

    public required double SweptMm { get; init; }

    /// <summary>Holes that the scans taken in had.</summary>
    public int Holes { get; init; }

    /// <summary>Starts from rates.</summary>
    public static LineLearning From(LineRates r) => new()
    {
        TapOn = BetaCount.Prior(r.TapSolidOn, PriorWeight),
        TapOff = BetaCount.Prior(r.TapSolidOff, PriorWeight),
        MagnetFinds = BetaCount.Prior(r.MagnetFinds, PriorWeight),
        FalseHits = 1,
        SweptMm = 1 / r.MagnetFalsePerMm,
    };

    /// <summary>Times that all scans are gone through, each with the rates that the time before gave (expectation and maximisation).</summary>
    private const int Passes = 4;

    /// <summary>What scans with holes teach together. Their order does not matter.</summary>
    public static LineLearning Of(IReadOnlyList<LineScan> scans, LineRates assumed, LinePriors priors)
    {
        var reader = new LineReader();
        var rates = assumed;
        var learned = From(assumed);
        for (int pass = 0; pass < Passes; pass++, rates = learned.Apply(assumed))
        {
            var now = From(assumed);
            foreach (var scan in scans) now = now.Plus(scan, reader.Read(scan with { Zones = [] }, rates, priors), rates);
            learned = now;
        }
        return learned;
    }

    /// <summary>Takes in one scan, holes included, and what is believed of it.</summary>
    public LineLearning Plus(LineScan scan, SupportBelief belief, LineRates r)
    {
        var now = this with { Holes = Holes + scan.Readings.Count(x => x is ThinHole) };
        foreach (var tap in scan.Readings.OfType<Tap>()) now = now.Heard(tap, belief, r);
        foreach (var sweep in scan.Readings.OfType<MagnetSweep>()) now = now.Swept(sweep, belief, r);
        return now;
    }

    /// <summary>The rates as they are believed to be now.</summary>
    public LineRates Apply(LineRates r) => r with
    {
        TapSolidOn = Math.Clamp(TapOn.Mean, 0.3, 0.99),
        TapSolidOff = Math.Clamp(TapOff.Mean, 0.005, 0.5),
        MagnetFinds = Math.Clamp(MagnetFinds.Mean, 0.2, 0.98),
        MagnetFalsePerMm = Math.Clamp(FalseHits / SweptMm, 2e-5, 2e-3),
    };

    /// <summary>A tap counts as on a support by the chance that it is well over one, as off by the chance that none is near.</summary>
    private LineLearning Heard(Tap tap, SupportBelief belief, LineRates r)
    {
        bool solid = tap.Sound == TapSound.Solid;
        double on = belief.UsableAt(tap.AtMm), off = Math.Max(0, 1 - Near(belief, tap.AtMm, 45));
        return this with { TapOn = TapOn.Plus(solid, on), TapOff = TapOff.Plus(solid, off) };
    }

    /// <summary>A sweep found each support it covered or not; hits where no support is count as false.</summary>
    private LineLearning Swept(MagnetSweep s, SupportBelief belief, LineRates r)
    {
        double from = Math.Min(s.FromMm, s.ToMm), to = Math.Max(s.FromMm, s.ToMm);
        var finds = MagnetFinds;
        foreach (var support in belief.Supports.Where(x => x.CentreMm >= from + r.MagnetReachMm && x.CentreMm <= to - r.MagnetReachMm && x.Probability > 0.8))
            finds = finds.Plus(s.HitsMm.Any(h => Math.Abs(h - support.CentreMm) <= r.MagnetReachMm), support.Probability);
        double wrong = s.HitsMm.Sum(h => Math.Max(0, 1 - Near(belief, h, r.MagnetReachMm)));
        return this with { MagnetFinds = finds, FalseHits = FalseHits + wrong, SweptMm = SweptMm + to - from };
    }

    /// <summary>Expected supports with their centre within a reach.</summary>
    private static double Near(SupportBelief belief, double at, double reach)
    {
        double sum = 0;
        int from = Math.Max(0, (int)((at - reach) / belief.StepMm)), to = Math.Min(belief.Centre.Count - 1, (int)((at + reach) / belief.StepMm));
        for (int i = from; i <= to; i++) sum += belief.Centre[i];
        return sum;
    }
}
