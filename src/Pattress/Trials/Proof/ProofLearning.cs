using Pattress.Trials.Installations;
using Pattress.Trials.Special;

namespace Pattress.Trials.Proof;

/// <summary>What is thought of a batch of fixings: the median of its strength is lognormal, single fixings scatter about it.</summary>
/// <param name="MedianN">Best guess of the median (N), above 0.</param>
/// <param name="MedianLogSd">Doubt about it: standard deviation of its logarithm, above 0.</param>
/// <param name="LogSd">Scatter of single fixings: standard deviation of the logarithm, above 0.</param>
public sealed record BatchBelief(double MedianN, double MedianLogSd, double LogSd);

/// <summary>The belief after proof pulls.</summary>
/// <param name="MedianN">Median of the batch's strength: posterior median on the scale of logarithms' mean (N).</param>
/// <param name="MedianLogSd">Doubt left.</param>
/// <param name="NextBelow">For the load asked about: chance that a fixing not yet pulled holds less.</param>
public sealed record AfterProof(double MedianN, double MedianLogSd, double NextBelow);

/// <summary>What survived and failed proof pulls teach.</summary>
public static class ProofLearning
{
    private static readonly GaussLegendre Rule = new(120);

    /// <summary>
    /// P(fails in service | survived the pull) for that very fixing, resistance and action lognormal: the part of the
    /// resistances below the pull is gone. Says nothing of creep, damp or of damage by the pull itself.
    /// </summary>
    /// <param name="proofN">Load survived (N), above 0.</param>
    public static double FailureAfterSurvival(LognormalLaw resistance, LognormalLaw action, double proofN)
    {
        if (!(proofN > 0)) throw new ArgumentOutOfRangeException(nameof(proofN), proofN, "above 0");
        if (!(resistance.LogSd > 0 && action.LogSd > 0)) throw new ArgumentException("both need some scatter");
        double log = Math.Log(proofN), survived = Normal.UpperTail((log - resistance.LogMedian) / resistance.LogSd);
        double from = Math.Max(-9, (log - action.LogMedian) / action.LogSd);
        if (from >= 9 || survived == 0) return survived == 0 ? 1 : 0;
        double both = Rule.Integrate(z => Normal.Pdf(z) * Between(resistance, log, action.LogMedian + action.LogSd * z), from, 9);
        return Math.Clamp(both / survived, 0, 1);
    }

    /// <summary>P(proof &lt; R &lt; s), taken on the side where no digits are lost.</summary>
    private static double Between(LognormalLaw r, double logProof, double logLoad)
    {
        double low = (logProof - r.LogMedian) / r.LogSd, high = (logLoad - r.LogMedian) / r.LogSd;
        return high <= low ? 0 : low > 0 ? Normal.UpperTail(low) - Normal.UpperTail(high) : Normal.Cdf(high) - Normal.Cdf(low);
    }

    /// <summary>The belief in the rest of the batch after some of its fixings passed and some failed a pull.</summary>
    /// <param name="passed">Fixings that held, 0 or more.</param>
    /// <param name="failed">Fixings that came away, 0 or more.</param>
    /// <param name="proofN">The pull (N), above 0.</param>
    /// <param name="loadN">A load to ask about (N), above 0.</param>
    public static AfterProof Batch(BatchBelief before, int passed, int failed, double proofN, double loadN)
    {
        if (passed < 0 || failed < 0) throw new ArgumentOutOfRangeException(nameof(passed), passed, "0 or more");
        if (!(proofN > 0 && loadN > 0 && before is { MedianN: > 0, MedianLogSd: > 0, LogSd: > 0 })) throw new ArgumentException("loads and scatters above 0");
        double centre = Math.Log(before.MedianN), proof = Math.Log(proofN), load = Math.Log(loadN);
        double Weight(double z)
        {
            double above = (centre + before.MedianLogSd * z - proof) / before.LogSd;
            return Normal.Pdf(z) * Math.Pow(Normal.Cdf(above), passed) * Math.Pow(Normal.UpperTail(above), failed);
        }
        double mass = Rule.Integrate(Weight, -9, 9), mean = Rule.Integrate(z => z * Weight(z), -9, 9) / mass;
        double variance = Rule.Integrate(z => (z - mean) * (z - mean) * Weight(z), -9, 9) / mass;
        double below = Rule.Integrate(z => Weight(z) * Normal.Cdf((load - centre - before.MedianLogSd * z) / before.LogSd), -9, 9) / mass;
        return new(Math.Exp(centre + before.MedianLogSd * mean), before.MedianLogSd * Math.Sqrt(variance), below);
    }
}
