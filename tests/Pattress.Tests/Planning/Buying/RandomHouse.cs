using Pattress.Planning.Buying;

namespace Pattress.Tests.Planning.Buying;

/// <summary>Made-up buying problems: classes of brackets, kinds with packs and prices, bits and one setting tool. All numbers are invented.</summary>
public static class RandomHouse
{
    /// <param name="brackets">Brackets in all, spread over the classes.</param>
    public static BuyingCase Of(int seed, int classes, int brackets, int kinds, bool oneKind = true)
    {
        var random = new Random(seed);
        var made = Enumerable.Range(0, kinds).Select(k => Kind(random, k)).ToList();
        var tools = Enumerable.Range(0, Math.Max(2, kinds / 4)).Select(t => new BuyTool($"masonry {t + 4}", t == 0 ? "tool" : "bit", random.Next(200, 900) / 100m, random.Next(4) == 0)).ToList();
        var toolsOf = made.Select(_ => Enumerable.Range(0, tools.Count).Where(t => random.NextDouble() < 1.3 / tools.Count).ToList()).ToList();
        return new([.. Enumerable.Range(0, classes).Select(c => Class(random, c, Share(brackets, classes, c), kinds, toolsOf))], made, tools, new BuyingRules { OneKindPerClass = oneKind });
    }

    private static int Share(int brackets, int classes, int c) => brackets / classes + (c < brackets % classes ? 1 : 0);

    private static BuyKind Kind(Random random, int k)
    {
        int pack = new[] { 1, 4, 10, 20, 25, 50, 100 }[random.Next(7)];
        return new($"kind_{k}.medium", pack, random.Next(60, 900) / 100m, random.Next(3) == 0 ? random.Next(1, 15) : 0, random.Next(2, 11) / 2.0);
    }

    private static BuyClass Class(Random random, int c, int brackets, int kinds, List<List<int>> tools)
    {
        var mine = Enumerable.Range(0, kinds).Where(_ => random.Next(100) < 45).DefaultIfEmpty(random.Next(kinds)).ToList();
        var options = mine.Select(k => new BuyOption(k, random.Next(1, 4), tools[k], random.Next(100) < 70)).ToList();
        if (!options.Any(o => o.Main)) options[0] = options[0] with { Main = true };
        return new([$"thing{c}"], brackets, options, States(random, options.Count));
    }

    private static List<BuyState> States(Random random, int options)
    {
        double likely = 0.6 + 0.39 * random.NextDouble();
        var all = Enumerable.Range(0, options).ToList();
        double[] chances = [likely, (1 - likely) * 0.7, (1 - likely) * 0.3];
        return [.. chances.Take(random.Next(1, 4)).Select((p, s) => new BuyState(p, [.. all.Where(_ => s == 0 || random.Next(100) < 50).DefaultIfEmpty(random.Next(options))]))
            .DistinctBy(s => string.Join(' ', s.Holds))];
    }
}
