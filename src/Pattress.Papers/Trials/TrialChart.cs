using System.Text.RegularExpressions;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Legends;
using OxyPlot.Series;
using Pattress.Jobs;
using Pattress.Jobs.Text;
using Pattress.Trials.Documents;

namespace Pattress.Papers.Trials;

/// <summary>The chart of a bench series: a row a kind, every test as a dot with its interval, and what one more test would do.</summary>
public static partial class TrialChart
{
    private const double WidthPx = 760, HeadPx = 215, RowPx = 44, Spread = 0.5, LetterPx = 7.6, AxisPx = 50, KeyPx = 20;
    private static readonly OxyColor Pencil = OxyColor.FromRgb(0x33, 0x33, 0x33), Grey = OxyColor.FromRgb(0xb8, 0xb4, 0xac), Accent = OxyColor.FromRgb(0xa3, 0x4a, 0x12);

    /// <summary>The chart as SVG; the same answer gives the same text. The file's notes stand under the title, so that an invented series says so.</summary>
    public static string Svg(TrialAnswer answer)
    {
        var rows = answer.Kinds.OrderBy(k => k.Expected?.MedianN ?? k.MeanN).ThenBy(k => k.Kind, StringComparer.Ordinal).ToList();
        var exporter = new SvgExporter { Width = WidthPx, Height = HeadPx + RowPx * rows.Count };
        // The room for letters is measured in another font than the reader's: nothing is cut off at it.
        return Clip().Replace(exporter.ExportToString(Model(answer, rows)), "");
    }

    private static PlotModel Model(TrialAnswer answer, List<KindResult> rows)
    {
        var model = new PlotModel { Title = Text("chart_title"), TitleFontSize = 15, DefaultFont = "sans-serif", DefaultFontSize = 12, Background = OxyColors.White, TextColor = Pencil, PlotAreaBorderColor = Grey };
        if (answer.Notes.Count > 0) model.Subtitle = "\n" + answer.Notes[0];
        model.SubtitleFontSize = 10;
        // Letters are measured without the reader's font, so the room for them is given rather than worked out.
        model.PlotMargins = new OxyThickness(20 + LetterPx * rows.Max(r => Texts.Name(r.Kind).Length), double.NaN, KeyPx, AxisPx);
        var kinds = new CategoryAxis { Position = AxisPosition.Left, GapWidth = 0.4, TicklineColor = Grey };
        foreach (var row in rows) kinds.Labels.Add(Texts.Name(row.Kind));
        model.Axes.Add(kinds);
        model.Axes.Add(new LinearAxis { Position = AxisPosition.Bottom, Minimum = 0, MaximumPadding = 0.05, Title = Text("chart_axis"), MajorGridlineStyle = LineStyle.Dot, MajorGridlineColor = Grey, TicklineColor = Grey });
        model.Legends.Add(new Legend { LegendPlacement = LegendPlacement.Outside, LegendPosition = LegendPosition.BottomLeft, LegendOrientation = LegendOrientation.Vertical, LegendFontSize = 11, LegendItemSpacing = KeyPx, LegendLineSpacing = 4 });
        foreach (var series in (Series[])[Expected(rows), Between(rows), Dots(rows, true), Dots(rows, false), Characteristic(rows)]) model.Series.Add(series);
        return model;
    }

    private static LineSeries Expected(List<KindResult> rows)
    {
        var line = new LineSeries { Title = Text("chart_expected"), Color = Grey, StrokeThickness = 7, LineJoin = LineJoin.Miter };
        for (int i = 0; i < rows.Count; i++)
            if (rows[i].Expected is { } e) Segment(line, e.FractileN, e.UpperN, i);
        return line;
    }

    /// <summary>Tests known only as an interval, and pulls by the bracket model.</summary>
    private static LineSeries Between(List<KindResult> rows)
    {
        var line = new LineSeries { Title = Text("chart_between"), Color = Pencil, StrokeThickness = 1.5 };
        Each(rows, (test, y) =>
        {
            if (test.HighN is { } high) Segment(line, test.LoadN, high, y);
            else if (test.Pull is { } pull) Segment(line, pull.LowN, pull.HighN, y);
        });
        return line;
    }

    private static ScatterSeries Dots(List<KindResult> rows, bool failed)
    {
        var dots = new ScatterSeries
        {
            Title = Text(failed ? "chart_failed" : "chart_stopped"), MarkerType = failed ? MarkerType.Circle : MarkerType.Triangle, MarkerSize = 4,
            MarkerFill = failed ? Pencil : OxyColors.White, MarkerStroke = Pencil, MarkerStrokeThickness = 1.2,
        };
        Each(rows, (test, y) => { if (test.Failed == failed) dots.Points.Add(new(test.CountedN, y)); });
        return dots;
    }

    private static ScatterSeries Characteristic(List<KindResult> rows)
    {
        var marks = new ScatterSeries { Title = Text("chart_characteristic"), MarkerType = MarkerType.Diamond, MarkerSize = 6, MarkerFill = Accent };
        for (int i = 0; i < rows.Count; i++)
            if (rows[i].Characteristic is { } c) marks.Points.Add(new(c.ValueN, i));
        return marks;
    }

    /// <summary>Tests of one kind stand a little above each other, so that ties are seen.</summary>
    private static void Each(List<KindResult> rows, Action<TrialTest, double> draw)
    {
        for (int i = 0; i < rows.Count; i++)
            for (int t = 0; t < rows[i].Tests.Count; t++)
                draw(rows[i].Tests[t], i + Spread * ((t + 0.5) / rows[i].Tests.Count - 0.5));
    }

    private static void Segment(LineSeries line, double from, double to, double y)
    {
        line.Points.Add(new(from, y));
        line.Points.Add(new(to, y));
        line.Points.Add(DataPoint.Undefined);
    }

    [GeneratedRegex(" clip-path=\"[^\"]*\"")]
    private static partial Regex Clip();

    private static string Text(string code) => Texts.Sentence(new Reason(code), new Settings());
}
