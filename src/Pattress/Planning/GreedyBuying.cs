using Pattress.Fixings;
using Pattress.Jobs;

namespace Pattress.Planning;

/// <summary>
/// The buying list that comes with every plan: counts by kind and size, van stock first, whole packs, one bit a diameter and
/// the setting tools. Greedy: each bracket's own cheapest choice is taken as it is.
/// </summary>
public static class GreedyBuying
{
    /// <summary>One fixing in so many is spoilt in setting (assumed).</summary>
    public const double SpareRate = 0.05;

    /// <summary>Buying lines in the order fixings, bits, tools; each by id.</summary>
    public static IReadOnlyList<BuyLine> Lines(IReadOnlyList<ItemAnswer> items, IReadOnlyList<StockItem> stock, FixingCatalogue catalogue)
    {
        var wanted = items.Where(i => i.Verdict != Verdict.NotHere)
            .SelectMany(i => i.Brackets.Where(b => b.Fixing is not null).Select(b => (Item: i.Id, Bracket: b))).ToList();
        var fixings = wanted.GroupBy(w => w.Bracket.Fixing!, StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => Fixing(catalogue.Find(g.Key)!, g.Sum(w => w.Bracket.Count), stock, Ids(g.Select(w => w.Item))));
        var bits = wanted.SelectMany(w => w.Bracket.Holes.Where(h => h.Bit != "none").SelectMany(h => Bits(h).Select(id => (w.Item, Id: id))))
            .GroupBy(b => b.Id, StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => One(g.Key, "bit", catalogue.ToolPrices[g.Key.Split(' ')[0]], stock, Ids(g.Select(b => b.Item))));
        var tools = wanted.Select(w => (w.Item, Tool: catalogue.Find(w.Bracket.Fixing!)!.Kind.SettingTool)).Where(t => t.Tool != "none")
            .GroupBy(t => t.Tool, StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => One(g.Key, "tool", catalogue.ToolPrices[g.Key], stock, Ids(g.Select(t => t.Item))));
        return [.. fixings, .. bits, .. tools];
    }

    /// <summary>Id of a bit: its kind and diameter, e.g. <c>masonry 5.5</c>.</summary>
    public static string BitId(HoleAnswer hole) => Buying.BracketNeed.BitId(hole.Bit, hole.DiameterMm);

    /// <summary>What drills a hole, and before a wide one what explores.</summary>
    private static IEnumerable<string> Bits(HoleAnswer hole) => hole.DiameterMm > OrderOfWork.ExploreMm
        ? [BitId(hole), Buying.BracketNeed.BitId("masonry", OrderOfWork.ExploreMm)]
        : [BitId(hole)];

    private static BuyLine Fixing(FixingSize size, int count, IReadOnlyList<StockItem> stock, IReadOnlyList<string> items)
    {
        int needed = count + (int)Math.Ceiling(count * SpareRate);
        int van = Math.Min(needed, InVan(stock, size.Id));
        int packs = (needed - van + size.Pack - 1) / size.Pack;
        decimal pack = size.PackPrice;
        return new(size.Id, "fixing", needed, van, packs, size.Pack, pack, packs * pack, items);
    }

    private static BuyLine One(string id, string sort, decimal price, IReadOnlyList<StockItem> stock, IReadOnlyList<string> items)
    {
        int van = Math.Min(1, InVan(stock, Buying.CaseOfJob.StockId(id)));
        return new(id, sort, 1, van, 1 - van, 1, price, (1 - van) * price, items);
    }

    private static int InVan(IReadOnlyList<StockItem> stock, string id) => stock.Where(s => s.Fixing == id).Sum(s => s.Count);

    private static IReadOnlyList<string> Ids(IEnumerable<string> ids) => [.. ids.Distinct(StringComparer.Ordinal)];
}
