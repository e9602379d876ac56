using Pattress.Actions;
using Pattress.Fixings;
using Pattress.Jobs;

namespace Pattress.Planning;

/// <summary>
/// What would do where nothing holds, with places and numbers where they are known: another place, a support, a noggin or
/// pattress board, a batten, more brackets. Only what a fitter can do in a day is proposed; the bounds are assumed.
/// </summary>
/// <param name="what">Kind of thing.</param>
/// <param name="b">The bracket at which nothing holds.</param>
/// <param name="brackets">All of the thing.</param>
/// <param name="elsewhere">Plans a bracket at another place; null where it does not go.</param>
internal sealed class Remedies(string what, BracketPlan b, IReadOnlyList<BracketPlan> brackets, WallView wall, Ask ask, Func<BracketActions, BracketPlan?> elsewhere)
{
    private const int Most = 5, MostBrackets = 8, MostHoles = 4;

    /// <summary>Supports further apart than this have others between them that nobody has found (common practice, no source).</summary>
    private const double NeighboursMm = 700;

    /// <summary>Brackets nearer than this would stand in each other's way, mm.</summary>
    private const double ApartMm = 100;

    /// <summary>A support is named as a place when it is at least this likely; a move is proposed when it makes so much surer.</summary>
    private const double Likely = 0.5, Gain = 0.05;

    /// <summary>What the wall may be is answered when it is at least this likely.</summary>
    private const double Often = 0.2;

    /// <summary>A plate this much taller, or an arm that much shorter, is still the same sort of bracket.</summary>
    private const double SameSort = 1.75;

    /// <summary>Whoever hangs less than this share of the load hangs something else.</summary>
    private const double LeastShare = 0.4;

    // What is put on or hung from these can be less; a screen or a radiator weighs what it weighs.
    private static readonly string[] CanBeLess = ["curtain_pole", "curtain_track", "shelf", "floating_shelf", "cabinet", "coat_rack", "hook", "free"];

    /// <summary>A sound brick may hold this many times what is assumed of any (assumed).</summary>
    private const double WorthTesting = 3;

    private readonly List<Reason> _said = [];

    private double X => b.Actions.At.X;

    public IReadOnlyList<Reason> All()
    {
        if (b.Answer.Why is { Code: "old_hole" } hole) _said.Add(new Reason("remedy_clear", Said.Length(hole.Values[2].Number - hole.Values[1].Number)));
        Move();
        if (ask.Ceiling) _said.Add(Joist());
        else if (Share(Behind.BoardVoid, Behind.LathVoid, Behind.PanelVoid, Behind.SteelStud) > Often) Between();
        else if (Share(Behind.BoardDabGap, Behind.BoardFoam) > Often) _said.Add(new Reason("remedy_pack"));
        if (Weak && BracketPlan.Nearest(b.All) is { NearestUtilisation: > 1 } nearest) Stronger(nearest);
        if (_said.Count == 0) _said.Add(new Reason("remedy_other_wall"));
        return [.. _said.Take(Most)];
    }

    /// <summary>Strength is what is wanting, not a support.</summary>
    private bool Weak => b.Picked is null ? b.Answer.Why.Code == "not_here_weak" : !b.WantsSupport(ask);

    private double Share(params Behind[] behind) => b.Ideas.Where(i => behind.Contains(i.First.Behind)).Sum(i => i.Probability);

    /// <summary>The nearest place by a support at which the plan would hold, and would be surer.</summary>
    private void Move()
    {
        double here = b.Picked?.Sure ?? 0;
        foreach (var (to, _) in wall.BetterPlaces(X).Where(p => brackets.All(o => o == b || Math.Abs(o.Actions.At.X - p.X) >= ApartMm)))
        {
            double there = elsewhere(b.Actions with { At = b.Actions.At with { X = to } })?.Picked?.Sure ?? 0;
            if (there < Math.Max(Likely, here + Gain)) continue;
            _said.Add(new Reason("remedy_move", Said.Length(Math.Abs(to - X)), Said.Length(to), Said.Percent(there), Said.Length(X)));
            return;
        }
    }

    private Reason Joist() =>
        wall.Answer.Supports.Where(s => s.Probability > 0).OrderByDescending(s => Choice.Rounded(s.Probability)).ThenBy(s => Math.Abs(s.CentreMm - X)).FirstOrDefault() is { } best
            ? new Reason("remedy_joist_at", Said.Length(Math.Round(best.CentreMm)), Said.Percent(best.Probability))
            : new Reason("remedy_joist");

    /// <summary>A batten across the supports to either side, or a noggin between them. What a steel stud does not hold, a batten on it does not either.</summary>
    private void Between()
    {
        if (!wall.Answer.Supports.Any(s => s.Probability >= Likely)) _said.Add(new Reason("remedy_find_supports"));
        bool steel = b.Shown?.ShownIn?.First.Behind == Behind.SteelStud;
        var known = wall.Answer.Supports.Where(s => s.Probability >= Likely).OrderBy(s => s.CentreMm).ToList();
        if (known.LastOrDefault(s => s.CentreMm <= X) is { } left && known.FirstOrDefault(s => s.CentreMm > X) is { } right && right.CentreMm - left.CentreMm <= NeighboursMm)
        {
            Said[] places = [Said.Length(Math.Round(left.CentreMm)), Said.Length(Math.Round(right.CentreMm))];
            if (!steel) _said.Add(new Reason("remedy_batten_at", places));
            _said.Add(new Reason("remedy_noggin_at", places));
            return;
        }
        if (!steel) _said.Add(new Reason("remedy_batten"));
        _said.Add(new Reason("remedy_noggin"));
    }

    /// <summary>By what governs: the toe, the pull of a lever, or shear; a person's pull comes to one bracket, however many there are.</summary>
    private void Stronger(Candidate shown)
    {
        var answer = b.Answer;
        double over = shown.NearestUtilisation;
        bool person = answer.LoadCase.StartsWith("pulled", StringComparison.Ordinal) || answer.LoadCase is "leant_on" or "door_left" or "door_right";
        if (answer.ToeUtilisation > 1 && !ask.ToeStrip) _said.Add(new Reason("remedy_strip"));
        if (!person) MoreBrackets(over);
        if (answer.Governs is "lateral" or "shear_arm" or "bearing_masonry" or "bearing_steel" or "board_bearing" or "steel_shear") MoreHoles(shown, over);
        else if (b.Actions.Plate.ArmMm > 0 && over <= SameSort) _said.Add(Arm(over));
        if (!person && 1 / over >= LeastShare && CanBeLess.Contains(what)) _said.Add(new Reason("remedy_less", Said.Percent(1 / over)));
        if (Share(Behind.Masonry, Behind.Aerated) > Often) _said.Add(new Reason(ask.Class == ConsequenceClass.HoldsPerson ? "remedy_designed" : "remedy_backing"));
        // What nobody measured is kept low: where a wall may well hold it, its own tests tell.
        if (Share(Behind.Masonry) > Often && !answer.Working.Any(s => s.Clause == Resisting.OnSiteTests.Clause) && over <= WorthTesting && ask.Class != ConsequenceClass.HoldsPerson) _said.Add(new Reason("remedy_test_plugs"));
    }

    private void MoreBrackets(double over)
    {
        double more = Math.Ceiling(brackets.Count * over);
        if (more <= Math.Min(2 * brackets.Count, MostBrackets)) _said.Add(new Reason("remedy_more_brackets", Said.Count((int)more), Said.Count(brackets.Count)));
    }

    private void MoreHoles(Candidate shown, double over)
    {
        double holes = Math.Ceiling(shown.Holes.Count * over);
        if (holes <= MostHoles) _said.Add(new Reason("remedy_more_holes", Said.Count((int)holes), Said.Count(shown.Holes.Count)));
    }

    private Reason Arm(double over)
    {
        double height = b.Actions.Plate.Outline.Max(p => p.Y) - b.Actions.Plate.Outline.Min(p => p.Y), arm = b.Actions.Plate.ArmMm;
        return new("remedy_arm", Said.Length(Math.Ceiling(height * over / 10) * 10), Said.Length(height), Said.Length(Math.Floor(arm / over)), Said.Length(arm));
    }
}
