using System.Numerics;

namespace Pattress.Supports;

/// <summary>
/// Weighted renewal, for walls without a single datum: forward a(n) = w(n) [f(n) + sum_d g(d) a(n-d)], backward
/// likewise, marginal = a b / Z. O(N D); no allocation once warm. The last gap may run past the end of the wall. The part of g
/// that is alike for every gap takes sums over a moving window alone; only what stands above it is multiplied out.
/// </summary>
internal sealed class RenewalKernel
{
    private double[] _first = [], _last = [], _gaps = [], _bumps = [];
    private double[] _firstNow = [], _lastNow = [], _bumpsNow = [], _tilted = [];
    private double[] _forward = [], _other = [], _opened = [], _weights = [], _turned = [];
    private double[] _before = [], _rest = [];
    private int _n, _shortest, _longest, _far, _farNow;
    private double _none, _tilt, _flat, _flatNow, _total;

    private int Block => 4 * Vector<double>.Count;

    /// <summary>Gaps that there may be: the window's length.</summary>
    private int Window => _longest - _shortest + 1;

    /// <summary>Log of P(seen | renewal) / P(seen | nothing there), after <see cref="Run"/>.</summary>
    public double LogEvidence { get; private set; }

    /// <summary>Takes the prior: place of the first support and gap from one to the next, in steps from 0.</summary>
    /// <param name="gaps">P(gap = d) at index d; the shortest gap is at least 16 steps.</param>
    public void SetPrior(double[] first, double[] gaps)
    {
        _shortest = Array.FindIndex(gaps, g => g > 0);
        if (_shortest < 16) throw new ArgumentException("the shortest gap is at least 16 steps", nameof(gaps));
        (_first, _longest, _none, _gaps, _tilt) = (first, gaps.Length - 1, Math.Max(0, 1 - first.Sum()), gaps, double.NaN);
        _last = new double[gaps.Length];
        double left = 0;
        for (int d = gaps.Length - 1; d > 0; d--) _last[d - 1] = left += gaps[d];
        _flat = gaps[_shortest..].Min();
        _bumps = Bumps(out _far);
        (_firstNow, _lastNow, _tilted) = (new double[_first.Length], new double[_last.Length], new double[Window]);
    }

    /// <summary>Runs forward over the weights of places 0..N.</summary>
    public void Run(ReadOnlySpan<double> weights)
    {
        _n = weights.Length - 1;
        weights.CopyTo(Vectors.Buffer(ref _weights, weights.Length));
        SetTilt(Growth(weights));
        Walk(_weights, _firstNow, ref _forward);
        _total = Total();
        LogEvidence = Math.Log(_total) + (_tilt * _n);
    }

    /// <summary>Runs backward, and adds the marginals, times a share, to a density over 0..N.</summary>
    public void AddDensity(Span<double> density, double share)
    {
        var turned = Vectors.Buffer(ref _turned, _n + 1).AsSpan(0, _n + 1);
        _weights.AsSpan(0, _n + 1).CopyTo(turned);
        turned.Reverse();
        Walk(_turned, _lastNow, ref _other);
        double scale = share / _total;
        var forward = _forward.AsSpan(_longest, _n + 1);
        for (int i = 0; i < forward.Length; i++) density[i] += scale * forward[i] * _opened[_n - i];
    }

    /// <summary>What of each gap stands above the least, the longest gap first; none of it beyond the first and last that do.</summary>
    private double[] Bumps(out int far)
    {
        far = _longest;
        int near = _shortest;
        while (far >= near && _gaps[far] <= _flat) far--;
        while (near < far && _gaps[near] <= _flat) near++;
        var bumps = new double[Math.Max(0, far - near + 1)];
        for (int t = 0; t < bumps.Length; t++) bumps[t] = _gaps[far - t] - _flat;
        return bumps;
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

    /// <summary>Tilted gaps have no part that is alike for all: they are multiplied out from end to end.</summary>
    private void SetTilt(double growth)
    {
        double tilt = growth > 200 ? growth / Math.Max(1, _n) : 0;
        if (tilt == _tilt) return;
        bool level = tilt == 0;
        (_tilt, _flatNow, _farNow, _bumpsNow) = level ? (tilt, _flat, _far, _bumps) : (tilt, 0, _longest, _tilted);
        for (int i = 0; i < _first.Length; i++) _firstNow[i] = level ? _first[i] : _first[i] * Math.Exp(-tilt * i);
        for (int i = 0; i < _last.Length; i++) _lastNow[i] = level ? _last[i] : _last[i] * Math.Exp(-tilt * i);
        for (int t = 0; t < _tilted.Length && !level; t++) _tilted[t] = _gaps[_longest - t] * Math.Exp(-tilt * (_longest - t));
    }

    /// <summary>
    /// One way along the wall. Place n stands at index n + longest gap of the row; what opens a place, before its weight, is kept
    /// beside it. Sums over a window are a rest of one stretch and the beginning of the next: nothing is ever taken off.
    /// </summary>
    private void Walk(double[] weights, double[] start, ref double[] row)
    {
        int length = _longest + _n + 1 + Block, window = Window, inStretch = _longest % window;
        double[] a = Cleared(ref row, length), before = Cleared(ref _before, length), rest = Cleared(ref _rest, length), opened = Vectors.Buffer(ref _opened, _n + 1);
        double sofar = 0;
        for (int from = 0; from <= _n; from += Block)
        {
            Vectors.CorrelateBlock(ref a[_longest + from - _farNow], _bumpsNow, ref a[_longest + from]);
            int to = Math.Min(from + Block, _n + 1);
            for (int i = from; i < to; i++)
            {
                double open = a[_longest + i] + (_flatNow * (rest[i] + before[i + window - 1]));
                if (i < start.Length) open += start[i];
                opened[i] = open;
                a[_longest + i] = open *= weights[i];
                before[_longest + i] = sofar += open;
                if (++inStretch < window) continue;
                Rest(a, rest, _longest + i, window);
                (inStretch, sofar) = (0, 0);
            }
            Array.Clear(a, _longest + to, from + Block - to);
        }
    }

    /// <summary>Sums from each index of a stretch to its end; 0 at its beginning, where the window is the whole stretch.</summary>
    private static void Rest(double[] a, double[] rest, int end, int window)
    {
        double sum = 0;
        for (int j = end; j > end - window + 1; j--) rest[j] = sum += a[j];
    }

    private static double[] Cleared(ref double[] buffer, int length)
    {
        Array.Clear(Vectors.Buffer(ref buffer, length), 0, length);
        return buffer;
    }

    private double Total()
    {
        double z = _none * Math.Exp(-_tilt * _n);
        for (int i = Math.Max(0, _n - _longest); i <= _n; i++) z += _forward[_longest + i] * (_n - i < _lastNow.Length ? _lastNow[_n - i] : 0);
        return z;
    }
}
