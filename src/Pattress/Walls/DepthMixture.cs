namespace Pattress.Walls;

/// <summary>
/// What is known of the front's thickness t and of the void v behind it, given a build-up: a mixture of two-dimensional
/// normal distributions. Exact until more than <see cref="Most"/> components are needed; then the lightest are dropped.
/// </summary>
internal sealed class DepthMixture
{
    /// <summary>Most components kept; what is dropped weighs less than anything a fitter acts on.</summary>
    public const int Most = 27;

    private readonly List<DepthNormal> _parts = [];
    private readonly List<DepthNormal> _next = [];

    public DepthMixture(double front, double frontSd, double gap, double gapSd) =>
        _parts.Add(new(0, front, gap, frontSd * frontSd, gapSd * gapSd, 0));

    public IReadOnlyList<DepthNormal> Parts => _parts;

    /// <summary>Takes in one reading: its log likelihood is returned, and the mixture afterwards is normalised.</summary>
    public double Observe(ReadOnlySpan<DepthOption> options)
    {
        _next.Clear();
        foreach (var part in _parts)
            foreach (var option in options)
                if (option.Log > double.NegativeInfinity) _next.Add(part.Observe(option));
        double most = double.NegativeInfinity, sum = 0;
        foreach (var p in _next) most = Math.Max(most, p.Log);
        foreach (var p in _next) sum += Math.Exp(p.Log - most);
        double log = most + Math.Log(sum);
        Keep(log);
        return log;
    }

    /// <summary>Mean and standard deviation of ht * t + hv * v.</summary>
    public Spread Of(double ht, double hv)
    {
        double total = 0, mean = 0, square = 0;
        foreach (var p in _parts)
        {
            double w = Math.Exp(p.Log), m = (ht * p.Front) + (hv * p.Gap);
            (total, mean) = (total + w, mean + (w * m));
            square += w * ((m * m) + p.Variance(ht, hv));
        }
        mean /= total;
        return new(mean, Math.Sqrt(Math.Max(0, (square / total) - (mean * mean))));
    }

    private void Keep(double log)
    {
        if (_next.Count > Most) _next.Sort((a, b) => b.Log.CompareTo(a.Log));
        _parts.Clear();
        for (int i = 0; i < _next.Count && i < Most; i++)
            if (_next[i].Log - log > -32) _parts.Add(_next[i] with { Log = _next[i].Log - log });
    }
}

/// <summary>A mean with its standard deviation, mm.</summary>
public readonly record struct Spread(double MeanMm, double SdMm);

/// <summary>One thing a reading may mean: with what log likelihood, and which depth ht t + hv v it measured (Sd 0: none).</summary>
internal readonly record struct DepthOption(double Log, double Ht, double Hv, double Value, double Sd)
{
    /// <summary>An option that measures no depth.</summary>
    public static DepthOption Plain(double log) => new(log, 0, 0, 0, 0);
}

/// <summary>A weighted two-dimensional normal distribution of front and gap.</summary>
internal readonly record struct DepthNormal(double Log, double Front, double Gap, double FrontVar, double GapVar, double Cov)
{
    public double Variance(double ht, double hv) => (ht * ht * FrontVar) + (2 * ht * hv * Cov) + (hv * hv * GapVar);

    /// <summary>The posterior under one option, its weight multiplied by the predictive density.</summary>
    public DepthNormal Observe(DepthOption o)
    {
        if (o.Sd <= 0) return this with { Log = Log + o.Log };
        double s = Variance(o.Ht, o.Hv) + (o.Sd * o.Sd), miss = o.Value - (o.Ht * Front) - (o.Hv * Gap);
        double kt = ((o.Ht * FrontVar) + (o.Hv * Cov)) / s, kv = ((o.Ht * Cov) + (o.Hv * GapVar)) / s;
        return new(Log + o.Log - (0.5 * ((miss * miss / s) + Math.Log(2 * Math.PI * s))),
            Front + (kt * miss), Gap + (kv * miss), FrontVar - (kt * kt * s), GapVar - (kv * kv * s), Cov - (kt * kv * s));
    }
}
