using Pattress.Jobs.Doors;

namespace Pattress.Jobs;

/// <summary>Turns the checked entry of a wall into a wall.</summary>
internal static class WallBuilder
{
    public static Wall Build(Entry wall) => new()
    {
        Id = wall.TextOf("id"),
        Name = wall.TextOr("name", ""),
        Kind = wall.TextOr("kind", "wall"),
        WidthMm = wall.NumberOf("width_mm"),
        HeightMm = wall.NumberOf("height_mm"),
        ThicknessMm = wall.MaybeNumber("thickness_mm"),
        OtherSide = wall.TextOr("other_side", "unknown"),
        Readings = JobBuilder.All(wall, "readings", ReadingOf),
        Openings = JobBuilder.All(wall, "openings", o => new Opening(o.TextOf("id"), o.TextOf("kind"), AreaOf(o))),
        Services = JobBuilder.All(wall, "services", s => new Service(s.TextOf("id"), s.TextOf("kind"), AreaOf(s), s.TextOr("face", "this"))),
        Zones = JobBuilder.All(wall, "zones", z => new WallZone(z.TextOf("id"), z.TextOf("kind"), AreaOf(z))),
        OldHoles = JobBuilder.All(wall, "old_holes", h => new OldHole(h.TextOf("id"), h.MaybePoint("at_mm")!.Value, h.NumberOf("diameter_mm"))),
        StripChecks = JobBuilder.All(wall, "strip_checks", c => new StripCheck(c.TextOf("id"), c.TextOf("strip"), c.TextOf("how"))),
        BuiltAs = wall.TextOr("built_as", "usual"),
        Condition = wall["condition"] is { } condition ? ConditionOf(condition) : new Condition(),
    };

    /// <summary>The rectangle of an entry whose four fields are there.</summary>
    public static Rect AreaOf(Entry entry) =>
        new(entry.NumberOf("x_mm"), entry.NumberOf("y_mm"), entry.NumberOf("width_mm"), entry.NumberOf("height_mm"));

    private static Condition ConditionOf(Entry entry)
    {
        var usual = new Condition();
        return new Condition
        {
            Moisture = entry.TextOr("moisture", usual.Moisture),
            Coating = entry.TextOr("coating", usual.Coating),
            Sampled = entry.TextOr("sampled", usual.Sampled),
        };
    }

    private static Reading ReadingOf(Entry entry) => new()
    {
        Id = entry.TextOf("id"),
        Kind = entry.TextOf("kind"),
        At = entry.MaybePoint("at_mm"),
        From = entry.MaybePoint("from_mm"),
        To = entry.MaybePoint("to_mm"),
        Hits = JobBuilder.All(entry, "hits_mm", h => h.Point),
        Sound = entry.MaybeText("sound"),
        Met = entry.MaybeText("met"),
        DiameterMm = entry.MaybeNumber("diameter_mm"),
        SolidAtMm = entry.MaybeNumber("solid_at_mm"),
        DepthMm = entry.MaybeNumber("depth_mm"),
        Swarf = entry.MaybeText("swarf"),
        ThicknessMm = entry.MaybeNumber("thickness_mm"),
        VoidMm = entry.MaybeNumber("void_mm"),
        Signal = entry.MaybeText("signal"),
        Shows = entry.MaybeText("shows"),
        Found = entry.MaybeText("found"),
        Says = entry.MaybeText("says"),
        Withdrawn = JobBuilder.IsYes(entry, "withdrawn"),
    };
}
