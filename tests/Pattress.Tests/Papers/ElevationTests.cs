using System.Globalization;
using System.Xml.Linq;
using Pattress.Jobs;
using Pattress.Papers.Drawings;
using Pattress.Papers.Elevations;

namespace Pattress.Tests.Papers;

public class ElevationTests
{
    private static Drawing Draw(Verdict verdict = Verdict.Ready) => ElevationDrawing.Of(SampleAnswer.Elevation(verdict), new Sizing(400, 12), SampleAnswer.Plain);

    private static IEnumerable<T> Marks<T>(Drawing drawing, string cssClass) where T : Mark =>
        drawing.Groups.SelectMany(g => g.Marks).OfType<T>().Where(m => m.Class.Split(' ').Contains(cssClass));

    [Fact]
    public void It_fills_the_width_it_was_given()
    {
        var drawing = Draw();
        Assert.Equal(400, drawing.View.Width * drawing.PxPerMm, 9);
        Assert.Equal(new Rect(0, 0, 3000, 2400), Marks<RectMark>(drawing, "edge").Single().Area);
    }

    [Fact]
    public void Height_and_width_have_one_scale()
    {
        var svg = XDocument.Parse(Svg.Of(Draw())).Root!;
        var edge = svg.Descendants().Single(e => (string?)e.Attribute("class") == "edge");
        Assert.Equal(2400.0 / 3000, Number(edge, "height") / Number(edge, "width"), 3);
    }

    [Fact]
    public void A_touch_on_the_drawing_is_the_place_that_was_drawn_there()
    {
        var drawing = Draw();
        var edge = XDocument.Parse(Svg.Of(drawing)).Descendants().Single(e => (string?)e.Attribute("class") == "edge");
        var corner = drawing.ToMm(Number(edge, "x"), Number(edge, "y") + Number(edge, "height"));
        // 0.01 px is what the SVG rounds to; at about 0.1 px to the mm that is 0.1 mm.
        Assert.InRange(corner.X, -0.2, 0.2);
        Assert.InRange(corner.Y, -0.2, 0.2);
    }

    [Fact]
    public void A_support_is_dark_as_it_is_likely_and_wide_as_the_doubt()
    {
        var drawing = Draw();
        var bands = Marks<BandMark>(drawing, "support").ToList();
        var sure = bands.Where(b => Math.Abs(b.Area.X + b.Area.Width / 2 - 600) < 1e-6).ToList();
        var unsure = bands.Where(b => Math.Abs(b.Area.X + b.Area.Width / 2 - 1200) < 1e-6).ToList();
        // Width 38 and two standard deviations to each side; where all sheets overlap the darkness is the probability.
        Assert.Equal(38 + 4 * 5, sure.Max(b => b.Area.Width), 9);
        Assert.Equal(38 + 4 * 20, unsure.Max(b => b.Area.Width), 9);
        Assert.Equal(0.9, sure.Sum(b => b.Strength), 9);
        Assert.True(unsure.Sum(b => b.Strength) < 0.6, "the innermost sheet is gone where the doubt is wider than the support");
    }

    [Fact]
    public void What_is_hardly_likely_stays_white() =>
        Assert.DoesNotContain(Marks<BandMark>(Draw(), "support"), b => b.Area.Contains(new Point(1800, 100)));

    [Fact]
    public void A_withdrawn_reading_is_not_drawn()
    {
        Assert.Single(Marks<CircleMark>(Draw(), "reading"));
        Assert.Equal(2, Marks<LineMark>(Draw(), "hit").Count());
    }

    [Theory]
    [InlineData(Verdict.Ready, 0)]
    [InlineData(Verdict.CheckFirst, 0)]
    [InlineData(Verdict.NotHere, 1)]
    public void Only_not_here_is_hatched(Verdict verdict, int hatches) => Assert.Equal(hatches, Marks<HatchMark>(Draw(verdict), "not-here").Count());

    [Fact]
    public void Dimensions_run_from_the_datum()
    {
        var corner = Marks<TextMark>(Draw(), "dimension-text").Select(t => t.Text).ToList();
        Assert.Equal(["draw_dimension|625", "draw_dimension|2375", "draw_dimension|2100"], corner);
        var input = SampleAnswer.Elevation(Verdict.Ready) with { Datum = new(new(900, 1900), "datum_opening") };
        var edge = Marks<TextMark>(ElevationDrawing.Of(input, Sizing.Phone, SampleAnswer.Plain), "dimension-text").Select(t => t.Text).ToList();
        Assert.Equal(["draw_dimension|-275", "draw_dimension|1475", "draw_dimension|200"], edge);
    }

    [Fact]
    public void The_table_tells_all_that_is_drawn()
    {
        var facts = Draw().Facts.Select(f => f.Fact).ToList();
        Assert.Contains(facts, f => f.What == "draw_name|opening.window");
        Assert.Contains(facts, f => f.What == "draw_name|service.socket");
        Assert.Contains(facts, f => f.What == "draw_name|reading.tap" && f.Says == "draw_name|sound.solid");
        Assert.Contains(facts, f => f.What == "draw_bracket|A|1" && f.Where == "draw_place|625|2100");
        Assert.Contains(facts, f => f.What == "draw_support" && f.Says == "draw_percent|0.9");
        string html = FactTable.Html(Draw(), new Fact("a", "b", "c"));
        Assert.Equal(facts.Count, XDocument.Parse(html).Descendants("tr").Count(r => r.Elements("td").Any()));
    }

    [Fact]
    public void It_needs_neither_a_plan_nor_an_answer()
    {
        var bare = new ElevationInput(SampleAnswer.Wall, null, [new("A", SampleAnswer.Pole, null)], Datum.Corner);
        Assert.Single(Marks<RectMark>(ElevationDrawing.Of(bare, Sizing.Phone, SampleAnswer.Plain), "thing"));
    }

    [Fact]
    public void The_same_drawing_is_the_same_text_in_any_culture()
    {
        string here = Svg.Of(Draw());
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("") { NumberFormat = { NumberDecimalSeparator = ",", NegativeSign = "~" } };
            Assert.Equal(here, Svg.Of(Draw()));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static double Number(XElement e, string name) => double.Parse((string)e.Attribute(name)!, CultureInfo.InvariantCulture);
}
