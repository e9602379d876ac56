using Pattress.Jobs;
using Pattress.Papers.Documents;
using Pattress.Papers.Templates;

namespace Pattress.Papers.Sheets;

/// <summary>The record of pull tests: what the plan says of each bracket, and room for what was measured.</summary>
internal static class ProofSheet
{
    public static IReadOnlyList<Block> Blocks(Words words)
    {
        var items = words.Plan.Items.Where(i => i.Verdict != Verdict.NotHere && i.Brackets.Any(b => b.Fixing is not null)).ToList();
        return
        [
            .. words.Head("proof-record"),
            new Paragraph(words.T("proof_lead"), Voice.Lead),
            new Listing([words.T("proof_how.foot"), words.T("proof_how.mark"), words.T("proof_how.hold"), words.T("proof_how.moved"), words.T("proof_how.limits")], Bullet.Number),
            .. items.Select(i => Item(i, words)),
            .. items.Count == 0 ? [new Paragraph(words.T("proof_nothing"))] : Signed(words),
        ];
    }

    private static IReadOnlyList<Block> Signed(Words words) =>
    [
        new WriteOn(words.T("proof_gauge")), new WriteOn(words.T("proof_by")), new WriteOn(words.T("proof_on")), new SignHere(words.T("signed_fitter"), []),
    ];

    private static Table Item(ItemAnswer item, Words words) => new(
        words.T("proof_of", Said.Words(words.Titled(item)), Said.Words(words.WallName(item.Wall))),
        [
            new(words.T("col.bracket"), 10), new(words.T("col.fixing"), 34), new(words.T("col.design_pull"), 18, true), new(words.T("col.pulled"), 20),
            new(words.T("col.seconds"), 16), new(words.T("col.moved"), 18), new(words.T("col.held"), 14),
        ],
        [.. item.Brackets.Where(b => b.Fixing is not null).SelectMany(b => Rows(b, words))], Tall: true);

    private static IEnumerable<IReadOnlyList<string>> Rows(BracketAnswer bracket, Words words) => bracket.Forces.Select((f, i) => (IReadOnlyList<string>)
        [HoleMark.Of(bracket, i), words.Name(bracket.Fixing!), words.Force(f.TensionN), "", "", "", Words.Tick]);
}
