using Pattress.Jobs;
using Pattress.Papers.Documents;

namespace Pattress.Papers.Sheets;

/// <summary>Labels to cut out: what a thing carries. Only for what is ready; what is still to be checked has none.</summary>
internal static class LabelSheet
{
    public static IReadOnlyList<Block> Blocks(Words words) =>
    [
        .. words.Head("labels"),
        new Paragraph(words.T("labels_lead"), Voice.Note),
        .. words.Plan.Items.Where(i => i is { Verdict: Verdict.Ready, Aftercare: not null }).Select(i => Label(i, words)),
        .. Without(words),
    ];

    private static CutOut Label(ItemAnswer item, Words words) => new(
        item.Aftercare!.CarriesKg is { } kg ? words.T("label_carries", Said.Mass(kg)) : words.T("label_person"),
        [
            words.NameOf(item), words.T(item.Aftercare.CarriesKg is null ? "label_tested" : "label_own_weight"),
            words.T("label_fixed", Said.Words(words.Date), Said.Words(words.Months(item.Aftercare.FirstLookMonths)), Said.Words(words.Months(item.Aftercare.LookEveryMonths))),
        ]);

    private static IEnumerable<Block> Without(Words words)
    {
        var without = words.Plan.Items.Where(i => i.Verdict != Verdict.Ready).ToList();
        if (without.Count == 0) yield break;
        yield return new Heading(words.T("labels_without"), 3);
        yield return new Listing([.. without.Select(i => $"{words.Titled(i)}: {words.Verdict(i.Verdict)}")]);
    }
}
