using Pattress.Actions;
using Pattress.Jobs;
using Pattress.Jobs.Site;
using Pattress.Jobs.Text;
using Pattress.Papers.Documents;

namespace Pattress.Papers.Sheets;

/// <summary>The sheet for the customer: what hangs on what, what it may carry, what not to do, when to look again; signed on the glass or on paper.</summary>
internal static class HandOverPaper
{
    public static IReadOnlyList<Block> Blocks(Words words)
    {
        var sheet = HandOverSheet.Of(words.Job, words.Plan);
        return
        [
            .. words.Head("hand-over"),
            new Paragraph(words.T(sheet.Rows.Count > 0 ? "hand_over_lead" : "hand_over_nothing")),
            .. sheet.Rows.Count > 0 ? Hanging(sheet, words) : [],
            .. NotHung(sheet, words),
            new Heading(words.T("customer_know")),
            new Listing([words.T("know.drill"), words.T("know.loose"), words.T("know.keep"), .. words.Sentences(words.Plan.Cautions.Where(c => c.Code == "caution_local_rules"))]),
            .. Signed(sheet, words),
        ];
    }

    /// <summary>What a thing may carry, rounded down: for what holds a person no mass says it.</summary>
    public static string Carries(HandOverRow row, Words words) =>
        HoldsPerson(row, words) ? words.T("a_person") : words.T("up_to", Said.Words(Shows.MassAtMost(row.CarriesKg, words.Settings)));

    public static bool HoldsPerson(HandOverRow row, Words words) => words.Plan.Items.First(i => i.Id == row.Item).Class == ConsequenceClass.HoldsPerson;

    private static IEnumerable<Block> Hanging(HandOverSheet sheet, Words words)
    {
        yield return new Table(words.T("hangs"),
            [new(words.T("col.thing"), 24), new(words.T("col.wall"), 20), new(words.T("col.fixed"), 42), new(words.T("col.carries"), 22), new(words.T("col.proven"), 20)],
            [.. sheet.Rows.Select(r => Row(r, words))]);
        yield return new Heading(words.T("not_to_do"));
        foreach (var row in sheet.Rows)
        {
            var item = words.Plan.Items.First(i => i.Id == row.Item);
            yield return new Heading(words.Titled(item), 3);
            yield return new Listing([.. words.Sentences(row.Not), .. words.Sentences(item.Cautions.Where(c => c.Code.StartsWith("caution_cord", StringComparison.Ordinal))), .. words.Sentences(row.Look)]);
        }
    }

    private static IReadOnlyList<string> Row(HandOverRow row, Words words)
    {
        var item = words.Plan.Items.First(i => i.Id == row.Item);
        string fixings = string.Join("; ", item.Brackets.Where(b => b.Fixing is not null).GroupBy(b => (b.Fixing, b.BuildUp)).Select(g =>
            words.T("fixed_to", Said.Count(g.Sum(b => b.Count)), Said.Name(g.Key.Fixing!), Said.Name(g.Key.BuildUp))));
        return [words.Titled(item), row.Wall, fixings, Carries(row, words), words.T("proven." + row.Proven.ToString().ToLowerInvariant())];
    }

    private static IReadOnlyList<Block> NotHung(HandOverSheet sheet, Words words) => sheet.Left.Count == 0 ? [] :
    [
        new Heading(words.T("not_hung")),
        new Listing([.. sheet.Left.Select(l => $"{words.Titled(words.Plan.Items.First(i => i.Id == l.Item))}: {words.Sentence(l.Why)}")]),
    ];

    private static IReadOnlyList<Block> Signed(HandOverSheet sheet, Words words)
    {
        var signature = sheet.SignedBy(words.Job);
        return
        [
            .. sheet.ChangedSince(words.Job) ? [new Paragraph(words.T("changed_since"), Voice.Boxed)] : Array.Empty<Block>(),
            new WriteOn(words.T("fitter")),
            new WriteOn(words.T("handed_on"), signature is null ? "" : Day(signature.On)),
            new SignHere(words.T("signed_fitter"), []),
            new SignHere(signature is { Name.Length: > 0 } ? words.T("signed_by", Said.Words(signature.Name)) : words.T("signed_customer"), signature?.Strokes ?? []),
        ];
    }

    // The day of "2026-01-02T03:04:05Z"; what is shorter stands as it is.
    private static string Day(string moment) => moment.Length > 10 ? moment[..10] : moment;
}
