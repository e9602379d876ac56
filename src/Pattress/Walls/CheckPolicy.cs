using System.Numerics;
using System.Runtime.InteropServices;

namespace Pattress.Walls;

/// <summary>
/// Which check next, exactly: dynamic programming over records of outcomes. A record says of each check not done (0), or what it
/// found, in base (outcomes + 1); V(record) = min(least expected loss of acting, least over checks of price x mass + sum of V
/// over its outcomes), all unnormalised. Records that differ only in order are one. Every record is valued, from the fullest
/// down, in rows that lie side by side: that is quicker than looking for the ones that could be left out.
/// </summary>
public sealed class CheckPolicy
{
    /// <summary>Most checks, and most records (16 bytes each); past these there are too many.</summary>
    public const int MostChecks = 12, MostRecords = 1 << 22;

    private readonly CheckOffer[] _offers;
    private readonly double[][] _loss;
    private readonly int[] _stride;
    private readonly double[] _values, _mass;

    private CheckPolicy(double[] prior, IReadOnlyList<CheckOffer> offers, CheckDecision decision)
    {
        (_offers, _loss, _stride) = ([.. offers], decision.Loss, new int[offers.Count + 1]);
        long records = 1;
        for (int c = 0; c < offers.Count; c++) (_stride[c], records) = ((int)records, Math.Min(records * (offers[c].Likelihood.Length + 1), int.MaxValue));
        if (records > MostRecords) throw new ArgumentException($"more than {MostRecords} records of outcomes", nameof(offers));
        _stride[offers.Count] = (int)records;
        _values = GC.AllocateUninitializedArray<double>((int)records);
        _mass = GC.AllocateUninitializedArray<double>((int)records);
        new CheckRecords(_offers, _loss, _stride).Fill(prior, _values, _mass);
    }

    /// <summary>The best next check for a decision, given the prior of each hypothesis (summing to 1).</summary>
    /// <exception cref="ArgumentException">More than <see cref="MostChecks"/> checks or <see cref="MostRecords"/> records.</exception>
    public static CheckChoice Next(double[] prior, IReadOnlyList<CheckOffer> offers, CheckDecision decision)
    {
        if (offers.Count > MostChecks) throw new ArgumentException($"at most {MostChecks} checks", nameof(offers));
        return new CheckPolicy(prior, offers, decision).Root(prior);
    }

    /// <summary>What one check does by itself: chance that the best action is the right one before it, and expected after it.</summary>
    public static (double Before, double After) Alone(double[] prior, CheckOffer offer, CheckDecision decision)
    {
        var one = new CheckPolicy(prior, [offer], decision);
        return (one.Right(prior, one.BestAction(prior)), one.RightAfter(prior, 0));
    }

    private CheckChoice Root(double[] prior)
    {
        double now = _values[0], best = now, before = Right(prior, BestAction(prior));
        int chosen = -1;
        Settle(_offers.Length - 1, 0);
        for (int c = 0; c < _offers.Length; c++)
            if (After(c) is var value && value < best - 1e-13) (best, chosen) = (value, c);
        return new(chosen, BestAction(prior), now, best, before, chosen < 0 ? before : RightAfter(prior, chosen), AtEnd(0, prior, (1 << _offers.Length) - 1), _values.Length);
    }

    /// <summary>Mass in which the action taken in the end is the right one, the best policy followed from a record on.</summary>
    /// <param name="left">A bit for each check that is not done.</param>
    private double AtEnd(int record, double[] joint, int left)
    {
        int stop = BestAction(joint), chosen = -1;
        double best = Loss(joint, stop);
        for (int c = 0; c < _offers.Length; c++)
        {
            if ((left >> c & 1) == 0) continue;
            double value = Price(c, record) * joint.Sum();
            for (int o = 1; o <= _offers[c].Likelihood.Length; o++) value += _values[record + (o * _stride[c])];
            if (value < best - 1e-13) (best, chosen) = (value, c);
        }
        if (chosen < 0) return Right(joint, stop);
        double sum = 0;
        for (int o = 0; o < _offers[chosen].Likelihood.Length; o++)
        {
            double[] next = new double[joint.Length];
            for (int h = 0; h < next.Length; h++) next[h] = joint[h] * _offers[chosen].Likelihood[o][h];
            sum += AtEnd(record + ((o + 1) * _stride[chosen]), next, left & ~(1 << chosen));
        }
        return sum;
    }

    private double Loss(double[] joint, int action)
    {
        double loss = 0;
        for (int h = 0; h < joint.Length; h++) loss += joint[h] * _loss[action][h];
        return loss;
    }

    /// <summary>Value of doing a check first.</summary>
    private double After(int c)
    {
        double value = _offers[c].Price * _mass[0];
        for (int o = 1; o <= _offers[c].Likelihood.Length; o++) value += _values[o * _stride[c]];
        return value;
    }

    /// <summary>
    /// Makes the values of a block final: the records that differ in checks 0..c only. Those in which check c was done come
    /// first, then doing it is weighed for all records in which it was not, then these are settled by the checks before it.
    /// </summary>
    private void Settle(int c, int block)
    {
        if (c < 0) return;
        int stride = _stride[c], outcomes = _offers[c].Likelihood.Length;
        if (c > 0) for (int o = outcomes; o > 0; o--) Settle(c - 1, block + (o * stride));
        if (stride >= Vector<double>.Count) Weigh(Price(c, block), block, stride, outcomes);
        else WeighFew(Price(c, block), block, stride, outcomes);
        Settle(c - 1, block);
    }

    /// <summary>The last check has the longest stride: it is done in every record from there on.</summary>
    private double Price(int c, int record) => _offers[c].PriceAfterLast is { } later && record >= _stride[_offers.Length - 1] ? later : _offers[c].Price;

    private void Weigh(double price, int block, int stride, int outcomes)
    {
        int wide = Vector<double>.Count, i = 0;
        ref double v = ref MemoryMarshal.GetArrayDataReference(_values), m = ref MemoryMarshal.GetArrayDataReference(_mass);
        var priced = new Vector<double>(price);
        // The last vector may overlap the one before it: a minimum taken twice is the same.
        for (; i < stride; i = i + wide < stride && i + (2 * wide) > stride ? stride - wide : i + wide)
        {
            nuint at = (nuint)(block + i);
            var sum = priced * Vector.LoadUnsafe(ref m, at);
            for (int o = 1; o <= outcomes; o++) sum += Vector.LoadUnsafe(ref v, at + (nuint)(o * stride));
            Vector.Min(sum, Vector.LoadUnsafe(ref v, at)).StoreUnsafe(ref v, at);
        }
    }

    private void WeighFew(double price, int block, int stride, int outcomes)
    {
        for (int i = block; i < block + stride; i++)
        {
            double sum = price * _mass[i];
            for (int o = 1; o <= outcomes; o++) sum += _values[i + (o * stride)];
            _values[i] = Math.Min(_values[i], sum);
        }
    }

    private int BestAction(double[] joint)
    {
        int best = 0;
        double least = double.PositiveInfinity;
        for (int a = 0; a < _loss.Length; a++)
        {
            double loss = Loss(joint, a);
            if (loss < least) (best, least) = (a, loss);
        }
        return best;
    }

    /// <summary>Chance that an action is the best one for what is really there.</summary>
    private double Right(double[] joint, int action)
    {
        double sum = 0;
        for (int h = 0; h < joint.Length; h++)
            if (_loss[action][h] <= _loss.Min(row => row[h]) + 1e-12) sum += joint[h];
        return sum;
    }

    private double RightAfter(double[] prior, int c)
    {
        double sum = 0;
        foreach (var like in _offers[c].Likelihood)
        {
            double[] joint = [.. prior.Select((p, h) => p * like[h])];
            sum += Right(joint, BestAction(joint));
        }
        return sum;
    }
}
