using Pattress.Trials.Special;

namespace Pattress.Trials.Reliability;

/// <summary>Systems that fail when any member fails.</summary>
public static class SeriesSystem
{
    /// <summary>Two linear members: Phi(-b1) + Phi(-b2) - Phi2(-b1, -b2; correlation of their directions).</summary>
    public static double TwoMembers(DesignPoint a, DesignPoint b) =>
        a.Probability + b.Probability - BivariateNormal.Cdf(-a.Beta, -b.Beta, Correlation(a, b));

    /// <summary>Ditlevsen's bounds on a series system of linear members, most likely member first.</summary>
    public static (double Lower, double Upper) Bounds(IReadOnlyList<DesignPoint> members)
    {
        var sorted = members.OrderBy(m => m.Beta).ToList();
        double lower = sorted[0].Probability, upper = sorted[0].Probability;
        for (int i = 1; i < sorted.Count; i++)
        {
            double[] joint = [.. sorted.Take(i).Select(j => BivariateNormal.Cdf(-sorted[i].Beta, -j.Beta, Correlation(sorted[i], j)))];
            lower += Math.Max(0, sorted[i].Probability - joint.Sum());
            upper += sorted[i].Probability - joint.Max();
        }
        return (lower, Math.Min(1, upper));
    }

    /// <summary>n independent repetitions of beta1, e.g. years: Phi(beta_n) = Phi(beta_1)^n (EN 1990:2002 Annex C, C.3).</summary>
    public static double Repeated(double beta, int times)
    {
        double failed = OneLessExp(times * Log1m(Normal.UpperTail(beta)));
        return failed <= 0 ? double.PositiveInfinity : failed >= 1 ? double.NegativeInfinity : -Normal.Quantile(failed);
    }

    /// <summary>Rounding of two like directions may pass 1.</summary>
    private static double Correlation(DesignPoint a, DesignPoint b) => Math.Clamp(Vectors.Dot(a.Alpha, b.Alpha), -1, 1);

    /// <summary>1 - e^x with its digits kept for x near 0.</summary>
    private static double OneLessExp(double x) => x > -1e-4 ? -x * (1 + x * (0.5 + x / 6)) : 1 - Math.Exp(x);

    /// <summary>ln(1 - p) with its digits kept for small p.</summary>
    private static double Log1m(double p) => p > 1e-4 ? Math.Log(1 - p) : -p * (1 + p * (0.5 + p / 3));
}
