using Pattress.Actions;
using Pattress.Fixings;
using Pattress.Jobs;
using Pattress.Strength.Mechanisms;
using Pattress.Strength.Standards.EN_1995_1_1_2004;

namespace Pattress.Planning.Bearers;

/// <summary>Where a bearer is held, and how.</summary>
/// <param name="Fixing">Size there; null where nothing holds.</param>
/// <param name="Count">Fixings there.</param>
/// <param name="Sure">How sure the wall is there.</param>
public readonly record struct HeldAt(double At, string? Fixing, int Count, double Utilisation, double Sure);

/// <summary>A bearer worked out: what holds it, what hangs on it, how far it is bent, what it costs.</summary>
/// <param name="FromMm">Its left end from the wall's left corner.</param>
/// <param name="YMm">Its middle above the floor.</param>
/// <param name="Held">Where it is fixed to the wall.</param>
/// <param name="Screw">Screw of the brackets into it; null where none holds.</param>
/// <param name="ScrewUtilisation">Of the worst bracket on it.</param>
/// <param name="Bent">Bending stress over design strength.</param>
/// <param name="Sure">How sure the least sure place is.</param>
/// <param name="Price">Timber, fixings and minutes, in the job's currency.</param>
public sealed record BearerPlan(
    BearerRule Rule, double FromMm, double ToMm, double YMm, IReadOnlyList<HeldAt> Held, string? Screw, double ScrewUtilisation, double Bent, double Sure,
    double Minutes, decimal Price)
{
    public bool Holds => Screw is not null && Bent <= 1 && Held.All(h => h.Fixing is not null);

    /// <summary>The greatest of all utilisations.</summary>
    public double Utilisation => Math.Max(Math.Max(Bent, ScrewUtilisation), Held.Select(h => h.Utilisation).DefaultIfEmpty(0).Max());
}

/// <summary>
/// Works a bearer out. Where it is held is a bracket like any other, planned against all that the wall may be there; its load comes from the beam.
/// A bearer behind the board is let in between two supports that are seen once the wall is open, and screwed to their sides.
/// </summary>
public static class Bearers
{
    /// <summary>How far a bearer runs past what holds it or hangs on it; a bracket may hang out no further than that, mm (assumed).</summary>
    private const double PastMm = 60, HangOutMm = 120;

    /// <summary>What is held nowhere else is held at this distance, mm: in masonry and lintels (assumed).</summary>
    private const double StepMm = 400;

    /// <summary>From a screw to the edge of the timber, mm: 3 d of a 5 mm screw (EN 1995-1-1 Table 8.2, the edge without load).</summary>
    private const double EdgeMm = 15;

    private const double Likely = 0.5;

    /// <summary>The bearer under these brackets, or null where there is nothing to hold it.</summary>
    public static BearerPlan? Of(BearerRule rule, IReadOnlyList<BracketActions> brackets, WallView wall, Ask ask, FixingCatalogue catalogue)
    {
        double first = brackets.Min(b => b.At.X), last = brackets.Max(b => b.At.X), y = brackets[0].At.Y;
        var places = Places(rule, wall, first, last, y);
        if (brackets.Any(b => !OnIt(rule, b, y))) return null;
        if (places.Count < 2 || places[0] > first + HangOutMm || places[^1] < last - HangOutMm) return null;
        if (Carried(brackets, places) is not { } carried) return null;
        var held = places.Select((x, i) => Held(rule, x, y, carried[i], wall, ask, catalogue)).ToList();
        var hung = brackets.Select(b => BracketPlanner.Plan(b, [Timber(rule.Behind ? BoardMm : 0, rule.ThicknessMm, b.Plate.Holes.Count)], ask, wall, Within(rule, b.Plate, catalogue))).ToList();
        double from = Math.Max(0, Math.Min(places[0], first) - PastMm), to = Math.Min(wall.Wall.WidthMm, Math.Max(places[^1], last) + PastMm);
        double f_md = Section2and3.k_mod((int)Longest(brackets), ask.Settings.ServiceClass, null) * rule.BendingMpa / Section2and3.gamma_M(1, null);
        double bent = BearerBeam.Of(places, Loads(brackets, c => c.Design))!.Bent(rule.ThicknessMm, rule.WidthMm, f_md);
        double minutes = rule.Minutes + rule.MinutesPerM * (to - from) / 1000 + held.Sum(h => h.Count * (catalogue.Find(h.Fixing ?? "")?.Minutes ?? 0));
        decimal price = (decimal)(to - from) / 1000 * rule.PricePerM + held.Sum(h => h.Count * (catalogue.Find(h.Fixing ?? "")?.Price ?? 0)) + (decimal)minutes * ask.Settings.MinutePrice;
        bool allHung = hung.All(h => h.Picked is not null);
        return new(rule, from, to, y, held, allHung ? hung[0].Picked!.Size.Id : null, allHung ? hung.Max(h => h.Picked!.Hold!.Utilisation) : double.PositiveInfinity,
            bent, held.Min(h => h.Sure), minutes, decimal.Round(price, 2, MidpointRounding.AwayFromZero));
    }

    /// <summary>Every screw of the bracket finds the bearer, clear of its edges: not so where brackets hang at two heights, or a plate is taller than the timber is wide.</summary>
    internal static bool OnIt(BearerRule rule, BracketActions bracket, double y) =>
        bracket.Plate.Holes.All(h => Math.Abs(bracket.At.Y + h.Y - y) <= rule.WidthMm / 2 - EdgeMm);

    /// <summary>Screws that do not come out behind the bearer: there may be masonry, a cable, or the face of the next room.</summary>
    internal static FixingCatalogue Within(BearerRule rule, BracketPlate plate, FixingCatalogue catalogue) => catalogue with
    {
        Sizes = [.. catalogue.Sizes.Where(s => s.Kind.HoldsBy != HoldsBy.ThreadInWood || s.LengthMm - plate.ThicknessMm <= (rule.Behind ? BoardMm : 0) + rule.ThicknessMm)],
    };

    /// <summary>Supports under the bearer, and where it crosses masonry or a lintel every so often.</summary>
    private static List<double> Places(BearerRule rule, WallView wall, double first, double last, double y)
    {
        var studs = wall.Answer.Supports.Where(s => s.Probability >= Likely).Select(s => Math.Round(s.CentreMm)).Order().ToList();
        double left = studs.LastOrDefault(x => x <= first, double.NaN), right = studs.FirstOrDefault(x => x >= last, double.NaN);
        var within = studs.Where(x => x >= (double.IsNaN(left) ? first - HangOutMm : left) && x <= (double.IsNaN(right) ? last + HangOutMm : right)).ToList();
        if (rule.Behind) return within;
        var solid = wall.Wall.Zones.Where(z => z.Kind == "lintel" && z.Area.Y <= y && z.Area.Top >= y).Select(z => (From: z.Area.X + 50, To: z.Area.Right - 50));
        if (studs.Count == 0) solid = solid.DefaultIfEmpty((From: first, To: last));
        foreach (var (from, to) in solid)
            for (double x = Math.Max(from, first); x <= Math.Min(to, last); x += StepMm) if (within.All(w => Math.Abs(w - x) > StepMm / 4)) within.Add(Math.Round(x));
        if (studs.Count == 0 && within.Count > 0 && last - within.Max() > StepMm / 4) within.Add(Math.Round(last));
        within.Sort();
        return within;
    }

    private static IReadOnlyList<LoadCase>? Carried(IReadOnlyList<BracketActions> brackets, IReadOnlyList<double> places)
    {
        var (permanent, variable, design) = (BearerBeam.Of(places, Loads(brackets, c => c.Permanent)), BearerBeam.Of(places, Loads(brackets, c => c.Variable)), BearerBeam.Of(places, Loads(brackets, c => c.Design)));
        if (permanent is null || variable is null || design is null) return null;
        double cov = brackets.SelectMany(b => b.Cases).Max(c => c.VariableCov);
        return [.. places.Select((_, i) => new LoadCase(brackets[0].Cases[0].Code, Longest(brackets), permanent.Reactions[i], variable.Reactions[i], design.Reactions[i], cov))];
    }

    private static LoadDuration Longest(IReadOnlyList<BracketActions> brackets) => brackets.SelectMany(b => b.Cases).Min(c => c.Duration);

    /// <summary>The worst of all cases of each bracket, part by part: more than any of them.</summary>
    private static IReadOnlyList<BearerLoad> Loads(IReadOnlyList<BracketActions> brackets, Func<LoadCase, Wrench> part) => [.. brackets.Select(b => new BearerLoad(b.At.X, Worst([.. b.Cases.Select(part)])))];

    private static Wrench Worst(IReadOnlyList<Wrench> w) => new(w.Max(x => Math.Max(0, x.N)), 0, w.Max(x => Math.Abs(x.My)), w.Max(x => Math.Abs(x.Vx)), -w.Max(x => Math.Abs(x.Vy)), 0);

    private static HeldAt Held(BearerRule rule, double x, double y, LoadCase load, WallView wall, Ask ask, FixingCatalogue catalogue)
    {
        var place = new BracketActions(0, new(x, y), Plate(rule), [rule.Behind ? Sideways(load) : load]);
        var plan = BracketPlanner.Plan(place, rule.Behind ? [Timber(0, SideMm, 4)] : wall.Ideas(place), ask, wall, catalogue);
        double sure = rule.Behind ? wall.Answer.Supports.MinBy(s => Math.Abs(s.CentreMm - x))!.Probability : plan.Picked?.Sure ?? plan.AnythingHolds;
        return plan.Picked is { } picked ? new(x, picked.Size.Id, picked.Holes.Count, picked.Hold!.Utilisation, sure)
            : new(x, null, 0, plan.Shown?.NearestUtilisation ?? double.PositiveInfinity, sure);
    }

    /// <summary>
    /// On the face two fixings one above the other, a quarter of the width from the edges, through the timber; into the side of a support four screws about the
    /// end of the timber.
    /// </summary>
    private static BracketPlate Plate(BearerRule rule)
    {
        double w = rule.WidthMm / 2, t = rule.ThicknessMm / 4, up = 0.7 * w;
        IReadOnlyList<Point> holes = rule.Behind ? [new(-t, up), new(t, up), new(-t, -up), new(t, -up)] : [new(0, w / 2), new(0, -w / 2)];
        return new([new(-w / 2, -w), new(w / 2, -w), new(w / 2, w), new(-w / 2, w)], holes, rule.Behind ? 0 : rule.ThicknessMm, 0, true);
    }

    /// <summary>Screwed to the side of a support: what pulls out of the wall pushes along that side, and what tilts turns it.</summary>
    private static LoadCase Sideways(LoadCase c)
    {
        static Wrench Turned(Wrench w) => new(0, 0, 0, w.N, w.Vy, w.My);
        return c with { Permanent = Turned(c.Permanent), Variable = Turned(c.Variable), Design = Turned(c.Design) };
    }

    /// <summary>Timber that is there for certain, behind so much board: the bearer itself, or the side of a support.</summary>
    private static Idea Timber(double faceMm, double depthMm, int holes)
    {
        var spot = new Spot("noggin.board_12_5", Behind.Timber, new(faceMm, 0), Spread.None, Spread.None, new(depthMm, 0), Spread.None, "timber", []);
        return new([spot], 1, true, [.. Enumerable.Range(0, holes)], [.. Enumerable.Repeat(1.0, holes)]);
    }

    /// <summary>Board over a bearer behind it, and wood that a screw finds in the side of a support, mm (assumed: board with skim, a 38 mm stud).</summary>
    private const double BoardMm = 14.5, SideMm = 38;
}
