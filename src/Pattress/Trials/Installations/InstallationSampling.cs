namespace Pattress.Trials.Installations;

/// <summary>The same installation by plain Monte Carlo: the check of the quadrature, not the method.</summary>
public static class InstallationSampling
{
    /// <summary>
    /// Share of sampled installations in which a bracket fails. Each bracket's resistance is drawn by its uniform number; see <see cref="SystemSampler"/>.
    /// </summary>
    /// <returns>The share and its standard error.</returns>
    public static (double Share, double StandardError) Estimate(
        ReadOnlySpan<double> walls, ReadOnlySpan<BracketOnWall> brackets, SharedCauses shared, long systems, ulong seed)
    {
        InstallationFailure.Check(walls, brackets);
        shared.Check();
        if (systems < 1) throw new ArgumentOutOfRangeException(nameof(systems), systems, "at least 1");
        double share = new SystemSampler(walls, brackets, new SharedDraw(shared), seed).Failures(systems) / (double)systems;
        return (share, Math.Sqrt(Math.Max(share * (1 - share), 0.5 / systems) / systems));
    }
}
