using System.Globalization;

namespace Pattress.Planning.Buying;

/// <summary>One bracket as the buyer sees it: what could hold it, and what may be found behind it.</summary>
/// <param name="Sizes">Ids of the sizes, per option.</param>
/// <param name="Tools">Ids of bits and setting tools, per option.</param>
public sealed record BracketNeed(
    string Item, int Index, IReadOnlyList<string> Sizes, IReadOnlyList<int> Counts, IReadOnlyList<bool> Main, IReadOnlyList<IReadOnlyList<string>> Tools,
    IReadOnlyList<BuyState> States)
{
    /// <summary>Less likely states are left out: nobody carries a fixing for them (assumed).</summary>
    public const double LeastState = 0.005;

    /// <summary>The need of a planned bracket; null when nothing holds there.</summary>
    public static BracketNeed? Of(string item, BracketPlan plan, Ask ask)
    {
        var options = plan.All.Where(c => c.Best is not null).ToList();
        if (plan.Picked is null || options.Count == 0) return null;
        return new(item, plan.Actions.Index, [.. options.Select(c => c.Size.Id)], [.. options.Select(c => c.Holes.Count)], Mains(options, plan.Picked, ask),
            [.. options.Select(ToolsOf)], StatesOf(plan, options));
    }

    /// <summary>The key of its class: everything but the probabilities.</summary>
    public string Key => string.Join('|', string.Join(' ', Sizes), string.Join(' ', Counts), string.Join(' ', Main), string.Join(' ', Tools.SelectMany(t => t.Append(";"))),
        string.Join(' ', States.SelectMany(s => s.Holds.Append(-1))));

    /// <summary>Those that may be the plan's choice: as sure, and in as good a base, as what the plan picked.</summary>
    private static IReadOnlyList<bool> Mains(IReadOnlyList<Candidate> options, Candidate picked, Ask ask)
    {
        double least = Math.Min(Choice.Rounded(picked.Sure), ask.SureWanted);
        bool board = HouseRules.OnBoard(picked.Spot!.Behind);
        return [.. options.Select(c => c == picked || (Choice.Rounded(c.Sure) >= least && HouseRules.OnBoard(c.Spot!.Behind) == board))];
    }

    private static IReadOnlyList<string> ToolsOf(Candidate c)
    {
        string bit = BracketPlanner.Bit(c.Size, c.Spot!);
        double diameter = BracketPlanner.Diameter(c.Size);
        var tools = new List<string>();
        if (bit != "none") tools.Add(BitId(bit, diameter));
        if (diameter > OrderOfWork.ExploreMm && bit != "none") tools.Add(BitId("masonry", OrderOfWork.ExploreMm));
        if (c.Size.Kind.SettingTool != "none") tools.Add(c.Size.Kind.SettingTool);
        return [.. tools.Distinct(StringComparer.Ordinal)];
    }

    /// <summary>Id of a bit: its kind and diameter, e.g. <c>masonry 5.5</c>.</summary>
    public static string BitId(string bit, double diameterMm) => string.Create(CultureInfo.InvariantCulture, $"{bit} {diameterMm:0.###}");

    /// <summary>Ideas of the wall in which the same options hold are one state; the likeliest first.</summary>
    private static IReadOnlyList<BuyState> StatesOf(BracketPlan plan, IReadOnlyList<Candidate> options) =>
        [.. plan.Ideas.Select(i => (i.Probability, Holds: Holding(options, i))).Where(s => s.Holds.Count > 0)
            .GroupBy(s => string.Join(' ', s.Holds)).Select(g => new BuyState(g.Sum(s => s.Probability), g.First().Holds))
            .Where(s => s.Probability >= LeastState).OrderByDescending(s => Choice.Rounded(s.Probability)).ThenBy(s => string.Join(' ', s.Holds), StringComparer.Ordinal)];

    /// <summary>What holds in an idea; where something better than board holds, board is left out.</summary>
    private static List<int> Holding(IReadOnlyList<Candidate> options, Idea idea)
    {
        var holding = Enumerable.Range(0, options.Count).Where(o => options[o].HoldsIn.Contains(idea)).ToList();
        var better = holding.Where(o => !HouseRules.OnBoard(idea.For(options[o].Size.Kind).Behind)).ToList();
        return better.Count > 0 ? better : holding;
    }
}
