using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

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
        int i = 0, wide = Vector<double>.Count;
        ref double r = ref MemoryMarshal.GetReference(row);
        var all = new Vector<double>(by);
        for (; i + wide <= row.Length; i += wide) (all * Vector.LoadUnsafe(ref r, (nuint)i)).StoreUnsafe(ref r, (nuint)i);
        for (; i < row.Length; i++) row[i] *= by;
    }

    /// <summary>row = by * row + more.</summary>
    public static void MultiplyAdd(Span<double> row, double by, double more)
    {
        int i = 0, wide = Vector<double>.Count;
        ref double r = ref MemoryMarshal.GetReference(row);
        Vector<double> all = new(by), add = new(more);
        for (; i + wide <= row.Length; i += wide) (add + (all * Vector.LoadUnsafe(ref r, (nuint)i))).StoreUnsafe(ref r, (nuint)i);
        for (; i < row.Length; i++) row[i] = more + (by * row[i]);
    }

    /// <summary>Holds every number of a row within bounds.</summary>
    public static void Clamp(Span<double> row, double least, double most)
    {
        int i = 0, wide = Vector<double>.Count;
        ref double r = ref MemoryMarshal.GetReference(row);
        Vector<double> low = new(least), high = new(most);
        for (; i + wide <= row.Length; i += wide) Vector.Min(high, Vector.Max(low, Vector.LoadUnsafe(ref r, (nuint)i))).StoreUnsafe(ref r, (nuint)i);
        for (; i < row.Length; i++) row[i] = Math.Clamp(row[i], least, most);
    }

    /// <summary>result = x * a + y * b.</summary>
    public static void Mix(ReadOnlySpan<double> a, double x, ReadOnlySpan<double> b, double y, Span<double> result)
    {
        if (a.Length < result.Length || b.Length < result.Length) throw new ArgumentException("too short", nameof(a));
        int i = 0, wide = Vector<double>.Count;
        ref double p = ref MemoryMarshal.GetReference(a), q = ref MemoryMarshal.GetReference(b), r = ref MemoryMarshal.GetReference(result);
        Vector<double> of = new(x), and = new(y);
        for (; i + wide <= result.Length; i += wide) ((of * Vector.LoadUnsafe(ref p, (nuint)i)) + (and * Vector.LoadUnsafe(ref q, (nuint)i))).StoreUnsafe(ref r, (nuint)i);
        for (; i < result.Length; i++) result[i] = (x * a[i]) + (y * b[i]);
    }

    /// <summary>result += a - b.</summary>
    public static void AddDifference(ReadOnlySpan<double> a, ReadOnlySpan<double> b, Span<double> result)
    {
        if (a.Length < result.Length || b.Length < result.Length) throw new ArgumentException("too short", nameof(a));
        int i = 0, wide = Vector<double>.Count;
        ref double p = ref MemoryMarshal.GetReference(a), q = ref MemoryMarshal.GetReference(b), r = ref MemoryMarshal.GetReference(result);
        for (; i + wide <= result.Length; i += wide) (Vector.LoadUnsafe(ref r, (nuint)i) + (Vector.LoadUnsafe(ref p, (nuint)i) - Vector.LoadUnsafe(ref q, (nuint)i))).StoreUnsafe(ref r, (nuint)i);
        for (; i < result.Length; i++) result[i] += a[i] - b[i];
    }

    /// <summary>Added up in the same order on every machine, however wide its vectors: phone and desk must agree.</summary>
    public static double Sum(ReadOnlySpan<double> row)
    {
        int i = 0;
        ref double r = ref MemoryMarshal.GetReference(row);
        Vector128<double> even = default, odd = default;
        for (; i + 4 <= row.Length; i += 4)
        {
            even += Vector128.LoadUnsafe(ref r, (nuint)i);
            odd += Vector128.LoadUnsafe(ref r, (nuint)i + 2);
        }

        even += odd;
        double sum = even[0] + even[1];
        for (; i < row.Length; i++) sum += row[i];
        return sum;
    }

    public static double Max(ReadOnlySpan<double> row)
    {
        int i = 0, wide = Vector<double>.Count;
        ref double r = ref MemoryMarshal.GetReference(row);
        Vector<double> most = new(double.NegativeInfinity);
        for (; i + wide <= row.Length; i += wide) most = Vector.Max(most, Vector.LoadUnsafe(ref r, (nuint)i));
        double max = double.NegativeInfinity;
        for (int k = 0; k < wide; k++) max = Math.Max(max, most[k]);
        for (; i < row.Length; i++) max = Math.Max(max, row[i]);
        return max;
    }

    /// <summary>A buffer of at least the wanted length; made anew only when the old one is too short.</summary>
    public static double[] Buffer(ref double[] buffer, int length) =>
        buffer.Length >= length ? buffer : buffer = new double[length + length / 4];
}
