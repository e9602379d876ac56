namespace Pattress.Supports;

/// <summary>The normal distribution, cut off at a reach and scaled back to 1.</summary>
internal static class Normal
{
    /// <summary>Nodes of the distribution function lie this far apart, from -8 to 8.</summary>
    private const double Apart = 1.0 / 16;

    private const int Nodes = 257;

    private static readonly double[] BelowNode = [.. Enumerable.Range(0, Nodes).Select(k => Exactly((k * Apart) - 8))];

    private static readonly double[] DensityNode = [.. Enumerable.Range(0, Nodes).Select(k => Density((k * Apart) - 8, 1))];

    /// <summary>Standard normal distribution function: Taylor's series about the nearest node, the next term of which is below 1e-15.</summary>
    public static double Below(double z)
    {
        if (z < -8) return 0;
        if (!(z <= 8)) return z > 8 ? 1 : z;
        int node = (int)Math.Round((z + 8) / Apart);
        double x = (node * Apart) - 8, d = z - x, power = d, hermite = 1, before = 0, sum = 0;
        for (int n = 1; n <= 11; n++)
        {
            sum += hermite * power;
            (hermite, before) = ((x * hermite) - ((n - 1) * before), hermite);
            power *= -d / (n + 1);
        }
        return BelowNode[node] + (DensityNode[node] * sum);
    }

    /// <summary>By its series within three deviations and a continued fraction beyond.</summary>
    private static double Exactly(double z) => Math.Abs(z) < 3 ? Series(z) : Tail(z);

    public static double Density(double x, double sd) => Math.Exp(-0.5 * x * x / (sd * sd)) / (sd * Math.Sqrt(2 * Math.PI));

    /// <summary>Mass of a normal within a reach of its middle: what is left of it when it is cut off there.</summary>
    public static double Within(double sd, double reach) => 1 - (2 * Below(-reach / sd));

    /// <summary>Density at x of a normal cut off beyond <paramref name="reach"/>, with its mass <see cref="Within"/>.</summary>
    public static double CutDensity(double x, double sd, double reach, double within) => Math.Abs(x) > reach ? 0 : Density(x, sd) / within;

    /// <summary>Mass of the cut-off normal between two places.</summary>
    public static double CutMass(double from, double to, double sd, double reach, double within)
    {
        double a = Math.Clamp(from, -reach, reach), b = Math.Clamp(to, -reach, reach);
        return b <= a ? 0 : b - a >= 2 * reach ? 1 : (Below(b / sd) - Below(a / sd)) / within;
    }

    /// <summary>A kernel of steps -n..n with the mass of each step, its tail beyond four deviations left out, summing to 1.</summary>
    public static double[] Kernel(double sd, double wideSd, double wideShare, double step)
    {
        int n = (int)Math.Ceiling(3.5 * (wideShare > 0 ? Math.Max(sd, wideSd) : sd) / step);
        var k = new double[(2 * n) + 1];
        for (int i = -n; i <= n; i++)
            k[i + n] = ((1 - wideShare) * Density(i * step, sd)) + (wideShare > 0 ? wideShare * Density(i * step, wideSd) : 0);
        double sum = k.Sum();
        for (int i = 0; i < k.Length; i++) k[i] /= sum;
        return k;
    }

    private static double Series(double z)
    {
        double term = z, sum = z;
        for (int i = 1; Math.Abs(term) > 1e-18 * Math.Abs(sum) && i < 200; i++) sum += term *= z * z / ((2 * i) + 1);
        return 0.5 + (sum * Math.Exp(-0.5 * z * z) / Math.Sqrt(2 * Math.PI));
    }

    private static double Tail(double z)
    {
        double x = Math.Abs(z), f = x + 60;
        for (int i = 60; i > 0; i--) f = x + (i / f);
        double tail = Math.Exp(-0.5 * x * x) / (Math.Sqrt(2 * Math.PI) * f);
        return z > 0 ? 1 - tail : tail;
    }
}
