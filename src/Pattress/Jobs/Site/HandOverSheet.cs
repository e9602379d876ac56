using System.Security.Cryptography;
using System.Text;
using Pattress.Actions;

namespace Pattress.Jobs.Site;

/// <summary>Whether a thing was pulled, and what came of it.</summary>
public enum Proven { NotPulled, SomePulled, Held, Moved }

/// <summary>One thing on the customer's sheet.</summary>
/// <param name="Fixings">What holds it: kind and size, and how many.</param>
/// <param name="CarriesKg">What it was planned for, the thing itself included, kg: no more.</param>
/// <param name="Not">What not to do.</param>
/// <param name="Look">When to look again.</param>
public sealed record HandOverRow(string Item, string What, string Name, string Wall, IReadOnlyList<(string Fixing, int Count)> Fixings, double CarriesKg, Proven Proven, IReadOnlyList<Reason> Not, IReadOnlyList<Reason> Look);

/// <summary>The sheet that is left with the customer: what hangs on what, what it may carry, what not to do, when to look again.</summary>
/// <param name="Rows">Things that the plan calls ready.</param>
/// <param name="Left">Things of the job that are not handed over, with the reason.</param>
/// <param name="Mark">Fingerprint of what the sheet says: a signature is for this and no other.</param>
public sealed record HandOverSheet(string Title, IReadOnlyList<HandOverRow> Rows, IReadOnlyList<HeldBack> Left, string Mark)
{
    public static HandOverSheet Of(Job job, PlanAnswer plan)
    {
        var proofs = ProofList.Of(job, plan).Tasks.ToLookup(t => t.Item);
        var rows = plan.Items.Where(i => i.Verdict == Verdict.Ready).Select(i => Row(job, i, [.. proofs[i.Id]])).ToList();
        return new(job.Title, rows, [.. plan.Items.Where(i => i.Verdict != Verdict.Ready).Select(i => new HeldBack(i.Id, i.Why))], Fingerprint(job.Title, rows));
    }

    /// <summary>The signature that holds for this sheet, or null.</summary>
    public Signature? SignedBy(Job job) => job.Done.Signed.LastOrDefault(s => !s.Withdrawn && s.Sheet == Mark);

    /// <summary>True when an earlier sheet was signed and things have changed since.</summary>
    public bool ChangedSince(Job job) => SignedBy(job) is null && job.Done.Signed.Any(s => !s.Withdrawn);

    /// <summary>The job with the sheet signed.</summary>
    public Job Sign(Job job, string name, IReadOnlyList<IReadOnlyList<Point>> strokes, string id, DateTimeOffset when) => job with
    {
        Done = job.Done with { Signed = [.. job.Done.Signed, new(id, name, Mark, strokes, Stamp.Text(when), false)] },
    };

    private static HandOverRow Row(Job job, ItemAnswer item, IReadOnlyList<ProofTask> proofs) => new(
        item.Id, item.What, item.Name, job.Walls.First(w => w.Id == item.Wall) is { } wall && wall.Name.Length > 0 ? wall.Name : item.Wall,
        [.. item.Brackets.Where(b => b.Fixing is not null).GroupBy(b => b.Fixing!).Select(g => (g.Key, g.Sum(b => b.Count)))],
        Math.Floor(item.MassKg * 10 + 1e-6) / 10, Of(proofs), Not(item), Look(item));

    private static Proven Of(IReadOnlyList<ProofTask> proofs) =>
        proofs.Any(p => p.Last is not null && !p.Held) ? Proven.Moved
        : proofs.All(p => p.Last is null) ? Proven.NotPulled
        : proofs.All(p => p.Held) ? Proven.Held : Proven.SomePulled;

    private static IReadOnlyList<Reason> Not(ItemAnswer item)
    {
        // What a person pulls at is no mass that hangs there.
        List<Reason> said = item.Class == ConsequenceClass.HoldsPerson ? [] : [new("not_more", Said.MassAtMost(item.MassKg))];
        said.Add(new(item.Class == ConsequenceClass.HoldsPerson ? "not_other_use" : "not_lean"));
        if (item.What.Contains("blind", StringComparison.Ordinal) || item.What.Contains("cord", StringComparison.Ordinal)) said.Add(new("not_cords"));
        if (item.Class == ConsequenceClass.Overhead) said.Add(new("not_under"));
        said.Add(new("not_reuse"));
        return said;
    }

    private static IReadOnlyList<Reason> Look(ItemAnswer item) =>
        item.Class is ConsequenceClass.HoldsPerson ? [new("look_person")]
        : item.Class is ConsequenceClass.Overhead ? [new("look_month"), new("look_half_year"), new("look_signs")]
        : [new("look_month"), new("look_year"), new("look_signs")];

    private static string Fingerprint(string title, IReadOnlyList<HandOverRow> rows) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(JsonOut.Text(json =>
        {
            json.WriteStartObject();
            json.WriteString("title", title);
            json.WriteObjects("rows", rows, (j, r) =>
            {
                j.WriteString("item", r.Item);
                j.WriteString("what", r.What);
                j.WriteString("wall", r.Wall);
                j.WriteNumber("carries_kg", r.CarriesKg);
                j.WriteTexts("fixings", [.. r.Fixings.Select(f => f.Fixing + " " + f.Count.ToString(System.Globalization.CultureInfo.InvariantCulture))]);
            });
            json.WriteEndObject();
        }, indented: false))))[..16];
}
