namespace Pattress.Planning.Buying.Search;

/// <summary>
/// A bound from below by prices. Each class pays a price for every item and tool it takes, whoever owns packs and tools takes these prices in and pays the
/// shop; with any prices at all the sum of both sides' least costs is below the least cost of the whole. The prices climb along the differences of what
/// the two sides want until that sum hardly rises (Held and Karp's subgradients with Polyak's step, each direction averaged with the one before).
/// </summary>
internal sealed class Prices
{
    /// <summary>Part of a direction that is new; steps without a rise after which they are shortened, by how much, and how short they get.</summary>
    private const double New = 0.5, Shorter = 0.7, Shortest = 0.001;

    private const int Patience = 14;

    private readonly SharedProblem _p;
    private readonly (int Group, int Option, int Demand, int At)[][] _items;
    private readonly int[][] _toolsAt;
    private readonly double[] _differ, _way, _most;
    private readonly ulong[] _set;
    private readonly double[][] _each;

    public Prices(SharedProblem problem)
    {
        _p = problem;
        _items = [.. problem.Packs.Select((_, k) => problem.Groups.SelectMany((g, c) => Enumerable.Range(0, g.Options).Where(o => g.Kind[o] == k).Select(o => (c, o, g.Demand[o], g.ItemAt + o))).ToArray())];
        _toolsAt = [.. problem.Tools.Select((_, t) => problem.Groups.SelectMany(g => At(g, t)).ToArray())];
        (_differ, _way, Now, Best) = (new double[problem.Multipliers], new double[problem.Multipliers], new double[problem.Multipliers], new double[problem.Multipliers]);
        int most = problem.Packs.Max(p => p.Most) + 1;
        (_most, _set) = (new double[most], new ulong[most]);
        _each = [.. problem.Groups.Select(g => new double[g.Options])];
        Each = [.. problem.Groups.Select(g => new double[g.Options])];
        Chosen = [.. problem.Groups.Select(g => new GroupChoice(g.States))];
        Start();
    }

    /// <summary>The prices as they are, and those with the best bound since <see cref="Climb"/> began.</summary>
    public double[] Now { get; }

    public double[] Best { get; }

    /// <summary>At the best prices: by how much each class is dearer with each option as its own kind.</summary>
    public double[][] Each { get; }

    /// <summary>What the classes choose at the prices as they are.</summary>
    public GroupChoice[] Chosen { get; }

    /// <summary>Most sets of items of a kind fit one word.</summary>
    public bool Fits => _items.All(i => i.Length <= 64);

    private static IEnumerable<int> At(Group g, int t)
    {
        if (g.Tools.Where((_, o) => g.Main[o] < double.PositiveInfinity).Any(u => u.Contains(t))) yield return g.MainToolAt + t;
        for (int s = 0; s < g.States; s++) if (g.Tools.Where((_, o) => g.StandIn[s][o] < double.PositiveInfinity).Any(u => u.Contains(t))) yield return g.StateToolAt[s] + t;
    }

    /// <summary>Everybody pays his share of what all together would.</summary>
    private void Start()
    {
        for (int k = 0; k < _items.Length; k++)
            foreach (var i in _items[k]) Now[i.At] = _p.Packs[k].Least(_p.Packs[k].Most) * i.Demand / _p.Packs[k].Most;
        for (int t = 0; t < _toolsAt.Length; t++)
            foreach (int at in _toolsAt[t]) Now[at] = _p.Tools[t] / _toolsAt[t].Length;
        Now.CopyTo(Best, 0);
    }

    /// <summary>
    /// Climbs from the prices as they are, so many steps at most, or until the bound is within <paramref name="slack"/> of the cheapest choice known;
    /// <paramref name="tried"/> sees each choice of the classes, and says what the cheapest costs.
    /// </summary>
    public double Climb(int steps, Func<GroupChoice[], double> tried, double slack)
    {
        double best = double.NegativeInfinity, length = 1;
        int since = 0;
        Array.Clear(_way);
        for (int step = 0; step < steps; step++)
        {
            double bound = Bound();
            if (double.IsPositiveInfinity(bound)) return bound;
            double known = tried(Chosen);
            if (bound > best)
            {
                if (bound > best + 1e-4 * (known - best)) since = 0;
                best = bound;
                Now.CopyTo(Best, 0);
                for (int c = 0; c < _each.Length; c++) _each[c].CopyTo(Each[c], 0);
            }
            if (best > known - slack) return best;
            if (++since > Patience) (length, since) = (length * Shorter, 0);
            if (length < Shortest) return best;
            if (!Move(length, known - bound)) return best;
        }
        return best;
    }

    private bool Move(double length, double gap)
    {
        double norm = 0;
        for (int i = 0; i < _differ.Length; i++)
        {
            _differ[i] = _way[i] = New * _differ[i] + (1 - New) * _way[i];
            if (Now[i] <= 0 && _differ[i] < 0) _differ[i] = 0;
            norm += _differ[i] * _differ[i];
        }
        if (norm == 0) return false;
        double by = length * gap / norm;
        for (int i = 0; i < _differ.Length; i++) if (_differ[i] != 0) Now[i] = Math.Max(0, Now[i] + by * _differ[i]);
        return true;
    }

    /// <summary>Takes the prices off what no class may take any more.</summary>
    public void Forget()
    {
        foreach (var items in _items)
            foreach (var i in items)
                if (double.IsPositiveInfinity(_p.Groups[i.Group].Main[i.Option]) && _p.Groups[i.Group].StandIn.All(s => double.IsPositiveInfinity(s[i.Option]))) Best[i.At] = 0;
    }

    /// <summary>The sum of both sides at the prices as they are; sets what they differ in.</summary>
    private double Bound()
    {
        Array.Clear(_differ);
        double sum = 0;
        for (int c = 0; c < _p.Groups.Length; c++)
        {
            var g = _p.Groups[c];
            double least = g.Cheapest(Now, _each[c], Chosen[c]);
            if (double.IsPositiveInfinity(least)) return least;
            for (int o = 0; o < g.Options; o++) _each[c][o] -= least;
            sum += least;
            Takes(g, Chosen[c]);
        }
        for (int t = 0; t < _toolsAt.Length; t++) sum += Tool(t);
        for (int k = 0; k < _items.Length; k++) if (_items[k].Length > 0) sum += Kind(k);
        return sum;
    }

    private void Takes(Group g, GroupChoice chosen)
    {
        foreach (int t in g.Tools[chosen.Main]) _differ[g.MainToolAt + t]++;
        _differ[g.ItemAt + chosen.Main] = 1;
        for (int s = 0; s < g.States; s++)
        {
            if (chosen.For[s] < 0) continue;
            _differ[g.ItemAt + chosen.For[s]] = 1;
            foreach (int t in g.Tools[chosen.For[s]]) _differ[g.StateToolAt[s] + t]++;
        }
    }

    private double Tool(int t)
    {
        double left = _p.Tools[t];
        foreach (int at in _toolsAt[t]) left -= Now[at];
        if (left >= 0) return 0;
        foreach (int at in _toolsAt[t]) _differ[at]--;
        return left;
    }

    /// <summary>The shop's side of a kind: which of the items it would supply at these prices. Dynamic programming over how many are wanted.</summary>
    private double Kind(int k)
    {
        var items = _items[k];
        var packs = _p.Packs[k];
        int all = 0;
        _most[0] = 0;
        _set[0] = 0;
        for (int i = 0; i < items.Length; i++)
        {
            double price = Now[items[i].At];
            if (price <= 0) continue;
            int d = items[i].Demand;
            for (int n = all + 1; n <= all + d; n++) _most[n] = double.NegativeInfinity;
            all += d;
            for (int n = all; n >= d; n--)
            {
                double with = _most[n - d] + price;
                if (with > _most[n]) (_most[n], _set[n]) = (with, _set[n - d] | 1UL << i);
            }
        }
        double least = 0;
        int at = 0;
        for (int n = 1; n <= all; n++) if (packs.Least(n) - _most[n] is var cost && cost < least) (least, at) = (cost, n);
        for (int i = 0; i < items.Length; i++) if ((_set[at] >> i & 1) == 1) _differ[items[i].At]--;
        return least;
    }
}
