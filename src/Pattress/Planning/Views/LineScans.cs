using Pattress.Jobs;
using Pattress.Supports;

namespace Pattress.Planning.Views;

/// <summary>Turns the readings on a wall into one scan along its width: studs stand upright, so only x counts and every height adds.</summary>
public static class LineScans
{
    /// <param name="rates">As the job's holes have taught them; null: as assumed.</param>
    public static LineScan Of(Wall wall, IReadOnlyList<Zone> zones, LineRates? rates = null) =>
        new(wall.WidthMm, All(wall, Same), zones)
        {
            Rates = rates,
            IsCeiling = wall.Kind == "ceiling",
            WallHeightMm = wall.Kind == "wall" ? wall.HeightMm : 0,
            Openings = [.. wall.Openings.Select(o => new LineOpening(o.Area.X, o.Area.Right, false))],
        };

    /// <summary>A wall along its width; a ceiling both ways.</summary>
    internal static LineScan Whole(Wall wall, LineRates? rates = null) => wall.Kind == "ceiling" ? BothWays(wall, rates) : Of(wall, [], rates);

    /// <summary>The same with one thin hole more that met a support.</summary>
    internal static LineScan Probed(Wall wall, Point at, LineRates rates)
    {
        var scan = Whole(wall, rates);
        var probed = scan with { Readings = [.. scan.Readings, new ThinHole("probe", at.X, HoleMet.Support, at.Y)] };
        return scan.OtherWay is not { } other ? probed
            : probed with { OtherWay = other with { Readings = [.. other.Readings, new ThinHole("probe", at.Y, HoleMet.Support, at.X)] } };
    }

    /// <summary>A ceiling read both ways: its joists may be spaced along x or along y.</summary>
    public static LineScan BothWays(Wall ceiling, LineRates? rates = null) =>
        Of(ceiling, [], rates) with { OtherWay = new(ceiling.HeightMm, All(ceiling, Turned), []) { IsCeiling = true } };

    /// <summary>A hole or tap in a noggin, a lintel or a boxing says nothing of the supports beside it; the wall's own kinds of part do.</summary>
    private static bool InAnother(Wall wall, Reading r) =>
        r.At is { } at && wall.Zones.Any(z => z.Kind is not ("chimney_breast" or "board_joint") && z.Area.Contains(at));

    private static IReadOnlyList<LineReading> All(Wall wall, Func<Point, Point> seen) =>
        [.. wall.Readings.Where(r => !r.Withdrawn && !InAnother(wall, r)).Select(r => Line(r, seen)).OfType<LineReading>()];

    private static Point Same(Point p) => p;

    /// <summary>Ceilings: the line along y, for joists that run along x.</summary>
    private static Point Turned(Point p) => new(p.Y, p.X);

    private static LineReading? Line(Reading r, Func<Point, Point> seen) => r.Kind switch
    {
        "tap" => new Tap(r.Id, seen(r.At!.Value).X, Sound(r.Sound), seen(r.At.Value).Y),
        "magnet" => Sweep(r, seen),
        "probe" or "hole" => HoleOf(r, seen),
        "detector" when r.Signal is "stud" or "metal" or "none" => new DetectorSignal(r.Id, seen(r.At!.Value).X, r.Signal != "none", seen(r.At.Value).Y),
        _ => null,
    };

    /// <summary>A probe or hole as the line has it; null where it was not noted what it met, or where it is not of the line.</summary>
    internal static ThinHole? HoleOf(Wall wall, Reading r) => InAnother(wall, r) ? null : HoleOf(r, Same);

    private static ThinHole? HoleOf(Reading r, Func<Point, Point> seen) =>
        r.Met is null ? null : new ThinHole(r.Id, seen(r.At!.Value).X, Met(r.Met), seen(r.At.Value).Y);

    /// <summary>A sweep across is one along the line; a sweep up or down shows the screws of one support.</summary>
    private static LineReading Sweep(Reading r, Func<Point, Point> seen)
    {
        var (a, b) = (seen(r.From!.Value), seen(r.To!.Value));
        double across = Math.Abs(b.X - a.X), upright = Math.Abs(b.Y - a.Y);
        return across >= upright
            ? new MagnetSweep(r.Id, Math.Min(a.X, b.X), Math.Max(a.X, b.X), [.. r.Hits.Select(h => seen(h).X).Order()], (a.Y + b.Y) / 2)
            : new SweepAlong(r.Id, (a.X + b.X) / 2, upright, r.Hits.Count, Math.Min(a.Y, b.Y));
    }

    private static TapSound Sound(string? sound) => sound switch
    {
        "solid" => TapSound.Solid,
        "high" => TapSound.High,
        "dull" => TapSound.Dull,
        _ => TapSound.Hollow,
    };

    private static HoleMet Met(string met) => met switch
    {
        "support" => HoleMet.Support,
        "void" => HoleMet.Void,
        "dab" => HoleMet.Dab,
        "masonry" => HoleMet.Masonry,
        "metal" => HoleMet.Metal,
        "laths" or "foam" => HoleMet.Passed,
        _ => HoleMet.Other,
    };
}
