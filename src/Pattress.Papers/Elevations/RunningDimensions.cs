using Pattress.Jobs;
using Pattress.Papers.Drawings;

namespace Pattress.Papers.Elevations;

/// <summary>Running dimensions to the brackets, all from one datum, so that a tape need not be moved.</summary>
internal static class RunningDimensions
{
    public static IReadOnlyList<Mark> Of(ElevationInput input, Sheet sheet)
    {
        var places = input.Things.SelectMany(t => t.Answer?.Brackets.Select(b => b.At) ?? t.Fixture.Brackets).ToList();
        var marks = new List<Mark> { DatumMark(input.Datum, sheet) };
        marks.AddRange(Along(Distinct(places.Select(p => p.X)), input, sheet));
        marks.AddRange(Up(Distinct(places.Select(p => p.Y)), input, sheet));
        return marks;
    }

    private static List<double> Distinct(IEnumerable<double> values) => [.. values.Select(v => Math.Round(v)).Distinct().Order()];

    private static CircleMark DatumMark(Datum datum, Sheet sheet) =>
        new("datum", datum.At, sheet.Px(4)) { Fact = new(sheet.Words("draw_datum"), sheet.Place(datum.At), sheet.Words(datum.Code)) };

    private static IEnumerable<Mark> Along(List<double> xs, ElevationInput input, Sheet sheet)
    {
        double foot = -sheet.Px(6), text = -sheet.Px(22);
        var at = Spread.Apart(xs, sheet.TextMm * 1.05, 0, input.Wall.WidthMm + sheet.TextMm * 3);
        for (int i = 0; i < xs.Count; i++)
        {
            yield return new PathMark("dimension", [new(xs[i], 0), new(xs[i], foot), new(at[i], text + sheet.Px(4))]);
            yield return new TextMark("dimension-text", new(at[i] + sheet.TextMm * .35, text), Short(xs[i] - input.Datum.At.X, sheet), Anchor.End, true);
        }
    }

    private static IEnumerable<Mark> Up(List<double> ys, ElevationInput input, Sheet sheet)
    {
        double wall = input.Wall.WidthMm, edge = wall + sheet.Px(6), text = wall + sheet.Px(20);
        var at = Spread.Apart(ys, sheet.TextMm * 1.05, 0, input.Wall.HeightMm);
        for (int i = 0; i < ys.Count; i++)
        {
            yield return new PathMark("dimension", [new(wall, ys[i]), new(edge, ys[i]), new(text - sheet.Px(3), at[i])]);
            yield return new TextMark("dimension-text", new(text, at[i] - sheet.TextMm * .35), Short(ys[i] - input.Datum.At.Y, sheet));
        }
    }

    private static string Short(double mm, Sheet sheet) => sheet.Words("draw_dimension", Said.Length(mm));
}
