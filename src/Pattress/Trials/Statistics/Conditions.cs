using Pattress.Trials.Special;

namespace Pattress.Trials.Statistics;

/// <summary>One test for the effect of a condition.</summary>
/// <param name="Kind">Kind of fixing: each has a mean of its own.</param>
/// <param name="Level">The condition's level, e.g. <c>damp</c>.</param>
/// <param name="LogLoad">Logarithm of the load.</param>
public readonly record struct UnderCondition(string Kind, string Level, double LogLoad);

/// <summary>What a level of a condition does to the load against the most common level.</summary>
/// <param name="LogRatio">Logarithm of the ratio of loads.</param>
/// <param name="StandardError">Its standard error.</param>
/// <param name="Freedom">Degrees of freedom of the scatter.</param>
/// <param name="Tests">Tests at this level that have a kind in common with others.</param>
public sealed record LevelEffect(string Level, string Against, double LogRatio, double StandardError, int Freedom, int Tests)
{
    /// <summary>Quantile of the ratio.</summary>
    public double Ratio(double p) => Math.Exp(LogRatio + (p == 0.5 ? 0 : StudentT.Quantile(p, Freedom) * StandardError));

    /// <summary>The 90 % interval of the ratio leaves out 1.</summary>
    public bool Decided => Ratio(0.05) > 1 || Ratio(0.95) < 1;
}

/// <summary>
/// Least squares of log load on kind and level: only differences within a kind count, so a kind tested at one level alone says nothing.
/// </summary>
public static class Conditions
{
    private const int MostLevels = 5;

    /// <summary>The effects of all levels but the most common; none where the tests cannot tell them apart or no scatter is left to judge by.</summary>
    public static IReadOnlyList<LevelEffect> Effects(IReadOnlyList<UnderCondition> tests)
    {
        var levels = tests.GroupBy(t => t.Level).OrderByDescending(g => g.Count()).ThenBy(g => g.Key, StringComparer.Ordinal).Select(g => g.Key).ToList();
        int kinds = tests.Select(t => t.Kind).Distinct().Count(), p = levels.Count - 1, freedom = tests.Count - kinds - p;
        if (p < 1 || levels.Count > MostLevels || freedom < 2) return [];
        var rows = Centred(tests, levels);
        var normal = Normal(rows, p);
        return Inverted(normal) is { } inverse ? Solved(rows, normal, inverse, tests, levels, freedom) : [];
    }

    /// <summary>Dummies of the levels, and the load last, each less its mean over the kind.</summary>
    private static double[][] Centred(IReadOnlyList<UnderCondition> tests, List<string> levels)
    {
        int p = levels.Count - 1;
        double[][] rows = [.. tests.Select(t => (double[])[.. Enumerable.Range(1, p).Select(l => t.Level == levels[l] ? 1.0 : 0.0), t.LogLoad])];
        foreach (var kind in Enumerable.Range(0, tests.Count).GroupBy(i => tests[i].Kind))
            for (int c = 0; c <= p; c++)
            {
                double mean = kind.Average(i => rows[i][c]);
                foreach (int i in kind) rows[i][c] -= mean;
            }
        return rows;
    }

    private static double[,] Normal(double[][] rows, int p)
    {
        var a = new double[p, p + 1];
        foreach (var row in rows)
            for (int i = 0; i < p; i++)
                for (int j = 0; j <= p; j++) a[i, j] += row[i] * row[j];
        return a;
    }

    /// <summary>Gauss and Jordan on the left square; null where levels cannot be told apart.</summary>
    private static double[,]? Inverted(double[,] normal)
    {
        int p = normal.GetLength(0);
        double[,] a = (double[,])normal.Clone(), inverse = new double[p, p];
        for (int i = 0; i < p; i++) inverse[i, i] = 1;
        for (int c = 0; c < p; c++)
        {
            // Centred dummies make a matrix that is positive semi-definite: the pivot is its own measure.
            if (a[c, c] < 1e-9) return null;
            double pivot = a[c, c];
            for (int j = 0; j < p; j++) { a[c, j] /= pivot; inverse[c, j] /= pivot; }
            for (int r = 0; r < p; r++)
            {
                double f = a[r, c];
                for (int j = 0; r != c && j < p; j++) { a[r, j] -= f * a[c, j]; inverse[r, j] -= f * inverse[c, j]; }
            }
        }
        return inverse;
    }

    private static List<LevelEffect> Solved(double[][] rows, double[,] normal, double[,] inverse, IReadOnlyList<UnderCondition> tests, List<string> levels, int freedom)
    {
        int p = levels.Count - 1;
        double[] effect = [.. Enumerable.Range(0, p).Select(i => Enumerable.Range(0, p).Sum(j => inverse[i, j] * normal[j, p]))];
        double variance = rows.Sum(r => Square(r[p] - Enumerable.Range(0, p).Sum(i => effect[i] * r[i]))) / freedom;
        if (!(variance > 0)) return [];
        return [.. Enumerable.Range(0, p).Select(i => new LevelEffect(levels[i + 1], levels[0], effect[i], Math.Sqrt(variance * inverse[i, i]), freedom,
            rows.Where((r, n) => tests[n].Level == levels[i + 1] && r[i] != 0).Count()))];
    }

    private static double Square(double x) => x * x;
}
