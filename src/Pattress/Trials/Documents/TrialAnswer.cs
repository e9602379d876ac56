using Pattress.Trials.Statistics;

namespace Pattress.Trials.Documents;

/// <summary>A load that only a stated share stays below, with how it was found.</summary>
/// <param name="ValueN">The load (N).</param>
/// <param name="K">The factor on the scatter.</param>
/// <param name="Method">Fixed code: <c>noncentral_t_lognormal</c> or <c>noncentral_t_normal</c>.</param>
public sealed record CharacteristicLoad(double ValueN, double K, string Method);

/// <summary>A test that stands apart, by its place in the document.</summary>
public sealed record SuspectTest(TrialTest Test, string By, double Statistic, double Critical);

/// <summary>What may be expected of one more test, all kinds learning from each other (loads in N).</summary>
/// <param name="MedianN">Half of them would stay below it.</param>
/// <param name="FractileN">Only the asked share would.</param>
/// <param name="UpperN">Only the asked share would exceed it.</param>
public sealed record Expected(double MedianN, double FractileN, double UpperN);

/// <summary>The statistics of one kind.</summary>
/// <param name="Kind">Name.</param>
/// <param name="Tests">Its tests in the file's order.</param>
/// <param name="Stopped">How many were stopped before failing.</param>
/// <param name="MeanN">Mean load (N).</param>
/// <param name="StandardDeviationN">s (N); null for one test.</param>
/// <param name="Cov">s / mean; null for one test.</param>
/// <param name="Characteristic">Null for one test, or when the normal law puts it below 0.</param>
/// <param name="Weibull">Likeliest Weibull law, stopped tests as survivors; null without two different failures.</param>
/// <param name="Suspects">Tests that stand apart; none was left out.</param>
/// <param name="Expected">From all kinds together; null where that was not possible.</param>
/// <param name="Reasons">Codes of what limits these numbers.</param>
public sealed record KindResult(
    string Kind, IReadOnlyList<TrialTest> Tests, int Stopped, double MeanN, double? StandardDeviationN, double? Cov,
    CharacteristicLoad? Characteristic, Weibull? Weibull, IReadOnlyList<SuspectTest> Suspects, Expected? Expected, IReadOnlyList<Reason> Reasons);

/// <summary>One kind against another.</summary>
/// <param name="Chance">That the first kind's median strength is above the second's.</param>
/// <param name="RatioLow">Lower end of the 90 % interval of the ratio of their medians.</param>
/// <param name="RatioHigh">Upper end.</param>
/// <param name="Decided">True when the chance is above 95 % or below 5 %.</param>
public sealed record KindComparison(string Kind, string Other, double Chance, double RatioLow, double RatioHigh, bool Decided);

/// <summary>The whole answer.</summary>
/// <param name="Settings">What was asked.</param>
/// <param name="FurtherColumns">Columns kept.</param>
/// <param name="Kinds">The kinds in the order they first appear.</param>
/// <param name="NewKind">What a kind never tested would do; null where that was not possible.</param>
/// <param name="Comparisons">Each kind against each later one; left out with more than 30 kinds.</param>
/// <param name="Reasons">Codes of what is assumed or limited throughout.</param>
public sealed record TrialAnswer(
    TrialSettings Settings, IReadOnlyList<string> FurtherColumns, IReadOnlyList<KindResult> Kinds, Expected? NewKind,
    IReadOnlyList<KindComparison> Comparisons, IReadOnlyList<Reason> Reasons)
{
    /// <summary>The file's notes.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>What board, damp, void and the like do, where the tests can tell.</summary>
    public IReadOnlyList<ColumnEffect> Effects { get; init; } = [];
}
