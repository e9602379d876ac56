using Pattress.Trials.Special;

namespace Pattress.Trials.Claims;

/// <summary>What two single tests can say of each other.</summary>
public static class SingleTests
{
    /// <summary>
    /// How likely chance alone sets two single tests at least this far apart, if both had the same true strength and a
    /// lognormal scatter of <paramref name="cov"/>; two-sided.
    /// </summary>
    /// <param name="a">One load, above 0.</param>
    /// <param name="b">The other, in the same unit, above 0.</param>
    /// <param name="cov">Coefficient of variation of single tests, above 0: known or assumed.</param>
    public static double ChanceOfDifference(double a, double b, double cov)
    {
        if (!(a > 0 && b > 0 && cov > 0)) throw new ArgumentOutOfRangeException(nameof(a), a, "loads and scatter above 0");
        return 2 * Normal.UpperTail(Math.Abs(Math.Log(a / b)) / Math.Sqrt(2 * Math.Log(1 + cov * cov)));
    }
}
