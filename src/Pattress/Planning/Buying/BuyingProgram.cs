using Pattress.Planning.Programs;

namespace Pattress.Planning.Buying;

/// <summary>
/// The buying problem as an integer program. For each class the plan's own kinds are chosen; for each thing that may be
/// found behind it another kind is carried, or a second trip is risked. Expected cost in thousandths of the currency, whole
/// numbers, so that two solvers can be compared exactly.
/// <code>
/// y[c,o]    brackets of class c with option o, sum = n (0 or n where one kind a class is wanted)
/// r[c,s,o]  brackets of c for which o stands in if s is found; with y of the options that hold in s: at least n, or a trip z[c,s]
/// w[c,o]    at least y + r for every s: what must be in hand whatever is found
/// (100 + spare) sum(count w) over the classes of a kind, not above 100 (pack x + u); u from the van
/// y, r at most n b[t] for every bit and tool t
/// x at least the packs that y or w alone needs: said twice, but so the relaxed program is nearly whole
/// </code>
/// </summary>
public sealed class BuyingProgram
{
    /// <summary>Thousandths of the currency in one.</summary>
    public const int Mills = 1000;

    private readonly BuyingCase _case;
    private readonly BuyingRules _rules;
    private readonly ProgramBuilder _program = new();
    private readonly List<double> _ranks = [];
    private readonly List<Term>[] _carried;
    private readonly int[] _packs, _van, _tools;

    public BuyingProgram(BuyingCase problem)
    {
        (_case, _rules) = (problem, problem.Rules);
        _carried = [.. problem.Kinds.Select(_ => new List<Term>())];
        _packs = [.. problem.Kinds.Select((k, i) => Add($"x{i}", _rules.VanOnly ? 0 : MostPacks(i), true, Cost(k.PackPrice), 0))];
        _van = [.. problem.Kinds.Select((k, i) => Add($"u{i}", k.InVan, true, Cost(k.PiecePrice * _rules.VanShare), 0))];
        _tools = [.. problem.Tools.Select((t, i) => Add($"b{i}", _rules.VanOnly && !t.InVan ? 0 : 1, true, t.InVan ? 0 : Cost(t.Price), 0))];
        for (int c = 0; c < problem.Classes.Count; c++) AddClass(c, problem.Classes[c]);
        for (int k = 0; k < problem.Kinds.Count; k++) Stock(k);
        Limits();
        Program = _program.Build();
    }

    public IntegerProgram Program { get; }

    /// <summary>The second sum, for ties: the first options of each class in the catalogue's order, and no trips.</summary>
    public IReadOnlyList<double> Ranks => _ranks;

    /// <summary>What it costs where each class is bought for by itself and nothing is carried besides: the least cost is no more than that, unless a rule forbids it.</summary>
    public double CostAbout { get; private set; }

    /// <summary>What the second sum never exceeds.</summary>
    public double MostRank { get; private set; }

    /// <summary>An amount as a whole number of thousandths.</summary>
    public static double Cost(decimal amount) => (double)decimal.Round(amount * Mills, 0, MidpointRounding.ToEven);

    private int Add(string name, double upper, bool whole, double cost, double rank)
    {
        _ranks.Add(rank);
        return _program.Add(name, upper, whole, cost);
    }

    private void AddClass(int c, BuyClass group)
    {
        int n = group.Brackets;
        var uses = group.Options.Select((o, i) => o.Main ? new Term(AddMain(c, i, group), Times(n)) : (Term?)null).ToArray();
        _program.Just($"all{c}", n, [.. uses.OfType<Term>()]);
        MostRank += Most(n) * (group.Options.Count * (1 + group.States.Count) + group.States.Count);
        CostAbout += group.Options.Select((o, i) => o.Main ? Alone(o, i, group) : double.PositiveInfinity).Min();
        var standIns = group.States.Select((s, i) => AddState(c, i, group, uses)).ToArray();
        for (int o = 0; o < group.Options.Count; o++) Carry(c, o, group, uses[o], standIns);
    }

    private double Alone(BuyOption option, int index, BuyClass group)
    {
        var kind = _case.Kinds[option.Kind];
        double packs = Math.Ceiling(BuyingChoice.WithSpare(group.Brackets * option.Count, _rules.SparePercent) / (double)kind.Pack);
        return packs * Cost(kind.PackPrice) + group.Brackets * Cost(Work(option)) + option.Tools.Sum(t => _case.Tools[t].InVan ? 0 : Cost(_case.Tools[t].Price))
            + group.States.Where(s => !s.Holds.Contains(index)).Sum(s => Cost(_rules.TripPrice * (decimal)s.Probability));
    }

    // A chosen bracket counts n where one kind a class is wanted.
    private double Times(int n) => _rules.OneKindPerClass ? n : 1;

    private double Most(int n) => _rules.OneKindPerClass ? 1 : n;

    private int AddMain(int c, int o, BuyClass group)
    {
        var option = group.Options[o];
        double most = Avoided(_rules, _case.Kinds[option.Kind].Id) ? 0 : Most(group.Brackets);
        int y = Add($"y{c}_{o}", most, true, Times(group.Brackets) * MainCost(_case, group, o), o);
        Tools(y, option, group.Brackets);
        return y;
    }

    private Dictionary<int, Term> AddState(int c, int s, BuyClass group, Term?[] uses)
    {
        var state = group.States[s];
        if (Enumerable.Range(0, uses.Length).All(o => uses[o] is null || state.Holds.Contains(o))) return [];
        int n = group.Brackets;
        var standIns = new Dictionary<int, Term>();
        foreach (int o in state.Holds)
        {
            var option = group.Options[o];
            int r = Add($"r{c}_{s}_{o}", Avoided(_rules, _case.Kinds[option.Kind].Id) ? 0 : Most(n), true, Times(n) * StandInCost(_case, group, s, o), o);
            Tools(r, option, n);
            standIns.Add(o, new(r, Times(n)));
        }

        int z = Add($"z{c}_{s}", _rules.NoSecondTrip ? 0 : 1, true, Cost(_rules.TripPrice * (decimal)state.Probability), Most(n) * group.Options.Count);
        _program.AtLeast($"found{c}_{s}", n, [.. state.Holds.Where(o => uses[o] is not null).Select(o => uses[o]!.Value), .. standIns.Values, new(z, n)]);
        return standIns;
    }

    private decimal Work(BuyOption option) => Work(_case, option);

    private static decimal Work(BuyingCase problem, BuyOption option) => option.Count * (decimal)problem.Kinds[option.Kind].Minutes * problem.Rules.MinutePrice;

    /// <summary>Work on one bracket with an option as its own kind, as far as it holds.</summary>
    internal static double MainCost(BuyingCase problem, BuyClass group, int option) =>
        Cost(Work(problem, group.Options[option]) * (decimal)group.States.Where(s => s.Holds.Contains(option)).Sum(s => s.Probability));

    /// <summary>Work on one bracket with an option as the stand-in for a state, filling what was drilled in vain.</summary>
    internal static double StandInCost(BuyingCase problem, BuyClass group, int state, int option) => Cost(
        (Work(problem, group.Options[option]) + group.Options[option].Count * (decimal)problem.Rules.FillMinutes * problem.Rules.MinutePrice) * (decimal)group.States[state].Probability);

    private void Tools(int unknown, BuyOption option, int n)
    {
        foreach (int t in option.Tools) _program.AtMost($"tool{unknown}_{t}", 0, [new(unknown, 1), new(_tools[t], -Most(n))]);
    }

    private void Carry(int c, int o, BuyClass group, Term? use, Dictionary<int, Term>[] standIns)
    {
        var option = group.Options[o];
        var rows = standIns.Select((r, s) => (IReadOnlyList<Term>)[.. Used(use, group.States[s].Holds.Contains(o)), .. r.TryGetValue(o, out var t) ? new[] { t } : []])
            .Append([.. Used(use, true)]).Where(r => r.Count > 0).DistinctBy(r => string.Join(' ', r)).ToList();
        if (rows.Count == 0) return;
        if (rows.Count == 1)
        {
            _carried[option.Kind].AddRange(rows[0].Select(t => t with { Times = t.Times * option.Count }));
            Packs(option, group.Brackets, rows[0]);
            return;
        }

        int w = Add($"w{c}_{o}", group.Brackets, false, 0, 0);
        for (int i = 0; i < rows.Count; i++) _program.AtMost($"carry{c}_{o}_{i}", 0, [.. rows[i], new(w, -1)]);
        _carried[option.Kind].Add(new(w, option.Count));
        Packs(option, group.Brackets, [new(w, 1)]);
    }

    /// <summary>The packs that so many brackets with this option need whatever else there is, as the steepest line below the stairs.</summary>
    private void Packs(BuyOption option, int n, IReadOnlyList<Term> brackets)
    {
        if (n == 0) return;
        var kind = _case.Kinds[option.Kind];
        double Needed(int b) => Math.Ceiling((BuyingChoice.WithSpare(b * option.Count, _rules.SparePercent) - kind.InVan) / (double)kind.Pack);
        double slope = _rules.OneKindPerClass ? Needed(n) / n : Enumerable.Range(1, n).Min(b => Needed(b) / b);
        if (slope > 0) _program.AtMost($"packs{_packs[option.Kind]}_{brackets[0].Unknown}", 0, [.. brackets.Select(t => t with { Times = t.Times * slope }), new(_packs[option.Kind], -1)]);
    }

    private static IEnumerable<Term> Used(Term? use, bool holds) => holds && use is { } term ? [term] : [];

    private void Stock(int k)
    {
        if (_carried[k].Count == 0) return;
        var kind = _case.Kinds[k];
        _program.AtMost($"stock{k}", 0,
            [.. _carried[k].Select(t => t with { Times = t.Times * (100 + _rules.SparePercent) }), new(_packs[k], -100.0 * kind.Pack), new(_van[k], -100)]);
    }

    private double MostPacks(int k)
    {
        int most = _case.Classes.Sum(c => c.Brackets * c.Options.Where(o => o.Kind == k).Select(o => o.Count).DefaultIfEmpty(0).Max());
        return Math.Ceiling(most * (100 + _rules.SparePercent) / (100.0 * _case.Kinds[k].Pack));
    }

    private void Limits()
    {
        if (_rules.Budget is { } budget)
            _program.AtMost("budget", Cost(budget), [.. _packs.Select((x, k) => new Term(x, Cost(_case.Kinds[k].PackPrice))),
                .. _tools.Select((b, t) => new Term(b, _case.Tools[t].InVan ? 0 : Cost(_case.Tools[t].Price)))]);
        if (_rules.MostBits is { } bits)
            _program.AtMost("bits", bits, [.. _tools.Where((_, t) => _case.Tools[t].Sort == "bit").Select(b => new Term(b, 1))]);
        if (_rules.MostKinds is { } kinds) Kinds(kinds);
    }

    private void Kinds(int most)
    {
        var carried = new List<Term>();
        for (int k = 0; k < _case.Kinds.Count; k++)
        {
            int carry = Add($"k{k}", 1, true, 0, 0);
            _program.AtMost($"packs_of{k}", 0, [new(_packs[k], 1), new(carry, -Math.Max(1, MostPacks(k)))]);
            _program.AtMost($"van_of{k}", 0, [new(_van[k], 1), new(carry, -Math.Max(1, _case.Kinds[k].InVan))]);
            carried.Add(new(carry, 1));
        }

        _program.AtMost("kinds", most, carried);
    }

    internal static bool Avoided(BuyingRules rules, string id) => rules.Avoid.Any(a => a == id || id.StartsWith(a + ".", StringComparison.Ordinal));
}
