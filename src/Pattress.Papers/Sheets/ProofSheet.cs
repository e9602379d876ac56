using Pattress.Jobs;
using Pattress.Jobs.Proofs;
using Pattress.Papers.Documents;
using Pattress.Papers.Templates;

namespace Pattress.Papers.Sheets;

/// <summary>The record of pull tests: how hard each fixing is pulled, what was found so far, and room for what is found next.</summary>
internal static class ProofSheet
{
    public static IReadOnlyList<Block> Blocks(Words words)
    {
        var proofs = ProofOf.All(words.Plan, words.Job).Where(p => p.Scope != "nothing" && (p.Verdict == Verdict.Ready || p.State.Failed > 0)).ToList();
        return
        [
            .. words.Head("proof-record"),
            new Paragraph(words.T("proof_lead")),
            .. proofs.Count == 0 ? [new Paragraph(words.T("proof_nothing"))] : Body(proofs, words),
        ];
    }

    private static IEnumerable<Block> Body(IReadOnlyList<ItemProof> proofs, Words words)
    {
        yield return new Listing(
            [words.T("proof_how.mark"), words.T("proof_how.hold"), words.T("proof_how.moved"), .. words.Sentences(proofs.SelectMany(p => p.Reasons).DistinctBy(r => r.Code))], Bullet.Number);
        foreach (var proof in proofs) foreach (var block in Item(proof, words)) yield return block;
        yield return new WriteOn(words.T("proof_gauge"));
        yield return new WriteOn(words.T("proof_by"));
        yield return new WriteOn(words.T("proof_on"));
        yield return new SignHere(words.T("signed_fitter"), []);
    }

    private static IEnumerable<Block> Item(ItemProof proof, Words words)
    {
        var item = words.Plan.Items.First(i => i.Id == proof.Item);
        yield return new Heading(words.T("proof_of", Said.Words(words.Titled(item)), Said.Words(words.WallName(proof.Wall))), 3);
        yield return new Paragraph(words.T("proof_state", Said.Count(proof.State.Held), Said.Count(proof.State.Failed), Said.Words(words.Sentence(proof.State.Demands))));
        if (proof.Pulls.Count > 0) yield return Pulls(proof, item, words);
        if (Weights(proof).Any()) yield return Hangs(proof, words);
        if (proof.Pulls.Count == 0 && proof.Hangs.Count == 0) yield return Open(item, words);
        if (Done(proof, words) is { Rows.Count: > 0 } done) yield return done;
    }

    private static Table Pulls(ItemProof proof, ItemAnswer item, Words words) => new(
        words.T("proof_pulls"),
        [
            new(words.T("col.bracket"), 8), new(words.T("col.fixing"), 28), new(words.T("col.pull"), 12, true), new(words.T("col.never"), 14, true),
            new(words.T("col.hold"), 11, true), new(words.T("col.allowed"), 14, true), new(words.T("col.pulled"), 15), new(words.T("col.moved"), 15), new(words.T("col.held"), 9),
        ],
        [.. proof.Pulls.Select(p => (IReadOnlyList<string>)
        [
            item.Brackets.FirstOrDefault(b => b.Index == p.Bracket) is { } bracket ? HoleMark.Of(bracket, p.Hole) : Words.Count(p.Bracket + 1), words.Name(p.Fixing),
            words.Force(p.LoadN), words.Force(p.DamageCapN), words.T("seconds", Said.Plain(p.HoldSeconds)), words.Length(p.MovementMm), "", "", Words.Tick,
        ])], Tall: true);

    /// <summary>A weight proves the brackets whose fixings are not pulled out of the wall, as on the page that proves.</summary>
    private static IEnumerable<BracketHang> Weights(ItemProof proof) => proof.Hangs.Where(h => proof.Pulls.All(p => p.Bracket != h.Bracket));

    private static Table Hangs(ItemProof proof, Words words) => new(
        words.T("proof_hangs"),
        [
            new(words.T("col.number"), 12), new(words.T("col.arm"), 14, true), new(words.T("col.weight"), 14, true), new(words.T("col.litres"), 12, true), new(words.T("col.never"), 14, true),
            new(words.T("col.hold"), 11, true), new(words.T("col.allowed"), 14, true), new(words.T("col.moved"), 18), new(words.T("col.held"), 9),
        ],
        [.. Weights(proof).Select(h => (IReadOnlyList<string>)
        [
            Words.Count(h.Bracket + 1), words.Length(h.ArmMm), words.Force(h.WeightN), words.T("litres", Said.Plain(h.Litres)), words.Force(h.DamageCapN),
            words.T("seconds", Said.Plain(h.HoldSeconds)), words.Length(h.MovementMm), "", Words.Tick,
        ])], Tall: true);

    /// <summary>Where the plan gives no pull (people rely on it) the tester writes his own.</summary>
    private static Table Open(ItemAnswer item, Words words) => new(
        words.T("proof_open"),
        [new(words.T("col.number"), 12), new(words.T("col.fixing"), 34), new(words.T("col.pulled"), 20), new(words.T("col.seconds"), 16), new(words.T("col.moved"), 18), new(words.T("col.held"), 10)],
        [.. item.Brackets.Where(b => b.Fixing is not null).Select(b => (IReadOnlyList<string>)[Words.Count(b.Index + 1), words.Fixings(b), "", "", "", Words.Tick])], Tall: true);

    private static Table Done(ItemProof proof, Words words) => new(
        words.T("proof_done"),
        [new(words.T("col.number"), 12), new(words.T("col.pulled"), 18, true), new(words.T("col.seconds"), 14, true), new(words.T("col.moved"), 14, true), new(words.T("col.result"), 24), new(words.T("col.on"), 24)],
        [.. words.Job.Proofs.Where(p => p.Fixture == proof.Item && !p.Withdrawn).Select(p => (IReadOnlyList<string>)
        [
            Words.Count(p.Bracket + 1), words.Force(p.LoadN), p.HeldS is { } s ? words.T("seconds", Said.Plain(s)) : "", p.MovedMm is { } mm ? words.Length(mm) : "",
            words.T("result." + p.Result), p.On,
        ])]);
}
