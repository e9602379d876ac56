namespace Pattress.Supports;

/// <summary>Sorts taps into lines and says how much of its evidence each reading counts for beside its neighbours.</summary>
internal static class TapLines
{
    /// <summary>Taps within this height of each other are one line, mm.</summary>
    private const double SameLineMm = 60;

    /// <summary>The taps by line, each line in the order of its places.</summary>
    public static IEnumerable<IReadOnlyList<Tap>> Of(IEnumerable<Tap> taps)
    {
        var left = taps.OrderBy(t => t.HeightMm).ThenBy(t => t.AtMm).ThenBy(t => t.Id, StringComparer.Ordinal).ToList();
        for (int from = 0, to; from < left.Count; from = to)
        {
            for (to = from; to < left.Count && left[to].HeightMm <= left[from].HeightMm + SameLineMm; to++) { }
            yield return [.. left[from..to].OrderBy(t => t.AtMm).ThenBy(t => t.Sound).ThenBy(t => t.Id, StringComparer.Ordinal)];
        }
    }

    /// <summary>A second tap beside the first is no second opinion: n taps at one place count as one.</summary>
    public static double[] Shares(IReadOnlyList<Tap> line, LineRates rates)
    {
        var share = new double[line.Count];
        for (int i = 0; i < line.Count; i++)
            share[i] = Own(line[i], rates) / Crowd(line, i, rates.TapAlikeMm);
        return share;
    }

    private static double Own(Tap tap, LineRates rates) => tap.Sound == TapSound.Dull ? rates.TapDullWeight : 1;

    private static double Crowd(IReadOnlyList<Tap> line, int i, double alike)
    {
        double crowd = 1;
        for (int j = i - 1; j >= 0 && line[i].AtMm - line[j].AtMm < alike; j--) crowd += 1 - ((line[i].AtMm - line[j].AtMm) / alike);
        for (int j = i + 1; j < line.Count && line[j].AtMm - line[i].AtMm < alike; j++) crowd += 1 - ((line[j].AtMm - line[i].AtMm) / alike);
        return crowd;
    }
}
