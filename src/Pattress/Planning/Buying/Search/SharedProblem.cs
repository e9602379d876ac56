namespace Pattress.Planning.Buying.Search;

/// <summary>
/// A buying problem with one kind a class, as classes that share two things only: bits and tools, and the packs of a kind. Costs and ranks are one
/// number, cost x weight + rank, whole, so that the least of it is the least cost and of those the least rank.
/// </summary>
internal sealed class SharedProblem
{
    /// <summary>Most classes (a set of them is one word) and most states of a class (every set of them is looked at).</summary>
    private const int MostClasses = 60, MostStates = 8;

    private SharedProblem(BuyingCase problem, double weight)
    {
        Weight = weight;
        Tools = [.. problem.Tools.Select(t => t.InVan ? 0 : weight * BuyingProgram.Cost(t.Price))];
        int at = 0;
        Groups = [.. problem.Classes.Select((c, i) => new Group(problem, i, weight, ref at))];
        Multipliers = at;
        Packs = [.. problem.Kinds.Select((k, i) => new PackCosts(k, Most(i), problem.Rules, weight))];
    }

    public double Weight { get; }

    public Group[] Groups { get; }

    /// <summary>What each tool costs where nobody has it.</summary>
    public double[] Tools { get; }

    /// <summary>Per kind, what so many of it cost.</summary>
    public PackCosts[] Packs { get; }

    /// <summary>How many prices there are in all, of the items and tools of each class.</summary>
    public int Multipliers { get; }

    /// <summary>Null where rules tie the classes together in another way, or where it is too large.</summary>
    public static SharedProblem? Of(BuyingCase problem)
    {
        var r = problem.Rules;
        if (!r.OneKindPerClass || r.VanOnly || r.Budget is not null || r.MostKinds is not null || r.MostBits is not null) return null;
        if (problem.Classes.Count is 0 or > MostClasses || problem.Classes.Any(c => c.States.Count > MostStates || c.Brackets == 0)) return null;
        // No rank of a choice makes up for a cost that is one higher: each class adds at most its last option, and that or a trip for each state.
        var shared = new SharedProblem(problem, 1 + problem.Classes.Sum(c => c.Options.Count * (1.0 + c.States.Count)));
        return shared.Groups.All(g => g.Main.Any(double.IsFinite)) ? shared : null;
    }

    private int Most(int kind) => Groups.Sum(g => Enumerable.Range(0, g.Options).Where(o => g.Kind[o] == kind).Sum(o => g.Demand[o]));

    /// <summary>What a choice for every class costs.</summary>
    public double CostOf(GroupChoice[] chosen)
    {
        double sum = 0;
        Span<int> wanted = stackalloc int[Packs.Length];
        Span<bool> tools = stackalloc bool[Tools.Length];
        wanted.Clear();
        tools.Clear();
        for (int c = 0; c < chosen.Length; c++)
        {
            sum += chosen[c].Own(Groups[c]);
            chosen[c].Carry(Groups[c], wanted, tools);
        }

        for (int k = 0; k < wanted.Length; k++) sum += Packs[k].Least(wanted[k]);
        for (int t = 0; t < tools.Length; t++) if (tools[t]) sum += Tools[t];
        return sum;
    }
}

/// <summary>What so many fixings of a kind cost with their spare ones, from packs and van.</summary>
internal sealed class PackCosts
{
    private readonly double[] _least;

    public PackCosts(BuyKind kind, int most, BuyingRules rules, double weight)
    {
        double pack = weight * BuyingProgram.Cost(kind.PackPrice), piece = weight * BuyingProgram.Cost(kind.PiecePrice * rules.VanShare);
        _least = new double[most + 1];
        for (int n = 0; n <= most; n++) _least[n] = Cheapest(BuyingChoice.WithSpare(n, rules.SparePercent), kind, pack, piece);
    }

    /// <summary>Greatest number that can be wanted.</summary>
    public int Most => _least.Length - 1;

    public double Least(int wanted) => _least[wanted];

    private static double Cheapest(int wanted, BuyKind kind, double pack, double piece)
    {
        double least = double.PositiveInfinity;
        for (int packs = 0; ; packs++)
        {
            int van = Math.Max(0, wanted - packs * kind.Pack);
            if (van <= kind.InVan) least = Math.Min(least, packs * pack + van * piece);
            if (van == 0) return least;
        }
    }
}
