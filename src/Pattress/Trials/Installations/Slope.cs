using Pattress.Trials.Special;

namespace Pattress.Trials.Installations;

/// <summary>
/// A bracket's chance of failing, given the shared factor q = load / batch: Phi(A ln q + C) for a lognormal resistance,
/// Phi(A q + C) for a normal one. Without scatter of its own it is a step.
/// </summary>
internal readonly struct Slope
{
    private readonly double _a, _c;
    private readonly bool _linear;

    private Slope(double a, double c, bool linear) => (_a, _c, _linear) = (a, c, linear);

    public static Slope Of(in BracketOnWall b, double steepest)
    {
        if (!(b.MeanAction >= 0 && double.IsFinite(b.MeanAction)))
            throw new ArgumentOutOfRangeException(nameof(b), b.MeanAction, "an action of 0 or more");
        return b.Law == ResistanceLaw.Normal ? Normally(b, steepest) : Lognormally(b, steepest);
    }

    public double Given(double q, double logQ) => NormalTable.Cdf(_a * (_linear ? q : logQ) + _c);

    /// <summary>Steepness against the natural logarithm of q, for choosing the step of the quadrature.</summary>
    public double Steepness => _linear ? Math.Max(_a, -_c) : _a;

    private static Slope Lognormally(in BracketOnWall b, double steepest)
    {
        var r = LognormalLaw.FromMean(b.MeanResistance, b.CovResistance);
        if (b.MeanAction == 0) return new(0, -100, false);
        var s = LognormalLaw.FromMean(b.MeanAction, b.CovAction);
        double a = Math.Min(steepest, 1 / Math.Sqrt(r.LogSd * r.LogSd + s.LogSd * s.LogSd));
        return new(a, a * (s.LogMedian - r.LogMedian), false);
    }

    private static Slope Normally(in BracketOnWall b, double steepest)
    {
        _ = LognormalLaw.FromMean(b.MeanResistance, b.CovResistance);
        if (b.CovAction != 0) throw new ArgumentOutOfRangeException(nameof(b), b.CovAction, "0 with a normal resistance");
        double sd = Math.Max(b.CovResistance, 1 / steepest) * b.MeanResistance;
        return new(b.MeanAction / sd, -b.MeanResistance / sd, true);
    }
}
