using Pattress.Trials.Statistics;

namespace Pattress.Trials.Documents;

/// <summary>How many tests of each of two kinds would settle which is the stronger.</summary>
public static class PairSettling
{
    /// <summary>Scatter of single tests where no kind was tested twice (assumed).</summary>
    public const double AssumedCov = 0.2;

    private const double Confidence = 0.95;

    /// <summary>
    /// Tests of each kind in all, if their medians are in the ratio in the middle of the interval and they scatter as the
    /// whole file does; null when ten thousand would not do.
    /// </summary>
    public static int? More(TrialAnswer answer, KindComparison pair) => MoreTests.OfEach(Math.Sqrt(pair.RatioLow * pair.RatioHigh), Pooled(answer), Confidence);

    private static double Pooled(TrialAnswer answer)
    {
        var repeated = answer.Kinds.Where(k => k.Cov > 0).ToList();
        double freedom = repeated.Sum(k => k.Tests.Count - 1.0);
        return freedom > 0 ? Math.Sqrt(repeated.Sum(k => (k.Tests.Count - 1) * k.Cov!.Value * k.Cov.Value) / freedom) : AssumedCov;
    }
}
