namespace Pattress.Walls;

/// <summary>Counts of a chance: how often it happened and how often not, prior included (Beta).</summary>
public sealed record BetaCount(double Hits, double Misses)
{
    public double Mean => Hits / (Hits + Misses);

    /// <summary>A prior of a given mean that weighs as many observations.</summary>
    public static BetaCount Prior(double mean, double weight) => new(mean * weight, (1 - mean) * weight);

    public BetaCount Plus(bool hit, double weight = 1) => hit ? this with { Hits = Hits + weight } : this with { Misses = Misses + weight };
}

/// <summary>One line of the log: what was predicted of a hole and what the drill found.</summary>
/// <param name="Predicted">Chance stated before, 0 to 1.</param>
public sealed record PredictedFound(string Id, double Predicted, bool Found);

/// <summary>Predicted against found in one of ten bins.</summary>
public sealed record ReliabilityBin(double From, double To, int Count, double MeanPredicted, double ShareFound);

/// <summary>How true the stated chances were.</summary>
/// <param name="CalibrationError">Mean absolute difference of predicted and found over the bins, weighted by count.</param>
public sealed record LearningReport(int Count, double Brier, double LogScore, double CalibrationError, IReadOnlyList<ReliabilityBin> Bins);

/// <summary>The log of predicted against found, and what it teaches.</summary>
public static class Learning
{
    private const int Bins = 10;

    /// <summary>Reliability, Brier and logarithmic score of the log; all 0 for an empty one.</summary>
    public static LearningReport Report(IReadOnlyList<PredictedFound> log)
    {
        if (log.Count == 0) return new(0, 0, 0, 0, []);
        List<ReliabilityBin> bins = [.. log.GroupBy(e => Math.Min(Bins - 1, (int)(e.Predicted * Bins))).OrderBy(g => g.Key)
            .Select(g => new ReliabilityBin((double)g.Key / Bins, (g.Key + 1.0) / Bins, g.Count(), g.Average(e => e.Predicted), g.Average(e => e.Found ? 1.0 : 0)))];
        return new(log.Count, log.Average(e => Square(e.Predicted - (e.Found ? 1 : 0))), log.Average(LogOf),
            bins.Sum(b => b.Count * Math.Abs(b.MeanPredicted - b.ShareFound)) / log.Count, bins);
    }

    private static double Square(double x) => x * x;

    private static double LogOf(PredictedFound e) => Math.Log(Math.Clamp(e.Found ? e.Predicted : 1 - e.Predicted, 1e-12, 1));
}
