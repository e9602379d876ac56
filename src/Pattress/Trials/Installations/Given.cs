namespace Pattress.Trials.Installations;

/// <summary>The installation given the shared factor: an average over walls, the brackets independent on each.</summary>
internal readonly ref struct Given(ReadOnlySpan<double> walls, ReadOnlySpan<Slope> slopes)
{
    private readonly ReadOnlySpan<double> _walls = walls;
    private readonly ReadOnlySpan<Slope> _slopes = slopes;

    /// <summary>Sum over walls of P(wall) [1 - prod(1 - p)], added up so that small chances keep their digits.</summary>
    public double Fails(double q, double logQ)
    {
        int brackets = _slopes.Length / _walls.Length;
        double total = 0;
        for (int w = 0; w < _walls.Length; w++)
            total += _walls[w] * OnWall(_slopes.Slice(w * brackets, brackets), q, logQ);
        return total;
    }

    private static double OnWall(ReadOnlySpan<Slope> slopes, double q, double logQ)
    {
        double fails = 0;
        foreach (ref readonly var s in slopes) fails += s.Given(q, logQ) * (1 - fails);
        return fails;
    }
}
