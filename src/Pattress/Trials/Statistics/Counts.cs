using Pattress.Trials.Special;

namespace Pattress.Trials.Statistics;

/// <summary>What passes and failures alone can show, without any measured load.</summary>
public static class Counts
{
    /// <summary>Tests without a failure that show a reliability with a confidence: n = ceil(ln(1 - C) / ln R).</summary>
    public static int SuccessRun(double reliability, double confidence)
    {
        if (!(reliability is > 0 and < 1)) throw new ArgumentOutOfRangeException(nameof(reliability), reliability, "between 0 and 1");
        if (!(confidence is > 0 and < 1)) throw new ArgumentOutOfRangeException(nameof(confidence), confidence, "between 0 and 1");
        return (int)Math.Ceiling(Math.Log(1 - confidence) / Math.Log(reliability) - 1e-12);
    }

    /// <summary>One-sided upper bound on the share that fails (Clopper and Pearson).</summary>
    /// <param name="failed">Number failed, 0 to <paramref name="tested"/>.</param>
    /// <param name="tested">Number tested, at least 1.</param>
    /// <param name="confidence">Between 0 and 1, both excluded.</param>
    public static double UpperFailureShare(int failed, int tested, double confidence)
    {
        if (tested < 1 || failed < 0 || failed > tested) throw new ArgumentOutOfRangeException(nameof(failed), failed, "from 0 to the number tested");
        if (!(confidence is > 0 and < 1)) throw new ArgumentOutOfRangeException(nameof(confidence), confidence, "between 0 and 1");
        if (failed == tested) return 1;
        return failed == 0
            ? 1 - Math.Pow(1 - confidence, 1.0 / tested)
            : BetaFunctions.Inverse(failed + 1, tested - failed, confidence);
    }
}
