namespace Pattress.Trials.Shrinkage;

/// <summary>A value known only to lie between two others.</summary>
public readonly record struct Between(double Low, double High);

/// <summary>The tests of one kind of fixing, on the scale of the model: logarithms of loads.</summary>
/// <param name="Kind">Name of the kind.</param>
/// <param name="Values">Tests measured.</param>
/// <param name="Intervals">Tests known only as an interval; the integration grows quickly with their number, at most 4 in all.</param>
public sealed record KindSeries(string Kind, IReadOnlyList<double> Values, params IReadOnlyList<Between> Intervals)
{
    /// <summary>From loads (N, above 0), by their logarithms.</summary>
    public static KindSeries OfLoads(string kind, IReadOnlyList<double> loads) =>
        new(kind, Statistics.Characteristic.Logarithms([.. loads]));
}

/// <summary>
/// Prior of the model: the scatter s within a kind has density 1/s between two bounds, the spread tau between kinds is
/// half-Cauchy, the common mean is flat. All three are assumed; with fewer than six kinds the answer depends on the scale of tau.
/// </summary>
/// <param name="LeastScatter">Smallest standard deviation of the logarithm within a kind; assumed.</param>
/// <param name="MostScatter">Largest; assumed.</param>
/// <param name="SpreadScale">Scale of tau; assumed.</param>
public sealed record ShrinkagePrior(double LeastScatter = 0.01, double MostScatter = 1.5, double SpreadScale = 0.2)
{
    /// <summary>Kinds below which the prior of tau matters.</summary>
    public const int EnoughKinds = 6;

    internal void Check()
    {
        if (!(LeastScatter > 0 && MostScatter > LeastScatter && double.IsFinite(MostScatter) && SpreadScale is > 0 and < 1e3))
            throw new ArgumentException("the prior needs 0 < least < most scatter and a spread scale above 0");
    }
}
