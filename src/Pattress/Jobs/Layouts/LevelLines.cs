using Pattress.Planning.Layout;

namespace Pattress.Jobs.Layouts;

/// <summary>One thing on a shared line: how far it moves up (down where negative), and its verdict before and then.</summary>
public sealed record OnLine(string Id, double MovesMm, Verdict Before, Verdict After);

/// <summary>A height at which things that hang nearly level on one wall would be level.</summary>
public sealed record LevelLine(string Wall, double YMm, IReadOnlyList<OnLine> Things, Reason Why);

/// <summary>Finds shared heights: each height that one of the things hangs at, and their middle, is planned with all of them there; the best verdicts win, then the least moving.</summary>
public static class LevelLines
{
    /// <summary>Things no further apart in height than this are meant to be level (assumed).</summary>
    private const double LevelMm = 50;

    public static IReadOnlyList<LevelLine> Of(Job job, PlanData data, CancellationToken cancel = default)
    {
        var lines = new List<LevelLine>();
        foreach (var wall in job.Fixtures.Where(f => LayoutRule.Find(f.What) is not null).GroupBy(f => f.Wall, StringComparer.Ordinal))
            foreach (var group in Groups([.. wall.OrderBy(f => f.At.Y)]).Where(g => g.Count > 1 && g[^1].At.Y > g[0].At.Y))
            {
                cancel.ThrowIfCancellationRequested();
                lines.Add(Best(job, group, data));
            }

        return lines;
    }

    /// <summary>Neighbours in height that are close enough, the lowest and the highest of a group too.</summary>
    private static List<List<Fixture>> Groups(IReadOnlyList<Fixture> byHeight)
    {
        var groups = new List<List<Fixture>>();
        foreach (var f in byHeight)
        {
            if (groups.Count > 0 && f.At.Y - groups[^1][0].At.Y <= LevelMm) groups[^1].Add(f);
            else groups.Add([f]);
        }

        return groups;
    }

    private static LevelLine Best(Job job, IReadOnlyList<Fixture> group, PlanData data)
    {
        Verdict[] Verdicts(double? y) => [.. Planner.Plan(job with { Fixtures = [.. group.Select(f => y is { } at ? At(f, at) : f)] }, data).Items.Select(i => i.Verdict)];
        var before = Verdicts(null);
        var tried = group.Select(f => f.At.Y).Append(Math.Round(group.Average(f => f.At.Y))).Distinct().Select(y => (Y: y, After: Verdicts(y))).ToList();
        var (best, after) = tried.OrderBy(t => t.After.Max()).ThenBy(t => t.After.Sum(v => (int)v)).ThenBy(t => group.Sum(f => Math.Abs(f.At.Y - t.Y))).ThenByDescending(t => t.Y).First();
        return new(group[0].Wall, best, [.. group.Select((f, i) => new OnLine(f.Id, best - f.At.Y, before[i], after[i]))],
            new Reason("layout_level", Said.Words(string.Join(", ", group.Select(f => f.Name.Length > 0 ? f.Name : f.Id))), Said.Length(best), Said.Length(group.Max(f => Math.Abs(f.At.Y - best)))));
    }

    /// <summary>The thing at that height, its brackets with it.</summary>
    public static Fixture At(Fixture f, double y) => f with { At = f.At with { Y = y }, Brackets = [.. f.Brackets.Select(b => b with { Y = b.Y + y - f.At.Y })] };
}
