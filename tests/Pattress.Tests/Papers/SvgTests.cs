using System.Xml.Linq;
using CsCheck;
using Pattress.Jobs;
using Pattress.Papers.Drawings;

namespace Pattress.Tests.Papers;

public class SvgTests
{
    private static string Render(params Mark[] marks) =>
        Svg.Of(new Drawing("d", "t", new Rect(0, 0, 100, 50), 2, [new Group("g", "title", marks)]));

    [Fact]
    public void Y_runs_up_on_the_wall_and_down_on_the_screen() =>
        Assert.Contains("d=\"M0 100L200 0\"", Render(new LineMark("l", new(0, 0), new(100, 50))));

    [Fact]
    public void What_a_user_wrote_cannot_break_out()
    {
        string svg = Render(new TextMark("t", new(1, 1), "<script>\"&\"</script>"));
        Assert.Equal("<script>\"&\"</script>", XDocument.Parse(svg).Descendants().Single(e => e.Name.LocalName == "text").Value);
    }

    [Fact]
    public void It_holds_no_style_and_no_script()
    {
        string svg = Svg.Of(Pattress.Papers.Elevations.ElevationDrawing.Of(SampleAnswer.Elevation(Verdict.NotHere), Sizing.Phone, SampleAnswer.Plain));
        var all = XDocument.Parse(svg).Descendants().ToList();
        Assert.DoesNotContain(all, e => e.Name.LocalName is "script" or "style" or "image" or "use");
        Assert.DoesNotContain(all, e => e.Attributes().Any(a => a.Name.LocalName is "style" or "href" || a.Name.LocalName.StartsWith("on", StringComparison.Ordinal)));
    }

    [Fact]
    public void Strokes_of_a_hatch_stay_inside()
    {
        var rect = Gen.Select(Gen.Double[-500, 500], Gen.Double[-500, 500], Gen.Double[1, 900], Gen.Double[1, 900], (x, y, w, h) => new Rect(x, y, w, h));
        Gen.Select(rect, Gen.Double[5, 50], Gen.Int[-1, 1]).Sample((area, spacing, slope) =>
        {
            var grown = new Rect(area.X - 1e-6, area.Y - 1e-6, area.Width + 2e-6, area.Height + 2e-6);
            Assert.All(Strokes.Over(area, spacing, slope), s => Assert.True(grown.Contains(s.From) && grown.Contains(s.To)));
        }, iter: 300);
    }

    [Theory]
    [InlineData(1.0)]
    [InlineData(-1.0)]
    public void Strokes_of_a_hatch_lean_at_45_degrees(double slope) => Assert.All(
        Strokes.Over(new Rect(10, 20, 70, 30), 8, slope),
        s => Assert.Equal(slope, (s.To.Y - s.From.Y) / (s.To.X - s.From.X), 9));

    [Fact]
    public void Labels_are_kept_apart_and_in_order() =>
        Gen.Double[0, 1000].List[1, 12].Sample(list =>
        {
            var wanted = list.Order().ToList();
            double[] placed = Spread.Apart(wanted, 20, 0, 1000);
            Assert.All(placed.Zip(placed.Skip(1)), p => Assert.True(p.Second - p.First >= 20 - 1e-9));
            Assert.InRange(placed[^1], 0, 1000 + 1e-9);
        }, iter: 300);
}
