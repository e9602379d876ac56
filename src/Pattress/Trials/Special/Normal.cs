namespace Pattress.Trials.Special;

/// <summary>The standard normal law, accurate to a few units in the last place, both tails relative.</summary>
public static class Normal
{
    /// <summary>A standard normal stays below it with 95 %; between it and its negative with 90 %.</summary>
    public const double NinetyFive = 1.6448536269514722;

    private const double InverseRootTwoPi = 0.39894228040143267794;
    private const double SeriesLimit = 3.0;

    /// <summary>Density at <paramref name="x"/>.</summary>
    public static double Pdf(double x) => InverseRootTwoPi * Math.Exp(-0.5 * x * x);

    /// <summary>P(Z &lt;= x).</summary>
    public static double Cdf(double x) => x < 0 ? Tail(-x) : 1 - Tail(x);

    /// <summary>P(Z &gt; x): keeps its relative accuracy for large x.</summary>
    public static double UpperTail(double x) => Cdf(-x);

    /// <summary>The x with P(Z &lt;= x) = p; p strictly between 0 and 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">p is not strictly between 0 and 1.</exception>
    public static double Quantile(double p)
    {
        if (!(p > 0 && p < 1)) throw new ArgumentOutOfRangeException(nameof(p), p, "a probability strictly between 0 and 1");
        return p < 0.5 ? -UpperQuantile(p) : p > 0.5 ? UpperQuantile(1 - p) : 0;
    }

    /// <summary>The x with P(Z &gt; x) = q, for 0 &lt; q &lt;= 1/2.</summary>
    private static double UpperQuantile(double q)
    {
        double x = FirstGuess(q);
        for (int i = 0; i < 2; i++) x = Halley(x, q);
        return x;
    }

    /// <summary>Abramowitz and Stegun 26.2.23 (absolute error 4.5e-4); two Halley steps make it exact.</summary>
    private static double FirstGuess(double q)
    {
        double t = Math.Sqrt(-2 * Math.Log(q));
        return t - (2.515517 + t * (0.802853 + t * 0.010328)) / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308)));
    }

    private static double Halley(double x, double q)
    {
        double e = (q - Cdf(-x)) / Pdf(x);
        return x - e / (1 + 0.5 * x * e);
    }

    /// <summary>P(Z &gt; x) for x &gt;= 0.</summary>
    private static double Tail(double x) => x < SeriesLimit ? 0.5 - Pdf(x) * Series(x) : Pdf(x) * MillsRatio(x);

    /// <summary>(Phi(x) - 1/2) / phi(x) = x + x^3/3 + x^5/15 + …, all terms positive.</summary>
    private static double Series(double x)
    {
        double term = x, sum = x;
        for (int k = 3; term > 1e-17 * sum; k += 2) sum += term *= x * x / k;
        return sum;
    }

    /// <summary>Laplace's continued fraction, from the back; 5 + 360/x^2 levels reach the last place for x &gt;= 3.</summary>
    private static double MillsRatio(double x)
    {
        if (x > 1e4) return 1 / x;
        double below = x;
        for (int k = 5 + (int)(400 / (x * x)); k >= 1; k--) below = x + k / below;
        return 1 / below;
    }
}
