using System.Numerics;
using System.Runtime.InteropServices;

namespace Pattress.Supports;

/// <summary>
/// What the taps of a line say of a support centred at c, as P(heard | support at c) / P(heard | none near). Solid-sounding
/// patches are a second state along the line (a two-state chain), so that a run of solid taps wider than a support
/// points to a patch; taps closer than <c>TapAlikeMm</c> share their evidence.
/// </summary>
internal sealed class TapWeights
{
    private double[] _at = [], _share = [], _stay = [], _before0 = [], _before1 = [], _after0 = [], _after1 = [], _unscale = [], _close = [];
    private bool[] _solid = [];
    private double[] _near = [], _clear = [], _patch = [];
    private int _count, _stride, _row;
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
        var stay = Vectors.Buffer(ref _stay, _count);
        for (int k = 1; k < _count; k++) stay[k] = Math.Exp(-(_at[k] - _at[k - 1]) * (_rates.PatchPerMm + (1 / _rates.PatchLengthMm)));
        Forward();
        Backward();
    }

    /// <summary>Multiplies the weights of places 0, h, 2h, ... mm by what the taps say of a support of this width.</summary>
    public void Multiply(Span<double> weights, double step, double halfWidth)
    {
        if (_count == 0) return;
        Table(halfWidth, step);
        double reach = _rates.TapReachMm;
        int last = Math.Min(weights.Length - 1, (int)Math.Floor((_at[_count - 1] + reach) / step));
        int low = 0, high = 0, next;
        for (int place = Math.Max(0, (int)Math.Ceiling((_at[0] - reach) / step)); place <= last; place = next)
        {
            double c = place * step;
            while (low < _count && _at[low] < c - reach) low++;
            while (high < _count && _at[high] <= c + reach) high++;
            next = Math.Min(last + 1, Stretch(place, step, low, high));
            if (high > low) Multiply(weights[place..next], c, step, low, high);
        }
    }

    /// <summary>P(solid) at a distance from a support's centre, off any patch.</summary>
    public static double Solid(LineRates r, double distance, double halfWidth) => distance > r.TapReachMm ? r.TapSolidOff
        : r.TapSolidOff + ((r.TapSolidOn - r.TapSolidOff) / (1 + Math.Exp((distance - halfWidth - r.TapEdgeMm) / r.TapBlurMm)));

    /// <summary>From a place on, the first that other taps than low to high reach.</summary>
    private int Stretch(int place, double step, int low, int high)
    {
        int leaves = low < _count ? (int)Math.Floor((_at[low] + _rates.TapReachMm) / step) + 1 : int.MaxValue;
        int enters = high < _count ? (int)Math.Ceiling((_at[high] - _rates.TapReachMm) / step) : int.MaxValue;
        return Math.Max(place + 1, Math.Min(leaves, enters));
    }

    /// <summary>Where the table has its support's centre.</summary>
    private int Middle => (int)_rates.TapReachMm + 2;

    /// <summary>
    /// P(solid) at every whole mm from a centre to both sides, and as much beyond as whole vectors read. What lies a step apart lies side by side:
    /// a row for every remainder by the step, where that is of whole mm.
    /// </summary>
    private void Table(double halfWidth, double step)
    {
        _stride = step == Math.Floor(step) && step <= Middle ? (int)step : 1;
        int middle = Middle, length = (2 * middle) + 3 + (_stride * (Vector<double>.Count + 1));
        _row = (length / _stride) + 1;
        var near = Vectors.Buffer(ref _near, _row * _stride);
        for (int i = 0; i < _row * _stride; i++)
            near[Index(i)] = i > middle && i <= 2 * middle ? near[Index((2 * middle) - i)] : Solid(_rates, Math.Min(Math.Abs(i - middle), _rates.TapReachMm), halfWidth);
    }

    private int Index(int place) => _stride == 1 ? place : (place % _stride * _row) + (place / _stride);

    /// <summary>Places in a row that the same taps reach: both states of all of them side by side, from tap to tap.</summary>
    private void Multiply(Span<double> weights, double from, double step, int low, int high)
    {
        int wide = Vector<double>.Count, n = (weights.Length + wide - 1) / wide * wide;
        Span<double> clear = Vectors.Buffer(ref _clear, n).AsSpan(0, n), patch = Vectors.Buffer(ref _patch, n).AsSpan(0, n);
        clear.Fill(_before0[low]);
        patch.Fill(_before1[low]);
        for (int k = low; k < high; k++)
        {
            double stay = k > low ? _stay[k] : 1;
            if (step == _stride && _share[k] == 1) Hear(k, from, stay, clear, patch);
            else for (int i = 0; i < weights.Length; i++) Hear(k, from + (i * step), stay, ref clear[i], ref patch[i]);
        }
        double after0 = _after0[high - 1], after1 = _after1[high - 1], close = _close[high - 1];
        for (int i = 0; i < weights.Length; i++) weights[i] *= ((clear[i] * after0) + (patch[i] * after1)) / close;
    }

    /// <summary>Moves on to a tap and takes it in, for places whole mm apart: so all lie alike between the table's.</summary>
    private void Hear(int k, double from, double stay, Span<double> clear, Span<double> patch)
    {
        int wide = Vector<double>.Count;
        var (at, part) = Nearest(from - _at[k]);
        ref double c = ref MemoryMarshal.GetReference(clear), p = ref MemoryMarshal.GetReference(patch), near = ref _near[Index(at)], far = ref _near[Index(at + 1)];
        double share = Patchy, scale = _unscale[k];
        Vector<double> parts = new(part), come = new(share * (1 - stay)), stays = new(stay), least = new(_rates.PatchSolid);
        Vector<double> one = new(_solid[k] ? 0 : scale), by = new(_solid[k] ? scale : -scale);
        for (int i = 0; i < clear.Length; i += wide)
        {
            nuint n = (nuint)i;
            Vector<double> nearer = Vector.LoadUnsafe(ref near, n), patchy = Vector.LoadUnsafe(ref p, n), total = patchy + Vector.LoadUnsafe(ref c, n);
            var solid = nearer + (parts * (Vector.LoadUnsafe(ref far, n) - nearer));
            patchy = (come * total) + (stays * patchy);
            ((total - patchy) * (one + (by * solid))).StoreUnsafe(ref c, n);
            (patchy * (one + (by * Vector.Max(solid, least)))).StoreUnsafe(ref p, n);
        }
    }

    /// <summary>The same for one place, and for a tap that counts in part.</summary>
    private void Hear(int k, double place, double stay, ref double clear, ref double patch)
    {
        var (at, part) = Nearest(place - _at[k]);
        double nearer = _near[Index(at)], solid = nearer + (part * (_near[Index(at + 1)] - nearer));
        Step(stay, ref clear, ref patch);
        clear *= Emission(k, solid) * _unscale[k];
        patch *= Emission(k, Math.Max(solid, _rates.PatchSolid)) * _unscale[k];
    }

    /// <summary>The table's place at or before an offset, and how far between it and the next one.</summary>
    private (int At, double Part) Nearest(double offset)
    {
        int whole = (int)Math.Floor(offset);
        return (whole + Middle, offset - whole);
    }

    private double Emission(int k, double solid)
    {
        double p = _solid[k] ? solid : 1 - solid;
        return _share[k] == 1 ? p : Math.Pow(p, _share[k]);
    }

    private double Patchy => _rates.PatchPerMm <= 0 ? 0 : _rates.PatchPerMm / (_rates.PatchPerMm + (1 / _rates.PatchLengthMm));

    /// <summary>Moves the two states along, with the chance that a state stays what it is from one tap to the next.</summary>
    private void Step(double stay, ref double clear, ref double patch)
    {
        double share = Patchy, total = clear + patch;
        patch = (share * total * (1 - stay)) + (patch * stay);
        clear = total - patch;
    }

    private void Forward()
    {
        double[] b0 = Vectors.Buffer(ref _before0, _count), b1 = Vectors.Buffer(ref _before1, _count), un = Vectors.Buffer(ref _unscale, _count);
        double clear = 1 - Patchy, patch = Patchy, log = 0;
        for (int k = 0; k < _count; k++)
        {
            if (k > 0) Step(_stay[k], ref clear, ref patch);
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
            (clear, patch) = Back(_stay[k], clear * e0 * _unscale[k], patch * e1 * _unscale[k]);
        }
    }

    /// <summary>The same step seen backwards: expected value of what follows, from each state.</summary>
    private (double Clear, double Patch) Back(double stay, double clear, double patch)
    {
        double share = Patchy, mixed = ((1 - share) * clear) + (share * patch);
        return ((clear * stay) + (mixed * (1 - stay)), (patch * stay) + (mixed * (1 - stay)));
    }
}
