using Pattress.Actions;
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
            yield return placed with { Kind = rule.Kind, Meeting = bearer.Held.Count, AllMeet = bearer.Sure, Verdict = VerdictOf(bearer, ask, wall, Gates.WallFirst(f, wall, ask)), Why = Why(bearer), Bearer = bearer, Enter = Entered(bearer, actions) };
        }
    }

    /// <summary>Behind the board nothing is ready before the wall is open; on the face, when every place is sure and no strip is in doubt.</summary>
    private static Verdict VerdictOf(BearerPlan b, Ask ask, WallView wall, bool wallFirst)
    {
        if (!b.Holds) return Verdict.NotHere;
        if (wallFirst) return Verdict.CheckFirst;
        bool inDoubt = b.Held.Any(h => CableStrips.Touching(wall.Strips, new(h.At, b.YMm), b.Rule.WidthMm).Any(s => s.Checked.Length == 0));
        return !b.Rule.Behind && !inDoubt && Choice.Rounded(b.Sure) >= ask.SureWanted ? Verdict.Ready : Verdict.CheckFirst;
    }

    private static Reason Why(BearerPlan b)
    {
        var what = Said.Name("bearer." + b.Rule.Kind);
        if (b.Held.Where(h => h.Fixing is null).Select(h => (double?)h.At).FirstOrDefault() is { } at) return new("layout_bearer_unheld", what, Said.Length(at));
        if (b.Screw is null) return new("layout_bearer_no_screw", what, Said.Length(b.Rule.ThicknessMm));
        if (b.Bent > 1) return new("layout_bearer_bends", what, Said.Percent(b.Bent));
        string code = b.Rule.Kind switch { "batten" => "layout_batten", "noggin" => "layout_noggin", _ => "layout_pattress" };
        return new(code, Said.Length(b.FromMm), Said.Length(b.ToMm), Places(b),
            Said.Percent(b.Utilisation), Said.Percent(b.Sure), Said.Money(b.Price), Said.Minutes(b.Minutes), Said.Length(b.Rule.ThicknessMm), Said.Length(b.Rule.WidthMm));
    }

    /// <summary>Mass of the timber, kg/m³ (assumed, above the mean of C16 and C24 in EN 338).</summary>
    private const double TimberKgPerM3 = 500;

    /// <summary>How a batten on the face gets into the job: as a thing of its own that carries the other. Timber behind the board is taken over as a part of the wall.</summary>
    private static Reason? Entered(BearerPlan b, FixtureActions actions)
    {
        if (b.Rule.Behind || !b.Holds) return null;
        double timber = b.Rule.ThicknessMm * b.Rule.WidthMm * (b.ToMm - b.FromMm) * 1e-9 * TimberKgPerM3;
        return new("layout_batten_enter", Said.Name("fixture.free"), Said.Mass(actions.MassKg + timber), Said.Length(actions.Brackets.Max(p => p.Plate.ArmMm) + b.Rule.ThicknessMm),
            Said.Length(b.YMm), Places(b), Said.Name(b.Screw!), Said.Count(actions.Brackets.Max(p => p.Plate.Holes.Count)));
    }

    private static Said Places(BearerPlan b) => Said.Words(string.Join(", ", b.Held.Select(h => Math.Round(h.At).ToString(System.Globalization.CultureInfo.InvariantCulture))));
}
