using System.Numerics;
using System.Runtime.InteropServices;

namespace Pattress.Supports;

/// <summary>How a lattice is filled. Steps are those of the grid.</summary>
/// <param name="Presence">Chance that a lattice place holds its stud.</param>
/// <param name="ExtraPerBay">Chance of one extra stud in a bay.</param>
/// <param name="ClearSteps">An extra stands at least so far from both its lattice places (inclusive).</param>
internal readonly record struct LatticeShape(double Presence, double ExtraPerBay, int ClearSteps);

/// <summary>
/// The phase-locked lattice: given pitch and phase the lattice places are independent, (1-q) + q (jitter * w), and each bay
/// may hold one extra, (1-e) + e mean(w). O(N) a pitch; no allocation once warm. Places count inside 0..N only, bays
/// before the first and after the last place count, the weight off the wall is 1.
/// </summary>
internal sealed class LatticeKernel
{
    private double[] _weights = [], _places = [], _sums = [], _hits = [], _steps = [], _phase = [];
    private double[] _jitter = [], _mirrored = [];
    private int _n, _pad, _reach, _maxPhases;
    private LatticeShape _shape;

    /// <summary>Takes the weights of places 0..N and readies what all pitches share.</summary>
    /// <param name="extras">Weights of an extra at each place, where they differ: an extra may be a pair; empty: the same.</param>
    public void Load(ReadOnlySpan<double> weights, LatticeShape shape, double[] jitter, double maxPitch, ReadOnlySpan<double> extras = default)
    {
        (_n, _shape, _jitter, _reach) = (weights.Length - 1, shape, jitter, jitter.Length / 2);
        if (_mirrored.Length != jitter.Length) _mirrored = new double[jitter.Length];
        for (int i = 0; i < jitter.Length; i++) _mirrored[i] = jitter[^(i + 1)];
        _maxPhases = (int)Math.Ceiling(maxPitch);
        _pad = (2 * _maxPhases) + (2 * _reach) + 8;
        PadWeights(weights);
        Places();
        Sums(extras.IsEmpty ? weights : extras);
    }

    /// <summary>Phases of a pitch: 0 .. ceil(pitch) - 1.</summary>
    public static int Phases(double pitch) => (int)Math.Ceiling(pitch);

    /// <summary>Log of P(seen | pitch) / P(seen | nothing there); the slot keeps what the marginals need.</summary>
    /// <param name="prior">Prior of each phase, summing to 1; empty for a uniform one.</param>
    public double LogEvidence(int slot, double pitch, ReadOnlySpan<double> prior)
    {
        var phase = Slot(slot, pitch);
        if (prior.IsEmpty) phase.Fill(1.0 / phase.Length);
        else prior.CopyTo(phase);
        double log = 0;
        int row = -1;
        for (int start = Start(row, pitch); start <= _n; start = Start(++row, pitch))
        {
            MultiplyRow(phase, start, Start(row + 1, pitch) - start);
            if ((row & 1) == 1) log += Rescale(phase);
        }
        double sum = Vectors.Sum(phase);
        Vectors.Scale(phase, 1 / sum);
        return log + Math.Log(sum);
    }

    /// <summary>The posterior of the phases of a slot, after <see cref="LogEvidence"/>.</summary>
    public ReadOnlySpan<double> Phase(int slot, double pitch) => Slot(slot, pitch);

    /// <summary>Forgets marginals gathered so far.</summary>
    public void Clear()
    {
        Array.Clear(Vectors.Buffer(ref _hits, _n + 1 + (2 * _pad)), 0, _n + 1 + (2 * _pad));
        Array.Clear(Vectors.Buffer(ref _steps, _n + 1 + (2 * _pad)), 0, _n + 1 + (2 * _pad));
    }

    /// <summary>Adds the marginals of one pitch, weighted by its share in the posterior.</summary>
    public void Gather(int slot, double pitch, double share)
    {
        if (share <= 0) return;
        var phase = Slot(slot, pitch);
        int row = -1;
        for (int start = Start(row, pitch); start <= _n; start = Start(++row, pitch))
            GatherRow(phase, start, Start(row + 1, pitch) - start, share);
    }

    /// <summary>Adds the gathered marginal density of stud centres to <paramref name="density"/> (0..N).</summary>
    /// <param name="extras">Takes what multiplies the weight of an extra at each place, to be added by the caller; empty: extras weigh as places do, and are added.</param>
    public void AddDensity(Span<double> density, Span<double> scratch, Span<double> extras = default)
    {
        _hits.AsSpan(0, _pad).Clear();
        _hits.AsSpan(_pad + _n + 1, _pad).Clear();
        Vectors.Correlate(_hits.AsSpan(_pad - _reach, _n + 1 + (2 * _reach)), _mirrored, scratch[..(_n + 1)]);
        double extra = 0;
        for (int i = 0; i < _pad; i++) extra += _steps[i];
        for (int i = 0; i <= _n; i++)
        {
            extra += _steps[_pad + i];
            double more = Math.Max(0, extra);
            if (extras.IsEmpty) density[i] += _weights[_pad + i] * (scratch[i] + more);
            else (density[i], extras[i]) = (density[i] + (_weights[_pad + i] * scratch[i]), more);
        }
    }

    private static int Start(int row, double pitch) => (int)Math.Round(row * pitch, MidpointRounding.AwayFromZero);

    private Span<double> Slot(int slot, double pitch)
    {
        if (_phase.Length < (slot + 1) * _maxPhases) Array.Resize(ref _phase, (slot + 8) * _maxPhases);
        return _phase.AsSpan(slot * _maxPhases, Phases(pitch));
    }

    private void PadWeights(ReadOnlySpan<double> weights)
    {
        var w = Vectors.Buffer(ref _weights, _n + 1 + (2 * _pad)).AsSpan(0, _n + 1 + (2 * _pad));
        w[.._pad].Fill(1);
        weights.CopyTo(w[_pad..]);
        w[(_pad + _n + 1)..].Fill(1);
    }

    private void Places()
    {
        int length = _n + 1 + (2 * _pad);
        var places = Vectors.Buffer(ref _places, length).AsSpan(0, length);
        places.Fill(1);
        var inside = places.Slice(_pad, _n + 1);
        Vectors.Correlate(_weights.AsSpan(_pad - _reach, _n + 1 + (2 * _reach)), _jitter, inside);
        double q = _shape.Presence;
        Vectors.MultiplyAdd(inside, q, 1 - q);
    }

    private void Sums(ReadOnlySpan<double> weights)
    {
        int length = _n + 1 + (2 * _pad);
        var sums = Vectors.Buffer(ref _sums, length + 1);
        double sum = 0;
        // Off the wall the weight is 1; the sums begin where the wall does, so that they stay small.
        for (int i = 0; i <= _pad; i++) sums[i] = i - _pad;
        for (int i = 0; i < weights.Length; i++) sums[_pad + i + 1] = sum += weights[i];
        for (int i = _pad + weights.Length + 1; i <= length; i++) sums[i] = sum += 1;
    }

    private double ExtraShare(int bay) => bay - (2 * _shape.ClearSteps) + 1 > 0 ? _shape.ExtraPerBay / (bay - (2 * _shape.ClearSteps) + 1) : 0;

    private static double Rescale(Span<double> phase)
    {
        double max = Vectors.Max(phase);
        if (max is < 1e60 and > 1e-60) return 0;
        Vectors.Scale(phase, 1 / max);
        return Math.Log(max);
    }

    private void MultiplyRow(Span<double> phase, int start, int bay)
    {
        double share = ExtraShare(bay), none = share > 0 ? 1 - _shape.ExtraPerBay : 1;
        int at = _pad + start, low = at + _shape.ClearSteps, high = at + bay - _shape.ClearSteps + 1;
        var place = _places.AsSpan(at, phase.Length);
        var from = _sums.AsSpan(low, phase.Length);
        var to = _sums.AsSpan(high, phase.Length);
        int i = 0, wide = Vector<double>.Count;
        ref double p = ref MemoryMarshal.GetReference(phase), f = ref MemoryMarshal.GetReference(place);
        ref double lo = ref MemoryMarshal.GetReference(from), hi = ref MemoryMarshal.GetReference(to);
        Vector<double> s = new(share), k = new(none);
        for (; i + wide <= phase.Length; i += wide)
        {
            var extra = k + (s * (Vector.LoadUnsafe(ref hi, (nuint)i) - Vector.LoadUnsafe(ref lo, (nuint)i)));
            (Vector.LoadUnsafe(ref p, (nuint)i) * Vector.LoadUnsafe(ref f, (nuint)i) * extra).StoreUnsafe(ref p, (nuint)i);
        }
        for (; i < phase.Length; i++) phase[i] *= place[i] * (none + (share * (to[i] - from[i])));
    }

    private void GatherRow(Span<double> phase, int start, int bay, double weight)
    {
        double share = ExtraShare(bay), none = share > 0 ? 1 - _shape.ExtraPerBay : 1, place = weight * _shape.Presence, extra = weight * share;
        int at = _pad + start, low = at + _shape.ClearSteps, high = at + bay - _shape.ClearSteps + 1;
        int i = 0, wide = Vector<double>.Count;
        ref double p = ref MemoryMarshal.GetReference(phase), f = ref _places[at], h = ref _hits[at];
        ref double lo = ref _sums[low], hi = ref _sums[high], from = ref _steps[low], to = ref _steps[high];
        Vector<double> w = new(place), e = new(extra), s = new(share), k = new(none);
        for (; i + wide <= phase.Length; i += wide)
        {
            nuint n = (nuint)i;
            var now = Vector.LoadUnsafe(ref p, n);
            (Vector.LoadUnsafe(ref h, n) + (w * now / Vector.LoadUnsafe(ref f, n))).StoreUnsafe(ref h, n);
            var step = e * now / (k + (s * (Vector.LoadUnsafe(ref hi, n) - Vector.LoadUnsafe(ref lo, n))));
            // The two stretches may overlap: the second is read after the first is written.
            (Vector.LoadUnsafe(ref from, n) + step).StoreUnsafe(ref from, n);
            (Vector.LoadUnsafe(ref to, n) - step).StoreUnsafe(ref to, n);
        }
        for (; i < phase.Length; i++)
        {
            _hits[at + i] += place * phase[i] / _places[at + i];
            double step = extra * phase[i] / (none + (share * (_sums[high + i] - _sums[low + i])));
            _steps[low + i] += step;
            _steps[high + i] -= step;
        }
    }
}
