namespace Pattress.Trials.Special;

/// <summary>Roots of increasing functions, always kept between two bounds.</summary>
internal static class Root
{
    /// <summary>The root of an increasing function by the false position that bisects when it stalls; exact to the last place or so.</summary>
    public static double Bisect(Func<double, double> f, double low, double high)
    {
        double fLow = f(low), fHigh = f(high);
        for (int i = 0; i < 200 && high - low > 1e-15 * (Math.Abs(low) + Math.Abs(high)); i++)
        {
            double x = i % 3 == 2 ? 0.5 * (low + high) : Between(low, high, low - fLow * (high - low) / (fHigh - fLow));
            double y = f(x);
            if (y == 0) return x;
            if (y < 0) { low = x; fLow = y; if (i % 3 == 1) fHigh *= 0.5; }
            else { high = x; fHigh = y; if (i % 3 == 1) fLow *= 0.5; }
        }
        return 0.5 * (low + high);
    }

    private static double Between(double low, double high, double x) =>
        x > low && x < high ? x : 0.5 * (low + high);

    /// <summary>Newton's method for an increasing function with derivative, kept in the bracket seen so far.</summary>
    public static double Newton(Func<double, (double Value, double Slope)> f, double x, double low, double high)
    {
        for (int i = 0; i < 100; i++)
        {
            var (value, slope) = f(x);
            if (value < 0) low = x; else high = x;
            double next = Between(low, high, x - value / slope);
            if (Math.Abs(next - x) <= 1e-15 * Math.Abs(x) + 1e-300) return next;
            x = next;
        }
        return x;
    }
}
