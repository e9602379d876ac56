namespace Pattress.Walls;

/// <summary>One wall's rows with prior and likelihood, from which beliefs are made under any prior.</summary>
internal sealed class WallPosterior
{
    private readonly WallEvidence _evidence;
    private readonly WallLikelihood _likelihood;
    private readonly double _most;

    public WallPosterior(WallEvidence evidence, WallRates rates)
    {
        _evidence = evidence;
        Rows = BuildUps.OfKind(evidence.Kind) is { Count: > 0 } rows ? rows : BuildUps.OfKind("wall");
        Prior = WallPriors.Of(Rows, evidence);
        _likelihood = new(Rows, evidence, rates);
        _most = _likelihood.Log.Max();
        Likelihood = [.. _likelihood.Log.Select(l => Math.Exp(l - _most))];
    }

    /// <summary>Whether it is from these readings.</summary>
    public bool IsOf(IReadOnlyList<WallReading> readings) => _evidence.Readings.SequenceEqual(readings, ReferenceEqualityComparer.Instance);

    public IReadOnlyList<BuildUp> Rows { get; }

    public double[] Prior { get; }

    /// <summary>P(readings | row) up to a factor common to all rows.</summary>
    public double[] Likelihood { get; }

    /// <summary>Log of that factor.</summary>
    public double LogScale => _most;

    /// <summary>The belief under a prior over rows.</summary>
    public WallBelief Belief(double[] prior)
    {
        double[] joint = [.. prior.Select((p, i) => p * Likelihood[i])];
        double sum = joint.Sum();
        return Of([.. joint.Select(j => j / sum)], _most + Math.Log(sum));
    }

    /// <summary>The belief with given probabilities of the rows.</summary>
    public WallBelief Of(double[] posterior, double logEvidence)
    {
        var order = Enumerable.Range(0, Rows.Count).OrderByDescending(i => posterior[i]).ThenBy(i => i);
        List<BuildUpBelief> all = [.. order.Select(i => One(i, posterior[i]))];
        return new(_evidence.WallId, all, logEvidence, WallContradictions.Of(_evidence, all));
    }

    private BuildUpBelief One(int i, double probability)
    {
        var b = Rows[i];
        var face = BuildUps.Face(_evidence.Face);
        var depths = _likelihood.Depths[i];
        Spread front = depths.Of(1, 0), behind = depths.Of(1, b.HasVoid ? 1 : 0);
        return new(b, probability, front with { MeanMm = front.MeanMm - b.InsulationMm }, b.HasVoid ? depths.Of(0, 1) : default,
            b.HasBase ? new Spread(behind.MeanMm + face.MeanMm, Math.Sqrt((behind.SdMm * behind.SdMm) + (face.SdMm * face.SdMm))) : null,
            b.InsulationMm, new(face.MeanMm, face.SdMm));
    }
}
