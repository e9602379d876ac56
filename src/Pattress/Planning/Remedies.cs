using Pattress.Actions;
using Pattress.Fixings;
using Pattress.Jobs;

namespace Pattress.Planning;

/// <summary>What would do where nothing holds, with places and numbers where they are known: another place, a support, a noggin or pattress board, a batten, more brackets.</summary>
public static class Remedies
{
    private const int Most = 5, MostBrackets = 8, MostHoles = 8;

    // Supports further apart than this have others between them that nobody has found (common practice, no source).
    private const double NeighboursMm = 700;

    /// <summary>A support is named as a place when it is at least this likely; a move is proposed when it is at least so much likelier there.</summary>
    private const double Likely = 0.5, Gain = 0.05;

    /// <summary>What the wall may be is answered when it is at least this likely.</summary>
    private const double Often = 0.2;

    public static IReadOnlyList<Reason> For(BracketPlan b, int brackets, WallView wall, Ask ask)
    {
        var said = new List<Reason>();
        double x = b.Actions.At.X;
        if (b.Answer.Why is { Code: "old_hole" } hole) said.Add(new Reason("remedy_clear", Said.Length(hole.Values[2].Number - hole.Values[1].Number)));
        Move(b, wall, said);
        if (ask.Ceiling) said.Add(Joist(x, wall));
        else if (Share(b, Behind.BoardVoid, Behind.LathVoid, Behind.PanelVoid) > Often) Between(x, wall, said);
        else if (Share(b, Behind.BoardDabGap, Behind.BoardFoam) > Often) said.Add(new Reason("remedy_pack"));
        if (b.Picked is null && b.Shown is { } shown && double.IsFinite(shown.NearestUtilisation)) Stronger(b, shown, brackets, ask, said);
        if (said.Count == 0) said.Add(new Reason("remedy_other_wall"));
        return [.. said.Take(Most)];
    }

    private static double Share(BracketPlan b, params Behind[] behind) => b.Ideas.Where(i => behind.Contains(i.First.Behind)).Sum(i => i.Probability);

    private static void Move(BracketPlan b, WallView wall, List<Reason> said)
    {
        double x = b.Actions.At.X, here = b.Ideas.Where(i => i.IntoSupport).Sum(i => i.Probability);
        foreach (var (to, p) in wall.BetterPlaces(x).Where(place => place.Probability > here + Gain).Take(1))
            said.Add(new Reason("remedy_move", Said.Length(Math.Abs(to - x)), Said.Length(to), Said.Percent(p)));
    }

    private static Reason Joist(double x, WallView wall) =>
        wall.Answer.Supports.Where(s => s.Probability > 0).OrderByDescending(s => Choice.Rounded(s.Probability)).ThenBy(s => Math.Abs(s.CentreMm - x)).FirstOrDefault() is { } best
            ? new Reason("remedy_joist_at", Said.Length(Math.Round(best.CentreMm)), Said.Percent(best.Probability))
            : new Reason("remedy_joist");

    /// <summary>A batten across the supports to either side, or a noggin between them.</summary>
    private static void Between(double x, WallView wall, List<Reason> said)
    {
        var known = wall.Answer.Supports.Where(s => s.Probability >= Likely).OrderBy(s => s.CentreMm).ToList();
        if (known.LastOrDefault(s => s.CentreMm <= x) is { } left && known.FirstOrDefault(s => s.CentreMm > x) is { } right && right.CentreMm - left.CentreMm <= NeighboursMm)
        {
            Said[] places = [Said.Length(Math.Round(left.CentreMm)), Said.Length(Math.Round(right.CentreMm))];
            said.AddRange([new Reason("remedy_batten_at", places), new Reason("remedy_noggin_at", places)]);
        }
        else said.AddRange([new Reason("remedy_batten"), new Reason("remedy_noggin")]);
    }

    /// <summary>By what governs: the toe, the pull of a lever, or shear; a person's pull comes to one bracket, however many there are.</summary>
    private static void Stronger(BracketPlan b, Candidate shown, int brackets, Ask ask, List<Reason> said)
    {
        var answer = b.Answer;
        double over = shown.NearestUtilisation, height = b.Actions.Plate.Outline.Max(p => p.Y) - b.Actions.Plate.Outline.Min(p => p.Y);
        bool person = answer.LoadCase.StartsWith("pulled", StringComparison.Ordinal) || answer.LoadCase is "leant_on" or "door_left" or "door_right";
        if (over <= 1) return;
        if (answer.ToeUtilisation > 1 && !ask.ToeStrip) said.Add(new Reason("remedy_strip"));
        if (!person && Math.Ceiling(brackets * over) is var more && more <= MostBrackets) said.Add(new Reason("remedy_more_brackets", Said.Count((int)more), Said.Count(brackets)));
        if (answer.Governs is "lateral" or "shear_arm" or "bearing_masonry" or "bearing_steel" or "board_bearing" or "steel_shear")
        {
            if (Math.Ceiling(shown.Holes.Count * over) is var holes && holes <= MostHoles)
                said.Add(new Reason("remedy_more_holes", Said.Count((int)holes), Said.Count(shown.Holes.Count)));
        }
        else if (b.Actions.Plate.ArmMm > 0) said.Add(new Reason("remedy_arm", Said.Length(Math.Ceiling(height * over / 10) * 10), Said.Length(height), Said.Length(Math.Floor(b.Actions.Plate.ArmMm / over)), Said.Length(b.Actions.Plate.ArmMm)));
        if (!person) said.Add(new Reason("remedy_less", Said.Percent(1 / over)));
    }
}
