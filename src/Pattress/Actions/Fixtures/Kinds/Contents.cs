using Pattress.Working;

namespace Pattress.Actions.Fixtures.Kinds;

/// <summary>What stands on shelves: by volume, as EN 1991-1-1 has stored materials.</summary>
internal static class Contents
{
    /// <summary>Contents of a cabinet in kg: weighed, else shelves filled from side to side.</summary>
    public static double Kg(Site site, double widthMm, double depthMm, int shelves)
    {
        if (site.Entries.Entered("load_kg") is { } weighed) return weighed;
        double metre = PerMetre(site, depthMm), width = widthMm / 1000;
        return site.Step("m_contents", shelves * width * metre, "kg", "arithmetic", [new("shelves", shelves), In.Of(width), In.Of(metre)]);
    }

    /// <summary>Contents in kg for each metre of a shelf.</summary>
    public static double PerMetre(Site site, double depthMm)
    {
        string id = "load." + site.Entries.Word("load");
        double gamma = site.Entries.Table(id), depth = depthMm / 1000, height = site.Entries.Number("load_height_mm") / 1000;
        double g = Weights.Gravity;
        return site.Step("m_per_metre", 1000 * gamma * depth * height / g, "kg/m", Weights.Of(id).Source,
            [In.Of(gamma), In.Of(depth), In.Of(height), In.Of(g)]);
    }
}
