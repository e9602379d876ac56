using Pattress.Jobs;
using Pattress.Papers.Drawings;

namespace Pattress.Papers.Elevations;

/// <summary>What is believed of the wall: supports as grey bands, cable strips, zones.</summary>
internal static class SupportMarks
{
    /// <summary>Bands less likely than this stay white.</summary>
    private const double Faintest = 0.05;

    /// <summary>Each band is laid in four sheets, out to two standard deviations past its edge: dark where sure, paling with the doubt.</summary>
    private static readonly double[] Deviations = [2, 1, 0, -1];

    public static IReadOnlyList<Mark> Bands(WallAnswer wall, Sheet sheet) =>
        [.. wall.Supports.Where(s => s.Probability >= Faintest).SelectMany(s => Band(s, wall, sheet))];

    public static IReadOnlyList<Mark> Strips(WallAnswer wall, Sheet sheet) => [.. wall.Strips.SelectMany(s => Strip(s, sheet))];

    public static IReadOnlyList<Mark> Zones(WallAnswer wall, Sheet sheet) => [.. wall.Zones.Select(z => new RectMark("zone", z.Area)
    {
        Fact = new(sheet.Name("zone." + z.Kind), WallMarks.Extent(z.Area, sheet), Likeliest(z.BuildUps, sheet)),
    })];

    private static string Likeliest(IReadOnlyList<BuildUpChance> chances, Sheet sheet) =>
        chances.Count == 0 ? "" : sheet.Words("draw_likeliest", Said.Name(chances[0].BuildUp), Said.Percent(chances[0].Probability));

    private static IEnumerable<Mark> Band(SupportBand band, WallAnswer wall, Sheet sheet)
    {
        Fact? fact = new(sheet.Words("draw_support"), sheet.Words("draw_support_at", Said.Length(band.CentreMm), Said.Length(2 * band.SdMm)), sheet.Percent(band.Probability));
        foreach (double k in Deviations)
        {
            double half = band.WidthMm / 2 + k * band.SdMm;
            if (half <= 0) continue;
            double left = Math.Max(0, band.CentreMm - half), right = Math.Min(wall.WidthMm, band.CentreMm + half);
            yield return new BandMark("support", new Rect(left, 0, right - left, wall.HeightMm), band.Probability / Deviations.Length) { Fact = fact };
            fact = null;
        }
    }

    private static IEnumerable<Mark> Strip(CableStrip strip, Sheet sheet)
    {
        string done = strip.Checked.Length > 0 ? " checked" : "";
        yield return new RectMark("strip " + strip.Kind + done, strip.Area)
        {
            Fact = new(sheet.Words("draw_strip_" + strip.Kind, Said.Words(strip.Id)), WallMarks.Extent(strip.Area, sheet),
                strip.Checked.Length > 0 ? sheet.Name("how." + strip.Checked) : sheet.Words("draw_strip_open")),
        };
        if (done.Length == 0 && strip.Kind == "pipe") yield return new HatchMark("strip-hatch", strip.Area, sheet.Px(14), -1);
    }
}
