namespace Pattress.Actions.Beams;

/// <summary>
/// A patch carried along a beam: cut wherever one of its ends crosses a cut of the beam, the same for every influence line of that beam. Between
/// two cuts the effect is a quartic whose slope is a cubic; its turning points are looked for only where the slope changes sign and
/// its hull lets the effect come past what was found at the cuts. Nothing is stepped, nothing allocated for a line.
/// </summary>
internal sealed class PatchSweep
{
    private readonly double[] _starts, _effects;
    private readonly int[] _left, _right;
    private readonly double _length;

    /// <param name="cuts">Of the beam, from 0 to its length.</param>
    /// <param name="length">Of the patch.</param>
    /// <exception cref="ArgumentOutOfRangeException">The patch is longer than the beam; doors refuse this first.</exception>
    internal PatchSweep(ReadOnlySpan<double> cuts, double length)
    {
        double last = cuts[^1] - length;
        ArgumentOutOfRangeException.ThrowIfNegative(last, nameof(length));
        _length = length;
        _starts = Starts(cuts, length, last);
        (_effects, _left, _right) = (new double[_starts.Length], new int[_starts.Length - 1], new int[_starts.Length - 1]);
        for (int k = 0; k < _left.Length; k++)
        {
            double middle = (_starts[k] + _starts[k + 1]) / 2;
            (_left[k], _right[k]) = (Piece(cuts, middle, k == 0 ? 0 : _left[k - 1]), Piece(cuts, middle + length, k == 0 ? 0 : _right[k - 1]));
        }
    }

    /// <summary>Largest and least effect on a line of that beam, and where the patch then starts.</summary>
    internal (Extreme Max, Extreme Min) Envelope(InfluenceLine line, double perLength)
    {
        Extreme max = new(double.NegativeInfinity, 0), min = new(double.PositiveInfinity, 0);
        for (int k = 0; k < _starts.Length; k++)
            Take(_effects[k] = Effect(line, Math.Min(k, _left.Length - 1), _starts[k]), _starts[k], ref max, ref min);
        for (int k = 0; k < _left.Length; k++) Turns(line, k, ref max, ref min);
        Extreme high = max with { Value = perLength * max.Value }, low = min with { Value = perLength * min.Value };
        return perLength < 0 ? (low, high) : (high, low);
    }

    private void Turns(InfluenceLine line, int k, ref Extreme max, ref Extreme min)
    {
        double h = _starts[k + 1] - _starts[k];
        var slope = line.From(_right[k], _starts[k] + _length).Less(line.From(_left[k], _starts[k]));
        var (least, most) = slope.Hull(h);
        if (least >= 0 || most <= 0) return;
        double highest = Math.Min(_effects[k] + h * most, _effects[k + 1] - h * least);
        double lowest = Math.Max(_effects[k] + h * least, _effects[k + 1] - h * most);
        if (highest <= max.Value && lowest >= min.Value) return;
        Span<double> roots = stackalloc double[3];
        int n = slope.Roots(h, roots);
        for (int i = 0; i < n; i++)
        {
            double start = _starts[k] + roots[i];
            Take(Effect(line, k, start), start, ref max, ref min);
        }
    }

    private double Effect(InfluenceLine line, int k, double start) => line.Integral(_right[k], start + _length) - line.Integral(_left[k], start);

    private static void Take(double effect, double start, ref Extreme max, ref Extreme min)
    {
        if (effect > max.Value) max = new(effect, start);
        if (effect < min.Value) min = new(effect, start);
    }

    /// <summary>0, the last start, and every start between where one end of the patch is at a cut.</summary>
    private static double[] Starts(ReadOnlySpan<double> cuts, double length, double last)
    {
        var starts = new List<double>(2 * cuts.Length) { 0 };
        foreach (double cut in cuts)
        {
            if (cut > 0 && cut < last) starts.Add(cut);
            if (cut - length > 0 && cut - length < last) starts.Add(cut - length);
        }
        starts.Sort();
        starts.Add(last);
        return [.. starts];
    }

    private static int Piece(ReadOnlySpan<double> cuts, double place, int from)
    {
        while (from < cuts.Length - 2 && cuts[from + 1] <= place) from++;
        return from;
    }
}
