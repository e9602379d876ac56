using Pattress.Planning.Buying;

namespace Pattress.Jobs.Buying;

/// <summary>The lines of a solved buying problem, each with its reason: fixings in the catalogue's order, then bits, then tools.</summary>
internal sealed class BuyLines(BuyingCase problem, BuyingChoice choice)
{
    public IReadOnlyList<BuyLine> All() =>
        [.. Enumerable.Range(0, problem.Kinds.Count).Where(k => choice.Carried[k] > 0).Select(Fixing), .. Tools("bit"), .. Tools("tool")];

    private BuyLine Fixing(int k)
    {
        var kind = problem.Kinds[k];
        var users = Users(k);
        return new(kind.Id, "fixing", choice.Carried[k], choice.FromVan[k], choice.Packs[k], kind.Pack, kind.PackPrice, choice.Packs[k] * kind.PackPrice, Items(users)) { Why = Why(k, users) };
    }

    private IEnumerable<BuyLine> Tools(string sort) => Enumerable.Range(0, problem.Tools.Count)
        .Where(t => choice.Tools[t] && problem.Tools[t].Sort == sort).Select(t => Tool(t, problem.Tools[t]));

    private BuyLine Tool(int t, BuyTool tool)
    {
        var users = choice.Classes.Where(c => c.Carried.Any(p => Option(c, p.Option).Tools.Contains(t))).ToList();
        var kinds = users.SelectMany(c => c.Carried.Select(p => Option(c, p.Option)).Where(o => o.Tools.Contains(t))).Select(o => problem.Kinds[o.Kind].Id).Distinct().ToList();
        int van = tool.InVan ? 1 : 0;
        var why = kinds.Count == 1 ? new Reason("buy_tool_one", Said.Name(kinds[0])) : new Reason("buy_tool_many", Said.Count(kinds.Count));
        return new(tool.Id, tool.Sort, 1, van, 1 - van, 1, tool.Price, (1 - van) * tool.Price, Items(users)) { Why = why };
    }

    private BuyOption Option(ClassChoice c, int option) => problem.Classes[c.Class].Options[option];

    private List<ClassChoice> Users(int k) => [.. choice.Classes.Where(c => c.Carried.Any(p => Option(c, p.Option).Kind == k))];

    private List<string> Items(IEnumerable<ClassChoice> users) => [.. users.SelectMany(c => problem.Classes[c.Class].Items).Distinct(StringComparer.Ordinal)];

    private Reason Why(int k, List<ClassChoice> users)
    {
        var mains = users.Where(c => c.Main.Any(m => Option(c, m.Option).Kind == k)).ToList();
        if (mains.Count == 0)
        {
            double p = users.SelectMany(c => c.StandIns.Where(s => Option(c, s.Option).Kind == k).Select(s => problem.Classes[c.Class].States[s.State].Probability)).Max();
            return new("buy_stand_in", Said.Percent(p));
        }

        if (mains.All(c => problem.Classes[c.Class].Options.Count(o => o.Main) == 1)) return new("buy_only");
        int alone = mains.Select(c => Alone(problem.Classes[c.Class])).FirstOrDefault(a => a != k, k);
        return alone == k ? new("buy_cheapest") : new("buy_shared", Said.Name(problem.Kinds[alone].Id));
    }

    /// <summary>The kind that a hand method takes for one bracket: least price and minutes of the bracket alone.</summary>
    private int Alone(BuyClass group) => group.Options.Where(o => o.Main)
        .MinBy(o => o.Count * (problem.Kinds[o.Kind].PiecePrice + (decimal)problem.Kinds[o.Kind].Minutes * problem.Rules.MinutePrice))!.Kind;
}
