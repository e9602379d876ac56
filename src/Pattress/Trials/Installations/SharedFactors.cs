using Pattress.Trials.Special;

namespace Pattress.Trials.Installations;

/// <summary>A lognormal shared factor, ln q = Centre + Spread z, z standard normal.</summary>
internal readonly ref struct LognormalFactor(Given given, double centre, double spread) : IIntegrand
{
    private readonly Given _given = given;

    public double At(double z)
    {
        double logQ = centre + spread * z;
        return Normal.Pdf(z) * _given.Fails(Math.Exp(logQ), logQ);
    }
}

/// <summary>
/// A Gumbel load factor with mean 1 over a given batch factor: q = (mode + scale g) / batch, with g taken at the same
/// probability as a standard normal z, so that the integrand dies away at both ends as fast as a bell does.
/// </summary>
internal readonly ref struct GumbelFactor(Given given, double cov, double batch) : IIntegrand
{
    private const double Euler = 0.57721566490153286061, ScaleOfCov = 0.779696801233676;
    private readonly Given _given = given;

    public double At(double z)
    {
        double q = Math.Max(0, LoadAt(z, cov) / batch);
        return Normal.Pdf(z) * _given.Fails(q, Math.Log(q));
    }

    /// <summary>The load factor at the same probability as z: mean 1, scale sqrt(6)/pi times its coefficient of variation.</summary>
    public static double LoadAt(double z, double cov) => 1 + ScaleOfCov * cov * (Reduced(z) - Euler);

    /// <summary>g = -ln(-ln Phi(z)); for large z by the series of ln(1 - u), whose u is below 0.003.</summary>
    private static double Reduced(double z)
    {
        if (z < 2.8) return -Math.Log(-Math.Log(NormalTable.Cdf(z)));
        double u = NormalTable.Cdf(-z);
        return -Math.Log(u * (1 + u * (1.0 / 2 + u * (1.0 / 3 + u * (1.0 / 4 + u * (1.0 / 5 + u / 6))))));
    }
}

/// <summary>A Gumbel load over a lognormal batch factor with mean 1: one quadrature inside the other.</summary>
internal readonly ref struct GumbelOverBatch(Given given, double loadCov, double batchSd, double step) : IIntegrand
{
    private readonly Given _given = given;

    public double At(double w)
    {
        var inner = new GumbelFactor(_given, loadCov, Math.Exp(batchSd * w - batchSd * batchSd / 2));
        return Normal.Pdf(w) * Trapezoid.Integrate(ref inner, -InstallationFailure.Reach, InstallationFailure.Reach, step);
    }
}
