using Pattress.Trials.Special;

namespace Pattress.Trials.Reliability;

/// <summary>Law of a basic variable.</summary>
public enum VariableLaw
{
    Normal,
    Lognormal,

    /// <summary>Largest values (Gumbel).</summary>
    Gumbel,
    Uniform,
}

/// <summary>An independent basic variable of a limit state.</summary>
/// <param name="Name">What it is, for the reader.</param>
/// <param name="Law">Its law.</param>
/// <param name="First">Mean; lower bound of a uniform variable.</param>
/// <param name="Second">Standard deviation, above 0; upper bound of a uniform variable.</param>
public sealed record Variable(string Name, VariableLaw Law, double First, double Second)
{
    private const double Euler = 0.57721566490153286061;

    public static Variable Normal(string name, double mean, double sd) => new(name, VariableLaw.Normal, mean, sd);

    public static Variable Lognormal(string name, double mean, double sd) => new(name, VariableLaw.Lognormal, mean, sd);

    public static Variable Gumbel(string name, double mean, double sd) => new(name, VariableLaw.Gumbel, mean, sd);

    public static Variable Uniform(string name, double low, double high) => new(name, VariableLaw.Uniform, low, high);

    /// <summary>The value at the same probability as a standard normal <paramref name="u"/>.</summary>
    public double At(double u) => Law switch
    {
        VariableLaw.Normal => First + Second * u,
        VariableLaw.Lognormal => Logarithmic(u),
        VariableLaw.Gumbel => First + Second * Math.Sqrt(6) / Math.PI * (Reduced(u) - Euler),
        _ => First + (Second - First) * Special.Normal.Cdf(u),
    };

    private double Logarithmic(double u)
    {
        double variance = Math.Log(1 + Second * Second / (First * First));
        return First * Math.Exp(Math.Sqrt(variance) * u - variance / 2);
    }

    /// <summary>-ln(-ln Phi(u)) with its digits kept in both tails.</summary>
    private static double Reduced(double u)
    {
        double tail = Special.Normal.UpperTail(u);
        return -Math.Log(tail < 1e-3 ? tail * (1 + tail * (1.0 / 2 + tail * (1.0 / 3 + tail * (1.0 / 4 + tail / 5)))) : -Math.Log(Special.Normal.Cdf(u)));
    }
}
