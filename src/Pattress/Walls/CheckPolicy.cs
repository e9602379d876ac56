using System.Numerics;
using System.Runtime.InteropServices;

namespace Pattress.Walls;

/// <summary>
/// Which check next, exactly: dynamic programming over records of outcomes. A record says of each check not done, or what it
/// found; V(record) = min(least expected loss of acting, least over checks of price x mass + sum of V over its outcomes), all
/// unnormalised. Records that differ only in order are one. A record is not looked into where even knowing all could not repay
/// the cheapest check that is left.
/// </summary>
public sealed class CheckPolicy
{
    /// <summary>Most checks, and most records; past these there are too many.</summary>
    public const int MostChecks = 12, MostRecords = 1 << 24;

    private readonly double[][] _loss;
    private readonly CheckOffer[] _offers;
    private readonly int[] _stride, _base;
    private readonly int _hypotheses;
    private readonly double[] _perfect, _joints, _values;
    private int _states;

    private CheckPolicy(double[] prior, IReadOnlyList<CheckOffer> offers, CheckDecision decision)
    {
        (_offers, _loss, _hypotheses) = ([.. offers], decision.Loss, prior.Length);
        (_stride, _base) = (new int[offers.Count], [.. offers.Select(o => o.Likelihood.Length + 1)]);
        long states = 1;
        for (int c = 0; c < offers.Count; c++) (_stride[c], states) = ((int)states, Math.Min(states * _base[c], int.MaxValue));
        if (states > MostRecords) throw new ArgumentException($"more than {MostRecords} records of outcomes", nameof(offers));
        _values = new double[states];
        Array.Fill(_values, double.NaN);
        _perfect = [.. Enumerable.Range(0, _hypotheses).Select(h => _loss.Min(row => row[h]))];
        _joints = new double[(offers.Count + 1) * _hypotheses];
        prior.CopyTo(_joints, 0);
    }

    /// <summary>The best next check for a decision, given the prior of each hypothesis (summing to 1).</summary>
    /// <exception cref="ArgumentException">More than <see cref="MostChecks"/> checks or <see cref="MostRecords"/> records.</exception>
    public static CheckChoice Next(double[] prior, IReadOnlyList<CheckOffer> offers, CheckDecision decision)
    {
        if (offers.Count > MostChecks) throw new ArgumentException($"at most {MostChecks} checks", nameof(offers));
        return new CheckPolicy(prior, offers, decision).Root();
    }

    private CheckChoice Root()
    {
        int action = BestAction(Joint(0), out double now);
        double best = Best(0, 0, now, out int chosen), before = Right(Joint(0), action);
        return new(chosen, action, now, best, before, chosen < 0 ? before : RightAfter(chosen), _states);
    }

    private Span<double> Joint(int depth) => _joints.AsSpan(depth * _hypotheses, _hypotheses);

    /// <summary>Value of a record: the least of acting and of every check that is left.</summary>
    private double Best(int record, int depth, double stop, out int chosen)
    {
        _states++;
        chosen = -1;
        var joint = Joint(depth);
        double best = stop, mass = Sum(joint), perfect = Dot(joint, _perfect);
        if (stop - perfect <= Cheapest(record) * mass) return best;
        for (int c = 0; c < _offers.Length; c++)
        {
            if (!IsOpen(record, c) || perfect + (_offers[c].Price * mass) >= best) continue;
            double value = Value(c, record, depth, mass, best);
            if (value < best - 1e-13) (best, chosen) = (value, c);
        }
        return best;
    }

    /// <summary>Value of doing a check, given up once it passes the best.</summary>
    private double Value(int c, int record, int depth, double mass, double best)
    {
        double value = _offers[c].Price * mass;
        for (int o = 0; o < _offers[c].Likelihood.Length; o++)
        {
            int next = record + (_stride[c] * (o + 1));
            value += double.IsNaN(_values[next]) ? Look(c, o, next, depth) : _values[next];
            if (value >= best) return double.PositiveInfinity;
        }
        return value;
    }

    private double Look(int c, int o, int record, int depth)
    {
        Span<double> joint = Joint(depth), next = Joint(depth + 1);
        var like = _offers[c].Likelihood[o];
        for (int h = 0; h < next.Length; h++) next[h] = joint[h] * like[h];
        BestAction(next, out double stop);
        return _values[record] = Best(record, depth + 1, stop, out _);
    }

    private bool IsOpen(int record, int c) => record / _stride[c] % _base[c] == 0;

    private double Cheapest(int record)
    {
        double least = double.PositiveInfinity;
        for (int c = 0; c < _offers.Length; c++) if (_offers[c].Price < least && IsOpen(record, c)) least = _offers[c].Price;
        return least;
    }

    private int BestAction(ReadOnlySpan<double> joint, out double loss)
    {
        int best = 0;
        loss = double.PositiveInfinity;
        for (int a = 0; a < _loss.Length; a++)
        {
            double l = Dot(joint, _loss[a]);
            if (l < loss) (best, loss) = (a, l);
        }
        return best;
    }

    private static double Sum(ReadOnlySpan<double> joint)
    {
        double sum = 0;
        foreach (double j in joint) sum += j;
        return sum;
    }

    private static double Dot(ReadOnlySpan<double> joint, ReadOnlySpan<double> by)
    {
        var wide = Vector<double>.Zero;
        int h = 0;
        ref double a = ref MemoryMarshal.GetReference(joint), b = ref MemoryMarshal.GetReference(by);
        for (; h + Vector<double>.Count <= joint.Length; h += Vector<double>.Count) wide += Vector.LoadUnsafe(ref a, (nuint)h) * Vector.LoadUnsafe(ref b, (nuint)h);
        double sum = Vector.Sum(wide);
        for (; h < joint.Length; h++) sum += joint[h] * by[h];
        return sum;
    }

    /// <summary>Chance that an action is the best one for what is really there.</summary>
    private double Right(ReadOnlySpan<double> joint, int action)
    {
        double sum = 0;
        for (int h = 0; h < joint.Length; h++) if (_loss[action][h] <= _perfect[h] + 1e-12) sum += joint[h];
        return sum;
    }

    private double RightAfter(int c)
    {
        double sum = 0;
        foreach (var like in _offers[c].Likelihood)
        {
            for (int h = 0; h < _hypotheses; h++) Joint(1)[h] = Joint(0)[h] * like[h];
            sum += Right(Joint(1), BestAction(Joint(1), out _));
        }
        return sum;
    }
}
