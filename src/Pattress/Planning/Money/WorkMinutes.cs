using Pattress.Jobs;

namespace Pattress.Planning.Money;

/// <summary>
/// Minutes a step takes, from <c>data/planning/work_minutes.csv</c>, bettered by what work took in truth. Times of n of a step
/// are taken as gamma distributed with mean n m; with an inverse gamma prior on m worth w of them the mean of m is
/// (w m0 + minutes seen) / (w + number seen): the conjugate update.
/// </summary>
public static class WorkMinutes
{
    private static readonly Dictionary<string, (double? Minutes, double Weight)> Rows = CsvTable.FromEmbedded("data/planning/work_minutes.csv").Rows
        .ToDictionary(r => r["step"], r => (r.MaybeNumber("minutes"), r.Number("weight")), StringComparer.Ordinal);

    /// <summary>Minutes for one of a step.</summary>
    /// <param name="otherwise">What it takes before anything was seen, where the table leaves it to the job.</param>
    public static double Of(string step, IReadOnlyList<Actual> seen, double otherwise = 0)
    {
        var (minutes, weight) = Rows[step];
        return Updated(minutes ?? otherwise, weight, seen.Where(a => a.Step == step));
    }

    internal static double Updated(double before, double weight, IEnumerable<Actual> seen)
    {
        double minutes = 0, count = 0;
        foreach (var actual in seen) (minutes, count) = (minutes + actual.Minutes, count + actual.Count);
        return ((weight * before) + minutes) / (weight + count);
    }
}
