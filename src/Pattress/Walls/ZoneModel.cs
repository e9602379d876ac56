namespace Pattress.Walls;

/// <summary>A zone of a wall with its own belief.</summary>
/// <param name="Kind"><c>lintel</c>, <c>reveal</c>, <c>boxing</c>, <c>board_joint</c>, ...</param>
/// <param name="HeightMm">Lintels: height above the opening; others: the part's own, with no spread.</param>
/// <param name="BearingMm">Lintels: how far it reaches past each side of the opening.</param>
/// <param name="AsWall">Chance that the zone is built as the wall around it.</param>
public sealed record ZoneOfWall(string Id, string Kind, double XMm, double YMm, double WidthMm, Spread HeightMm, Spread BearingMm, double AsWall, WallBelief Belief);

/// <summary>A wall and its zones.</summary>
public sealed record ZonedWall(WallBelief Wall, IReadOnlyList<ZoneOfWall> Zones);

/// <summary>
/// Zones and wall together: a reading over an opening may have met the lintel or, where the lintel is low, the wall. Exact
/// over build-up of the wall, kind, height and bearing of the lintel; depths are taken as independent between zone and wall.
/// </summary>
internal static class ZoneModel
{
    /// <summary>Heights and bearings of lintels, mm, with their shares (65 to 225 and 100 to 150: common practice, no source; shares assumed).</summary>
    private static readonly (double Mm, double Share)[] Heights = [(65, 0.2), (100, 0.2), (140, 0.2), (150, 0.15), (215, 0.15), (225, 0.1)];

    private static readonly (double Mm, double Share)[] Bearings = [(100, 0.4), (125, 0.2), (150, 0.4)];

    /// <summary>Chance that a wall of masonry, or of studs, has nothing over its opening that differs from itself (assumed).</summary>
    private const double NoneMasonry = 0.05, NoneStuds = 0.10;

    /// <param name="known">The wall by readings that may be those away from its zones: taken over where they are.</param>
    public static ZonedWall Infer(WallEvidence e, WallRates rates, WallPosterior? known = null)
    {
        var taken = e.Parts.ToDictionary(p => p.Id, p => e.Readings.Where(r => Inside(r, p.XMm, p.YMm, p.WidthMm, p.HeightMm)).ToList(), StringComparer.Ordinal);
        var rest = e.Readings.Except(taken.Values.SelectMany(r => r)).ToList();
        var boxes = e.Openings.Select(o => (Opening: o, Readings: rest.Where(r => InBox(r, o)).ToList())).ToList();
        var outside = rest.Except(boxes.SelectMany(b => b.Readings)).ToList();
        var wall = known is not null && known.IsOf(outside) ? known : new WallPosterior(e with { Readings = outside }, rates);
        LintelZone[] lintels = [.. boxes.Select(b => new LintelZone(b.Opening, b.Readings, e, wall.Rows, rates))];
        double[] posterior = Together(wall, lintels, out double log);
        var belief = wall.Of(posterior, log);
        return new(belief, [.. lintels.Select((z, k) => z.Belief(Without(wall, lintels, k))), .. e.Parts.Select(p => Part(p, taken[p.Id], e, belief, posterior, rates))]);
    }

    private static bool Inside(WallReading r, double x, double y, double width, double height) =>
        r.XMm >= x && r.XMm <= x + width && r.YMm >= y && r.YMm <= y + height;

    private static bool InBox(WallReading r, WallOpening o) =>
        Inside(r, o.XMm - Bearings[^1].Mm, o.YMm + o.HeightMm, o.WidthMm + (2 * Bearings[^1].Mm), Heights[^1].Mm);

    /// <summary>Rows of the wall given its own readings and what the zones say of it.</summary>
    private static double[] Together(WallPosterior wall, LintelZone[] zones, out double log)
    {
        double[] joint = Without(wall, zones, -1);
        double sum = joint.Sum();
        log = wall.LogScale + Math.Log(sum);
        return [.. joint.Select(j => j / sum)];
    }

    /// <summary>Joint of the wall's rows from everything but one zone.</summary>
    private static double[] Without(WallPosterior wall, LintelZone[] zones, int left) =>
        [.. wall.Rows.Select((_, b) => wall.Prior[b] * wall.Likelihood[b] * zones.Where((_, k) => k != left).Aggregate(1.0, (p, z) => p * z.OfWall[b]))];

    private static ZoneOfWall Part(WallPart p, List<WallReading> readings, WallEvidence e, WallBelief wall, double[] posterior, WallRates rates)
    {
        string kind = p.Kind switch { "lintel" => "lintel", "reveal" => "reveal", "boxing" or "bulkhead" => "boxing", "door_leaf" or "panel" => "panel", "noggin" => "noggin", _ => e.Kind };
        var bare = e with { Readings = readings, WallId = p.Id, WholeThicknessMm = null, Openings = [], Parts = [] };
        var belief = WallModel.Infer(bare with { Kind = kind }, rates);
        // A chimney breast or a board joint is of the wall's own kinds: without readings of its own it is believed to be as the wall.
        bool own = kind != e.Kind || readings.Count > 0;
        double asWall = !own ? 1 : kind is "noggin" or "lintel" ? NotThere(new WallPosterior(bare, rates).Belief(posterior).LogEvidence - belief.LogEvidence) : 0;
        return new(p.Id, p.Kind, p.XMm, p.YMm, p.WidthMm, new(p.HeightMm, 0), default, asWall, own ? belief : wall with { WallId = p.Id });
    }

    /// <summary>What lies behind the face was drawn, not seen: the chance that it is not there, or not there at this height, before any reading in it (assumed).</summary>
    private const double DrawnAmiss = 0.1;

    /// <summary>The same after the readings in it, by the log of how much likelier the wall alone makes them.</summary>
    private static double NotThere(double logOfWall)
    {
        double odds = DrawnAmiss / (1 - DrawnAmiss) * Math.Exp(Math.Min(logOfWall, 700));
        return odds / (1 + odds);
    }

    /// <summary>How likely each kind of lintel is over an opening in a wall of a family; the rest is "as the wall".</summary>
    public static double KindShare(BuildUp lintel, string wallFamily)
    {
        bool studs = wallFamily is "timber_studs" or "steel_studs" or "honeycomb" or "board_ceiling" or "lath_ceiling";
        return lintel.Family switch
        {
            "timber_header" => wallFamily == "steel_studs" ? 0.3 : studs || wallFamily == "lath" ? 1 : 0,
            "steel_header" => wallFamily == "steel_studs" ? 1 : 0,
            "lintel_timber" => wallFamily == "lath" ? 1 : studs ? 0.1 : 1,
            _ => studs ? 0.02 : wallFamily == "lath" ? 0.1 : 1,
        };
    }

    /// <summary>Chance that nothing over the opening differs from the wall.</summary>
    public static double None(string wallFamily) => wallFamily is "timber_studs" or "steel_studs" or "lath" or "honeycomb" ? NoneStuds : NoneMasonry;

    /// <summary>Every geometry of a lintel with its share.</summary>
    public static IEnumerable<(double Height, double Bearing, double Share)> Geometries() =>
        from h in Heights from b in Bearings select (h.Mm, b.Mm, h.Share * b.Share);
}
