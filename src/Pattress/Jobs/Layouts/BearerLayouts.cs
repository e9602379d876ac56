using Pattress.Actions.Fixtures;
using Pattress.Planning;
using Pattress.Planning.Bearers;
using Pattress.Planning.Layout;

namespace Pattress.Jobs.Layouts;

/// <summary>Layouts with timber between brackets and wall: the brackets stay where they are wanted, the timber goes where it is held.</summary>
internal static class BearerLayouts
{
    /// <summary>Fewer brackets than this share expected in supports makes a bearer worth looking at.</summary>
    private const double Enough = 0.95;

    public static IEnumerable<ItemLayout> Of(Job job, Fixture f, WallView wall, LineOfWall line, ItemLayout placed, PlanData data)
    {
        if (placed.Verdict == Verdict.Ready && placed.Meeting >= Enough * placed.Brackets.Count) yield break;
        var actions = FixtureLoads.Of(f, wall.Wall, job.Settings);
        var ask = ItemPlanner.AskFor(f, wall, actions, job.Settings);
        foreach (var rule in BearerRule.All)
        {
            if (Bearers.Of(rule, actions.Brackets, wall, ask, data.Catalogue.With(job.Prices)) is not { } bearer) continue;
            yield return placed with { Kind = rule.Kind, Meeting = bearer.Held.Count, AllMeet = bearer.Sure, Verdict = VerdictOf(bearer, ask, wall), Why = Why(bearer), Bearer = bearer };
        }
    }

    /// <summary>Behind the board nothing is ready before the wall is open; on the face, when every place is sure and no strip is in doubt.</summary>
    private static Verdict VerdictOf(BearerPlan b, Ask ask, WallView wall)
    {
        if (!b.Holds) return Verdict.NotHere;
        bool inDoubt = b.Held.Any(h => CableStrips.Touching(wall.Strips, new(h.At, b.YMm), b.Rule.WidthMm).Any(s => s.Checked.Length == 0));
        return !b.Rule.Behind && !inDoubt && Choice.Rounded(b.Sure) >= ask.SureWanted ? Verdict.Ready : Verdict.CheckFirst;
    }

    private static Reason Why(BearerPlan b)
    {
        string code = b.Rule.Kind switch { "batten" => "layout_batten", "noggin" => "layout_noggin", _ => "layout_pattress" };
        return new(code, Said.Length(b.FromMm), Said.Length(b.ToMm), Said.Words(string.Join(", ", b.Held.Select(h => Math.Round(h.At).ToString(System.Globalization.CultureInfo.InvariantCulture)))),
            Said.Percent(Math.Min(b.Utilisation, 9.99)), Said.Percent(b.Sure), Said.Money(b.Price), Said.Minutes(b.Minutes), Said.Length(b.Rule.ThicknessMm), Said.Length(b.Rule.WidthMm));
    }
}
