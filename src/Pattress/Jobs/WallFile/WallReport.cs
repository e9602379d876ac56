using Pattress.Jobs.Text;
using Pattress.Planning.Views;
using Pattress.Supports;
using Pattress.Walls;

namespace Pattress.Jobs.WallFile;

/// <summary>What one reading changed.</summary>
/// <param name="Wall">What it moved of what the wall is; null for readings of another part of the wall.</param>
/// <param name="Support">What it moved of the chance of a support where it was taken; null for readings that tell nothing of supports.</param>
/// <param name="Says">The same in words.</param>
public sealed record ReadingChange(string Reading, ReadingInfluence? Wall, LineInfluence? Support, IReadOnlyList<Reason> Says);

/// <summary>What a wall is, where its supports are, what to check next, and what each reading changed where that was asked for.</summary>
/// <param name="Is">The likeliest build-up and the next, as a reason.</param>
/// <param name="Next">The check that best settles what the wall is; its <c>Check</c> is empty where none is worth its price.</param>
public sealed record WallReport(Wall Wall, Reason Is, WallBelief Belief, SupportBelief Line, IReadOnlyList<BelievedZone> Zones, NextWallCheck Next, IReadOnlyList<ReadingChange> Readings)
{
    /// <summary>What the house's holes have taught of taps and magnets; null without a hole.</summary>
    public Reason? Rates { get; init; }

    /// <summary>Reports on some walls of a house, in the order given; every wall informs the others.</summary>
    /// <param name="hidden">What will hang hides a thin hole, so that it costs less.</param>
    /// <param name="explain">Adds what each reading changed: one inference a reading.</param>
    public static IReadOnlyList<WallReport> Of(Job house, IReadOnlyList<string> walls, bool hidden, bool explain)
    {
        var learned = HouseRates.Of(house.Walls);
        var belief = new HouseBelief(house, learned.Rates);
        return [.. house.Walls.Where(w => walls.Contains(w.Id, StringComparer.Ordinal)).Select(w => One(w, belief, hidden, explain) with { Rates = RatesWords.Of(learned.Learned) })];
    }

    /// <summary>What each reading of a wall changed, by the readings' order.</summary>
    /// <param name="only">Readings to explain; null: all.</param>
    public static IReadOnlyList<ReadingChange> Changes(Job house, string wall, IReadOnlyCollection<string>? only = null) =>
        Changes(house.Walls.First(w => w.Id == wall), new HouseBelief(house), only);

    private static WallReport One(Wall wall, HouseBelief house, bool hidden, bool explain)
    {
        var belief = house.Of(wall.Id);
        var site = new CheckSite(hidden, wall.OldHoles.Count > 0 || wall.Readings.Any(r => r is { Withdrawn: false, Kind: "probe" or "hole" }), wall.Services.Any(s => s.IsElectrical));
        return new(wall, Sentence(belief), belief, house.Line(wall.Id), house.Zones(wall.Id),
            Pattress.Walls.WallChecks.Next(belief, site), explain ? Changes(wall, house, null) : []);
    }

    private static Reason Sentence(WallBelief belief)
    {
        var best = belief.Best;
        var (family, share) = belief.BestFamily;
        var other = belief.BuildUps.GroupBy(b => b.BuildUp.Family, StringComparer.Ordinal).Where(g => g.Key != family)
            .Select(g => (g.Key, Share: g.Sum(b => b.Probability))).OrderByDescending(g => g.Share).ThenBy(g => g.Key, StringComparer.Ordinal).FirstOrDefault();
        Said[] first = [Said.Name(family), Said.Percent(share), Said.Name(best.BuildUp.Id), Said.Percent(best.Probability)];
        return other.Share < 0.005 ? new("wall_is", first) : new("wall_is_or", [.. first, Said.Name(other.Key), Said.Percent(other.Share)]);
    }

    private static IReadOnlyList<ReadingChange> Changes(Wall wall, HouseBelief house, IReadOnlyCollection<string>? only)
    {
        var ofWall = house.Explain(wall.Id, only).ToDictionary(i => i.Reading, StringComparer.Ordinal);
        var ofLine = SupportModel.ExplainNear(LineScans.Of(wall, [], house.Rates), only: only).ToDictionary(i => i.Reading, StringComparer.Ordinal);
        return [.. wall.Readings.Where(r => !r.Withdrawn && (only is null || only.Contains(r.Id))).Select(r => Change(r.Id, ofWall.GetValueOrDefault(r.Id), ofLine.GetValueOrDefault(r.Id)))];
    }

    private static ReadingChange Change(string id, ReadingInfluence? wall, LineInfluence? line)
    {
        List<Reason> says = [];
        if (wall is not null) says.Add(ChangeWords.OfWall(wall));
        if (line is not null) says.Add(ChangeWords.OfSupport(line));
        if (says.Count == 0) says.Add(new("reading_elsewhere"));
        return new(id, wall, line, says);
    }
}
