namespace Pattress.Papers.Drawings;

/// <summary>Keeps labels along one line apart.</summary>
internal static class Spread
{
    /// <summary>
    /// Places as near as may be to the wanted ones (ascending), at least <paramref name="apart"/> from each other
    /// and no lower than <paramref name="least"/>.
    /// </summary>
    public static double[] Apart(IReadOnlyList<double> wanted, double apart, double least, double most)
    {
        var placed = wanted.ToArray();
        for (int i = 0; i < placed.Length; i++) placed[i] = Math.Max(placed[i], i == 0 ? least : placed[i - 1] + apart);
        double limit = most;
        for (int i = placed.Length - 1; i >= 0 && placed[i] > limit; i--, limit -= apart) placed[i] = limit;
        return placed;
    }
}
