namespace Pattress.Supports;

/// <summary>
/// What the taps of a line say of a support centred at c, as P(heard | support at c) / P(heard | none near). Solid-sounding
/// patches are a second state along the line (a two-state chain), so that a run of solid taps wider than a support
/// points to a patch; taps closer than <c>TapAlikeMm</c> share their evidence.
/// </summary>
internal sealed class TapWeights
{
    private double[] _at = [], _share = [], _before0 = [], _before1 = [], _after0 = [], _after1 = [], _unscale = [], _close = [];
    private bool[] _solid = [];
    private double[] _near = [];
    private int _count;
    private LineRates _rates = LineRates.Default;

    /// <summary>Log likelihood of the taps if no support were near, patches allowed for.</summary>
    public double LogNone { get; private set; }

    /// <summary>Takes the taps of one line in the order of their places (mm); share is the part of its evidence each counts for.</summary>
    public void Load(ReadOnlySpan<double> at, ReadOnlySpan<bool> solid, ReadOnlySpan<double> share, LineRates rates)
    {
        (_count, _rates) = (at.Length, rates);
        at.CopyTo(Vectors.Buffer(ref _at, _count));
        share.CopyTo(Vectors.Buffer(ref _share, _count));
        if (_solid.Length < _count) _solid = new bool[_count * 2];
        solid.CopyTo(_solid);
        Forward();
        Backward();
    }

    /// <summary>Multiplies the weights of places 0, h, 2h, ... mm by what the taps say of a support of this width.</summary>
    public void Multiply(Span<double> weights, double step, double halfWidth)
    {
        if (_count == 0) return;
        Table(halfWidth);
        int low = 0, high = 0;
        double reach = _rates.TapReachMm;
        int first = Math.Max(0, (int)Math.Ceiling((_at[0] - reach) / step));
        int last = Math.Min(weights.Length - 1, (int)Math.Floor((_at[_count - 1] + reach) / step));
        for (int i = first; i <= last; i++)
        {
            double c = i * step;
            while (low < _count && _at[low] < c - reach) low++;
            while (high < _count && _at[high] <= c + reach) high++;
            if (high > low) weights[i] *= Ratio(c, low, high);
        }
    }

    /// <summary>P(solid) at a distance from a support's centre, off any patch.</summary>
    public static double Solid(LineRates r, double distance, double halfWidth) => distance > r.TapReachMm ? r.TapSolidOff
        : r.TapSolidOff + ((r.TapSolidOn - r.TapSolidOff) / (1 + Math.Exp((distance - halfWidth - r.TapEdgeMm) / r.TapBlurMm)));

    private void Table(double halfWidth)
    {
        int length = (int)_rates.TapReachMm + 3;
        var near = Vectors.Buffer(ref _near, length);
        for (int d = 0; d < length; d++) near[d] = Solid(_rates, Math.Min(d, _rates.TapReachMm), halfWidth);
    }

    private double Near(double distance)
    {
        int d = (int)distance;
        return _near[d] + ((distance - d) * (_near[d + 1] - _near[d]));
    }

    private double Ratio(double c, int low, int high)
    {
        double clear = _before0[low], patch = _before1[low];
        for (int k = low; k < high; k++)
        {
            if (k > low) Step(_at[k] - _at[k - 1], ref clear, ref patch);
            double p = Near(Math.Abs(_at[k] - c));
            clear *= Emission(k, p) * _unscale[k];
            patch *= Emission(k, Math.Max(p, _rates.PatchSolid)) * _unscale[k];
        }
        return ((clear * _after0[high - 1]) + (patch * _after1[high - 1])) / _close[high - 1];
    }

    private double Emission(int k, double solid)
    {
        double p = _solid[k] ? solid : 1 - solid;
        return _share[k] == 1 ? p : Math.Pow(p, _share[k]);
    }

    private double Patchy => _rates.PatchPerMm <= 0 ? 0 : _rates.PatchPerMm / (_rates.PatchPerMm + (1 / _rates.PatchLengthMm));

    /// <summary>Moves the two states along by a distance.</summary>
    private void Step(double distance, ref double clear, ref double patch)
    {
        double share = Patchy, total = clear + patch;
        double stay = Math.Exp(-distance * (_rates.PatchPerMm + (1 / _rates.PatchLengthMm)));
        patch = (share * total * (1 - stay)) + (patch * stay);
        clear = total - patch;
    }

    private void Forward()
    {
        double[] b0 = Vectors.Buffer(ref _before0, _count), b1 = Vectors.Buffer(ref _before1, _count), un = Vectors.Buffer(ref _unscale, _count);
        double clear = 1 - Patchy, patch = Patchy, log = 0;
        for (int k = 0; k < _count; k++)
        {
            if (k > 0) Step(_at[k] - _at[k - 1], ref clear, ref patch);
            (b0[k], b1[k]) = (clear, patch);
            clear *= Emission(k, _rates.TapSolidOff);
            patch *= Emission(k, _rates.PatchSolid);
            double sum = clear + patch;
            (clear, patch, un[k]) = (clear / sum, patch / sum, 1 / sum);
            log += Math.Log(sum);
        }
        LogNone = log;
    }

    private void Backward()
    {
        double[] a0 = Vectors.Buffer(ref _after0, _count), a1 = Vectors.Buffer(ref _after1, _count), close = Vectors.Buffer(ref _close, _count);
        double clear = 1, patch = 1;
        for (int k = _count - 1; k >= 0; k--)
        {
            (a0[k], a1[k]) = (clear, patch);
            double e0 = Emission(k, _rates.TapSolidOff), e1 = Emission(k, _rates.PatchSolid);
            close[k] = _unscale[k] * ((_before0[k] * e0 * clear) + (_before1[k] * e1 * patch));
            if (k == 0) return;
            (clear, patch) = Back(_at[k] - _at[k - 1], clear * e0 * _unscale[k], patch * e1 * _unscale[k]);
        }
    }

    /// <summary>The same step seen backwards: expected value of what follows, from each state.</summary>
    private (double Clear, double Patch) Back(double distance, double clear, double patch)
    {
        double share = Patchy, stay = Math.Exp(-distance * (_rates.PatchPerMm + (1 / _rates.PatchLengthMm)));
        double mixed = ((1 - share) * clear) + (share * patch);
        return ((clear * stay) + (mixed * (1 - stay)), (patch * stay) + (mixed * (1 - stay)));
    }
}
