namespace Pattress.Planning.Buying.Search;

/// <summary>
/// Finds the cheapest buying with one kind a class and proves it, as a rule in less time than a solver wants to get ready: a bound by prices
/// (<see cref="Prices"/>), choices bettered class by class, options left out that the bound shows to be too dear, and what is left tried class by class,
/// each time under a bound of its own. All numbers are whole: what cannot be cheaper by one is no better. What does not end within its steps is
/// left to a solver.
/// </summary>
internal sealed class ClassSearch
{
    /// <summary>A choice is bettered when it is within this of the cheapest known, and every so many steps.</summary>
    private const double Near = 1.03;

    private const int Often = 10, RootSteps = 2000, NodeSteps = 100, MostNodes = 100;

    /// <summary>Less than the smallest difference of two whole numbers, more than the sums' rounding.</summary>
    private const double Slack = 1 - 1e-2;

    private readonly SharedProblem _p;
    private readonly Prices _prices;
    private readonly double[] _marginal;
    private readonly double[][] _spare;
    private readonly CancellationToken _cancel;
    private GroupChoice[] _best = [];
    private double _known = double.PositiveInfinity;
    private int _nodes, _steps;

    private ClassSearch(SharedProblem problem, CancellationToken cancel)
    {
        (_p, _prices, _cancel) = (problem, new(problem), cancel);
        _marginal = new double[problem.Multipliers];
        _spare = [.. problem.Groups.Select(g => new double[g.Options])];
    }

    /// <summary>The proven choice of every class and its cost, or null where it was not proven within the steps allowed.</summary>
    public static (GroupChoice[] Chosen, double Cost)? Solve(SharedProblem problem, CancellationToken cancel)
    {
        var search = new ClassSearch(problem, cancel);
        return search._prices.Fits && search.Node(RootSteps) && search._best.Length > 0 ? (search._best, search._known) : null;
    }

    /// <summary>False where the steps ran out before all below was tried or shown to be no better.</summary>
    private bool Node(int steps)
    {
        _cancel.ThrowIfCancellationRequested();
        if (_nodes++ > MostNodes) return false;
        double bound = _prices.Climb(steps, Tried, Slack);
        if (bound > _known - Slack) return true;
        LeaveOut(bound);
        if (Narrowest() is not { } open) return Leaf();
        var (start, each) = ((double[])_prices.Best.Clone(), (double[])_prices.Each[open.Group].Clone());
        var row = open.State < 0 ? open.Of.Main : open.Of.StandIn[open.State];
        double trip = open.State < 0 ? 0 : open.Of.Trip[open.State];
        double[] kept = [.. row];
        bool all = true;
        int[] order = [.. Enumerable.Range(open.State < 0 ? 0 : -1, row.Length + (open.State < 0 ? 0 : 1)).Where(o => o < 0 ? trip < double.PositiveInfinity : kept[o] < double.PositiveInfinity)
            .OrderBy(o => open.State < 0 ? each[o] : o)];
        foreach (int o in order)
        {
            Array.Fill(row, double.PositiveInfinity);
            if (o >= 0) row[o] = kept[o];
            if (open.State >= 0) open.Of.Trip[open.State] = o < 0 ? trip : double.PositiveInfinity;
            start.CopyTo(_prices.Now, 0);
            var mains = Mains();
            all &= Node(NodeSteps);
            Restore(mains);
            if (!all) break;
        }
        kept.CopyTo(row, 0);
        if (open.State >= 0) open.Of.Trip[open.State] = trip;
        return all;
    }

    private double[][] Mains() => [.. _p.Groups.Select(g => (double[])g.Main.Clone())];

    private void Restore(double[][] mains)
    {
        for (int c = 0; c < mains.Length; c++) mains[c].CopyTo(_p.Groups[c].Main, 0);
    }

    /// <summary>Options that cannot be a class's own kind in anything cheaper than what is known.</summary>
    private void LeaveOut(double bound)
    {
        for (int c = 0; c < _p.Groups.Length; c++)
            for (int o = 0; o < _p.Groups[c].Options; o++)
                if (bound + _prices.Each[c][o] > _known - Slack) _p.Groups[c].Main[o] = double.PositiveInfinity;
        _prices.Forget();
    }

    /// <summary>Where to branch: the class with fewest kinds left, else a state that is missed and has more than one way out.</summary>
    private (Group Of, int Group, int State)? Narrowest()
    {
        int most = int.MaxValue, at = -1;
        for (int c = 0; c < _p.Groups.Length; c++)
            if (_p.Groups[c].Main.Count(double.IsFinite) is var left && left > 1 && left < most) (most, at) = (left, c);
        if (at >= 0) return (_p.Groups[at], at, -1);
        for (int c = 0; c < _p.Groups.Length; c++)
        {
            var g = _p.Groups[c];
            int main = Array.FindIndex(g.Main, double.IsFinite);
            for (int s = 0; main >= 0 && s < g.States; s++)
                if ((g.Missing[main] >> s & 1) == 1 && g.StandIn[s].Count(double.IsFinite) + (double.IsFinite(g.Trip[s]) ? 1 : 0) > 1) return (g, c, s);
        }
        return null;
    }

    /// <summary>One way is left for each class, or none at all.</summary>
    private bool Leaf()
    {
        GroupChoice[] only = [.. _p.Groups.Select(g => new GroupChoice(g.States))];
        for (int c = 0; c < only.Length; c++)
            if (double.IsPositiveInfinity(_p.Groups[c].Cheapest(_prices.Now, _spare[c], only[c]))) return true;
        double cost = _p.CostOf(only);
        if (cost < _known) (_known, _best) = (cost, only);
        return true;
    }

    private double Tried(GroupChoice[] chosen)
    {
        double cost = _p.CostOf(chosen);
        if (_steps++ % Often == 0 || cost < _known * Near) Better(chosen, cost);
        return _known;
    }

    /// <summary>Class by class: the cheapest choice while the others stay, until none changes.</summary>
    private void Better(GroupChoice[] from, double cost)
    {
        GroupChoice[] now = [.. from.Select(c => c.Copy())];
        for (bool changed = true; changed;)
        {
            changed = false;
            for (int c = 0; c < now.Length; c++)
            {
                var before = now[c];
                Marginal(now, c);
                now[c] = before.Copy();
                _p.Groups[c].Cheapest(_marginal, _spare[c], now[c]);
                double then = _p.CostOf(now);
                if (then < cost) (cost, changed) = (then, true);
                else now[c] = before;
            }
        }
        if (cost < _known) (_known, _best) = (cost, now);
    }

    /// <summary>What items and tools cost a class besides what the others have anyway.</summary>
    private void Marginal(GroupChoice[] now, int c)
    {
        Span<int> wanted = stackalloc int[_p.Packs.Length];
        Span<bool> tools = stackalloc bool[_p.Tools.Length];
        wanted.Clear();
        tools.Clear();
        for (int other = 0; other < now.Length; other++) if (other != c) now[other].Carry(_p.Groups[other], wanted, tools);
        var g = _p.Groups[c];
        for (int o = 0; o < g.Options; o++) _marginal[g.ItemAt + o] = _p.Packs[g.Kind[o]].Least(wanted[g.Kind[o]] + g.Demand[o]) - _p.Packs[g.Kind[o]].Least(wanted[g.Kind[o]]);
        for (int t = 0; t < tools.Length; t++)
        {
            _marginal[g.MainToolAt + t] = tools[t] ? 0 : _p.Tools[t];
            for (int s = 0; s < g.States; s++) _marginal[g.StateToolAt[s] + t] = tools[t] ? 0 : _p.Tools[t];
        }
    }
}
