using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Pattress.Supports;

/// <summary>The few loops over long rows that everything here rests on, four numbers at a time. No allocation.</summary>
internal static class Vectors
{
    /// <summary>out[i] = sum over t of kernel[t] * source[i + t]; <paramref name="source"/> is longer by kernel.Length - 1.</summary>
    public static void Correlate(ReadOnlySpan<double> source, ReadOnlySpan<double> kernel, Span<double> result)
    {
        int wide = Vector<double>.Count, i = 0;
        ref double s = ref MemoryMarshal.GetReference(source), r = ref MemoryMarshal.GetReference(result);
        if (source.Length < result.Length + kernel.Length - 1) throw new ArgumentException("too short", nameof(source));
        for (; i + 4 * wide <= result.Length; i += 4 * wide) CorrelateBlock(ref Unsafe.Add(ref s, i), kernel, ref Unsafe.Add(ref r, i));
        for (; i < result.Length; i++)
        {
            double sum = 0;
            for (int t = 0; t < kernel.Length; t++) sum += kernel[t] * source[i + t];
            result[i] = sum;
        }
    }

    /// <summary>Four vectors of sums, kept in registers. Not fused: that is slow where a browser has no such instruction.</summary>
    public static void CorrelateBlock(ref double s, ReadOnlySpan<double> kernel, ref double r)
    {
        int wide = Vector<double>.Count;
        Vector<double> a = default, b = default, c = default, d = default;
        for (int t = 0; t < kernel.Length; t++)
        {
            var k = new Vector<double>(kernel[t]);
            ref double at = ref Unsafe.Add(ref s, t);
            a += k * Vector.LoadUnsafe(ref at);
            b += k * Vector.LoadUnsafe(ref at, (nuint)wide);
            c += k * Vector.LoadUnsafe(ref at, (nuint)(2 * wide));
            d += k * Vector.LoadUnsafe(ref at, (nuint)(3 * wide));
        }
        a.StoreUnsafe(ref r);
        b.StoreUnsafe(ref r, (nuint)wide);
        c.StoreUnsafe(ref r, (nuint)(2 * wide));
        d.StoreUnsafe(ref r, (nuint)(3 * wide));
    }

    /// <summary>Multiplies a row by a number.</summary>
    public static void Scale(Span<double> row, double by)
    {
        for (int i = 0; i < row.Length; i++) row[i] *= by;
    }

    public static double Sum(ReadOnlySpan<double> row)
    {
        double sum = 0;
        foreach (double v in row) sum += v;
        return sum;
    }

    public static double Max(ReadOnlySpan<double> row)
    {
        double max = double.NegativeInfinity;
        foreach (double v in row) if (v > max) max = v;
        return max;
    }

    /// <summary>A buffer of at least the wanted length; made anew only when the old one is too short.</summary>
    public static double[] Buffer(ref double[] buffer, int length) =>
        buffer.Length >= length ? buffer : buffer = new double[length + length / 4];
}
