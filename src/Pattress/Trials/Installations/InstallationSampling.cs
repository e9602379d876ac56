namespace Pattress.Trials.Installations;

/// <summary>The same installation by plain Monte Carlo: the check of the quadrature, not the method.</summary>
public static class InstallationSampling
{
    private const double Usual = 4;

    /// <summary>
    /// Share of sampled installations in which a bracket fails. Each bracket's resistance is drawn by its uniform number;
    /// a number above the bracket's chance at an unusually high load (four standard deviations) stands without further work.
    /// </summary>
    /// <returns>The share and its standard error.</returns>
    public static (double Share, double StandardError) Estimate(
        ReadOnlySpan<double> walls, ReadOnlySpan<BracketOnWall> brackets, SharedCauses shared, long systems, ulong seed)
    {
        InstallationFailure.Check(walls, brackets);
        shared.Check();
        if (systems < 1) throw new ArgumentOutOfRangeException(nameof(systems), systems, "at least 1");
        var draw = new SharedDraw(shared);
        var slopes = new Slope[brackets.Length];
        var highest = new double[brackets.Length];
        for (int i = 0; i < slopes.Length; i++)
        {
            slopes[i] = Slope.Of(brackets[i], 1e6);
            highest[i] = slopes[i].Given(Math.Exp(draw.LogAt(Usual)), draw.LogAt(Usual));
        }
        double share = Failures(walls, slopes, highest, draw, systems, seed) / (double)systems;
        return (share, Math.Sqrt(Math.Max(share * (1 - share), 0.5 / systems) / systems));
    }

    private static long Failures(ReadOnlySpan<double> walls, Slope[] slopes, double[] highest, SharedDraw draw, long systems, ulong seed)
    {
        var random = new Xoshiro(seed);
        int count = slopes.Length / walls.Length;
        long failed = 0;
        double first = 0, second = 0;
        for (long i = 0; i < systems; i++)
        {
            if ((i & 1) == 0) (first, second) = random.NextPair();
            double z = (i & 1) == 0 ? first : second, logQ = draw.LogAt(z), q = draw.Value(logQ);
            int from = Pick(walls, random.Next()) * count;
            if (Fails(slopes.AsSpan(from, count), highest.AsSpan(from, count), ref random, Math.Abs(z) > Usual, q, logQ)) failed++;
        }
        return failed;
    }

    private static int Pick(ReadOnlySpan<double> walls, double u)
    {
        int w = 0;
        while (w < walls.Length - 1 && (u -= walls[w]) >= 0) w++;
        return w;
    }

    private static bool Fails(ReadOnlySpan<Slope> slopes, ReadOnlySpan<double> highest, ref Xoshiro random, bool unusual, double q, double logQ)
    {
        for (int b = 0; b < slopes.Length; b++)
        {
            double u = random.Next();
            if ((u < highest[b] || unusual) && u < slopes[b].Given(q, logQ)) return true;
        }
        return false;
    }
}
