namespace Pattress.Trials.Installations;

/// <summary>
/// The chance that at least one bracket of an installation fails. Given the wall, the shared load and the batch the
/// brackets are independent: Pf = sum over walls P(wall) E[1 - prod(1 - Pf_b)], the expectation by quadrature.
/// </summary>
public static class InstallationFailure
{
    internal const double Reach = 8.2;
    private const double FirstStep = 0.6, MostSteepness = 1000;

    /// <summary>One kind of wall, known.</summary>
    public static double Probability(ReadOnlySpan<BracketOnWall> brackets, SharedCauses shared) =>
        Probability([1.0], brackets, shared);

    /// <summary>Several kinds of wall.</summary>
    /// <param name="walls">The probability of each wall; they sum to 1.</param>
    /// <param name="brackets">All brackets on the first wall, then all on the second, and so on.</param>
    /// <param name="shared">What the brackets share.</param>
    /// <returns>
    /// The probability over the reference period that the actions stand for; absolute error below 1e-10. A bracket's own
    /// scatter below a thousandth of the shared one is raised to that, and a chance below 1e-32 counts as 0.
    /// </returns>
    /// <exception cref="ArgumentException">A value is outside its range, or the counts do not fit.</exception>
    public static double Probability(ReadOnlySpan<double> walls, ReadOnlySpan<BracketOnWall> brackets, SharedCauses shared)
    {
        Check(walls, brackets);
        shared.Check();
        Span<Slope> slopes = brackets.Length <= 256 ? stackalloc Slope[brackets.Length] : new Slope[brackets.Length];
        double sharedSd = Math.Sqrt(LogVariance(shared.LoadCov) + LogVariance(shared.BatchCov)), steepest = 0;
        for (int i = 0; i < brackets.Length; i++)
        {
            slopes[i] = Slope.Of(brackets[i], MostSteepness / Math.Max(sharedSd, 1e-3));
            steepest = Math.Max(steepest, slopes[i].Steepness);
        }
        return Math.Clamp(Average(new Given(walls, slopes), shared, steepest), 0, 1);
    }

    private static double Average(Given given, SharedCauses shared, double steepest)
    {
        if (shared is { LoadCov: 0, BatchCov: 0 }) return given.Fails(1, 0);
        return shared.LoadLaw == LoadLaw.Lognormal || shared.LoadCov == 0
            ? OverLognormal(given, LogVariance(shared.LoadCov), LogVariance(shared.BatchCov), steepest)
            : OverGumbel(given, shared, steepest);
    }

    private static double OverLognormal(Given given, double load, double batch, double steepest)
    {
        double spread = Math.Sqrt(load + batch);
        var f = new LognormalFactor(given, (batch - load) / 2, spread);
        return Trapezoid.Integrate(ref f, -Reach, Reach, FirstStep / Math.Max(1, 0.5 * steepest * spread));
    }

    private static double OverGumbel(Given given, SharedCauses shared, double steepest)
    {
        double step = FirstStep / Math.Max(1, 0.5 * steepest * shared.LoadCov);
        if (shared.BatchCov == 0)
        {
            var f = new GumbelFactor(given, shared.LoadCov, 1);
            return Trapezoid.Integrate(ref f, -Reach, Reach, step);
        }
        double sd = Math.Sqrt(LogVariance(shared.BatchCov));
        var outer = new GumbelOverBatch(given, shared.LoadCov, sd, step);
        return Trapezoid.Integrate(ref outer, -Reach, Reach, FirstStep / Math.Max(1, 0.5 * steepest * sd));
    }

    private static double LogVariance(double cov) => Math.Log(1 + cov * cov);

    internal static void Check(ReadOnlySpan<double> walls, ReadOnlySpan<BracketOnWall> brackets)
    {
        if (walls.Length == 0 || brackets.Length % walls.Length != 0)
            throw new ArgumentException($"{brackets.Length} brackets do not spread evenly over {walls.Length} walls");
        double sum = 0;
        foreach (double p in walls) sum += p is >= 0 and <= 1 ? p : double.NaN;
        if (!(Math.Abs(sum - 1) < 1e-9)) throw new ArgumentException("the walls' probabilities must be from 0 to 1 and sum to 1");
    }
}
