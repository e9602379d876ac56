namespace Pattress.Trials.Special;

/// <summary>
/// The normal distribution function for inner loops: a Taylor polynomial about the nearest sixteenth, no exponential.
/// Absolute error below 1e-15; relative error in the lower tail below 1e-8 (at x = -12). Below -12 it gives 0, above 9 it gives 1.
/// </summary>
public static class NormalTable
{
    private const int Terms = 10, PerUnit = 16, Low = -12, High = 9;
    private static readonly double[] Coefficients = Build();

    /// <summary>P(Z &lt;= x).</summary>
    public static double Cdf(double x)
    {
        if (!(x > Low)) return 0;
        if (x >= High) return 1;
        int cell = (int)((x - Low) * PerUnit + 0.5);
        double d = x - Low - cell * (1.0 / PerUnit);
        ReadOnlySpan<double> c = Coefficients.AsSpan(cell * Terms, Terms);
        double d2 = d * d, d4 = d2 * d2;
        return c[0] + c[1] * d + (c[2] + c[3] * d) * d2 + (c[4] + c[5] * d + (c[6] + c[7] * d) * d2 + (c[8] + c[9] * d) * d4) * d4;
    }

    private static double[] Build()
    {
        var all = new double[((High - Low) * PerUnit + 1) * Terms];
        for (int i = 0; i * Terms < all.Length; i++) Fill(all.AsSpan(i * Terms, Terms), Low + (double)i / PerUnit);
        return all;
    }

    /// <summary>Derivatives of Phi are Hermite polynomials times the density: y(k+1) = -x y(k) - (k-1) y(k-1).</summary>
    private static void Fill(Span<double> c, double x)
    {
        c[0] = Normal.Cdf(x);
        double before = 0, now = Normal.Pdf(x), factorial = 1;
        for (int k = 1; k < Terms; k++)
        {
            factorial *= k;
            c[k] = now / factorial;
            (before, now) = (now, -x * now - (k - 1) * before);
        }
    }
}
