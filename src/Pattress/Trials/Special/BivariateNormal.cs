namespace Pattress.Trials.Special;

/// <summary>Two correlated standard normals.</summary>
public static class BivariateNormal
{
    /// <summary>P(X &lt;= h, Y &lt;= k) with correlation from -1 to 1: Plackett's integral over the sine of the correlation.</summary>
    public static double Cdf(double h, double k, double correlation)
    {
        if (!(Math.Abs(correlation) <= 1)) throw new ArgumentOutOfRangeException(nameof(correlation), correlation, "from -1 to 1");
        if (correlation == 1) return Normal.Cdf(Math.Min(h, k));
        if (correlation == -1) return Math.Max(0, Normal.Cdf(h) - Normal.Cdf(-k));
        double end = Math.Asin(correlation), hs = (h * h + k * k) / 2, hk = h * k;
        double integral = GaussLegendre.Forty.Integrate(t => Integrand(Math.Sin(t), hs, hk), 0, end);
        return Math.Clamp(Normal.Cdf(h) * Normal.Cdf(k) + integral / (2 * Math.PI), 0, 1);
    }

    private static double Integrand(double sine, double hs, double hk) => Math.Exp((sine * hk - hs) / (1 - sine * sine));
}
