using Pattress.Planning.Programs;

namespace Pattress.Planning.Buying;

/// <summary>A solved buying problem, read back from the values of its program.</summary>
/// <param name="Expected">Packs, tools, van stock, minutes and risked trips: what the program made least.</param>
/// <param name="Packs">Packs to buy, per kind.</param>
/// <param name="FromVan">Fixings taken from the van, per kind.</param>
/// <param name="Carried">Fixings that must be in hand with the spare ones, per kind.</param>
/// <param name="Tools">Which bits and tools are wanted, per tool.</param>
public sealed record BuyingChoice(
    ProgramStatus Status, decimal Expected, decimal Bound, IReadOnlyList<int> Packs, IReadOnlyList<int> FromVan, IReadOnlyList<int> Carried,
    IReadOnlyList<bool> Tools, IReadOnlyList<ClassChoice> Classes)
{
    /// <summary>Who found it: the name of a solver, or <see cref="OwnSearch"/>.</summary>
    public string By { get; init; } = "";

    /// <summary>Name of the program's own search.</summary>
    public const string OwnSearch = "search";

    /// <summary>What is paid in the shop.</summary>
    public decimal Paid(BuyingCase problem) =>
        Packs.Select((p, k) => p * problem.Kinds[k].PackPrice).Sum() + Tools.Select((t, i) => t && !problem.Tools[i].InVan ? problem.Tools[i].Price : 0).Sum();

    /// <summary>Chance that somebody has to go and fetch something, if what is found at one class says nothing of another.</summary>
    public double SecondTrip => 1 - Classes.Aggregate(1.0, (p, c) => p * (1 - c.Uncovered));

    internal static BuyingChoice Of(BuyingCase problem, BuyingProgram program, ProgramAnswer answer)
    {
        var at = program.Program.Unknowns.Select((u, i) => (u.Name, i)).ToDictionary(u => u.Name, u => u.i, StringComparer.Ordinal);
        int Value(string name) => at.TryGetValue(name, out int i) ? (int)Math.Round(answer.Values[i]) : 0;
        var classes = problem.Classes.Select((c, i) => ClassOf(i, c, problem.Rules, Value)).ToList();
        return Of(problem, classes, k => (Value($"x{k}"), Value($"u{k}")), answer);
    }

    /// <summary>A proven choice of the search.</summary>
    /// <param name="cost">Its cost, thousandths.</param>
    internal static BuyingChoice Of(BuyingCase problem, IReadOnlyList<Search.GroupChoice> chosen, double cost)
    {
        var classes = problem.Classes.Select((c, i) => ClassOf(i, c, chosen[i])).ToList();
        return Of(problem, classes, null, new(ProgramStatus.Optimal, cost, cost, [])) with { By = OwnSearch };
    }

    private static BuyingChoice Of(BuyingCase problem, IReadOnlyList<ClassChoice> classes, Func<int, (int Packs, int FromVan)>? taken, ProgramAnswer answer)
    {
        var carried = problem.Kinds.Select((_, k) => WithSpare(classes.Sum(c => c.Carried.Where(p => problem.Classes[c.Class].Options[p.Option].Kind == k)
            .Sum(p => p.Brackets * problem.Classes[c.Class].Options[p.Option].Count)), problem.Rules.SparePercent)).ToList();
        var used = classes.SelectMany(c => c.Carried.SelectMany(p => problem.Classes[c.Class].Options[p.Option].Tools)).ToHashSet();
        var stock = problem.Kinds.Select((kind, k) => taken is null ? Cheapest(kind, problem.Rules, carried[k]) : FewestPacks(kind, problem.Rules, carried[k], taken(k))).ToList();
        return new(answer.Status, (decimal)Math.Round(answer.Cost) / BuyingProgram.Mills, (decimal)Math.Round(answer.Bound) / BuyingProgram.Mills,
            [.. stock.Select(s => s.Packs)], [.. stock.Select(s => s.FromVan)], carried,
            [.. problem.Tools.Select((_, t) => used.Contains(t))], classes);
    }

    /// <summary>Of all ways to have so many in hand that cost the same, the one with the fewest packs.</summary>
    private static (int Packs, int FromVan) FewestPacks(BuyKind kind, BuyingRules rules, int wanted, (int Packs, int FromVan) taken)
    {
        var (packs, fromVan) = taken;
        double pack = BuyingProgram.Cost(kind.PackPrice), piece = BuyingProgram.Cost(kind.PiecePrice * rules.VanShare), cost = packs * pack + fromVan * piece;
        for (int fewer = 0; fewer < packs; fewer++)
        {
            int van = Math.Max(0, wanted - fewer * kind.Pack);
            if (van <= kind.InVan && fewer * pack + van * piece <= cost) return (fewer, van);
        }

        return (packs, fromVan);
    }

    /// <summary>The cheapest way to have so many in hand, and of those the one with the fewest packs.</summary>
    private static (int Packs, int FromVan) Cheapest(BuyKind kind, BuyingRules rules, int wanted)
    {
        double pack = BuyingProgram.Cost(kind.PackPrice), piece = BuyingProgram.Cost(kind.PiecePrice * rules.VanShare), least = double.PositiveInfinity;
        (int Packs, int FromVan) best = default;
        for (int packs = 0, van = wanted; ; packs++)
        {
            van = Math.Max(0, wanted - packs * kind.Pack);
            if (van <= kind.InVan && packs * pack + van * piece < least) (best, least) = ((packs, van), packs * pack + van * piece);
            if (van == 0) return best;
        }
    }

    /// <summary>Whole fixings with their spare ones.</summary>
    internal static int WithSpare(int count, int percent) => (count * (100 + percent) + 99) / 100;


    private static ClassChoice ClassOf(int c, BuyClass group, BuyingRules rules, Func<string, int> value)
    {
        int times = rules.OneKindPerClass ? group.Brackets : 1;
        var mains = group.Options.Select((_, o) => new OptionCount(o, times * value($"y{c}_{o}"))).Where(p => p.Brackets > 0).ToList();
        var standIns = group.States.SelectMany((_, s) => group.Options.Select((_, o) => new StandIn(s, o, times * value($"r{c}_{s}_{o}")))).Where(r => r.Brackets > 0).ToList();
        var trips = Enumerable.Range(0, group.States.Count).Where(s => value($"z{c}_{s}") > 0).ToList();
        return new(c, mains, standIns, Carry(group, mains, standIns), trips, trips.Sum(s => group.States[s].Probability));
    }

    private static ClassChoice ClassOf(int c, BuyClass group, Search.GroupChoice chosen)
    {
        List<OptionCount> main = [new(chosen.Main, group.Brackets)];
        List<StandIn> standIns = [.. chosen.For.Select((o, s) => new StandIn(s, o, group.Brackets)).Where(r => r.Option >= 0)];
        List<int> trips = [.. Enumerable.Range(0, chosen.For.Length).Where(s => chosen.For[s] == Search.GroupChoice.Trip)];
        return new(c, main, standIns, Carry(group, main, standIns), trips, trips.Sum(s => group.States[s].Probability));
    }

    private static List<OptionCount> Carry(BuyClass group, List<OptionCount> mains, List<StandIn> standIns) =>
        [.. group.Options.Select((_, o) => new OptionCount(o, Enumerable.Range(-1, group.States.Count + 1)
            .Max(s => (s < 0 || group.States[s].Holds.Contains(o) ? mains.Where(m => m.Option == o).Sum(m => m.Brackets) : 0)
                + standIns.Where(r => r.State == s && r.Option == o).Sum(r => r.Brackets)))).Where(p => p.Brackets > 0)];
}

/// <summary>So many brackets with one option.</summary>
public readonly record struct OptionCount(int Option, int Brackets);

/// <summary>If this state is found, so many brackets get this option instead.</summary>
public readonly record struct StandIn(int State, int Option, int Brackets);

/// <summary>What was chosen for one class.</summary>
/// <param name="Main">The plan's own kinds.</param>
/// <param name="StandIns">What is carried for when the wall is otherwise.</param>
/// <param name="Trips">States for which nothing is carried.</param>
/// <param name="Uncovered">Their probability.</param>
public sealed record ClassChoice(
    int Class, IReadOnlyList<OptionCount> Main, IReadOnlyList<StandIn> StandIns, IReadOnlyList<OptionCount> Carried, IReadOnlyList<int> Trips, double Uncovered);
