using Pattress.Trials.Special;

namespace Pattress.Trials.Installations;

/// <summary>The chance that one bracket fails: resistance and action lognormal and independent.</summary>
public static class BracketFailure
{
    /// <summary>
    /// beta = ln[(mR/mS) sqrt((1+VS²)/(1+VR²))] / sqrt(ln[(1+VR²)(1+VS²)]), the closed form of two lognormals.
    /// </summary>
    /// <param name="meanResistance">Mean resistance, above 0, in the unit of the action (N).</param>
    /// <param name="covResistance">Coefficient of variation of the resistance, 0 or more.</param>
    /// <param name="meanAction">Mean action, above 0 (N).</param>
    /// <param name="covAction">Coefficient of variation of the action, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double ReliabilityIndex(double meanResistance, double covResistance, double meanAction, double covAction)
    {
        var r = LognormalLaw.FromMean(meanResistance, covResistance);
        var s = LognormalLaw.FromMean(meanAction, covAction);
        double spread = Math.Sqrt(r.LogSd * r.LogSd + s.LogSd * s.LogSd), gap = r.LogMedian - s.LogMedian;
        return spread > 0 ? gap / spread : gap > 0 ? double.PositiveInfinity : double.NegativeInfinity;
    }

    /// <summary>P(resistance &lt; action); see <see cref="ReliabilityIndex"/>. No action at all (0 N) never fails.</summary>
    public static double Probability(double meanResistance, double covResistance, double meanAction, double covAction)
    {
        if (meanAction == 0) return 0;
        double beta = ReliabilityIndex(meanResistance, covResistance, meanAction, covAction);
        return double.IsInfinity(beta) ? (beta > 0 ? 0 : 1) : Normal.UpperTail(beta);
    }
}
