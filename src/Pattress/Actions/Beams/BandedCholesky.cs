namespace Pattress.Actions.Beams;

/// <summary>A symmetric positive matrix with four bands beside its diagonal, factored in place in O(n).</summary>
internal sealed class BandedCholesky(int size)
{
    internal const int Band = 4;
    private const double Lost = 1e-13;
    private readonly double[] _rows = new double[size * (Band + 1)];

    internal int Size => size;

    internal void Add(int i, int j, double value)
    {
        if (i >= j) _rows[i * (Band + 1) + i - j] += value;
    }

    /// <summary>False when a pivot vanishes: something can move freely.</summary>
    internal bool Factor()
    {
        for (int i = 0; i < size; i++)
        {
            double whole = At(i, 0);
            for (int j = Math.Max(0, i - Band); j <= i; j++)
            {
                double sum = At(i, i - j);
                for (int k = Math.Max(0, i - Band); k < j; k++) sum -= At(i, i - k) * At(j, j - k);
                if (j < i) Set(i, i - j, sum / At(j, 0));
                else if (!(sum > Lost * whole)) return false;
                else Set(i, 0, Math.Sqrt(sum));
            }
        }
        return true;
    }

    /// <summary>Solves in place.</summary>
    internal void Solve(Span<double> b)
    {
        for (int i = 0; i < size; i++)
        {
            double sum = b[i];
            for (int j = Math.Max(0, i - Band); j < i; j++) sum -= At(i, i - j) * b[j];
            b[i] = sum / At(i, 0);
        }
        for (int i = size - 1; i >= 0; i--)
        {
            double sum = b[i];
            for (int j = Math.Min(size - 1, i + Band); j > i; j--) sum -= At(j, j - i) * b[j];
            b[i] = sum / At(i, 0);
        }
    }

    private double At(int row, int back) => _rows[row * (Band + 1) + back];

    private void Set(int row, int back, double value) => _rows[row * (Band + 1) + back] = value;
}
