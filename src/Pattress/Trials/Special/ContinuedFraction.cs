namespace Pattress.Trials.Special;

/// <summary>Lentz's method with Thompson and Barnett's guard against a zero denominator.</summary>
internal static class ContinuedFraction
{
    private const double Tiny = 1e-300;

    /// <summary>b0 + a1/(b1 + a2/(b2 + …)) to the last place or 100,000 levels.</summary>
    public static double Evaluate(double b0, Func<int, double> a, Func<int, double> b)
    {
        double f = NotZero(b0), c = f, d = 0;
        for (int k = 1; k < 100_000; k++)
        {
            d = 1 / NotZero(b(k) + a(k) * d);
            c = NotZero(b(k) + a(k) / c);
            f *= c * d;
            if (Math.Abs(c * d - 1) < 1e-16) break;
        }
        return f;
    }

    private static double NotZero(double x) => Math.Abs(x) < Tiny ? Tiny : x;
}
