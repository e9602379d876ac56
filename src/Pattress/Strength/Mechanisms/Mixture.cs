using System.Collections.Concurrent;
using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Mechanisms;

/// <summary>A hole that is in the unit or, with a known share, in the mortar: the 5 % fractile of both together.</summary>
internal static class Mixture
{
    /// <summary>5 % fractile of two lognormals of the same variation, whose own 5 % fractiles are given.</summary>
    internal static double Fractile(double unit, double joint, double share, double V, Trace? trace)
    {
        trace.LookUp("N_unit", unit, "N", Factors.Assumed + "plug_in_unit");
        if (share > 0)
        {
            trace.LookUp("N_joint", joint, "N", Factors.Assumed + "plug_in_joint");
            trace.LookUp("p_joint", share, "", Factors.Assumed + "joint_share");
        }
        return trace.LookUp("N_0", Known.GetOrAdd((unit, joint, share, V), Together), "N", "statistics: 5 % fractile of unit and joint together");
    }

    // The same few rows of the table are asked for again and again.
    private static readonly ConcurrentDictionary<(double Unit, double Joint, double Share, double V), double> Known = new();

    private static double Together((double Unit, double Joint, double Share, double V) of)
    {
        var (unit, joint, share, V) = of;
        if (share is 0 or 1) return share == 0 ? unit : joint;
        double low = Min(unit, joint), high = Max(unit, joint);
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            if ((1 - share) * Below(middle, unit, V) + share * Below(middle, joint, V) > 0.05) high = middle; else low = middle;
        }
        return low;
    }

    private static double Below(double x, double fractile, double V) => Normal((Log(x / fractile) / V) - 1.645);

    // Normal distribution by the logistic-like fit of its error function, to 1e-7 (Abramowitz and Stegun 26.2.17).
    private static double Normal(double z)
    {
        double t = 1 / (1 + 0.2316419 * Abs(z));
        double tail = Exp(-z * z / 2) / Sqrt(2 * PI) * t * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
        return z > 0 ? 1 - tail : tail;
    }
}
