namespace Pattress.Trials.Reliability;

/// <summary>The chance that a limit state fails, by several methods that watch each other.</summary>
/// <param name="Points">Design points, the nearest first.</param>
/// <param name="FirstOrder">Phi(-beta) of the nearest.</param>
/// <param name="Shape">Second order at the nearest.</param>
/// <param name="Sampled">Sampling about all of them: the answer to go by.</param>
/// <param name="Warnings">Reason codes: <c>form_several_points</c>, <c>form_curved</c>, <c>form_off</c>.</param>
public sealed record ReliabilityAnswer(
    IReadOnlyList<DesignPoint> Points, double FirstOrder, SecondOrder Shape, Sampled Sampled, IReadOnlyList<string> Warnings);

/// <summary>Reliability of a nonlinear limit state.</summary>
public static class ReliabilityOf
{
    private const double Notable = 1.25;

    /// <summary>All methods; refused with <c>form_not_found</c> where no design point is reached.</summary>
    public static Outcome<ReliabilityAnswer> LimitState(LimitState state, int samples = 20_000, int seed = 1)
    {
        var points = Form.DesignPoints(state);
        if (points.Count == 0)
            return Outcome<ReliabilityAnswer>.Refused(new Problem("form_not_found", "$", "", "a limit state that some start reaches"));
        var shape = Sorm.At(state, points[0]);
        var sampled = ImportanceSampling.Probability([state], points, samples, seed);
        double first = points[0].Probability;
        return Outcome<ReliabilityAnswer>.Of(new(points, first, shape, sampled, [.. Warnings(points, first, shape, sampled)]));
    }

    private static IEnumerable<string> Warnings(IReadOnlyList<DesignPoint> points, double first, SecondOrder shape, Sampled sampled)
    {
        if (points.Count > 1 && points[1].Probability > 0.05 * first) yield return "form_several_points";
        if (Apart(shape.Followed, first)) yield return "form_curved";
        if (Apart(sampled.Probability, first) && Math.Abs(sampled.Probability - first) > 4 * sampled.StandardError) yield return "form_off";
    }

    private static bool Apart(double a, double b) => a > Notable * b || b > Notable * a;
}
