using System.Numerics;

namespace Pattress.Planning.Buying.Search;

/// <summary>One class with its own costs; infinite is what may not be.</summary>
internal sealed class Group
{
    private readonly double[] _sums, _block, _best;
    private readonly int[] _who, _cut;

    public Group(BuyingCase problem, int index, double weight, ref int at)
    {
        var (c, rules) = (problem.Classes[index], problem.Rules);
        (Options, States, Brackets) = (c.Options.Count, c.States.Count, c.Brackets);
        Kind = [.. c.Options.Select(o => o.Kind)];
        Demand = [.. c.Options.Select(o => o.Count * c.Brackets)];
        Tools = [.. c.Options.Select(o => o.Tools.Distinct().ToArray())];
        Missing = [.. c.Options.Select((_, o) => Enumerable.Range(0, States).Where(s => !c.States[s].Holds.Contains(o)).Sum(s => 1 << s))];
        bool[] avoided = [.. c.Options.Select(o => BuyingProgram.Avoided(rules, problem.Kinds[o.Kind].Id))];
        Main = [.. c.Options.Select((o, i) => o.Main && !avoided[i] ? weight * c.Brackets * BuyingProgram.MainCost(problem, c, i) + i : double.PositiveInfinity)];
        StandIn = [.. c.States.Select((s, n) => c.Options.Select((_, o) => (Missing[o] >> n & 1) == 0 && !avoided[o] ? weight * c.Brackets * BuyingProgram.StandInCost(problem, c, n, o) + o : double.PositiveInfinity).ToArray())];
        Trip = [.. c.States.Select(s => rules.NoSecondTrip ? double.PositiveInfinity : weight * BuyingProgram.Cost(rules.TripPrice * (decimal)s.Probability) + Options)];
        (_sums, _block, _best, _who, _cut) = (new double[Options << States], new double[1 << States], new double[1 << States], new int[1 << States], new int[1 << States]);
        (ItemAt, MainToolAt) = (at, at + Options);
        StateToolAt = [.. c.States.Select((_, s) => ItemAt + Options + (1 + s) * problem.Tools.Count)];
        at += Options + (1 + States) * problem.Tools.Count;
    }

    public int Options { get; }

    public int States { get; }

    public int Brackets { get; }

    /// <summary>Per option its kind, how many of it the class takes, the tools it wants, and as bits the states in which it does not hold.</summary>
    public int[] Kind { get; }

    public int[] Demand { get; }

    public int[][] Tools { get; }

    public int[] Missing { get; }

    /// <summary>Cost of an option as the class's own kind, packs and tools left out; by state the cost as its stand-in, and of a trip.</summary>
    public double[] Main { get; }

    public double[][] StandIn { get; }

    public double[] Trip { get; }

    /// <summary>Where the class's prices stand: of its items, of the tools of its own kind, of the tools of the stand-ins for each state.</summary>
    public int ItemAt { get; }

    public int MainToolAt { get; }

    public int[] StateToolAt { get; }

    /// <summary>
    /// The cheapest choice at these prices, exactly: what is carried for several states is paid once, so that every way to share out the missing states
    /// among stand-ins is looked at.
    /// </summary>
    /// <param name="each">Takes the least cost with each option as the class's own kind.</param>
    public double Cheapest(double[] prices, Span<double> each, GroupChoice chosen)
    {
        Blocks(prices);
        double least = double.PositiveInfinity;
        int main = -1;
        for (int o = 0; o < Options; o++)
        {
            double cost = Main[o];
            if (cost < double.PositiveInfinity)
            {
                cost += prices[ItemAt + o] + _best[Missing[o]];
                foreach (int t in Tools[o]) cost += prices[MainToolAt + t];
            }
            each[o] = cost;
            if (cost < least) (least, main) = (cost, o);
        }

        if (main >= 0) Read(main, chosen);
        return least;
    }

    private void Read(int main, GroupChoice chosen)
    {
        chosen.Main = main;
        Array.Fill(chosen.For, GroupChoice.Held);
        for (int left = Missing[main]; left != 0; left ^= _cut[left])
            for (int b = _cut[left], s; b != 0; b &= b - 1) chosen.For[s = BitOperations.TrailingZeroCount(b)] = _who[_cut[left]];
    }

    /// <summary>Per set of states: the cheapest single stand-in for all of them (or a trip for one), and the cheapest way to share them out.</summary>
    private void Blocks(double[] prices)
    {
        for (int set = 1; set < _block.Length; set++)
        {
            int s = BitOperations.TrailingZeroCount(set), rest = set & (set - 1);
            double least = rest == 0 ? Trip[s] : double.PositiveInfinity;
            int who = GroupChoice.Trip;
            for (int o = 0; o < Options; o++)
            {
                double sum = StandIn[s][o] + (rest == 0 ? 0 : _sums[rest * Options + o]);
                if (sum < double.PositiveInfinity) foreach (int t in Tools[o]) sum += prices[StateToolAt[s] + t];
                _sums[set * Options + o] = sum;
                if (sum + prices[ItemAt + o] < least) (least, who) = (sum + prices[ItemAt + o], o);
            }
            (_block[set], _who[set]) = (least, who);
            Share(set, set & -set, rest);
        }
    }

    /// <summary>The block with the lowest state of a set, and the best of what is left.</summary>
    private void Share(int set, int lowest, int rest)
    {
        double least = double.PositiveInfinity;
        int cut = lowest;
        for (int more = rest; ; more = (more - 1) & rest)
        {
            double cost = _block[lowest | more] + _best[rest ^ more];
            if (cost < least) (least, cut) = (cost, lowest | more);
            if (more == 0) break;
        }
        (_best[set], _cut[set]) = (least, cut);
    }
}

/// <summary>What is chosen for a class: its own kind, and for each state that kind misses a stand-in or a trip.</summary>
internal sealed class GroupChoice(int states)
{
    public const int Held = -2, Trip = -1;

    public int Main { get; set; } = -1;

    public int[] For { get; } = new int[states];

    public double Own(Group g)
    {
        double sum = g.Main[Main];
        for (int s = 0; s < For.Length; s++) if (For[s] != Held) sum += For[s] == Trip ? g.Trip[s] : g.StandIn[s][For[s]];
        return sum;
    }

    /// <summary>Adds what is in hand: how many of each kind, and which tools.</summary>
    public void Carry(Group g, Span<int> wanted, Span<bool> tools)
    {
        Carry(g, Main, wanted, tools);
        for (int s = 0; s < For.Length; s++)
            if (For[s] >= 0 && For[s] != Main && For.AsSpan(0, s).IndexOf(For[s]) < 0) Carry(g, For[s], wanted, tools);
    }

    private static void Carry(Group g, int option, Span<int> wanted, Span<bool> tools)
    {
        wanted[g.Kind[option]] += g.Demand[option];
        foreach (int t in g.Tools[option]) tools[t] = true;
    }

    public GroupChoice Copy()
    {
        var copy = new GroupChoice(For.Length) { Main = Main };
        For.CopyTo(copy.For, 0);
        return copy;
    }
}
