using Pattress.Actions;
using Pattress.Jobs;

namespace Pattress.Planning;

/// <summary>
/// The gates that a plan passes on its way to <c>ready</c>. Strength comes first; then what must be looked at before a
/// hole is drilled, whatever the strength.
/// </summary>
public static class Gates
{
    /// <summary>A verdict with its reason, what would do, and the checks to do first.</summary>
    public sealed record Ruling(Verdict Verdict, Reason Why, IReadOnlyList<Reason> Remedies, IReadOnlyList<CheckToDo> Checks);

    /// <summary>Below this chance that anything holds, the place is given up rather than checked (assumed).</summary>
    public const double GivenUp = 0.15;

    /// <summary>A place is given up only where it is at least this likely what stands behind it; what nobody knows is to be looked at (assumed).</summary>
    public const double Known = 0.5;

    /// <param name="elsewhere">Plans a bracket at another place; null where it does not go.</param>
    public static Ruling Rule(Fixture fixture, WallView wall, IReadOnlyList<BracketPlan> brackets, Ask ask, bool someOff, Func<BracketActions, BracketPlan?> elsewhere)
    {
        if (someOff) return Refused(new Reason("not_here_off_wall"), [new Reason("remedy_other_wall")]);
        var worst = brackets.OrderBy(b => Choice.Rounded(Sure(b))).ThenBy(b => b.Actions.Index).First();
        if (worst.Picked is null || (Choice.Rounded(worst.AnythingHolds) < GivenUp && Choice.Rounded(Likeliest(worst)) >= Known)) return Refused(Nothing(worst, ask), new Remedies(fixture.What, worst, brackets, wall, ask, elsewhere).All());
        var found = new List<(Reason Why, Reason Remedy, CheckToDo Check)>();
        Coating(fixture, wall, ask, found);
        Further(fixture, wall, brackets, found);
        Damp(fixture, wall, brackets, found);
        Doubt(fixture, wall, brackets, ask, found);
        Strips(fixture, wall, brackets, found);
        return found.Count == 0
            ? new(Verdict.Ready, Weakest(brackets).Answer.Why, [], [])
            : new(Verdict.CheckFirst, found[0].Why, [.. found.Select(f => f.Remedy).Distinct()], [.. found.Select(f => f.Check)]);
    }

    /// <summary>The wall itself is to be looked at before any hole in it, whatever hangs there and however it is fixed.</summary>
    internal static bool WallFirst(Fixture fixture, WallView wall, Ask ask)
    {
        var found = new List<(Reason Why, Reason Remedy, CheckToDo Check)>();
        Coating(fixture, wall, ask, found);
        Further(fixture, wall, [], found);
        return found.Count > 0;
    }

    private static double Sure(BracketPlan b) => b.Picked?.Sure ?? -1;

    private static BracketPlan Weakest(IReadOnlyList<BracketPlan> brackets) => brackets.OrderByDescending(b => Choice.Rounded(b.Answer.Utilisation)).First();

    private static Ruling Refused(Reason why, IReadOnlyList<Reason> remedies) => new(Verdict.NotHere, why, remedies, []);

    /// <summary>Chance of the likeliest kind of thing behind the bracket, however thick its face.</summary>
    private static double Likeliest(BracketPlan b) => b.Ideas.GroupBy(i => (i.First.Behind, i.First.Base)).Max(g => g.Sum(i => i.Probability));

    private static Reason Nothing(BracketPlan b, Ask ask)
    {
        if (b.Picked is null) return b.Answer.Why;
        if (b.WantsSupport(ask)) return new("no_support_here", Said.Percent(b.AnythingHolds), Said.Percent(ask.SureWanted));
        return BracketPlan.Nearest(b.All) is { NearestUtilisation: > 1 } near
            ? new("not_here_likely", Said.Name(near.Size.Id), Said.Percent(near.NearestUtilisation), Said.Name(near.NearestIn!.First.BuildUp), Said.Percent(b.AnythingHolds))
            : new("not_here_chance", Said.Percent(b.AnythingHolds), Said.Percent(ask.SureWanted));
    }

    private static void Coating(Fixture fixture, WallView wall, Ask ask, List<(Reason, Reason, CheckToDo)> found)
    {
        var c = wall.Wall.Condition;
        bool old = Cautions.MayHold(ask.Settings, Cautions.AsbestosYear);
        if (c.Sampled == "found") found.Add((new("check_asbestos_found"), new("remedy_trade", Said.Name("trade.asbestos")), Check("sample", fixture, wall, new("check_asbestos_found"))));
        else if (c.Sampled == "not_sampled" && old && c.Coating is "textured" or "unknown")
            found.Add((new("check_coating", Said.Year(Cautions.AsbestosYear)), new("remedy_sample"), Check("sample", fixture, wall, new("check_do_sample"))));
    }

    /// <summary>Walls and coving that only somebody who has looked can speak of.</summary>
    private static void Further(Fixture fixture, WallView wall, IReadOnlyList<BracketPlan> brackets, List<(Reason, Reason, CheckToDo)> found)
    {
        if (wall.Wall.BuiltAs != "usual") Add(wall.Wall.BuiltAs);
        if (wall.Wall.Zones.Any(z => z.Kind == "coving" && brackets.SelectMany(b => b.Answer.Holes).Any(h => z.Area.Contains(h.At)))) Add("coving");
        void Add(string id) => found.Add((new("check_further", Said.Name("built_as." + id)), FurtherWalls.FindOut(id), Check("look", fixture, wall, FurtherWalls.FindOut(id))));
    }

    private static void Damp(Fixture fixture, WallView wall, IReadOnlyList<BracketPlan> brackets, List<(Reason, Reason, CheckToDo)> found)
    {
        bool onBoard = brackets.Any(b => b.Picked?.Spot is { } spot && HouseRules.OnBoard(spot.Behind));
        if (onBoard && wall.Wall.Condition.Moisture is "damp" or "fresh_plaster")
            found.Add((new("check_damp"), new("remedy_dry"), Check("moisture", fixture, wall, new("check_do_dry"))));
    }

    private static void Doubt(Fixture fixture, WallView wall, IReadOnlyList<BracketPlan> brackets, Ask ask, List<(Reason, Reason, CheckToDo)> found)
    {
        foreach (var b in brackets.Where(b => Choice.Rounded(Sure(b)) < ask.SureWanted).OrderBy(Sure).Take(1))
        {
            var check = wall.Settle(b, [fixture.Id]);
            found.Add((b.Answer.Why, new Reason("remedy_check", Said.Name("check." + check.Kind)), check));
        }
    }

    private static void Strips(Fixture fixture, WallView wall, IReadOnlyList<BracketPlan> brackets, List<(Reason, Reason, CheckToDo)> found)
    {
        var touched = brackets.SelectMany(b => b.Answer.Holes).SelectMany(h => CableStrips.Touching(wall.Strips, h.At, h.DiameterMm))
            .Where(s => s.Checked.Length == 0).DistinctBy(s => s.Id);
        foreach (var s in touched)
        {
            bool cable = s.Kind == "cable";
            var words = CableStrips.Words(wall.Wall, s);
            found.Add((new(cable ? "check_cables" : "check_pipes", words), new(cable ? "remedy_detector" : "remedy_band", words),
                Check(cable ? "detector" : "pipes", fixture, wall, new(cable ? "check_do_strip" : "check_do_band", [Said.Words(s.Id), .. words]))));
        }
    }

    private static CheckToDo Check(string kind, Fixture fixture, WallView wall, Reason why) =>
        new(kind, wall.Wall.Id, null, [fixture.Id], why, CheckMinutes.Of(kind), 0, 0);
}
