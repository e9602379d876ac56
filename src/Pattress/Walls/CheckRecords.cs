using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Pattress.Walls;

/// <summary>
/// Mass and loss of acting at once of every record. The first checks make a table of likelihoods that all records share; the
/// later ones are walked through, each of their records scaling that table.
/// </summary>
internal sealed class CheckRecords
{
    /// <summary>Records of the shared table: small enough to stay in the cache.</summary>
    private const int MostShared = 1200;

    private readonly CheckOffer[] _offers;
    private readonly double[][] _loss;
    private readonly int[] _stride;
    private readonly double[] _shared;
    private readonly int _first, _count, _row;
    private readonly double[] _scaled;

    public CheckRecords(CheckOffer[] offers, double[][] loss, int[] stride)
    {
        (_offers, _loss, _stride) = (offers, Undominated(loss), stride);
        while (_first < offers.Length && stride[_first + 1] <= MostShared) _first++;
        _count = _first == 0 ? 1 : stride[_first];
        _row = _count + (2 * Vector<double>.Count);
        _shared = new double[_row * loss[0].Length];
        for (int h = 0; h < loss[0].Length; h++) Share(h, _shared.AsSpan(h * _row, _row));
        _scaled = new double[_loss.Length * loss[0].Length];
    }

    /// <summary>Actions that lose no less than another one whatever is there are never the least: many build-ups take the same fixing.</summary>
    private static double[][] Undominated(double[][] loss)
    {
        bool NoMore(int a, int b)
        {
            for (int h = 0; h < loss[a].Length; h++) if (loss[a][h] > loss[b][h]) return false;
            return true;
        }
        var all = Enumerable.Range(0, loss.Length);
        return [.. all.Where(a => !all.Any(b => b != a && NoMore(b, a) && (b < a || !NoMore(a, b)))).Select(a => loss[a])];
    }

    /// <summary>Fills both rows, given the prior of each hypothesis.</summary>
    public void Fill(double[] prior, double[] stop, double[] mass) => Walk(_offers.Length - 1, 0, prior, stop, mass);

    /// <summary>Likelihood of each shared record under one hypothesis, padded to whole vectors.</summary>
    private void Share(int h, Span<double> row)
    {
        row[0] = 1;
        for (int c = 0; c < _first; c++)
            for (int o = 1; o <= _offers[c].Likelihood.Length; o++)
                for (int i = 0; i < _stride[c]; i++) row[(o * _stride[c]) + i] = row[i] * _offers[c].Likelihood[o - 1][h];
    }

    private void Walk(int c, int record, double[] joint, double[] stop, double[] mass)
    {
        if (c < _first)
        {
            Block(joint, stop.AsSpan(record, _count), mass.AsSpan(record, _count));
            return;
        }
        Walk(c - 1, record, joint, stop, mass);
        for (int o = 1; o <= _offers[c].Likelihood.Length; o++)
        {
            var like = _offers[c].Likelihood[o - 1];
            Walk(c - 1, record + (o * _stride[c]), [.. joint.Select((j, h) => j * like[h])], stop, mass);
        }
    }

    private void Block(double[] joint, Span<double> stop, Span<double> mass)
    {
        int hypotheses = joint.Length, wide = Vector<double>.Count;
        for (int a = 0; a < _loss.Length; a++)
            for (int h = 0; h < hypotheses; h++) _scaled[(a * hypotheses) + h] = joint[h] * _loss[a][h];
        for (int i = 0; i < stop.Length; i += 2 * wide)
        {
            var (mass0, mass1) = Sums(joint, i);
            var (stop0, stop1) = Sums(_scaled.AsSpan(0, hypotheses), i);
            for (int a = 1; a < _loss.Length; a++)
            {
                var (one, two) = Sums(_scaled.AsSpan(a * hypotheses, hypotheses), i);
                (stop0, stop1) = (Vector.Min(stop0, one), Vector.Min(stop1, two));
            }
            Store(stop0, stop1, stop[i..]);
            Store(mass0, mass1, mass[i..]);
        }
    }

    /// <summary>Weighted sums over the hypotheses, of two vectors of records side by side.</summary>
    private (Vector<double>, Vector<double>) Sums(ReadOnlySpan<double> weights, int at)
    {
        Vector<double> one = default, two = default;
        ref double row = ref Unsafe.Add(ref MemoryMarshal.GetArrayDataReference(_shared), at);
        for (int h = 0; h < weights.Length; h++)
        {
            var w = new Vector<double>(weights[h]);
            one += w * Vector.LoadUnsafe(ref row);
            two += w * Vector.LoadUnsafe(ref row, (nuint)Vector<double>.Count);
            row = ref Unsafe.Add(ref row, _row);
        }
        return (one, two);
    }

    private static void Store(Vector<double> one, Vector<double> two, Span<double> row)
    {
        int wide = Vector<double>.Count;
        if (row.Length >= 2 * wide)
        {
            one.CopyTo(row);
            two.CopyTo(row[wide..]);
            return;
        }
        for (int i = 0; i < Math.Min(row.Length, 2 * wide); i++) row[i] = i < wide ? one[i] : two[i - wide];
    }
}
