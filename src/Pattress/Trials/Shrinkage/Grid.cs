using Pattress.Trials.Special;

namespace Pattress.Trials.Shrinkage;

/// <summary>One point of the (s, tau) grid: scatter, spread, weight (ln, not normalised), common mean and its variance.</summary>
internal readonly record struct GridPoint(double S, double Tau, double LogWeight, double Mean, double Variance);

/// <summary>
/// The posterior of scatter and spread on a grid: Gauss–Legendre over ln s where it matters, the trapezoidal rule over
/// ln tau. Everything else of the model is closed form at each point.
/// </summary>
internal sealed class Grid
{
    private const int ScatterNodes = 60;
    private const double TauStep = 0.2, Negligible = 30;
    private static readonly GaussLegendre Fine = new(ScatterNodes), Coarse = new(24);
    private readonly Means _means;
    private readonly ShrinkagePrior _prior;

    public Grid(Means means, ShrinkagePrior prior)
    {
        (_means, _prior) = (means, prior);
        var (low, high) = Narrow(Math.Log(prior.LeastScatter), Math.Log(prior.MostScatter));
        Points = Evaluate(Fine, low, high);
    }

    public Means Means => _means;

    public GridPoint[] Points { get; }

    /// <summary>The part of the range of ln s where the posterior is not negligible, by repeated coarse looks.</summary>
    private (double Low, double High) Narrow(double low, double high)
    {
        for (int look = 0; look < 8; look++)
        {
            var (from, to) = Look(low, high);
            bool settled = to - from > 0.6 * (high - low);
            (low, high) = (from, to);
            if (settled) break;
        }
        return (low, high);
    }

    private (double From, double To) Look(double low, double high)
    {
        double[] best = new double[Coarse.Nodes.Length], at = new double[best.Length];
        for (int i = 0; i < best.Length; i++)
        {
            at[i] = 0.5 * (low + high) - 0.5 * (high - low) * Coarse.Nodes[i];
            best[i] = Best(Math.Exp(at[i]), low);
        }
        double limit = best.Max() - Negligible;
        int first = Array.FindIndex(best, b => b > limit), last = Array.FindLastIndex(best, b => b > limit);
        return (first == 0 ? low : at[first - 1], last == best.Length - 1 ? high : at[last + 1]);
    }

    /// <summary>The best ln posterior at this scatter over a few spreads.</summary>
    private double Best(double s, double logLeast)
    {
        double best = double.NegativeInfinity, low = LowestTau(logLeast), high = HighestTau();
        for (double x = low; x < high; x += 8 * TauStep)
            best = Math.Max(best, _means.LogLikelihood(s, _prior.SpreadScale * Math.Exp(x), out _, out _) - LogCosh(x));
        return best;
    }

    private GridPoint[] Evaluate(GaussLegendre rule, double low, double high)
    {
        double from = LowestTau(low), to = HighestTau(), half = 0.5 * (high - low);
        int taus = (int)Math.Ceiling((to - from) / TauStep);
        var points = new GridPoint[taus * rule.Nodes.Length];
        for (int j = 0; j < taus; j++)
        {
            // The first point stands for all smaller spreads too, on which nothing depends any more.
            double x = from + j * TauStep, tau = _prior.SpreadScale * Math.Exp(x);
            double prior = j == 0 ? Math.Log(Math.Exp(x) / (1 - Math.Exp(-TauStep)) * 2) : -LogCosh(x);
            for (int i = 0; i < rule.Nodes.Length; i++)
                points[j * rule.Nodes.Length + i] = Point(low + half * (1 + rule.Nodes[i]), half * rule.Weights[i], tau, prior);
        }
        return points;
    }

    private GridPoint Point(double logS, double weight, double tau, double logPrior)
    {
        double s = Math.Exp(logS), likelihood = _means.LogLikelihood(s, tau, out double mean, out double variance);
        return new(s, tau, likelihood + logPrior + Math.Log(weight * TauStep), mean, variance);
    }

    /// <summary>ln(tau / scale) below which tau no longer shows beside s / sqrt n: a thousandth of it.</summary>
    private double LowestTau(double logLeastScatter) =>
        Math.Min(-7, logLeastScatter - 0.5 * Math.Log(_means.Counts.Max()) - Math.Log(_prior.SpreadScale) - 6.5);

    /// <summary>ln(tau / scale) above which prior and likelihood together are negligible.</summary>
    private double HighestTau()
    {
        double range = _means.Averages.Max() - _means.Averages.Min(), kinds = _means.Counts.Length;
        return Math.Max(0, Math.Log(Math.Max(range, _prior.MostScatter) / _prior.SpreadScale)) + 25 / kinds;
    }

    /// <summary>ln cosh: the half-Cauchy density over ln tau is 1/cosh, up to a constant.</summary>
    private static double LogCosh(double x) => Math.Abs(x) + Math.Log((1 + Math.Exp(-2 * Math.Abs(x))) / 2);
}
