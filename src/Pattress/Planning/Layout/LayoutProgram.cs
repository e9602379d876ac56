namespace Pattress.Planning.Layout;

/// <summary>
/// Best places by dynamic programming: best[k][x] = worth(k, x) + the greatest best[k-1] within the span limits, which a
/// sliding maximum gives in O(1) each, so O(places x brackets) in all. A symmetric line is placed by its left half. Of equal
/// layouts the one further left is taken.
/// </summary>
public static class LayoutProgram
{
    /// <summary>The best places, or null when the limits leave none.</summary>
    public static int[]? Best(LayoutCase ask) => ask.Symmetric ? Mirrored(ask) : Free(ask);

    private static int[]? Free(LayoutCase ask)
    {
        int n = ask.Brackets, last = ask.Last;
        var table = new Table(n, last + 1);
        for (int x = ask.EndMin; x <= Math.Min(ask.EndMax, last); x++) table.Put(0, x, ask.At(0, x), -1);
        for (int k = 1; k < n; k++) Step(table, k, ask.SpanMin, ask.SpanMax, x => ask.At(k, x));
        return table.Back(n - 1, Math.Max(0, last - ask.EndMax), last - ask.EndMin);
    }

    private static int[]? Mirrored(LayoutCase ask)
    {
        int n = ask.Brackets, last = ask.Last, half = n / 2;
        bool odd = n % 2 == 1;
        if (odd && last % 2 == 1) return null;
        if (n == 1) return ask.Blocked[last / 2] || last / 2 < ask.EndMin || last / 2 > ask.EndMax ? null : [last / 2];
        var table = new Table(half, (last / 2) + 1);
        double Pair(int k, int x) => ask.At(k, x) + ask.At(n - 1 - k, last - x);
        for (int x = ask.EndMin; x <= Math.Min(ask.EndMax, last / 2); x++) table.Put(0, x, Pair(0, x), -1);
        for (int k = 1; k < half; k++) Step(table, k, ask.SpanMin, ask.SpanMax, x => Pair(k, x));
        var left = odd
            ? (ask.Blocked[last / 2] ? null : table.Back(half - 1, (last / 2) - ask.SpanMax, (last / 2) - ask.SpanMin))
            : table.Back(half - 1, (last - ask.SpanMax + 1) / 2, (last - ask.SpanMin) / 2);
        return left is null ? null : [.. left, .. odd ? [last / 2] : Array.Empty<int>(), .. left.Reverse().Select(x => last - x)];
    }

    private static void Step(Table table, int k, int spanMin, int spanMax, Func<int, double> worth)
    {
        var window = new Window(table, k - 1);
        for (int x = spanMin; x < table.Places; x++)
        {
            window.Move(x - spanMax, x - spanMin);
            if (window.Best is { } from) table.Put(k, x, worth(x) + table[k - 1, from], from);
        }
    }

    /// <summary>Best worth of the first k + 1 brackets with the last of them at x, and where the one before stands.</summary>
    private sealed class Table
    {
        private readonly double[] _best;
        private readonly int[] _from;

        public Table(int brackets, int places)
        {
            (Places, _best, _from) = (places, new double[brackets * places], new int[brackets * places]);
            Array.Fill(_best, double.NegativeInfinity);
        }

        public int Places { get; }

        public double this[int k, int x] => _best[(k * Places) + x];

        public void Put(int k, int x, double worth, int from) => (_best[(k * Places) + x], _from[(k * Places) + x]) = (worth, from);

        public int[]? Back(int k, int low, int high)
        {
            int at = -1;
            double best = double.NegativeInfinity;
            for (int x = Math.Max(0, low); x <= Math.Min(high, Places - 1); x++) if (this[k, x] > best) (best, at) = (this[k, x], x);
            if (at < 0) return null;
            int[] places = new int[k + 1];
            for (; k >= 0; at = _from[(k * Places) + at], k--) places[k] = at;
            return places;
        }
    }

    /// <summary>Greatest entry of a row in a window that only moves to the right; the first of equals.</summary>
    private sealed class Window(Table table, int row)
    {
        private readonly int[] _queue = new int[table.Places];
        private int _head, _tail, _next;

        public int? Best => _head < _tail ? _queue[_head] : null;

        public void Move(int low, int high)
        {
            for (; _next <= high; _next++)
            {
                double worth = table[row, _next];
                if (double.IsNegativeInfinity(worth)) continue;
                while (_head < _tail && table[row, _queue[_tail - 1]] < worth) _tail--;
                _queue[_tail++] = _next;
            }

            while (_head < _tail && _queue[_head] < low) _head++;
        }
    }
}
