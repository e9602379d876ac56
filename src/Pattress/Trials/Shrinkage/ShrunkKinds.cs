using Pattress.Trials.Special;

namespace Pattress.Trials.Shrinkage;

/// <summary>
/// Kinds of fixing that learn from each other: y = theta(kind) + s e, theta normal about a common mean with spread tau.
/// Only kinds that fail by one mechanism belong together; a bench that left out what failed at once biases the rest upwards.
/// </summary>
public sealed class ShrunkKinds
{
    private const double Negligible = 1e-12;
    private const int MostIntervals = 4;
    private static readonly GaussLegendre Inside = new(5);
    private readonly List<(Means Means, GridPoint Point, double Weight)> _points = [];

    private ShrunkKinds(IReadOnlyList<KindSeries> kinds, ShrinkagePrior prior, IReadOnlyList<DoubtedTest> doubted)
    {
        (Kinds, Doubted) = (kinds, doubted);
        var grids = Filled(kinds, doubted).Select(f => (Grid: new Grid(f.Means, prior), f.LogWeight, f.Spoilt)).ToList();
        double top = grids.Max(g => g.LogWeight + g.Grid.Points.Max(p => p.LogWeight)), sum = 0;
        double[] spoilt = new double[doubted.Count];
        foreach (var (grid, logWeight, set) in grids)
            foreach (var p in grid.Points)
                if (Math.Exp(p.LogWeight + logWeight - top) is > Negligible and var weight)
                {
                    _points.Add((grid.Means, p, weight));
                    sum += weight;
                    for (int d = 0; d < spoilt.Length; d++) if ((set >> d & 1) == 1) spoilt[d] += weight;
                }
        SpoiltChances = [.. spoilt.Select(s => s / sum)];
        for (int i = 0; i < _points.Count; i++) _points[i] = _points[i] with { Weight = _points[i].Weight / sum };
    }

    public IReadOnlyList<KindSeries> Kinds { get; }

    /// <summary>Tests that may be spoilt; where there are any, one more test may be so too.</summary>
    public IReadOnlyList<DoubtedTest> Doubted { get; }

    /// <summary>True when there are so few kinds that the assumed prior of the spread matters.</summary>
    public bool PriorMatters => Kinds.Count < ShrinkagePrior.EnoughKinds;

    /// <summary>How likely each of the doubted tests is spoilt, given all tests.</summary>
    public IReadOnlyList<double> SpoiltChances { get; }

    /// <summary>Fits the model.</summary>
    /// <exception cref="ArgumentException">No kind, a kind without tests, a value that is no number, too many intervals.</exception>
    public static ShrunkKinds Fit(IReadOnlyList<KindSeries> kinds, ShrinkagePrior? prior = null) => Fit(kinds, [], prior);

    /// <summary>Fits the model where some tests may be spoilt: see <see cref="OutlierGuard"/>.</summary>
    /// <exception cref="ArgumentException">As above.</exception>
    public static ShrunkKinds Fit(IReadOnlyList<KindSeries> kinds, IReadOnlyList<DoubtedTest> doubted, ShrinkagePrior? prior = null)
    {
        prior ??= new();
        prior.Check();
        if (kinds.Count == 0) throw new ArgumentException("at least one kind");
        foreach (var k in kinds) Check(k);
        if (kinds.Sum(k => k.Intervals.Count) > MostIntervals) throw new ArgumentException($"at most {MostIntervals} tests known as an interval");
        return new(kinds, prior, doubted);
    }

    private static void Check(KindSeries k)
    {
        if (k.Values.Count + k.Intervals.Count == 0) throw new ArgumentException($"kind '{k.Kind}' has no test");
        if (k.Values.Any(v => !double.IsFinite(v)) || k.Intervals.Any(i => !(i.Low < i.High) || !double.IsFinite(i.Low + i.High)))
            throw new ArgumentException($"kind '{k.Kind}' has a value that is no number or an interval without width");
    }

    /// <summary>The tests with every interval replaced by the nodes of a quadrature over it, for every set of doubted tests being spoilt.</summary>
    private static IEnumerable<(Means Means, double LogWeight, int Spoilt)> Filled(IReadOnlyList<KindSeries> kinds, IReadOnlyList<DoubtedTest> doubted)
    {
        foreach (var (tests, logWeight) in Filled(kinds))
        {
            if (doubted.Count == 0) yield return (Means.Of(tests), logWeight, 0);
            for (int set = 0; doubted.Count > 0 && set < 1 << doubted.Count; set++)
            {
                List<double[]> weights = [.. tests.Select(k => Enumerable.Repeat(1.0, k.Count).ToArray())];
                for (int d = 0; d < doubted.Count; d++) if ((set >> d & 1) == 1) weights[doubted[d].Kind][doubted[d].Test] = 1 / (OutlierGuard.Wider * OutlierGuard.Wider);
                var means = Means.Of(tests, weights, out double ofWeights);
                yield return (means, logWeight + ofWeights + OutlierGuard.LogPrior(System.Numerics.BitOperations.PopCount((uint)set), doubted.Count), set);
            }
        }
    }

    private static IEnumerable<(List<IReadOnlyList<double>> Tests, double LogWeight)> Filled(IReadOnlyList<KindSeries> kinds)
    {
        int intervals = kinds.Sum(k => k.Intervals.Count), combinations = (int)Math.Pow(Inside.Nodes.Length, intervals);
        for (int c = 0; c < combinations; c++)
        {
            int digits = c;
            double logWeight = 0;
            var filled = kinds.Select(k => (IReadOnlyList<double>)[.. k.Values, .. k.Intervals.Select(i => Node(i, ref digits, ref logWeight))]).ToList();
            yield return (filled, logWeight);
        }
    }

    private static double Node(Between interval, ref int digits, ref double logWeight)
    {
        int at = digits % Inside.Nodes.Length;
        digits /= Inside.Nodes.Length;
        logWeight += Math.Log(Inside.Weights[at]);
        return 0.5 * (interval.Low + interval.High) + 0.5 * (interval.High - interval.Low) * Inside.Nodes[at];
    }

    /// <summary>The mean strength of one kind, by its place in <see cref="Kinds"/>.</summary>
    public Predictive MeanOf(int kind) => Mixture((m, p) => Strength(m, p, kind));

    /// <summary>One more test of a kind.</summary>
    public Predictive NextOf(int kind) => Next((m, p) => Strength(m, p, kind));

    /// <summary>The mean strength of all kinds.</summary>
    public Predictive CommonMean => Mixture((_, p) => (p.Mean, p.Variance));

    /// <summary>A test of a kind never tested.</summary>
    public Predictive NextOfNewKind => Next((_, p) => (p.Mean, p.Variance + p.Tau * p.Tau));

    /// <summary>The mean of <paramref name="tests"/> tests of a kind never tested.</summary>
    public Predictive NewKindMeanOf(int tests) => Mixture((_, p) => (p.Mean, p.Variance + p.Tau * p.Tau + p.S * p.S / tests));

    /// <summary>Mean strength of one kind less that of another.</summary>
    public Predictive Difference(int a, int b) => Mixture((m, p) =>
    {
        var (meanA, varianceA) = Strength(m, p, a);
        var (meanB, varianceB) = Strength(m, p, b);
        double shared = Lent(m, p, a) * Lent(m, p, b) * p.Variance;
        return (meanA - meanB, varianceA + varianceB - 2 * shared);
    });

    /// <summary>How much of a kind's mean is lent by the others: s²/n over s²/n + tau².</summary>
    private static double Lent(Means m, GridPoint p, int kind)
    {
        double own = p.S * p.S / m.Counts[kind];
        return own / (own + p.Tau * p.Tau);
    }

    private static (double Mean, double Variance) Strength(Means m, GridPoint p, int kind)
    {
        double lent = Lent(m, p, kind), y = m.Averages[kind];
        return (y + lent * (p.Mean - y), lent * p.Tau * p.Tau + lent * lent * p.Variance);
    }

    /// <summary>One more test about a mean; spoilt with the assumed share where any test is doubted.</summary>
    private Predictive Next(Func<Means, GridPoint, (double Mean, double Variance)> about)
    {
        Predictive With(double wider) => Mixture((m, p) => about(m, p) is var (mean, variance) ? (mean, variance + wider * wider * p.S * p.S) : default);
        return Doubted.Count == 0 ? With(1) : Predictive.Mixed(With(1), With(OutlierGuard.Wider), OutlierGuard.Share);
    }

    private Predictive Mixture(Func<Means, GridPoint, (double Mean, double Variance)> part)
    {
        double[] weights = new double[_points.Count], means = new double[_points.Count], deviations = new double[_points.Count];
        for (int i = 0; i < weights.Length; i++)
        {
            var (mean, variance) = part(_points[i].Means, _points[i].Point);
            (weights[i], means[i], deviations[i]) = (_points[i].Weight, mean, Math.Sqrt(variance));
        }
        return new(weights, means, deviations);
    }
}
