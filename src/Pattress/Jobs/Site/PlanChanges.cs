using Pattress.Jobs.Text;

namespace Pattress.Jobs.Site;

/// <summary>What a finding changed in a plan, in the order of its items.</summary>
public static class PlanChanges
{
    private const double MovedMm = 1;

    /// <summary>One reason for each change; none when the plan stands as it was.</summary>
    public static IReadOnlyList<Reason> Between(PlanAnswer before, PlanAnswer after) =>
        [.. after.Items.SelectMany(now => before.Items.FirstOrDefault(i => i.Id == now.Id) is { } was ? Of(was, now) : [])];

    private static IEnumerable<Reason> Of(ItemAnswer was, ItemAnswer now)
    {
        var name = now.Name.Length > 0 ? Said.Words(now.Name) : Said.Name("fixture." + now.What);
        if (was.Verdict != now.Verdict) yield return new("change_verdict", name, Verdict(was), Verdict(now));
        foreach (var (a, b) in was.Brackets.Join(now.Brackets, b => b.Index, b => b.Index, (a, b) => (a, b)))
        {
            var number = Said.Count(b.Index + 1);
            if (a.Fixing != b.Fixing) yield return new("change_fixing", name, number, Fixing(a), Fixing(b));
            else if (a.Fixing is not null && a.Count != b.Count) yield return new("change_count", name, number, Said.Count(a.Count), Said.Count(b.Count));
            if (Math.Abs(a.At.X - b.At.X) > MovedMm || Math.Abs(a.At.Y - b.At.Y) > MovedMm) yield return new("change_moved", name, number, Said.Length(b.At.X), Said.Length(b.At.Y));
        }
    }

    private static Said Verdict(ItemAnswer item) => Said.Name("verdict_" + Words.Of(item.Verdict));

    private static Said Fixing(BracketAnswer bracket) => Said.Name(bracket.Fixing ?? "fixing.none");
}
