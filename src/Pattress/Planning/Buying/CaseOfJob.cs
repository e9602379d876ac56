using Pattress.Fixings;
using Pattress.Jobs;

namespace Pattress.Planning.Buying;

/// <summary>Groups the brackets of a job into classes and sets up its buying problem.</summary>
public static class CaseOfJob
{
    public static BuyingCase Of(IReadOnlyList<BracketNeed> needs, IReadOnlyList<StockItem> stock, FixingCatalogue catalogue, BuyingRules rules)
    {
        var kinds = needs.SelectMany(n => n.Sizes).Distinct(StringComparer.Ordinal).Select(id => catalogue.Find(id)!)
            .OrderBy(s => Order(catalogue, s)).ToList();
        var tools = needs.SelectMany(n => n.Tools).SelectMany(t => t).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToList();
        return new(
            [.. needs.GroupBy(n => n.Key).Select(g => Class([.. g], kinds, tools))],
            [.. kinds.Select(s => new BuyKind(s.Id, s.Pack, s.PackPrice, InVan(stock, s.Id), s.Minutes))],
            [.. tools.Select(t => new BuyTool(t, t.Contains(' ') ? "bit" : "tool", catalogue.ToolPrices[t.Split(' ')[0]], InVan(stock, StockId(t)) > 0))], rules);
    }

    /// <summary>How a bit or tool is named in the van's stock: <c>bit.masonry.5.5</c>, <c>setting_tool</c>.</summary>
    public static string StockId(string tool) => tool.Contains(' ') ? "bit." + tool.Replace(' ', '.') : tool;

    private static int Order(FixingCatalogue catalogue, FixingSize size)
    {
        for (int i = 0; i < catalogue.Sizes.Count; i++) if (catalogue.Sizes[i].Id == size.Id) return i;
        return -1;
    }

    private static BuyClass Class(IReadOnlyList<BracketNeed> alike, List<FixingSize> kinds, List<string> tools)
    {
        var first = alike[0];
        return new(
            [.. alike.Select(n => n.Item).Distinct(StringComparer.Ordinal)], alike.Count,
            [.. first.Sizes.Select((s, o) => new BuyOption(kinds.FindIndex(k => k.Id == s), first.Counts[o], [.. first.Tools[o].Select(t => tools.IndexOf(t))], first.Main[o]))],
            [.. first.States.Select((s, i) => new BuyState(alike.Sum(n => n.States[i].Probability) / alike.Count, s.Holds))]);
    }

    private static int InVan(IReadOnlyList<StockItem> stock, string id) => stock.Where(s => s.Fixing == id).Sum(s => s.Count);
}
