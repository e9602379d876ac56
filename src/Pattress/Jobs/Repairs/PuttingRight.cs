using Pattress.Actions;
using Pattress.Actions.Fixtures;
using Pattress.Fixings;
using Pattress.Planning;
using Pattress.Planning.Repairs;

namespace Pattress.Jobs.Repairs;

/// <summary>One way to put it right, planned and priced.</summary>
/// <param name="Fixing">Size to use, or empty where the wall is opened up.</param>
/// <param name="At">Where the bracket goes then.</param>
/// <param name="Verdict">Of the thing so fixed.</param>
/// <param name="Price">Fixings, materials and minutes, in the job's currency.</param>
public sealed record RepairAnswer(string Way, string Fixing, Point At, Verdict Verdict, double Minutes, double WaitHours, decimal Price, Reason Why)
{
    /// <summary>Numbers behind it that nobody measured, beside minutes, waiting and prices.</summary>
    public IReadOnlyList<Assumption> Assumptions { get; init; } = [];
}

/// <summary>
/// A fixing has come away. The hole is entered as an old hole and the thing is planned again: in the same place with what is
/// wide enough to bear beyond the damage, beside it, the whole thing higher or lower, on a bearer plate that bridges it, in the patched
/// hole where that is timber or masonry, or, at last, with a hollow wall opened up.
/// </summary>
public static class PuttingRight
{
    /// <summary>How far a moved bracket goes to each side, mm (assumed): as little as clears the damage first.</summary>
    private static readonly double[] Steps = [60, 100, 150];

    private const string Assumed = "assumed";

    private const string Bearer = "bearer_plate.long";

    /// <summary>The ways there are, best verdict first, then the cheapest. Empty when there is no such bracket.</summary>
    public static IReadOnlyList<RepairAnswer> Of(Job job, string item, int bracket, Remains remains, PlanData data)
    {
        var catalogue = data.Catalogue.With(job.Prices);
        var now = Planner.Plan(job, data).Items.FirstOrDefault(i => i.Id == item);
        if (now is null || now.Brackets.Count <= bracket || bracket < 0) return [];
        var place = now.Brackets[bracket];
        var ways = new List<RepairAnswer>();
        // What nothing holds as a whole is not put back with one bracket.
        if (now.Verdict != Verdict.NotHere)
        {
            ways.AddRange(Same(job, now, place, remains, catalogue));
            ways.AddRange(Patched(job, now, place, remains, catalogue));
        }

        ways.AddRange(Moved(job, now, bracket, remains, data));
        ways.AddRange(Shifted.Of(job, now, bracket, remains, data));
        if (!IsSolid(place)) ways.Add(Opened(job, place.At));
        if (ways.Count == 0) ways.Add(new("elsewhere", "", place.At, Verdict.NotHere, 0, 0, 0, new("repair_elsewhere")));
        return [.. ways.OrderBy(w => w.Verdict).ThenBy(w => w.Price).ThenBy(w => w.Way, StringComparer.Ordinal).Select(w => w with { Assumptions = [.. AssumedOf(w, remains)] })];
    }

    private static IEnumerable<Assumption> AssumedOf(RepairAnswer way, Remains remains)
    {
        if (way.Fixing.Length > 0 && remains.Crushed) yield return new("assume_crushed", [Said.Length(Remains.CrushedMm)], Assumed);
        else if (way.Fixing.Length > 0 && remains.Torn) yield return new("assume_torn", [Said.Length(Remains.TornMm)], Assumed);
        if (way.Way is "patch_wood" or "patch_masonry") yield return new("assume_patch", [Said.Length(RepairWay.WidestPatchMm)], Assumed);
        if (way is { Way: "patch_wood", Why.Code: not "repair_no_dowel_rule" }) { yield return AssumedNumbers.Of("end_grain_share"); yield return new("assume_dowel_sideways", [], Assumed); }
        if (way.Way == "move") yield return new("assume_moves", [Said.Length(Steps[0]), Said.Length(Steps[^1])], Assumed);
        if (way.Way == "shift") { yield return Shifted.Tried; yield return Shifted.Sound; }
    }

    private static IEnumerable<RepairAnswer> Same(Job job, ItemAnswer now, BracketAnswer place, Remains remains, FixingCatalogue catalogue)
    {
        var holding = place.Alternatives.Select(a => a.Fixing).Append(place.Fixing ?? "").Select(catalogue.Find).OfType<FixingSize>().ToList();
        var wider = holding.Where(s => s.HoleMm >= remains.HoleMm && s.BearsWideMm > 0 && s.BearsLongMm >= remains.LostMm && !remains.Crushed && s.Id != Bearer)
            .OrderBy(s => s.Price).FirstOrDefault();
        if (wider is not null) yield return Way("bigger", job, wider, place, Checked(now.Verdict));
        if (holding.FirstOrDefault(s => s.Id == Bearer && s.BearsLongMm >= 2 * remains.LostMm) is { } bearer) yield return Way("bridge", job, bearer, place, Checked(now.Verdict));
    }

    /// <summary>Timber takes a glued dowel and masonry repair mortar, where the hole has stayed a hole; both are drilled anew once hard. Nobody hangs on a patch.</summary>
    private static IEnumerable<RepairAnswer> Patched(Job job, ItemAnswer now, BracketAnswer place, Remains remains, FixingCatalogue catalogue)
    {
        if (now.Class == ConsequenceClass.HoldsPerson || remains.Crushed || remains.HoleMm > RepairWay.WidestPatchMm || catalogue.Find(place.Fixing ?? "") is not { } size) yield break;
        if (place.Section.Layers.Any(l => l.Material == "timber")) yield return Dowelled(job, now, place, size);
        else if (IsSolid(place)) yield return Way("patch_masonry", job, size, place, Checked(now.Verdict));
    }

    /// <summary>In a dowel the screw runs along the grain, where it holds less: too little, or nobody knows how much, and the dowel is advised against.</summary>
    private static RepairAnswer Dowelled(Job job, ItemAnswer now, BracketAnswer place, FixingSize size)
    {
        var (fixture, wall) = (job.Fixtures.First(f => f.Id == now.Id), job.Walls.First(w => w.Id == now.Wall));
        var actions = FixtureLoads.Of(fixture, wall, job.Settings);
        var hold = Dowel.Holds(actions.Brackets.First(b => b.Index == place.Index), place, size, ItemPlanner.AskFor(fixture, wall, actions, job.Settings));
        bool holds = hold is { NotCovered: null } && Choice.Rounded(hold.Utilisation) <= 1;
        var way = Way("patch_wood", job, size, place, holds ? Checked(now.Verdict) : Verdict.NotHere);
        return hold is null or { NotCovered: not null } ? way with { Why = new("repair_no_dowel_rule", Said.Name(size.Id)) }
            : way with { Why = new(holds ? "repair_patch_wood" : "repair_no_dowel", Said.Name(size.Id), Said.Percent(hold.Utilisation)) };
    }

    // Nothing can be fitted behind the face of solid masonry. A wall of which nothing is known may be hollow.
    private static bool IsSolid(BracketAnswer place) =>
        place.Section.Layers is { Count: > 0 } layers && layers.All(l => l.Material is not ("void" or "dab" or "foam" or "laths" or "timber" or "steel"));

    /// <summary>In damaged board nothing is ready: it is pulled at before it carries.</summary>
    private static Verdict Checked(Verdict verdict) => verdict == Verdict.Ready ? Verdict.CheckFirst : verdict;

    private static RepairAnswer Way(string way, Job job, FixingSize size, BracketAnswer place, Verdict verdict)
    {
        var rule = RepairWay.Of(way);
        int count = Math.Max(1, place.Count);
        double minutes = rule.Minutes + (count * size.Minutes);
        return new(way, size.Id, place.At, verdict, minutes, rule.WaitHours, Priced(job, rule.Price + (count * size.Price), minutes), WhyOf(way, size.Id));
    }

    private static IEnumerable<RepairAnswer> Moved(Job job, ItemAnswer now, int bracket, Remains remains, PlanData data)
    {
        var at = now.Brackets[bracket].At;
        foreach (double off in Steps.Where(s => s > remains.LostMm / 2).SelectMany(s => new[] { -s, s }))
        {
            var to = at with { X = at.X + off };
            var again = Planner.Plan(With(job, now, bracket, to, at, remains), data).Items.First(i => i.Id == now.Id);
            if (again.Verdict == Verdict.NotHere) continue;
            var rule = RepairWay.Of("move");
            var size = data.Catalogue.Find(again.Brackets[bracket].Fixing!)!;
            double minutes = rule.Minutes + (again.Brackets[bracket].Count * size.Minutes);
            yield return new("move", size.Id, to, again.Verdict, minutes, rule.WaitHours, Priced(job, rule.Price + (again.Brackets[bracket].Count * size.Price), minutes),
                new(off > 0 ? "repair_move_right" : "repair_move_left", Said.Name(size.Id), Said.Length(Math.Abs(off))));
            yield break;
        }
    }

    /// <summary>The job with the bracket, or the whole thing, moved as that way says, and what it left entered as old holes.</summary>
    /// <param name="id">An id for the old hole; further ones are numbered after it.</param>
    public static Job Moving(Job job, ItemAnswer now, int bracket, RepairAnswer way, Remains remains, string id) =>
        way.Way == "shift" ? Shifted.With(job, now, bracket, way.At.Y - now.Brackets[bracket].At.Y, remains, id)
        : With(job, now, bracket, way.At, now.Brackets[bracket].At, remains, id);

    private static Job With(Job job, ItemAnswer now, int bracket, Point to, Point hole, Remains remains, string id = "came-away") => job with
    {
        Fixtures = [.. job.Fixtures.Select(f => f.Id == now.Id ? f with { Brackets = [.. now.Brackets.Select((b, i) => i == bracket ? to : b.At)] } : f)],
        Walls = [.. job.Walls.Select(w => w.Id == now.Wall ? w with { OldHoles = [.. w.OldHoles, new OldHole(id, hole, remains.LostMm)] } : w)],
    };

    private static RepairAnswer Opened(Job job, Point at)
    {
        var rule = RepairWay.Of("open_up");
        return new("open_up", "", at, Verdict.CheckFirst, rule.Minutes, rule.WaitHours, Priced(job, rule.Price, rule.Minutes), new Reason("repair_open_up"));
    }

    internal static decimal Priced(Job job, decimal materials, double minutes) =>
        decimal.Round(materials + ((decimal)minutes * job.Settings.MinutePrice), 2, MidpointRounding.AwayFromZero);

    private static Reason WhyOf(string way, string size) => way switch
    {
        "bigger" => new("repair_bigger", Said.Name(size)),
        "bridge" => new("repair_bridge", Said.Name(size)),
        _ => new("repair_patch_masonry", Said.Name(size)),
    };
}
