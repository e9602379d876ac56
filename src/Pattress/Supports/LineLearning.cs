using Pattress.Walls;

namespace Pattress.Supports;

/// <summary>A rate as it was assumed and as the scans have re-estimated it.</summary>
/// <param name="Name">As in the table of rates.</param>
/// <param name="Now">Where readings and prior together are likeliest.</param>
/// <param name="Used">What walls are read by: the nearest whole step from the assumed rate.</param>
/// <param name="PriorWeight">Observations that the assumed rate weighs: taps or supports swept, and for false hits the hits.</param>
/// <param name="Weight">What the scans weigh beside it, in the same: the curvature of their likelihood.</param>
public sealed record LearnedRate(string Name, double Assumed, double PriorWeight, double Now, double Used, double Weight)
{
    public string What => RateTable.All.First(r => r.Name == Name).What;
}

/// <summary>
/// Re-estimates the rates of taps and magnets from scans whose holes have told what is there. The likelihood of all that was
/// read, the places of all supports summed over, is what the models give; the prior is the assumed rates as counts (Beta; for
/// false hits gamma). The rates are those which both together make likeliest in log odds (log), which is the mean of the counts
/// where the truth is known. So a real screw that no hole has opened is no false hit, and where holes were drilled does not
/// matter: where to drill was chosen by what the likelihood knows. False hits are counted, with the length swept, only away from
/// what is believed to be a support: what stands beside one (a stud nailed to trimmers, a third timber) the models do not know, and its screws
/// would count as false.
/// </summary>
/// <param name="Rates">The assumed ones with what was learned, in steps of a quarter in log odds (log): more is not known, and most readings change no other wall.</param>
/// <param name="Holes">Holes that the scans had.</param>
public sealed record LineLearning(LineRates Assumed, LineRates Rates, int Holes, IReadOnlyList<LearnedRate> Learned)
{
    /// <summary>Observations that each assumed chance weighs, and hits that the assumed rate of false hits weighs (assumed).</summary>
    public const double PriorWeight = 20, PriorHits = 1;

    /// <summary>Steps after which it is left as it is; it is there in three or four.</summary>
    private const int MostSteps = 8;

    /// <summary>Rates are kept in steps of this in log odds (log for the false hits): .85, .88, .90 (assumed).</summary>
    private const double Steps = 0.25;

    /// <summary>A step in log odds that is the last one: what is left of it then is under a tenth of the steps that are kept.</summary>
    private const double Near = 0.02;

    /// <summary>A step in log odds after which another is worth it, where that was all that had to be told.</summary>
    private const double Long = 0.15;

    private IReadOnlyList<TeachingScan> Scans { get; init; } = [];

    /// <summary>Where the slopes were taken: a step before the rates.</summary>
    private RatePoint At { get; init; }

    private LinePriors Priors { get; init; } = LinePriors.Default;

    /// <summary>What scans with holes teach together. Their order does not matter.</summary>
    /// <param name="scans">Each with at least one hole.</param>
    /// <param name="assumed">The prior's rates.</param>
    /// <param name="priors">How walls are built.</param>
    /// <param name="before">What was learned before, of the same rates and priors: a scan that was there already (the same object) is not made ready anew.</param>
    public static LineLearning Of(IReadOnlyList<LineScan> scans, LineRates assumed, LinePriors priors, LineLearning? before = null)
    {
        List<TeachingScan> teaching = [.. scans.Select(s => before?.Scans.FirstOrDefault(t => ReferenceEquals(t.Scan, s)) ?? new(s, assumed, priors))];
        RatePoint prior = RatePoint.Of(assumed), at = prior, next = prior;
        List<RateSlopes> slopes = [];
        for (int i = 0; i < MostSteps; i++)
        {
            at = next;
            slopes = [.. teaching.Select(s => s.At(at))];
            next = at.Step(prior, slopes);
            if (next.FarFrom(at) < Near) break;
        }
        var kept = Kept(prior, next, assumed);
        return new(assumed, kept, scans.Sum(Met), Rows(assumed, next, kept, slopes)) { Scans = teaching, At = at, Priors = priors };
    }

    /// <summary>The rates if one scan had been another, by a step from here (more where that is a long one): what was known before a hole was drilled.</summary>
    /// <param name="scan">Its place among the scans that taught.</param>
    /// <param name="then">What it was then; null: without any hole, so that it taught nothing.</param>
    public LineRates With(int scan, LineScan? then)
    {
        List<TeachingScan?> scans = [.. Scans];
        scans[scan] = then is not null && Met(then) > 0 ? new(then, Assumed, Priors) : null;
        RatePoint prior = RatePoint.Of(Assumed), at = At;
        for (int i = 0; i < MostSteps; i++)
        {
            var next = at.Step(prior, [.. scans.Select(s => s?.At(at) ?? default)]);
            double far = next.FarFrom(at);
            at = next;
            if (far < Long) break;
        }
        return Kept(prior, at, Assumed);
    }

    /// <summary>Holes of a scan.</summary>
    public static int Met(LineScan scan) => scan.Readings.Count(r => r is ThinHole);

    /// <summary>In whole steps from the assumed rates, to two digits.</summary>
    private static LineRates Kept(RatePoint prior, RatePoint at, LineRates assumed)
    {
        var near = at.InSteps(prior, Steps);
        var r = near.Apply(assumed);
        return near == prior ? assumed : r with
        {
            TapSolidOn = Math.Round(r.TapSolidOn, 2), TapSolidOff = Math.Round(r.TapSolidOff, 2), MagnetFinds = Math.Round(r.MagnetFinds, 2), MagnetFalsePerMm = Math.Round(r.MagnetFalsePerMm, 5),
        };
    }

    private static IReadOnlyList<LearnedRate> Rows(LineRates assumed, RatePoint at, LineRates kept, IReadOnlyList<RateSlopes> slopes)
    {
        var all = slopes.Aggregate(default(RateSlopes), (a, b) => a.Plus(b));
        LearnedRate Chance(string name, double before, double now, double used, double bend) => new(name, before, PriorWeight, now, used, Math.Max(0, bend) / (before * (1 - before)));
        return
        [
            Chance("tap_solid_on", assumed.TapSolidOn, at.On, kept.TapSolidOn, all.Bend.A),
            Chance("tap_solid_off", assumed.TapSolidOff, at.Off, kept.TapSolidOff, all.Bend.B),
            Chance("magnet_finds", assumed.MagnetFinds, at.Finds, kept.MagnetFinds, all.Bend.C),
            new("magnet_false_per_m", assumed.MagnetFalsePerMm * 1000, PriorHits, at.False * 1000, kept.MagnetFalsePerMm * 1000, Math.Max(0, all.Bend.D)),
        ];
    }
}
