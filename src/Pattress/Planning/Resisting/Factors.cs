using Pattress.Actions;
using Pattress.Trials.Special;
using static System.Math;

namespace Pattress.Planning.Resisting;

/// <summary>Steps that every mechanism shares: from mean to characteristic, and what lasting load takes off.</summary>
internal static class Factors
{
    /// <summary>5 % fractile of a lognormal over its mean.</summary>
    public static double CharacteristicOverMean(double cov)
    {
        double log = Log(1 + cov * cov);
        return Exp(Normal.Quantile(0.05) * Sqrt(log) - log / 2);
    }

    /// <summary>Reduction for how long the load lasts: board and plastic creep (assumed).</summary>
    public static double Duration(Asked a) => (a.Duration >= LoadDuration.ShortTerm ? Named.Value("duration_short") : Named.Value("duration_permanent"))
        * (a.Size.Kind.Creeps && a.Duration < LoadDuration.ShortTerm ? Named.Value("creep_plastic") : 1);

    /// <summary>Reduction for damp board; what nobody measured is taken as dry and said to be assumed.</summary>
    public static double Damp(Asked a) => a.Moisture is "damp" or "fresh_plaster" ? Named.Value("damp_factor") : 1;

    public static double Cov(double a, double b) => Sqrt(a * a + b * b);
}
