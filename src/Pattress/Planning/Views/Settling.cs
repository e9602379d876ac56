using Pattress.Jobs;
using Pattress.Walls;

namespace Pattress.Planning.Views;

/// <summary>
/// Which check settles what stands behind a bracket, where the fixing does not aim at a support: the exact policy over the checks that are
/// possible here, for the decision at hand, which fixing to set. What is said of a check is what that one check does.
/// </summary>
internal static class Settling
{
    /// <summary>A check that is expected to raise the chance by less than one in a hundred does not help, and is not proposed (assumed).</summary>
    public const double LeastGain = 0.01;

    /// <summary>A hole this near shows what stands behind a place, mm (assumed).</summary>
    private const double NearMm = 150;

    private const int MostBuildUps = 10, MostChoices = 6, MostOffers = 4;

    /// <summary>What can be done on a wall: whether a hole is there already, and what else can be looked at or felt.</summary>
    public static CheckSite Site(Wall wall) => new(
        true, wall.Readings.Any(r => r.Kind is "hole" or "probe" && !r.Withdrawn),
        wall.Services.Any(s => s.IsElectrical) && !wall.Readings.Any(r => r.Kind == "outlet" && !r.Withdrawn))
    {
        Also = (wall.Kind == "ceiling" ? "rattle" : wall.OtherSide == "outside" ? "cold" : "") is var also && Read(wall, also).Any() ? "" : also,
    };

    /// <summary>Taps near a place after which more of them tell nothing new (assumed).</summary>
    private const int EnoughTaps = 3;

    /// <summary>What was done at a place already is not proposed there again.</summary>
    private static bool Done(Wall wall, Point at, string check) => check switch
    {
        "tap" => Read(wall, check).Count(r => Near(r, at)) >= EnoughTaps,
        "hole" => HasHole(wall, at),
        "magnet" => Read(wall, check).Any(r => Math.Abs(r.From!.Value.Y - at.Y) <= NearMm && Math.Min(r.From.Value.X, r.To!.Value.X) <= at.X && at.X <= Math.Max(r.From.Value.X, r.To.Value.X)),
        _ => Read(wall, check).Any(r => Near(r, at)),
    };

    private static IEnumerable<Reading> Read(Wall wall, string kind) => wall.Readings.Where(r => !r.Withdrawn && r.Kind == kind);

    private static bool Near(Reading r, Point at) => r.At is { } p && Math.Max(Math.Abs(p.X - at.X), Math.Abs(p.Y - at.Y)) <= NearMm;

    /// <summary>The check, or null where none helps.</summary>
    public static CheckToDo? Best(Wall wall, IReadOnlyList<BuildUpBelief> believed, BracketPlan bracket, IReadOnlyList<string> items)
    {
        var kept = believed.GroupBy(b => b.BuildUp.Id, StringComparer.Ordinal).Select(g => g.First() with { Probability = g.Sum(b => b.Probability) })
            .OrderByDescending(b => b.Probability).ThenBy(b => b.BuildUp.Id, StringComparer.Ordinal).Take(MostBuildUps).ToList();
        double[] prior = [.. kept.Select(b => b.Probability / kept.Sum(k => k.Probability))];
        var site = Site(wall) with { HasHole = HasHole(wall, bracket.Actions.At) };
        double[][] holds = OrElsewhere(Holds(bracket, kept), kept.Count);
        var helpful = WallChecks.Offers(kept, site, WallRates.Default).Where(o => !Done(wall, bracket.Actions.At, o.Id)).Select(o => (Offer: o, After: After(prior, holds, o)))
            .Where(o => o.After >= Before(prior, holds) + LeastGain).OrderByDescending(o => (o.After - Before(prior, holds)) / o.Offer.Price)
            .ThenBy(o => o.Offer.Id, StringComparer.Ordinal).Take(MostOffers).ToList();
        if (helpful.Count == 0) return null;
        var best = helpful[0];
        helpful = [.. HoleLast(helpful)];
        double wrong = RateTable.Value("minutes_wrong_fixing");
        var decision = new CheckDecision([.. holds.Select((_, i) => i.ToString(System.Globalization.CultureInfo.InvariantCulture))], [.. holds.Select(row => row.Select(s => wrong * (1 - s)).ToArray())]);
        int chosen = CheckPolicy.Next(prior, [.. helpful.Select(o => o.Offer)], decision).Check;
        var (offer, after) = chosen < 0 ? best : helpful[chosen];
        if (!site.HasHole && WallChecks.IsWire(offer) && helpful[^1].Offer.Id == "hole") (offer, after) = helpful[^1];
        double before = Before(prior, holds);
        if (chosen < 0 && (after - before) * wrong < offer.Price) return null;
        return new(offer.Id, wall.Id, bracket.Actions.At, items, new Reason("check_do_wall", Said.Name("check." + offer.Id), Said.Percent(before), Said.Percent(after)), offer.Price, before, after);
    }

    /// <summary>A hole at the bracket's place; one elsewhere on the wall may be in another part of it.</summary>
    private static bool HasHole(Wall wall, Point at) =>
        Read(wall, "hole").Concat(Read(wall, "probe")).Any(r => Near(r, at));

    /// <summary>Wires are cheap once there is a hole: the policy takes that from the last check of the list.</summary>
    private static IEnumerable<(CheckOffer Offer, double After)> HoleLast(IReadOnlyList<(CheckOffer Offer, double After)> offers)
    {
        bool bored = offers.Any(o => o.Offer.Id == "hole");
        return offers.OrderBy(o => o.Offer.Id == "hole").Select(o => bored ? o : (o.Offer with { PriceAfterLast = null }, o.After));
    }

    /// <summary>Where nothing felt or heard helps: look behind.</summary>
    public static CheckToDo Look(Wall wall, BracketPlan bracket, IReadOnlyList<string> items)
    {
        double seen = 1 - WallRates.Default.Misread;
        return new("look", wall.Id, bracket.Actions.At, items, new Reason("check_open", Said.Percent(bracket.Picked!.Sure)), CheckMinutes.Of("look"), bracket.Picked.Sure, Math.Max(seen, bracket.Picked.Sure));
    }

    /// <summary>At [choice][build-up]: the share of the build-up in which the choice holds. Choices that hold in the same ideas are one.</summary>
    private static double[][] Holds(BracketPlan bracket, List<BuildUpBelief> kept) =>
        [.. bracket.All.Where(c => c.HoldsIn.Count > 0).OrderByDescending(c => Choice.Rounded(c.Sure)).DistinctBy(c => string.Join(' ', c.HoldsIn.Select(i => bracket.Ideas.ToList().IndexOf(i)))).Take(MostChoices)
            .Select(c => kept.Select(b => Share(c, bracket.Ideas, b.BuildUp.Id)).ToArray())];

    private static double Share(Candidate c, IReadOnlyList<Idea> ideas, string buildUp)
    {
        double all = ideas.Where(i => i.First.BuildUp == buildUp).Sum(i => i.Probability);
        return all <= 0 ? 0 : c.HoldsIn.Where(i => i.First.BuildUp == buildUp).Sum(i => i.Probability) / all;
    }

    /// <summary>To look for another place is right where nothing holds here.</summary>
    private static double[][] OrElsewhere(double[][] holds, int buildUps) =>
        [.. holds, [.. Enumerable.Range(0, buildUps).Select(h => 1 - holds.Max(row => row[h]))]];

    /// <summary>Chance that the best decision is right, now.</summary>
    private static double Before(double[] prior, double[][] holds) => holds.Max(row => row.Select((s, h) => s * prior[h]).Sum());

    /// <summary>The same after a check, over its findings.</summary>
    private static double After(double[] prior, double[][] holds, CheckOffer offer) =>
        offer.Likelihood.Sum(finding => holds.Max(row => row.Select((s, h) => s * prior[h] * finding[h]).Sum()));
}
