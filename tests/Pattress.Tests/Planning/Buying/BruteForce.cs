using Pattress.Planning.Buying;

namespace Pattress.Tests.Planning.Buying;

/// <summary>
/// Tries everything, written apart from the program: for each class each kind, for each state that kind misses each stand-in
/// or a trip, for each kind each number of packs. For tiny problems with one kind a class alone.
/// </summary>
internal sealed class BruteForce(BuyingCase problem)
{
    private readonly BuyingRules _rules = problem.Rules;
    private decimal _best = decimal.MaxValue;

    /// <summary>Least expected cost, in thousandths.</summary>
    public decimal Least()
    {
        Class(0, 0, []);
        return _best;
    }

    private void Class(int c, decimal work, List<(int Class, int State, int Option)> used)
    {
        if (c == problem.Classes.Count) { Settle(work, used); return; }
        var group = problem.Classes[c];
        for (int o = 0; o < group.Options.Count; o++)
        {
            if (!group.Options[o].Main) continue;
            double holds = group.States.Where(s => s.Holds.Contains(o)).Sum(s => s.Probability);
            used.Add((c, -1, o));
            State(c, 0, o, work + group.Brackets * Mills(Work(group.Options[o]) * (decimal)holds), used);
            used.RemoveAt(used.Count - 1);
        }
    }

    private void State(int c, int s, int main, decimal work, List<(int, int, int)> used)
    {
        var group = problem.Classes[c];
        if (s == group.States.Count) { Class(c + 1, work, used); return; }
        var state = group.States[s];
        if (state.Holds.Contains(main)) { State(c, s + 1, main, work, used); return; }
        State(c, s + 1, main, work + Mills(_rules.TripPrice * (decimal)state.Probability), used);
        foreach (int o in state.Holds)
        {
            var option = group.Options[o];
            decimal cost = (Work(option) + option.Count * (decimal)_rules.FillMinutes * _rules.MinutePrice) * (decimal)state.Probability;
            used.Add((c, s, o));
            State(c, s + 1, main, work + group.Brackets * Mills(cost), used);
            used.RemoveAt(used.Count - 1);
        }
    }

    private void Settle(decimal work, List<(int Class, int State, int Option)> used)
    {
        decimal cost = work;
        foreach (int t in used.SelectMany(u => problem.Classes[u.Class].Options[u.Option].Tools).Distinct())
            if (!problem.Tools[t].InVan) cost += Mills(problem.Tools[t].Price);
        var fixings = used.Select(u => (u.Class, u.Option)).Distinct()
            .GroupBy(u => problem.Classes[u.Class].Options[u.Option].Kind)
            .Select(g => (Kind: problem.Kinds[g.Key], Count: g.Sum(u => problem.Classes[u.Class].Brackets * problem.Classes[u.Class].Options[u.Option].Count)));
        foreach (var (kind, count) in fixings) cost += Fixings(kind, (int)Math.Ceiling(count * (100 + _rules.SparePercent) / 100m));
        _best = Math.Min(_best, cost);
    }

    private decimal Fixings(BuyKind kind, int wanted) => Enumerable.Range(0, Math.Min(kind.InVan, wanted) + 1)
        .Min(van => van * Mills(kind.PackPrice / kind.Pack * _rules.VanShare) + (int)Math.Ceiling((wanted - van) / (decimal)kind.Pack) * Mills(kind.PackPrice));

    private decimal Work(BuyOption option) => option.Count * (decimal)problem.Kinds[option.Kind].Minutes * _rules.MinutePrice;

    private static decimal Mills(decimal amount) => decimal.Round(amount * 1000, 0, MidpointRounding.ToEven);
}
