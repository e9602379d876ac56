using Pattress.Jobs;
using Pattress.Supports;
using Pattress.Walls;

namespace Pattress.Planning.Views;

/// <summary>A zone of a wall as believed.</summary>
public sealed record BelievedZone(string Id, string Kind, Rect Area, IReadOnlyList<Believed> Believed);

/// <summary>What is believed of every wall of the house, each wall informed by the others, with its zones.</summary>
public sealed class HouseBelief
{
    private readonly Dictionary<string, WallBelief> _walls = new(StringComparer.Ordinal);
    private readonly Dictionary<string, IReadOnlyList<ZoneOfWall>> _zones = new(StringComparer.Ordinal);
    private readonly IReadOnlyList<WallEvidence> _evidence;
    private readonly Dictionary<string, SupportBelief> _lines;

    /// <param name="rates">How taps and magnets mislead; null: as the job's own holes teach it.</param>
    public HouseBelief(Job job, LineRates? rates = null) : this(Alone(job, rates ?? HouseRates.Of(job.Walls).Rates))
    {
    }

    internal HouseBelief(IReadOnlyList<OneWall> walls)
    {
        foreach (var belief in HouseModel.Infer([.. walls.Select(w => w.Evidence)], [.. walls.Select(w => w.Posterior)], WallRates.Default)) _walls[belief.WallId] = belief;
        foreach (var wall in walls) _zones[wall.Wall.Id] = wall.Zones;
        _evidence = [.. walls.Select(w => w.Evidence)];
        Rates = walls.Count > 0 ? walls[0].Rates : LineRates.Default;
        _lines = walls.ToDictionary(w => w.Wall.Id, w => w.Line, StringComparer.Ordinal);
    }

    private static List<OneWall> Alone(Job job, LineRates rates) => [.. job.Walls.Select(w => OneWall.Of(w, job.Settings, rates))];

    /// <summary>How taps and magnets mislead, as the house's holes have taught it.</summary>
    public LineRates Rates { get; }

    /// <summary>Where the wall's supports are believed to be, if it has any.</summary>
    public SupportBelief Line(string wall) => _lines[wall];

    /// <summary>What the wall is believed to be away from its zones, its contradictions and what the house moved.</summary>
    public WallBelief Of(string wall) => _walls[wall];

    /// <summary>Which of its readings moved what the wall is believed to be, greatest first. One inference a reading: only where it is asked for.</summary>
    public IReadOnlyList<ReadingInfluence> Explain(string wall, IReadOnlyCollection<string>? only = null) => HouseModel.Explain(_evidence, wall, only: only);

    /// <summary>What somebody drew goes before the lintels that every opening is thought to have.</summary>
    internal static IReadOnlyList<ZoneOfWall> DrawnFirst(Wall wall, IReadOnlyList<ZoneOfWall> zones) =>
        [.. zones.OrderBy(z => wall.Zones.Any(drawn => drawn.Id == z.Id) ? 0 : 1)];

    /// <summary>The wall away from its zones.</summary>
    public IReadOnlyList<Believed> Whole(string wall) => [.. _walls[wall].BuildUps.Select(b => Of(b, b.Probability))];

    /// <summary>The wall at a place: its zones' build-ups by the chance that the place lies in them, the wall's own by the rest.</summary>
    public IReadOnlyList<Believed> At(string wall, Point at) => [.. BelievedAt(wall, at).Select(b => Of(b, b.Probability))];

    public IReadOnlyList<BelievedZone> Zones(string wall) => [.. _zones[wall].Select(z => new BelievedZone(
        z.Id, z.Kind, Area(z), [.. z.Belief.BuildUps.Select(b => Of(b, b.Probability * (1 - z.AsWall)))]))];

    /// <summary>What the house moved, and what contradicts itself.</summary>
    public IEnumerable<Reason> Notes(string wall)
    {
        if (_walls[wall].FromHouse is { } shift) yield return shift.Why;
        foreach (var c in _walls[wall].Contradictions) yield return c.What;
    }

    /// <summary>The check that best settles what the wall is; null when none helps for its price.</summary>
    public CheckToDo? Settle(Wall wall)
    {
        var next = WallChecks.Next(_walls[wall.Id], Settling.Site(wall));
        return next.Check.Length == 0 ? null : new(next.Check, wall.Id, null, [], next.Why, next.Minutes, next.Before, next.After);
    }

    /// <summary>The same as <see cref="At"/>, with the depths of each build-up.</summary>
    public IReadOnlyList<BuildUpBelief> BelievedAt(string wall, Point at)
    {
        double rest = 1;
        var found = new List<BuildUpBelief>();
        foreach (var zone in _zones[wall])
        {
            double share = rest * Inside(zone, at);
            if (share <= 0) continue;
            rest -= share;
            found.AddRange(zone.Belief.BuildUps.Select(b => b with { Probability = b.Probability * share }));
        }
        found.AddRange(_walls[wall].BuildUps.Select(b => b with { Probability = b.Probability * rest }));
        return found;
    }

    /// <summary>Readings over openings speak of lintels, not of the wall.</summary>
    internal static WallEvidence Plain(WallEvidence e) => e with
    {
        Readings = [.. e.Readings.Where(r => !e.Openings.Any(o => Over(o, r)) && !e.Parts.Any(p => In(p, r)))],
    };

    private const double LintelMostMm = 225, BearingMostMm = 150;

    private static bool Over(WallOpening o, WallReading r) => r is not WordReading
        && r.XMm >= o.XMm - BearingMostMm && r.XMm <= o.XMm + o.WidthMm + BearingMostMm
        && r.YMm >= o.YMm + o.HeightMm && r.YMm <= o.YMm + o.HeightMm + LintelMostMm;

    private static bool In(WallPart p, WallReading r) => p.Kind is not ("chimney_breast" or "board_joint")
        && r.XMm >= p.XMm && r.XMm <= p.XMm + p.WidthMm && r.YMm >= p.YMm && r.YMm <= p.YMm + p.HeightMm;

    private static double Inside(ZoneOfWall z, Point at)
    {
        double beside = Math.Max(0, Math.Max(z.XMm - at.X, at.X - z.XMm - z.WidthMm)), above = at.Y - z.YMm;
        if (above < 0) return 0;
        return (1 - z.AsWall) * Spread(z.HeightMm).AtLeast(above) * (beside > 0 ? Spread(z.BearingMm).AtLeast(beside) : 1);
    }

    private static Rect Area(ZoneOfWall z) => new(z.XMm - z.BearingMm.MeanMm, z.YMm, z.WidthMm + 2 * z.BearingMm.MeanMm, z.HeightMm.MeanMm);

    private static Believed Of(BuildUpBelief b, double probability)
    {
        double sd = Math.Sqrt(b.Board.SdMm * b.Board.SdMm + b.FaceLayer.SdMm * b.FaceLayer.SdMm);
        return new(b.BuildUp, probability, new(b.Board.MeanMm + b.InsulationMm + b.FaceLayer.MeanMm, sd), Spread(b.Void));
    }

    private static Fixings.Spread Spread(Pattress.Walls.Spread s) => new(s.MeanMm, s.SdMm);
}
