namespace Pattress.Trials.Special;

/// <summary>The gamma function and its incomplete integrals.</summary>
public static class GammaFunctions
{
    private const double HalfLogTwoPi = 0.91893853320467274178;

    /// <summary>ln Gamma(x) for x &gt; 0: Stirling's series from 12 up, the recursion below.</summary>
    public static double LogGamma(double x)
    {
        if (!(x > 0)) throw new ArgumentOutOfRangeException(nameof(x), x, "above 0");
        double product = 1;
        while (x < 12) product *= x++;
        return (x - 0.5) * Math.Log(x) - x + HalfLogTwoPi + Stirling(x) - Math.Log(product);
    }

    /// <summary>ln Gamma(x) less its leading part (x - 1/2) ln x - x + ln(2 pi)/2, for x of 12 and more.</summary>
    internal static double Stirling(double x)
    {
        double r = 1 / (x * x);
        return (1.0 / 12 - r * (1.0 / 360 - r * (1.0 / 1260 - r * (1.0 / 1680 - r * (1.0 / 1188 - r * (691.0 / 360360 - r / 156)))))) / x;
    }

    /// <summary>Regularised lower incomplete gamma P(a, x).</summary>
    public static double LowerRegularised(double a, double x) =>
        x <= 0 ? 0 : x < a + 1 ? Series(a, x) : 1 - Fraction(a, x);

    /// <summary>Regularised upper incomplete gamma Q(a, x) = 1 - P(a, x).</summary>
    public static double UpperRegularised(double a, double x) =>
        x <= 0 ? 1 : x < a + 1 ? 1 - Series(a, x) : Fraction(a, x);

    /// <summary>P(chi-square with <paramref name="degrees"/> degrees of freedom &gt; x).</summary>
    public static double ChiSquareUpperTail(double x, double degrees) => UpperRegularised(degrees / 2, x / 2);

    private static double Front(double a, double x) => Math.Exp(a * Math.Log(x) - x - LogGamma(a));

    private static double Series(double a, double x)
    {
        double term = 1 / a, sum = term;
        for (int k = 1; term > 1e-17 * sum && k < 100_000; k++) sum += term *= x / (a + k);
        return sum * Front(a, x);
    }

    private static double Fraction(double a, double x)
    {
        double f = ContinuedFraction.Evaluate(x + 1 - a, k => -k * (k - a), k => x + 1 - a + 2 * k);
        return Front(a, x) / f;
    }
}
