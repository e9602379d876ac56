namespace Pattress.Trials.Installations;

/// <summary>Draws of the shared factor: lognormal load and batch as one normal, a Gumbel load alone through its probability.</summary>
internal readonly struct SharedDraw
{
    private readonly double _centre, _spread, _cov;

    public SharedDraw(SharedCauses shared)
    {
        double load = Math.Log(1 + shared.LoadCov * shared.LoadCov), batch = Math.Log(1 + shared.BatchCov * shared.BatchCov);
        (_centre, _spread) = ((batch - load) / 2, Math.Sqrt(load + batch));
        _cov = shared.LoadLaw == LoadLaw.Gumbel ? shared.LoadCov : 0;
        if (_cov > 0 && shared.BatchCov > 0) throw new ArgumentException("sampling covers a Gumbel load without a shared batch");
    }

    /// <summary>ln of the factor at a standard normal z.</summary>
    public double LogAt(double z) => _cov > 0 ? Math.Log(Math.Max(0, GumbelFactor.LoadAt(z, _cov))) : _centre + _spread * z;

    /// <summary>The factor itself.</summary>
    public double Value(double logQ) => Math.Exp(logQ);
}
