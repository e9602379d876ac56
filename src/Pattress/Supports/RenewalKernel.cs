using System.Numerics;

namespace Pattress.Supports;

/// <summary>
/// Weighted renewal, for walls without a single datum: forward a(n) = w(n) [f(n) + sum_d g(d) a(n-d)], backward
/// likewise, marginal = a b / Z. O(N D); no allocation once warm. The last gap may run past the end of the wall.
/// </summary>
internal sealed class RenewalKernel
{
    private double[] _first = [], _gaps = [], _reversed = [], _survive = [];
    private double[] _forward = [], _backward = [], _after = [], _weights = [];
    private double[] _gapsNow = [], _reversedNow = [];
    private int _n, _shortest, _longest;
    private double _none, _tilt;

    private int Block => 4 * Vector<double>.Count;

    /// <summary>Log of P(seen | renewal) / P(seen | nothing there), after <see cref="Run"/>.</summary>
    public double LogEvidence { get; private set; }

    /// <summary>Takes the prior: place of the first support and gap from one to the next, in steps from 0.</summary>
    /// <param name="gaps">P(gap = d) at index d; the shortest gap is at least 16 steps.</param>
    public void SetPrior(double[] first, double[] gaps)
    {
        _shortest = Array.FindIndex(gaps, g => g > 0);
        if (_shortest < 16) throw new ArgumentException("the shortest gap is at least 16 steps", nameof(gaps));
        (_first, _longest, _none) = (first, gaps.Length - 1, Math.Max(0, 1 - first.Sum()));
        _gaps = gaps[_shortest..];
        _reversed = [.. _gaps.Reverse()];
        (_gapsNow, _reversedNow) = ([.. _gaps], [.. _reversed]);
        _survive = new double[gaps.Length + 1];
        for (int d = gaps.Length - 1; d >= 0; d--) _survive[d] = _survive[d + 1] + gaps[d];
    }

    /// <summary>Runs both ways over the weights of places 0..N, or forward only when no marginals are wanted.</summary>
    public void Run(ReadOnlySpan<double> weights, bool marginals)
    {
        _n = weights.Length - 1;
        weights.CopyTo(Vectors.Buffer(ref _weights, weights.Length));
        SetTilt(Growth(weights));
        Forward();
        LogEvidence = Math.Log(Total()) + (_tilt * _n);
        if (marginals) Backward();
    }

    /// <summary>Adds the marginals, times a share, to a density over 0..N.</summary>
    public void AddDensity(Span<double> density, double share)
    {
        double scale = share / Total();
        for (int i = 0; i <= _n; i++) density[i] += scale * _forward[_longest + i] * _backward[i];
    }

    /// <summary>How much a wall's worth of evidence grows by, in logs, for the tilt that keeps numbers in range.</summary>
    private static double Growth(ReadOnlySpan<double> weights)
    {
        double growth = 0;
        for (int from = 0; from < weights.Length; from += 400)
        {
            var part = weights.Slice(from, Math.Min(400, weights.Length - from));
            growth += Math.Max(0, Math.Log(Vectors.Sum(part) / part.Length));
        }
        return growth;
    }

    private void SetTilt(double growth)
    {
        double tilt = growth > 200 ? growth / Math.Max(1, _n) : 0;
        if (tilt == 0 && _tilt == 0) return;
        _tilt = tilt;
        for (int i = 0; i < _gaps.Length; i++) _gapsNow[i] = _gaps[i] * Math.Exp(-tilt * (_shortest + i));
        for (int i = 0; i < _gaps.Length; i++) _reversedNow[i] = _gapsNow[_gaps.Length - 1 - i];
    }

    private double End(int i) => _n - i + 1 < _survive.Length ? _survive[_n - i + 1] * Math.Exp(-_tilt * (_n - i)) : 0;

    private double First(int i) => i < _first.Length ? _first[i] * Math.Exp(-_tilt * i) : 0;

    private void Forward()
    {
        int length = _longest + _n + 1 + Block;
        var a = Vectors.Buffer(ref _forward, length);
        Array.Clear(a, 0, length);
        for (int from = 0; from <= _n; from += Block)
        {
            Vectors.CorrelateBlock(ref a[from], _reversedNow, ref a[_longest + from]);
            int to = Math.Min(from + Block, _n + 1);
            for (int i = from; i < to; i++) a[_longest + i] = _weights[i] * (a[_longest + i] + First(i));
            Array.Clear(a, _longest + to, from + Block - to);
        }
    }

    private double Total()
    {
        double z = _none * Math.Exp(-_tilt * _n);
        for (int i = Math.Max(0, _n - _longest); i <= _n; i++) z += _forward[_longest + i] * End(i);
        return z;
    }

    private void Backward()
    {
        int blocks = (_n / Block) + 1, length = (blocks * Block) + _longest + Block;
        var after = Vectors.Buffer(ref _after, length);
        Array.Clear(after, 0, length);
        var b = Vectors.Buffer(ref _backward, blocks * Block);
        for (int from = (blocks - 1) * Block; from >= 0; from -= Block)
        {
            Vectors.CorrelateBlock(ref after[from + _shortest], _gapsNow, ref b[from]);
            for (int i = Math.Min(from + Block, _n + 1) - 1; i >= from; i--)
            {
                b[i] += End(i);
                after[i] = _weights[i] * b[i];
            }
        }
    }
}
