using Pattress.Jobs;
using Pattress.Supports;
using Pattress.Walls;

namespace Pattress.Planning.Views;

/// <summary>Turns a wall of the job document into evidence for what it is.</summary>
public static class Evidence
{
    /// <param name="line">What is believed of its supports: how likely one is behind a hole counts when it is read.</param>
    public static WallEvidence Of(Wall wall, Settings settings, SupportBelief line) =>
        new(wall.Id, wall.Kind, [.. wall.Readings.Where(r => !r.Withdrawn).Select(r => Reading(r, wall, line)).OfType<WallReading>()])
        {
            Face = wall.Condition.Coating,
            YearBuilt = settings.YearBuilt,
            House = settings.House,
            Standards = settings.Standards,
            OtherSide = wall.OtherSide,
            WholeThicknessMm = wall.ThicknessMm,
            Openings = [.. wall.Openings.Select(o => new WallOpening(o.Id, o.Area.X, o.Area.Y, o.Area.Width, o.Area.Height))],
            Parts = [.. wall.Zones.Select(z => new WallPart(z.Id, z.Kind, z.Area.X, z.Area.Y, z.Area.Width, z.Area.Height))],
        };

    private static WallReading? Reading(Reading r, Wall wall, SupportBelief line)
    {
        var (x, y) = r.At is { } at ? (at.X, at.Y) : (0, 0);
        return r.Kind switch
        {
            "tap" => new TapHeard(r.Id, x, y, r.Sound!),
            "magnet" => Sweep(r),
            "probe" or "hole" => Hole(r, x, y, wall, line),
            "hooked_wire" => new HookedWire(r.Id, x, y, r.ThicknessMm!.Value),
            "stiff_wire" => new StiffWire(r.Id, x, y, r.VoidMm!.Value),
            "detector" => new WordReading(r.Id, x, y, "detector", r.Signal!),
            "outlet" => new WordReading(r.Id, x, y, "outlet", r.Shows!),
            "rattle" => new WordReading(r.Id, x, y, "rattle", r.Found!),
            "cold" => new WordReading(r.Id, x, y, "cold", r.Found!),
            "told" => new WordReading(r.Id, x, y, "told", r.Says!),
            _ => null,
        };
    }

    private static HoleFelt Hole(Reading r, double x, double y, Wall wall, SupportBelief line) => new(r.Id, x, y)
    {
        Met = r.Met,
        SolidAtMm = r.SolidAtMm,
        RanToMm = r.SolidAtMm is null ? r.DepthMm : null,
        Swarf = r.Swarf,
        OnSupport = LineScans.HoleOf(wall, r) is { } hole ? line.HitWithout(hole) : null,
    };

    private static MagnetDrawn Sweep(Reading r)
    {
        var (a, b) = (r.From!.Value, r.To!.Value);
        double length = Math.Sqrt((b.X - a.X) * (b.X - a.X) + (b.Y - a.Y) * (b.Y - a.Y));
        return new(r.Id, (a.X + b.X) / 2, (a.Y + b.Y) / 2, length, r.Hits.Count);
    }
}
