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
        double[] worth = Worths(ask);
        var table = new Table(n, last + 1);
        for (int k = 0; k < n; k++) table.Add(k, worth, ask.StrayCost, ask.Even(k));
        table.Begin(ask.EndMin, Math.Min(ask.EndMax, last));
        for (int k = 1; k < n; k++) table.Step(k, ask.SpanMin, ask.SpanMax);
        return table.Back(n - 1, Math.Max(0, last - ask.EndMax), last - ask.EndMin);
    }

    private static int[]? Mirrored(LayoutCase ask)
    {
        int n = ask.Brackets, last = ask.Last, half = n / 2;
        bool odd = n % 2 == 1;
        if (odd && last % 2 == 1) return null;
        if (n == 1) return ask.Blocked[last / 2] || last / 2 < ask.EndMin || last / 2 > ask.EndMax ? null : [last / 2];
        double[] worth = Worths(ask);
        var table = new Table(half, (last / 2) + 1);
        for (int k = 0; k < half; k++)
        {
            table.Add(k, worth, ask.StrayCost, ask.Even(k));
            table.AddTurned(k, worth, ask.StrayCost, ask.Even(n - 1 - k));
        }
        table.Begin(ask.EndMin, Math.Min(ask.EndMax, last / 2));
        for (int k = 1; k < half; k++) table.Step(k, ask.SpanMin, ask.SpanMax);
        var left = odd
            ? (ask.Blocked[last / 2] ? null : table.Back(half - 1, (last / 2) - ask.SpanMax, (last / 2) - ask.SpanMin))
            : table.Back(half - 1, (last - ask.SpanMax + 1) / 2, (last - ask.SpanMin) / 2);
        return left is null ? null : [.. left, .. odd ? [last / 2] : Array.Empty<int>(), .. left.Reverse().Select(x => last - x)];
    }

    /// <summary>What each place is worth to any bracket; minus infinity where none may stand.</summary>
    private static double[] Worths(LayoutCase ask)
    {
        double[] worth = [.. ask.Worth];
        for (int x = 0; x < worth.Length; x++) if (ask.Blocked[x]) worth[x] = double.NegativeInfinity;
        return worth;
    }

    /// <summary>Best worth of the first k + 1 brackets with the last of them at x, and where the one before stands; plain rows, since all the time goes here.</summary>
    private sealed class Table(int brackets, int places)
    {
        private readonly double[] _best = new double[brackets * places];
        private readonly int[] _from = new int[brackets * places], _queue = new int[places];

        /// <summary>Adds what bracket k is worth at each place, less what straying from the even spacing costs.</summary>
        public void Add(int k, double[] worth, double stray, double even)
        {
            var row = Row(k);
            for (int x = 0; x < row.Length; x++) row[x] += worth[x] - (stray * Math.Abs(x - even));
        }

        /// <summary>The same for the bracket on the other side, as far from the other end.</summary>
        public void AddTurned(int k, double[] worth, double stray, double even)
        {
            var row = Row(k);
            for (int x = 0, other = worth.Length - 1; x < row.Length; x++, other--) row[x] += worth[other] - (stray * Math.Abs(other - even));
        }

        /// <summary>The first bracket stands from low to high.</summary>
        public void Begin(int low, int high)
        {
            var row = Row(0);
            row[..Math.Clamp(low, 0, places)].Fill(double.NegativeInfinity);
            row[Math.Clamp(high + 1, 0, places)..].Fill(double.NegativeInfinity);
        }

        /// <summary>Bracket k at each place after the best of the one before within the span limits: a window that only moves to the right; the first of equals.</summary>
        public void Step(int k, int spanMin, int spanMax)
        {
            Span<double> row = Row(k), before = Row(k - 1);
            Span<int> from = _from.AsSpan(k * places, places), queue = _queue;
            int head = 0, tail = 0;
            row[..Math.Min(spanMin, places)].Fill(double.NegativeInfinity);
            for (int x = spanMin; x < row.Length; x++)
            {
                double worth = before[x - spanMin];
                if (worth > double.NegativeInfinity)
                {
                    while (head < tail && before[queue[tail - 1]] < worth) tail--;
                    queue[tail++] = x - spanMin;
                }
                while (head < tail && queue[head] < x - spanMax) head++;
                if (head == tail) row[x] = double.NegativeInfinity;
                else row[x] += before[from[x] = queue[head]];
            }
        }

        public int[]? Back(int k, int low, int high)
        {
            int at = -1;
            double best = double.NegativeInfinity;
            for (int x = Math.Max(0, low); x <= Math.Min(high, places - 1); x++) if (Row(k)[x] > best) (best, at) = (Row(k)[x], x);
            if (at < 0) return null;
            int[] found = new int[k + 1];
            for (; k >= 0; at = _from[(k * places) + at], k--) found[k] = at;
            return found;
        }

        private Span<double> Row(int k) => _best.AsSpan(k * places, places);
    }
}
