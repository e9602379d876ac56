using System.Globalization;
using Pattress.Jobs;
using Pattress.Jobs.Text;
using Pattress.Papers.Drawings;
using Pattress.Trials.Documents;

namespace Pattress.Papers.Trials;

/// <summary>The chart of a bench series as a drawing of our own, for paper: a row a kind, a dot a test, a band for what one more would do.</summary>
public static class TrialDrawing
{
    private const double WidthMm = 180, LabelMm = 58, RowMm = 9, AxisMm = 12, DotMm = 1.1, BandMm = 2.2;

    /// <summary>The drawing, to fill a width.</summary>
    public static Drawing Of(TrialAnswer answer, Sizing sizing)
    {
        var rows = answer.Kinds.OrderByDescending(k => k.Expected?.MedianN ?? k.MeanN).ThenBy(k => k.Kind, StringComparer.Ordinal).ToList();
        double top = Top(rows.SelectMany(k => k.Tests.Select(t => t.HighN ?? t.CountedN).Append(k.Expected?.UpperN ?? 0)).Max());
        double height = AxisMm + RowMm * rows.Count;
        double X(double n) => LabelMm + (WidthMm - LabelMm - 4) * n / top;
        return new("tests", TrialReport.Text("chart_title"), new Rect(0, 0, WidthMm, height), sizing.WidthPx / WidthMm,
            [new Group("axis", TrialReport.Text("chart_axis"), [.. Axis(top, height, X)]), .. rows.Select((k, i) => Row(k, height - RowMm * (i + 0.5), X))]);
    }

    /// <summary>Round in quarters too.</summary>
    private static readonly double[] Rounds = [1, 1.2, 1.6, 2, 2.4, 3.2, 4, 6, 8, 10];

    /// <summary>A round number at or above the largest load.</summary>
    private static double Top(double largest)
    {
        double step = Math.Pow(10, Math.Floor(Math.Log10(largest)));
        return step * Rounds.First(r => r >= largest / step);
    }

    private static IEnumerable<Mark> Axis(double top, double height, Func<double, double> x)
    {
        yield return new LineMark("frame", new(x(0), AxisMm), new(x(top), AxisMm));
        for (int i = 0; i <= 4; i++)
        {
            yield return new LineMark("frame", new(x(top * i / 4), AxisMm), new(x(top * i / 4), height));
            yield return new TextMark("label", new(x(top * i / 4), AxisMm - 5), (top * i / 4).ToString("0.##", CultureInfo.InvariantCulture) + (i == 4 ? " N" : ""), i == 4 ? Anchor.End : Anchor.Middle);
        }
    }

    private static Group Row(KindResult kind, double y, Func<double, double> x)
    {
        var marks = new List<Mark> { new TextMark("label", new(LabelMm - 3, y - 1), Texts.Name(kind.Kind), Anchor.End) };
        if (kind.Expected is { } e) marks.Add(new BandMark("support", new Rect(x(e.FractileN), y - BandMm / 2, x(e.UpperN) - x(e.FractileN), BandMm), 0.3));
        for (int i = 0; i < kind.Tests.Count; i++) marks.AddRange(Dot(kind.Tests[i], y + RowMm * 0.5 * ((i + 0.5) / kind.Tests.Count - 0.5), x));
        return new("kind", Texts.Name(kind.Kind), marks);
    }

    private static IEnumerable<Mark> Dot(TrialTest test, double y, Func<double, double> x)
    {
        double low = test.HighN is null ? test.Pull?.LowN ?? test.LoadN : test.LoadN, high = test.HighN ?? test.Pull?.HighN ?? test.LoadN;
        if (high > low) yield return new LineMark("frame", new(x(low), y), new(x(high), y));
        yield return new CircleMark(test.Failed ? "reading met" : "reading unmet", new(x(test.CountedN), y), DotMm)
        {
            Fact = new(TrialReport.Text(test.Failed ? "chart_failed" : "chart_stopped"), "", Shows.Force(test.CountedN, new Settings())),
        };
    }
}
