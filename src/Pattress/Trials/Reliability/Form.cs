using Pattress.Trials.Special;

namespace Pattress.Trials.Reliability;

/// <summary>A point of the limit state nearest to the middle of standard normal space, at least locally.</summary>
/// <param name="Beta">Its distance, negative where the middle itself fails.</param>
/// <param name="U">The point in standard normal space.</param>
/// <param name="X">The basic variables there.</param>
/// <param name="Alpha">Direction cosines as EN 1990 counts them: below 0 for what resists, above 0 for what loads.</param>
public sealed record DesignPoint(double Beta, double[] U, double[] X, double[] Alpha)
{
    /// <summary>The first-order probability of failure, Phi(-beta).</summary>
    public double Probability => Normal.UpperTail(Beta);
}

/// <summary>First-order reliability: Hasofer and Lind's index by the improved iteration with a merit function, from several starts.</summary>
public static class Form
{
    private const int MostSteps = 200;
    private const double Settled = 1e-6;

    /// <summary>All different design points found, the nearest first; none if no start reached the limit state.</summary>
    public static IReadOnlyList<DesignPoint> DesignPoints(LimitState state)
    {
        var found = new List<DesignPoint>();
        foreach (var start in Starts(state.Dimension))
            if (From(state, start) is { } point && found.TrueForAll(p => Vectors.Distance(p.U, point.U) > 1e-3)) found.Add(point);
        return [.. found.OrderBy(p => p.Beta)];
    }

    /// <summary>The nearest design point; null if no start reached the limit state.</summary>
    public static DesignPoint? Nearest(LimitState state) => DesignPoints(state).FirstOrDefault();

    /// <summary>The middle, three standard deviations either way along each axis, and the corners at 1.5 in up to four dimensions.</summary>
    private static IEnumerable<double[]> Starts(int n)
    {
        yield return new double[n];
        for (int i = 0; i < 2 * n; i++)
        {
            var start = new double[n];
            start[i / 2] = i % 2 == 0 ? 3 : -3;
            yield return start;
        }
        for (int corner = 0; n <= 4 && corner < 1 << n; corner++)
            yield return [.. Enumerable.Range(0, n).Select(i => (corner >> i & 1) == 0 ? 1.5 : -1.5)];
    }

    /// <summary>The design point reached from one start, or null.</summary>
    public static DesignPoint? From(LimitState state, double[] start)
    {
        double scale = Math.Max(Math.Abs(state.At(new double[state.Dimension])), 1e-300);
        double[] u = start;
        for (int i = 0; i < MostSteps; i++)
        {
            double g = state.At(u);
            double[] gradient = state.Gradient(u);
            double slope = Vectors.Length(gradient);
            if (!(slope > 1e-12 * scale) || !double.IsFinite(slope)) return null;
            double[] step = Vectors.Along(Vectors.Scaled(gradient, (Vectors.Dot(gradient, u) - g) / (slope * slope)), -1, u);
            if (Vectors.Length(step) < Settled * (1 + Vectors.Length(u)) && Math.Abs(g) < 1e-6 * scale) return Point(state, u, gradient);
            u = Search(state, u, step, g, slope);
        }
        return null;
    }

    /// <summary>Halves the step until |u|²/2 + c |g| falls; c grows with the distance, so that the step always descends.</summary>
    private static double[] Search(LimitState state, double[] u, double[] step, double g, double slope)
    {
        double c = 2 * (Vectors.Length(u) + 1) / slope, merit = Merit(u, g, c), t = 1;
        for (int i = 0; i < 30; i++, t /= 2)
        {
            double[] next = Vectors.Along(u, t, step);
            double value = state.At(next);
            if (double.IsFinite(value) && Merit(next, value, c) < merit) return next;
        }
        return Vectors.Along(u, t, step);
    }

    private static double Merit(double[] u, double g, double c) => 0.5 * Vectors.Dot(u, u) + c * Math.Abs(g);

    private static DesignPoint Point(LimitState state, double[] u, double[] gradient)
    {
        double[] alpha = Vectors.Scaled(gradient, -1 / Vectors.Length(gradient));
        return new(Vectors.Dot(alpha, u), u, state.Values(u), alpha);
    }
}
