namespace Pattress.Actions.Beams;

/// <summary>
/// Extremes of one effect under patches that can stand anywhere. A patch from a to a + b gives q (I(a + b) - I(a)); that turns
/// where the influence line is equal at both ends, which is a cubic's root in each stretch between cuts. Nothing is stepped.
/// </summary>
public static class MovingPatch
{
    /// <summary>Largest and least effect, and where the patch then starts.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The patch is longer than the beam; doors refuse this first.</exception>
    public static (Extreme Max, Extreme Min) Envelope(InfluenceLine line, PatchLoad patch) =>
        new PatchSweep(line.Cuts, patch.Length).Envelope(line, patch.PerLength);

    /// <summary>The effect with the patch starting at a place.</summary>
    public static double Effect(InfluenceLine line, PatchLoad patch, double start) =>
        patch.PerLength * (line.Integral(start + patch.Length) - line.Integral(start));

    /// <summary>
    /// Both ends of a range of starts, and the starts where the weighted sum of the line at start + offset changes sign.
    /// </summary>
    internal static List<double> Turns(InfluenceLine line, double from, double to, ReadOnlySpan<(double Offset, double Weight)> terms)
    {
        var cuts = Cuts(line, from, to, terms);
        var turns = new List<double>(8) { from, to };
        Span<double> roots = stackalloc double[3];
        bool below = false;
        for (int i = 0; i + 1 < cuts.Count; i++)
        {
            double length = cuts[i + 1] - cuts[i], middle = cuts[i] + length / 2;
            var slope = new Cubic();
            foreach (var (offset, weight) in terms) slope = slope.Plus(weight, line.From(middle + offset, length / 2));
            if (i > 0 && slope.At(0) < 0 != below) turns.Add(cuts[i]);
            below = slope.At(length) < 0;
            int n = slope.Roots(length, roots);
            for (int k = 0; k < n; k++) turns.Add(cuts[i] + roots[k]);
        }
        return turns;
    }

    private static List<double> Cuts(InfluenceLine line, double from, double to, ReadOnlySpan<(double Offset, double Weight)> terms)
    {
        var cuts = new List<double> { from };
        foreach (var (offset, _) in terms)
            foreach (double cut in line.Cuts)
                if (cut - offset > from && cut - offset < to) cuts.Add(cut - offset);
        cuts.Sort();
        cuts.Add(to);
        return cuts;
    }
}
