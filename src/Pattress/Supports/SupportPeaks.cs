namespace Pattress.Supports;

/// <summary>Turns densities of centres into a list of supports.</summary>
internal static class SupportPeaks
{
    /// <summary>A heap of density with less than this is no support worth naming.</summary>
    private const double Least = 0.15;

    /// <summary>Centres within this of a peak belong to it, mm.</summary>
    private const double SpreadMm = 60;

    public static List<SupportFound> Of(ReadOnlySpan<double> timber, ReadOnlySpan<double> steel, double step, LinePriors p)
    {
        var left = new double[timber.Length];
        for (int i = 0; i < left.Length; i++) left[i] = timber[i] + steel[i];
        List<SupportFound> found = [];
        for (int n = 0; n < 400 && Peak(left, p.TimberWidthMm / 2 / step) is var peak && peak >= 0; n++)
            found.Add(Take(left, steel, peak, step, p));
        return [.. found.Where(f => f.Probability >= Least).OrderBy(f => f.CentreMm)];
    }

    /// <summary>The step about which most density lies within a support's width, or -1 where hardly any is left.</summary>
    private static int Peak(double[] left, double half)
    {
        int best = -1, h = (int)half;
        double most = Least / 2, sum = 0;
        for (int i = 0; i < left.Length + h; i++)
        {
            if (i < left.Length) sum += left[i];
            if (i - (2 * h) - 1 >= 0) sum -= left[i - (2 * h) - 1];
            if (sum > most + 1e-12) (most, best) = (sum, i - h);
        }
        return Math.Min(best, left.Length - 1);
    }

    private static SupportFound Take(double[] left, ReadOnlySpan<double> steel, int peak, double step, LinePriors p)
    {
        int from = Math.Max(0, Valley(left, peak, -1, step)), to = Math.Min(left.Length - 1, Valley(left, peak, 1, step));
        double mass = 0, first = 0, second = 0, metal = 0;
        for (int i = from; i <= to; i++)
        {
            mass += left[i];
            first += left[i] * i;
            metal += left[i] > 0 ? steel[i] : 0;
        }
        double mean = first / mass;
        for (int i = from; i <= to; i++) second += left[i] * (i - mean) * (i - mean);
        Array.Clear(left, from, to - from + 1);
        bool isSteel = metal > mass / 2;
        return new(mean * step, Math.Sqrt(second / mass) * step, Math.Min(LineReader.Surest, mass), isSteel ? "steel" : "timber", isSteel ? p.SteelWidthMm : p.TimberWidthMm);
    }

    /// <summary>How far a peak reaches to one side: to its spread, or where the density rises again to another one.</summary>
    private static int Valley(double[] left, int peak, int way, double step)
    {
        int reach = (int)(SpreadMm / step), lowest = peak;
        for (int d = 1; d <= reach && peak + (way * d) is var i && i >= 0 && i < left.Length; d++)
        {
            if (d > 19 / step && left[i] > 3 * left[lowest] + 1e-5) return lowest;
            if (left[i] <= left[lowest]) lowest = i;
        }
        return peak + (way * reach);
    }
}
