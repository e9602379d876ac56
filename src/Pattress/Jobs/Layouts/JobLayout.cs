using Pattress.Actions;
using Pattress.Actions.Fixtures;
using Pattress.Planning;
using Pattress.Planning.Layout;

namespace Pattress.Jobs.Layouts;

/// <summary>Places the brackets of every line of brackets in a job to meet supports where they are likely.</summary>
public static class JobLayout
{
    /// <summary>What a millimetre off even spacing costs against the chance of a support (assumed: 20 mm for a hundredth).</summary>
    private const double StrayPerMm = 0.0005;

    private const double StepMm = 2;

    /// <summary>Chances within a twentieth of each other count as alike.</summary>
    private const double Alike = 20;

    public static LayoutAnswer Of(Job job, PlanData data, CancellationToken cancel = default)
    {
        var house = HouseView.Of(job);
        var items = new List<ItemLayouts>();
        foreach (var f in job.Fixtures)
        {
            cancel.ThrowIfCancellationRequested();
            if (LayoutRule.Find(f.What) is { } rule) items.AddRange(One(job, f, rule, house[f.Wall], data));
        }

        return new(items, LevelLines.Of(job, data, cancel));
    }

    private static IEnumerable<ItemLayouts> One(Job job, Fixture f, LayoutRule rule, WallView wall, PlanData data)
    {
        var now = FixtureLoads.Of(f, wall.Wall, job.Settings).Brackets;
        double width = f.Numbers.GetValueOrDefault("width_mm");
        if (now.Count < 2 || now.Any(b => Math.Abs(b.At.Y - now[0].At.Y) > 1) || width <= 0) yield break;
        var line = new LineOfWall(wall);
        var layouts = new List<ItemLayout> { Judge(job, f, line, "as_placed", [.. now.Select(b => b.At.X)], now, width, data) };
        foreach (var (kind, n, symmetric) in new[] { ("symmetric", now.Count, true), ("free", now.Count, false), ("one_more", now.Count + 1, false) })
        {
            if (n > rule.Most) continue;
            if (Best(f, rule, line, now, width, n, symmetric) is { } xs && !layouts.Any(l => Same(l, xs))) layouts.Add(Judge(job, f, line, kind, xs, now, width, data));
        }

        yield return new(f.Id, f.Name, f.Wall, [.. Ordered(layouts).Concat(BearerLayouts.Of(job, f, wall, line, layouts[0], data)).OrderBy(l => l.Verdict)]);
    }

    private static bool Same(ItemLayout layout, double[] xs) => layout.Brackets.Count == xs.Length && layout.Brackets.Zip(xs).All(p => Math.Abs(p.First.X - p.Second) < StepMm);

    /// <summary>Best verdict first, then the chance that all meet; the simpler one where they are alike.</summary>
    private static IReadOnlyList<ItemLayout> Ordered(List<ItemLayout> layouts) =>
        [.. layouts.OrderBy(l => l.Verdict).ThenByDescending(l => Math.Round((l.AllMeet ?? 0) * Alike)).ThenBy(l => l.Brackets.Count).ThenBy(l => layouts.IndexOf(l))];

    private static double[]? Best(Fixture f, LayoutRule rule, LineOfWall line, IReadOnlyList<BracketActions> now, double width, int n, bool symmetric)
    {
        int half = (int)(width / 2 / StepMm);
        var plate = now[0].Plate;
        double X(int place) => f.At.X + ((place - half) * StepMm);
        int places = (2 * half) + 1;
        var blocked = new bool[places];
        var worth = new double[places];
        for (int i = 0; i < places; i++)
        {
            var at = new Point(X(i), now[0].At.Y);
            blocked[i] = line.Blocked(plate, at);
            worth[i] = line.Meets(plate, at) - (line.Risky(plate, at) ? LineOfWall.StripCost : 0);
        }

        double end = Math.Max(rule.EndMinMm, Math.Min(rule.EndMaxMm, now[0].At.X - (f.At.X - (width / 2))));
        var ask = new LayoutCase(worth, blocked, n, Up(rule.EndMinMm), Down(Math.Max(end, rule.EndMaxMm)), Up(rule.SpanMinMm), Down(rule.SpanMaxMm), StrayPerMm * StepMm, symmetric) { EvenEnd = end / StepMm };
        return LayoutProgram.Best(ask) is { } best ? [.. best.Select(X)] : null;
    }

    private static int Up(double mm) => (int)Math.Ceiling(mm / StepMm);

    private static int Down(double mm) => (int)Math.Floor(mm / StepMm);

    private static ItemLayout Judge(Job job, Fixture f, LineOfWall line, string kind, double[] xs, IReadOnlyList<BracketActions> now, double width, PlanData data)
    {
        var plate = now[0].Plate;
        var brackets = xs.Select(x => new Point(Math.Round(x), now[0].At.Y)).ToList();
        var moved = f with { Brackets = brackets };
        var item = Planner.Plan(job with { Fixtures = [moved] }, data).Items[0];
        double meeting = xs.Sum(x => line.Hits(plate, new(x, now[0].At.Y))), symmetric = Enumerable.Range(0, xs.Length).Max(i => Math.Abs(((xs[i] + xs[^(i + 1)]) / 2) - f.At.X));
        double? all = line.AllMeet(plate, xs, now[0].At.Y);
        return new(kind, brackets, meeting, all, Stray(xs), symmetric, item.Verdict, Why(kind, symmetric, meeting, xs.Length, all));
    }

    private static double Stray(double[] xs) => Enumerable.Range(0, xs.Length).Max(i => Math.Abs(xs[i] - (xs[0] + (i * (xs[^1] - xs[0]) / (xs.Length - 1)))));

    private static Reason Why(string kind, double symmetric, double meeting, int count, double? all)
    {
        string code = kind switch { "as_placed" => "layout_as_placed", "symmetric" => "layout_symmetric", "one_more" => "layout_one_more", _ => "layout_free" };
        return new(code, Said.Length(symmetric), Said.Plain(Math.Round(meeting, 1)), Said.Count(count), Said.Percent(all ?? 0));
    }
}
