using System.Numerics;
using System.Runtime.InteropServices;

namespace Pattress.Actions.Beams;

/// <summary>A square system with five bands on either side of its diagonal, factored with row exchanges in O(n).</summary>
internal sealed class BandedSystem(int size)
{
    internal const int Band = 5;
    private const int Width = 3 * Band + 1;
    private const double Lost = 1e-14;

    // Row r holds columns r - Band to r + 2 Band: entry (r, c) is at (Width - 1) r + c + Band.
    private readonly double[] _rows = new double[size * Width];
    private readonly double[] _factors = new double[size * Band];
    private readonly int[] _pivots = new int[size];
    private readonly double[] _scales = new double[size];

    internal int Size => size;

    /// <summary>Sets an entry; columns lie within the band of their row.</summary>
    internal void Set(int row, int column, double value) => _rows[Place(row, column)] = value;

    /// <summary>Factors; false when a pivot vanishes beside its row: something can move freely.</summary>
    internal bool Factor()
    {
        for (int i = 0; i < size; i++) ScaleRow(i);
        for (int k = 0; k < size; k++)
        {
            int last = Math.Min(size - 1, k + Band), pivot = Pivot(k, last);
            if (!(Math.Abs(_rows[Place(pivot, k)]) > Lost)) return false;
            _pivots[k] = pivot;
            if (pivot != k) Exchange(k, pivot);
            for (int r = k + 1; r <= last; r++) Eliminate(k, r);
        }
        return true;
    }

    /// <summary>Solves in place.</summary>
    internal void Solve(Span<double> b) => Solve(b, 1);

    /// <summary>Solves in place for many right sides at once, which stand side by side: entry (row, side) is at row × sides + side.</summary>
    internal void Solve(Span<double> b, int sides)
    {
        for (int i = 0; i < size; i++) Times(Row(b, i, sides), _scales[i]);
        for (int k = 0; k < size; k++)
        {
            if (_pivots[k] != k) Exchange(Row(b, k, sides), Row(b, _pivots[k], sides));
            for (int r = k + 1; r <= Math.Min(size - 1, k + Band); r++) Take(Row(b, r, sides), _factors[k * Band + r - k - 1], Row(b, k, sides));
        }
        for (int i = size - 1; i >= 0; i--)
        {
            for (int c = i + 1; c <= Math.Min(size - 1, i + 2 * Band); c++) Take(Row(b, i, sides), _rows[Place(i, c)], Row(b, c, sides));
            Times(Row(b, i, sides), 1 / _rows[Place(i, i)]);
        }
    }

    private static Span<double> Row(Span<double> b, int row, int sides) => b.Slice(row * sides, sides);

    private static int Place(int row, int column) => row * (Width - 1) + column + Band;

    private int Pivot(int k, int last)
    {
        int pivot = k;
        double largest = Math.Abs(_rows[Place(k, k)]);
        for (int r = k + 1; r <= last; r++)
            if (Math.Abs(_rows[Place(r, k)]) is var at && at > largest) (pivot, largest) = (r, at);
        return pivot;
    }

    private void ScaleRow(int row)
    {
        var entries = _rows.AsSpan(row * Width, Width);
        double largest = 0;
        foreach (double v in entries) largest = Math.Max(largest, Math.Abs(v));
        _scales[row] = largest > 0 ? 1 / largest : 1;
        Times(entries, _scales[row]);
    }

    // From the diagonal on: what lies left of it is zero by then.
    private Span<double> Right(int row, int column) => _rows.AsSpan(Place(row, column), Math.Min(size - 1, column + 2 * Band) - column + 1);

    private void Exchange(int a, int b) => Exchange(Right(a, a), _rows.AsSpan(Place(b, a), Right(a, a).Length));

    private void Eliminate(int k, int row)
    {
        var from = Right(k, k);
        var to = _rows.AsSpan(Place(row, k), from.Length);
        if (to[0] == 0) return;
        double factor = to[0] / from[0];
        _factors[k * Band + row - k - 1] = factor;
        Take(to[1..], factor, from[1..]);
    }

    private static void Exchange(Span<double> a, Span<double> b)
    {
        for (int i = 0; i < a.Length; i++) (a[i], b[i]) = (b[i], a[i]);
    }

    private static void Times(Span<double> row, double by)
    {
        for (int i = 0; i < row.Length; i++) row[i] *= by;
    }

    /// <summary>to - factor × from.</summary>
    private static void Take(Span<double> to, double factor, ReadOnlySpan<double> from)
    {
        if (factor == 0) return;
        var wideTo = MemoryMarshal.Cast<double, Vector<double>>(to);
        var wideFrom = MemoryMarshal.Cast<double, Vector<double>>(from);
        for (int i = 0; i < wideTo.Length; i++) wideTo[i] -= factor * wideFrom[i];
        for (int i = wideTo.Length * Vector<double>.Count; i < to.Length; i++) to[i] -= factor * from[i];
    }
}
