namespace Pattress.Walls;

/// <summary>
/// Which check next, exactly: dynamic programming over records of outcomes. A record says of each check not done, or what it
/// found; V(record) = min(least expected loss of acting, least over checks of price x mass + sum of V over its outcomes), all
/// unnormalised. A record is not looked into where even knowing all could not repay the cheapest check.
/// </summary>
public sealed class CheckPolicy
{
    /// <summary>Most checks; past these the records are too many.</summary>
    public const int MostChecks = 12;

    private readonly double[][] _loss;
    private readonly IReadOnlyList<CheckOffer> _offers;
    private readonly int[] _stride;
    private readonly int _hypotheses;
    private readonly double[] _perfect, _joints;
    private readonly double[] _values;
    private readonly int[] _byPrice;
    private int _states;

    private CheckPolicy(double[] prior, IReadOnlyList<CheckOffer> offers, CheckDecision decision)
    {
        (_offers, _loss, _hypotheses) = (offers, decision.Loss, prior.Length);
        _stride = new int[offers.Count];
        int states = 1;
        for (int c = 0; c < offers.Count; c++) (_stride[c], states) = (states, checked(states * (offers[c].Outcomes.Count + 1)));
        _values = new double[states];
        Array.Fill(_values, double.NaN);
        _perfect = [.. Enumerable.Range(0, _hypotheses).Select(h => _loss.Min(row => row[h]))];
        _joints = new double[(offers.Count + 1) * _hypotheses];
        prior.CopyTo(_joints, 0);
        _byPrice = [.. Enumerable.Range(0, offers.Count).OrderBy(c => offers[c].Price).ThenBy(c => c)];
    }

    /// <summary>The best next check for a decision, given the prior of each hypothesis (summing to 1).</summary>
    /// <exception cref="ArgumentException">More than <see cref="MostChecks"/> checks.</exception>
    public static CheckChoice Next(double[] prior, IReadOnlyList<CheckOffer> offers, CheckDecision decision)
    {
        if (offers.Count > MostChecks) throw new ArgumentException($"at most {MostChecks} checks", nameof(offers));
        return new CheckPolicy(prior, offers, decision).Root();
    }

    private CheckChoice Root()
    {
        int action = BestAction(Joint(0), out double now);
        double best = now;
        int chosen = -1;
        if (Worth(Joint(0), now))
            foreach (int c in _byPrice)
            {
                double v = Value(c, 0, 0, best);
                if (v < best - 1e-12) (best, chosen) = (v, c);
            }
        return new(chosen, action, now, best, Right(Joint(0), action), chosen < 0 ? Right(Joint(0), action) : RightAfter(chosen), _states);
    }

    private Span<double> Joint(int depth) => _joints.AsSpan(depth * _hypotheses, _hypotheses);

    /// <summary>Value of doing check c at a record, or more than <paramref name="best"/> where it cannot be less.</summary>
    private double Value(int c, int record, int depth, double best)
    {
        var joint = Joint(depth);
        double mass = Vector(joint, null), value = _offers[c].Price * mass;
        if (value + Vector(joint, _perfect) >= best) return double.PositiveInfinity;
        for (int o = 0; o < _offers[c].Outcomes.Count; o++)
        {
            var next = Joint(depth + 1);
            var like = _offers[c].Likelihood[o];
            for (int h = 0; h < next.Length; h++) next[h] = joint[h] * like[h];
            value += State(record + (_stride[c] * (o + 1)), depth + 1);
            if (value >= best) return double.PositiveInfinity;
        }
        return value;
    }

    private double State(int record, int depth)
    {
        if (!double.IsNaN(_values[record])) return _values[record];
        _states++;
        var joint = Joint(depth);
        BestAction(joint, out double best);
        if (Worth(joint, best))
            foreach (int c in _byPrice)
                if (Open(record, c)) best = Math.Min(best, Value(c, record, depth, best));
        return _values[record] = best;
    }

    private bool Open(int record, int c) => record / _stride[c] % (_offers[c].Outcomes.Count + 1) == 0;

    /// <summary>Could knowing everything repay the cheapest check?</summary>
    private bool Worth(ReadOnlySpan<double> joint, double now) =>
        _offers.Count > 0 && now - Vector(joint, _perfect) > _offers[_byPrice[0]].Price * Vector(joint, null);

    private int BestAction(ReadOnlySpan<double> joint, out double loss)
    {
        int best = 0;
        loss = double.PositiveInfinity;
        for (int a = 0; a < _loss.Length; a++)
        {
            double l = Vector(joint, _loss[a]);
            if (l < loss) (best, loss) = (a, l);
        }
        return best;
    }

    private static double Vector(ReadOnlySpan<double> joint, double[]? by)
    {
        double sum = 0;
        if (by is null) foreach (double j in joint) sum += j;
        else for (int h = 0; h < joint.Length; h++) sum += joint[h] * by[h];
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
