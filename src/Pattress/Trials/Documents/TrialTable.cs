namespace Pattress.Trials.Documents;

/// <summary>
/// A table of the answer as plain columns and cells, for a terminal or a page: numbers, never sentences. Whoever shows it
/// rounds and words it.
/// </summary>
/// <param name="Kind">Name of the kind.</param>
/// <param name="Count">Number of tests.</param>
/// <param name="MeanN">Mean (N).</param>
/// <param name="StandardDeviationN">s (N), or null.</param>
/// <param name="Cov">Coefficient of variation, or null.</param>
/// <param name="CharacteristicN">Characteristic load (N), or null with the reason in <paramref name="Reasons"/>.</param>
/// <param name="PredictiveMedianN">Median of one more test, from all kinds together (N), or null.</param>
/// <param name="PredictiveFractileN">Its fractile (N), or null.</param>
/// <param name="Suspects">Number of different tests that stand apart.</param>
/// <param name="Reasons">What limits the row.</param>
public sealed record TrialRow(
    string Kind, int Count, double MeanN, double? StandardDeviationN, double? Cov, double? CharacteristicN,
    double? PredictiveMedianN, double? PredictiveFractileN, int Suspects, IReadOnlyList<Reason> Reasons)
{
    /// <summary>The rows of an answer, the highest predictive fractile first, then by name.</summary>
    public static IReadOnlyList<TrialRow> Of(TrialAnswer answer) =>
        [.. answer.Kinds.Select(Of).OrderByDescending(r => r.PredictiveFractileN ?? r.CharacteristicN ?? 0).ThenBy(r => r.Kind, StringComparer.Ordinal)];

    private static TrialRow Of(KindResult k) => new(
        k.Kind, k.Tests.Count, k.MeanN, k.StandardDeviationN, k.Cov, k.Characteristic?.ValueN, k.Expected?.MedianN, k.Expected?.FractileN,
        k.Suspects.Select(s => s.Test.Line).Distinct().Count(), k.Reasons);
}
