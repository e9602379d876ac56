using System.Globalization;
using Pattress.Jobs;

namespace Pattress.Actions.Fixtures;

/// <summary>Bracket plates: measured by the fitter, else a row of <c>data/fixtures/plates.csv</c>.</summary>
internal static class Plates
{
    private const int Corners = 24;
    private const double HoleInsetMm = 10;

    private static readonly Lazy<Dictionary<string, CsvTable.Row>> Rows = new(() =>
        CsvTable.FromEmbedded("data/fixtures/plates.csv").Rows.ToDictionary(r => r["id"], StringComparer.Ordinal));

    /// <summary>The plate of a fixture; assumed unless width, height and number of holes were all entered.</summary>
    public static BracketPlate Of(FixtureKind kind, Entries entries, double armMm)
    {
        var row = Rows.Value[kind.Plate];
        double? w = entries.Entered("bracket_width_mm"), h = entries.Entered("bracket_height_mm"), n = entries.Entered("holes");
        double width = w ?? row.Number("width_mm"), height = h ?? row.Number("height_mm");
        bool assumed = w == null || h == null || n == null;
        bool own = w == null && h == null && n == null;
        if (assumed) Note(entries, row, width, height);
        var outline = row["round"] == "1" && own ? Disc(width) : Rectangle(width, height);
        var holes = own ? Holes(row["holes"]) : Spread((int)(n ?? Holes(row["holes"]).Count), width, height);
        return new(outline, holes, entries.Entered("bracket_thickness_mm") ?? row.Number("thickness_mm"), armMm, assumed);
    }

    private static void Note(Entries entries, CsvTable.Row row, double width, double height) =>
        entries.Note("plate", new("assumed_plate", [Said.Length(width), Said.Length(height)], row["source"]));

    private static Point[] Rectangle(double w, double h) => [new(-w / 2, -h / 2), new(w / 2, -h / 2), new(w / 2, h / 2), new(-w / 2, h / 2)];

    private static Point[] Disc(double d) => [.. Enumerable.Range(0, Corners)
        .Select(i => 2 * Math.PI * i / Corners).Select(t => new Point(d / 2 * Math.Cos(t), d / 2 * Math.Sin(t)))];

    private static IReadOnlyList<Point> Holes(string text) => [.. text.Split(';').Select(pair => pair.Trim().Split(' '))
        .Select(xy => new Point(Value(xy[0]), Value(xy[1])))];

    private static double Value(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    // One in the middle, two along the longer side, otherwise pairs up the plate with the odd one on top.
    private static Point[] Spread(int n, double w, double h)
    {
        double x = Inset(w), y = Inset(h);
        if (n == 1) return [new(0, 0)];
        if (n == 2) return h >= w ? [new(0, y), new(0, -y)] : [new(-x, 0), new(x, 0)];
        int pairs = n / 2, rows = pairs + n % 2;
        var points = new List<Point>();
        if (n % 2 == 1) points.Add(new(0, y));
        for (int i = 0; i < pairs; i++)
        {
            double up = y - 2 * y * (i + n % 2) / (rows - 1);
            points.Add(new(-x, up));
            points.Add(new(x, up));
        }
        return [.. points];
    }

    // Holes sit about 10 mm in from the edge, or at a fifth of a plate that is too small for that.
    private static double Inset(double side) => side / 2 - Math.Min(HoleInsetMm, side / 5);
}
