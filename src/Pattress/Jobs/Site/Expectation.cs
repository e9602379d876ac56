namespace Pattress.Jobs.Site;

/// <summary>What the thin bit should meet just behind the face, if the wall is as the plan reckons with.</summary>
internal static class Expectation
{
    /// <summary>Thickness of what one drills through before what is behind, mm.</summary>
    public static double FaceMm(WallSection section) => section.Layers.TakeWhile(IsFace).Sum(l => l.ThicknessMm);

    /// <summary>The findings that agree with a section, as a reading has them; the first is the one expected.</summary>
    public static IReadOnlyList<string> Of(WallSection section) => section.Layers.SkipWhile(IsFace).FirstOrDefault()?.Material switch
    {
        "timber" => ["support"],
        "steel" => ["metal", "support"],
        "brick" or "block" or "aerated_block" or "concrete" => ["masonry"],
        "dab" => ["dab", "masonry"],
        "foam" => ["foam"],
        // A gap before masonry: a sleeve goes through it and through a dab alike.
        _ when Behind(section) is "brick" or "block" or "aerated_block" or "concrete" => ["void", "dab"],
        _ when section.Layers.Any(l => l.Material == "laths") => ["void", "laths"],
        _ => ["void"],
    };

    private static string Behind(WallSection section) => section.Layers.Count == 0 ? "" : section.Layers[^1].Material;

    private static bool IsFace(SectionLayer layer) => layer.Material is "board" or "skim" or "tile" or "panel" or "plaster" or "laths";
}
