using Pattress.Jobs;
using Pattress.Papers.Documents;

namespace Pattress.Papers.Sheets;

/// <summary>The sheet for the customer: what hangs on what, what it may carry, what not to do, when to look again.</summary>
internal static class HandOverSheet
{
    public static IReadOnlyList<Block> Blocks(Words words)
    {
        var hangs = words.Plan.Items.Where(i => i.Aftercare is not null).ToList();
        return
        [
            .. words.Head("hand-over"),
            new Paragraph(words.T(hangs.Count > 0 ? "hand_over_lead" : "hand_over_nothing"), Voice.Lead),
            .. hangs.Count > 0 ? Hanging(hangs, words) : [],
            .. NotHung(words),
            new Heading(words.T("customer_know")),
            new Listing([words.T("know.drill"), words.T("know.loose"), words.T("know.keep"), .. words.Sentences(words.Plan.Cautions.Where(c => c.Code == "caution_local_rules"))]),
            new WriteOn(words.T("fitter")), new WriteOn(words.T("handed_on")),
            new SignHere(words.T("signed_fitter"), []), new SignHere(words.T("signed_customer"), []),
        ];
    }

    private static IEnumerable<Block> Hanging(IReadOnlyList<ItemAnswer> items, Words words)
    {
        yield return new Table(words.T("hangs"),
            [new(words.T("col.thing"), 26), new(words.T("col.wall"), 22), new(words.T("col.fixed"), 40), new(words.T("col.carries"), 20), new(words.T("col.look"), 24)],
            [.. items.Select(i => Row(i, words))]);
        if (items.Any(i => i.Verdict == Verdict.CheckFirst)) yield return new Paragraph(words.T("not_settled"), Voice.Boxed);
        yield return new Heading(words.T("not_to_do"));
        foreach (var item in items)
        {
            yield return new Heading(words.Titled(item), 3);
            yield return new Listing(words.Sentences(item.Aftercare!.Donts.Concat(item.Cautions.Where(c => c.Code.StartsWith("caution_cord", StringComparison.Ordinal)))));
        }
        foreach (string source in items.Select(i => i.Aftercare!.Source).Distinct()) yield return new Paragraph(words.T("look_source", Said.Words(source)), Voice.Note);
    }

    private static IReadOnlyList<string> Row(ItemAnswer item, Words words) =>
    [
        words.Titled(item) + (item.Verdict == Verdict.CheckFirst ? " *" : ""), words.WallName(item.Wall),
        string.Join("; ", item.Brackets.Where(b => b.Fixing is not null).GroupBy(b => (b.Fixing, b.BuildUp)).Select(g =>
            words.T("fixed_to", Said.Count(g.Sum(b => b.Count)), Said.Name(g.Key.Fixing!), Said.Name(g.Key.BuildUp)))),
        Carries(item.Aftercare!, words), words.T("look", Said.Words(words.Months(item.Aftercare!.FirstLookMonths)), Said.Words(words.Months(item.Aftercare.LookEveryMonths))),
    ];

    public static string Carries(Aftercare care, Words words) => care.CarriesKg is { } kg ? words.T("up_to", Said.Mass(kg)) : words.T("a_person");

    private static IEnumerable<Block> NotHung(Words words)
    {
        var not = words.Plan.Items.Where(i => i.Verdict == Verdict.NotHere).ToList();
        if (not.Count == 0) yield break;
        yield return new Heading(words.T("not_hung"));
        yield return new Listing([.. not.Select(i => $"{words.Titled(i)}: {words.Sentence(i.Why)}")]);
    }
}
