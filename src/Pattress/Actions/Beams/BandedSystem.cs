namespace Pattress.Actions.Beams;

/// <summary>A square system with five bands on either side of its diagonal, factored with row exchanges in O(n).</summary>
internal sealed class BandedSystem(int size)
{
    internal const int Band = 5;
    private const int Width = 3 * Band + 1;
    private const double Lost = 1e-14;
    private readonly double[] _rows = new double[size * Width];
    private readonly double[] _factors = new double[size * Band];
    private readonly int[] _pivots = new int[size];
    private readonly double[] _scales = new double[size];

    internal int Size => size;

    /// <summary>Sets an entry; columns lie within the band of their row.</summary>
    internal void Set(int row, int column, double value) => _rows[row * Width + column - row + Band] = value;

    /// <summary>Factors; false when a pivot vanishes beside its row: something can move freely.</summary>
    internal bool Factor()
    {
        for (int i = 0; i < size; i++) ScaleRow(i);
        for (int k = 0; k < size; k++)
        {
            int last = Math.Min(size - 1, k + Band), pivot = k;
            for (int r = k + 1; r <= last; r++)
                if (Math.Abs(At(r, k)) > Math.Abs(At(pivot, k))) pivot = r;
            if (!(Math.Abs(At(pivot, k)) > Lost)) return false;
            _pivots[k] = pivot;
            if (pivot != k) Exchange(k, pivot);
            for (int r = k + 1; r <= last; r++) Eliminate(k, r);
        }
        return true;
    }

    /// <summary>Solves in place.</summary>
    internal void Solve(Span<double> b)
    {
        for (int i = 0; i < size; i++) b[i] *= _scales[i];
        for (int k = 0; k < size; k++)
        {
            if (_pivots[k] != k) (b[k], b[_pivots[k]]) = (b[_pivots[k]], b[k]);
            for (int r = k + 1; r <= Math.Min(size - 1, k + Band); r++) b[r] -= _factors[k * Band + r - k - 1] * b[k];
        }
        for (int i = size - 1; i >= 0; i--)
        {
            double sum = b[i];
            for (int c = i + 1; c <= Math.Min(size - 1, i + 2 * Band); c++) sum -= At(i, c) * b[c];
            b[i] = sum / At(i, i);
        }
    }

    private void ScaleRow(int row)
    {
        double largest = 0;
        for (int j = 0; j < Width; j++) largest = Math.Max(largest, Math.Abs(_rows[row * Width + j]));
        _scales[row] = largest > 0 ? 1 / largest : 1;
        for (int j = 0; j < Width; j++) _rows[row * Width + j] *= _scales[row];
    }

    private void Exchange(int a, int b)
    {
        for (int c = a; c <= Math.Min(size - 1, a + 2 * Band); c++)
        {
            double held = At(a, c);
            Set(a, c, At(b, c));
            Set(b, c, held);
        }
    }

    private void Eliminate(int k, int row)
    {
        double factor = At(row, k) / At(k, k);
        _factors[k * Band + row - k - 1] = factor;
        if (factor == 0) return;
        for (int c = k + 1; c <= Math.Min(size - 1, k + 2 * Band); c++) Set(row, c, At(row, c) - factor * At(k, c));
    }

    private double At(int row, int column) => _rows[row * Width + column - row + Band];
}
