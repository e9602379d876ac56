namespace Pattress.Supports;

/// <summary>Gaps from one support to the next in a wall without a single datum.</summary>
internal static class GapPrior
{
    /// <summary>P(gap = d steps), at index d.</summary>
    public static double[] Of(LinePriors p, double step)
    {
        var gaps = new double[(int)(p.GapLongestMm / step) + 1];
        double any = p.GapAnyShare * step / (p.GapLongestMm - p.GapShortestMm), total = p.Pitches.Sum(x => x.Share);
        for (int d = (int)(p.GapShortestMm / step); d < gaps.Length; d++)
            gaps[d] = any + p.Pitches.Sum(x => (1 - p.GapAnyShare) * x.Share / total * step * Normal.Density((d * step) - x.Mm, p.GapSdMm));
        double sum = gaps.Sum();
        return [.. gaps.Select(g => g / sum)];
    }

    /// <summary>Place of the first support, as seen from an end that lies anywhere in a gap.</summary>
    public static double[] First(double[] gaps)
    {
        var survive = new double[gaps.Length];
        double left = 1;
        for (int d = 0; d < gaps.Length; d++) (survive[d], left) = (left, left - gaps[d]);
        double sum = survive.Sum();
        return [.. survive.Select(s => Math.Max(0, s) / sum)];
    }
}
