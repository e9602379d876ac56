using Pattress.Jobs;
using Pattress.Papers.Documents;

namespace Pattress.Papers.Sheets;

/// <summary>What to buy: by sort, in whole packs, what the van has taken off.</summary>
internal static class BuyingSheet
{
    private static readonly string[] Sorts = ["fixing", "bit", "tool"];

    public static IReadOnlyList<Block> Blocks(Words words) =>
    [
        .. words.Head("buying-list"),
        .. words.Plan.Buy.Count == 0 ? [new Paragraph(words.T("buy_nothing"), Voice.Lead)] : Lists(words),
        new Paragraph(words.T("buy_note"), Voice.Note),
    ];

    private static IEnumerable<Block> Lists(Words words)
    {
        foreach (string sort in Sorts)
            if (words.Plan.Buy.Where(l => l.Sort == sort).ToList() is { Count: > 0 } lines) yield return List(sort, lines, words);
        yield return new Paragraph(words.T("buy_total", Said.Money(words.Plan.BuyTotal)), Voice.Lead);
        foreach (var assumed in words.Plan.Assumptions.Where(a => a.Code == "assume_prices")) yield return new Paragraph(words.Sentence(assumed), Voice.Note);
    }

    private static Table List(string sort, IReadOnlyList<BuyLine> lines, Words words) => new(
        words.T("buy." + sort),
        [
            new(words.T("col.got"), 8), new(words.T("col.what"), 50), new(words.T("col.needed"), 12, true), new(words.T("col.van"), 12, true),
            new(words.T("col.packs"), 18, true), new(words.T("col.price"), 14, true), new(words.T("col.for"), 16),
        ],
        [.. lines.Select(l => Row(l, words))]);

    private static IReadOnlyList<string> Row(BuyLine line, Words words) =>
    [
        Words.Tick, line.Sort == "bit" ? words.Bit(line.Id) : words.Name(line.Id), Words.Count(line.Needed), Words.Count(line.FromVan),
        line.Packs == 0 ? words.T("none") : words.T("packs", Said.Count(line.Packs), Said.Count(line.PackSize)), words.Money(line.Price), words.LettersOf(line.Items),
    ];
}
