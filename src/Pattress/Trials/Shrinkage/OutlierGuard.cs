namespace Pattress.Trials.Shrinkage;

/// <summary>A test that may not belong to its kind.</summary>
/// <param name="Kind">Place of the kind in the list.</param>
/// <param name="Test">Place among the kind's measured tests.</param>
public readonly record struct DoubtedTest(int Kind, int Test);

/// <summary>
/// Guard against single tests that do not belong. A test belongs or is spoilt; a spoilt one scatters more. Every set of the doubted
/// tests being spoilt is a model of its own, weighed by how well it explains the bench: no test is dropped.
/// </summary>
public static class OutlierGuard
{
    /// <summary>Share of tests that are spoilt; assumed.</summary>
    public const double Share = 0.02;

    /// <summary>Scatter of a spoilt test over that of the others; assumed.</summary>
    public const double Wider = 5;

    /// <summary>At most so many tests are doubted; the models double with each.</summary>
    public const int Most = 4;

    // Modified z-score above which a test is looked at: 3.5, as the NIST/SEMATECH handbook 1.3.5.17 has it from Iglewicz and Hoaglin (from memory).
    private const double Far = 3.5, OfNormal = 0.6745;

    /// <summary>Tests far from the middle of their kind, the furthest first; kinds with fewer than three tests have no middle to be far from.</summary>
    public static IReadOnlyList<DoubtedTest> Doubted(IReadOnlyList<KindSeries> kinds)
    {
        var off = new List<(DoubtedTest Test, double Off)>();
        for (int k = 0; k < kinds.Count; k++)
        {
            if (kinds[k].Values.Count < 3) continue;
            double middle = Median([.. kinds[k].Values]);
            for (int i = 0; i < kinds[k].Values.Count; i++) off.Add((new(k, i), Math.Abs(kinds[k].Values[i] - middle)));
        }

        double usual = off.Count == 0 ? 0 : Median([.. off.Select(o => o.Off)]);
        return [.. off.Where(o => usual > 0 && OfNormal * o.Off > Far * usual).OrderByDescending(o => o.Off).Take(Most).Select(o => o.Test)];
    }

    private static double Median(double[] values)
    {
        Array.Sort(values);
        int half = values.Length / 2;
        return values.Length % 2 == 1 ? values[half] : 0.5 * (values[half - 1] + values[half]);
    }

    /// <summary>ln of the chance, before the bench, that just so many of the doubted tests are spoilt.</summary>
    internal static double LogPrior(int spoilt, int doubted) => spoilt * Math.Log(Share) + (doubted - spoilt) * Math.Log(1 - Share);
}
