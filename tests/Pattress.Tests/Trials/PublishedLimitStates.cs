using Pattress.Trials.Reliability;

namespace Pattress.Tests.Trials;

/// <summary>The limit states of published_b.csv, by name.</summary>
internal static class PublishedLimitStates
{
    public static LimitState Of(string name) => name switch
    {
        "RS" => new([N("R", 5, 0.8), N("S", 2, 0.6)], x => x[0] - x[1]),
        "LN" => new([L("R", 4.0, 0.6), L("S", 1.5, 0.45)], x => x[0] - x[1]),
        "ATN" => new([N("Y", 40, 5), N("Z", 50, 2.5), N("M", 1000, 200)], x => x[0] * x[1] - x[2]),
        "ATX" => new([L("Y", 40, 5), L("Z", 50, 2.5), G("M", 1000, 200)], x => x[0] * x[1] - x[2]),
        "ATLN" => new([L("Y", 40, 5), L("Z", 50, 2.5), L("M", 1000, 200)], x => x[0] * x[1] - x[2]),
        "HMN" => new([N("Fy", 38, 3.8), N("Z", 54, 2.7)], x => x[0] * x[1] - 1140),
        "HMLN" => new([L("Fy", 38, 3.8), N("Z", 54, 2.7)], x => x[0] * x[1] - 1140),
        "OWN1" => new([L("R", 1.8, 0.45), G("W", 0.25, 0.0875)], x => x[0] - 2 * x[1]),
        "OWN2" => new([L("R", 1.8, 0.45), G("W", 0.25, 0.0875), L("T", 1, 0.15)], x => x[2] * x[0] - 2 * x[1]),
        "RP53" => new([N("x1", 1.5, 1), N("x2", 2.5, 1)], x => Math.Sin(2.5 * x[0]) + 2 - (x[0] * x[0] + 4) * (x[1] - 1) / 20),
        "RP8" => new([L("x1", 120, 12), L("x2", 120, 12), L("x3", 120, 12), L("x4", 120, 12), L("x5", 50, 10), L("x6", 40, 8)],
            x => x[0] + 2 * x[1] + 2 * x[2] + x[3] - 5 * x[4] - 5 * x[5]),
        "RP14" => new([Variable.Uniform("x1", 70, 80), N("x2", 39, 0.1), G("x3", 1500, 350), N("x4", 400, 0.1), N("x5", 250_000, 35_000)],
            x => x[0] - 32 / (Math.PI * x[1] * x[1] * x[1]) * Math.Sqrt(x[2] * x[2] * x[3] * x[3] / 16 + x[4] * x[4])),
        "RP28" => new([N("x1", 78064, 11710), N("x2", 0.0104, 0.00156)], x => x[0] * x[1] - 146.14),
        _ => Standard(name),
    };

    /// <summary>Two or three standard normals.</summary>
    private static LimitState Standard(string name) => name switch
    {
        "RP22" => Two(x => 2.5 - (x[0] + x[1]) / Math.Sqrt(2) + 0.1 * Square(x[0] - x[1])),
        "RP24" => new([N("x1", 10, 3), N("x2", 10, 3)], x => 2.5 - 0.2357 * (x[0] - x[1]) + 0.00463 * Square(Square(x[0] + x[1] - 20))),
        "RP31" => Two(x => 2 - x[1] + 256 * Square(Square(x[0]))),
        "RP33a" => Three(x => -x[0] - x[1] - x[2] + 3 * Math.Sqrt(3)),
        "RP33b" => Three(x => 3 - x[2]),
        "BR4" => Two(FourBranches),
        _ => throw new ArgumentException(name),
    };

    private static double FourBranches(double[] x)
    {
        double difference = x[0] - x[1], sum = (x[0] + x[1]) / Math.Sqrt(2), curved = 3 + 0.1 * difference * difference;
        return Math.Min(Math.Min(curved - sum, curved + sum), 7 / Math.Sqrt(2) - Math.Abs(difference));
    }

    private static LimitState Two(Func<double[], double> g) => new([N("x1", 0, 1), N("x2", 0, 1)], g);

    private static LimitState Three(Func<double[], double> g) => new([N("x1", 0, 1), N("x2", 0, 1), N("x3", 0, 1)], g);

    private static Variable N(string name, double mean, double sd) => Variable.Normal(name, mean, sd);

    private static Variable L(string name, double mean, double sd) => Variable.Lognormal(name, mean, sd);

    private static Variable G(string name, double mean, double sd) => Variable.Gumbel(name, mean, sd);

    private static double Square(double x) => x * x;
}
