namespace Pattress.Trials.Special;

/// <summary>The incomplete beta integral and its inverse.</summary>
public static class BetaFunctions
{
    /// <summary>Regularised incomplete beta I_x(a, b); a, b &gt; 0, x from 0 to 1.</summary>
    public static double Regularised(double a, double b, double x)
    {
        if (!(a > 0 && b > 0)) throw new ArgumentOutOfRangeException(nameof(a), a, "both parameters above 0");
        if (x <= 0) return 0;
        if (x >= 1) return 1;
        return x < (a + 1) / (a + b + 2) ? Fraction(a, b, x) : 1 - Fraction(b, a, 1 - x);
    }

    /// <summary>The x with I_x(a, b) = p.</summary>
    public static double Inverse(double a, double b, double p) =>
        p <= 0 ? 0 : p >= 1 ? 1 : Root.Bisect(x => Regularised(a, b, x) - p, 0, 1);

    private static double Fraction(double a, double b, double x)
    {
        double front = Math.Exp(a * Math.Log(x) + b * Math.Log(1 - x)
            + GammaFunctions.LogGamma(a + b) - GammaFunctions.LogGamma(a) - GammaFunctions.LogGamma(b)) / a;
        return front / ContinuedFraction.Evaluate(1, k => Numerator(a, b, x, k), _ => 1);
    }

    private static double Numerator(double a, double b, double x, int k)
    {
        int m = k / 2;
        return k % 2 == 0
            ? m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m))
            : -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
    }
}
