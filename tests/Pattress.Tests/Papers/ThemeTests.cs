using System.Xml.Linq;
using Pattress.Papers.Drawings;
using Pattress.Papers.Sheets;

namespace Pattress.Tests.Papers;

/// <summary>The look of drawings, read from the pages' style sheet.</summary>
public class ThemeTests
{
    private static readonly Theme Theme = Theme.OfPages();

    private static IReadOnlyList<Drawing> Drawings { get; } = [.. DrawingBook.All(PaperSamples.Input(PaperSamples.DemoHouse))];

    [Fact]
    public void A_rule_is_read_as_a_browser_reads_it()
    {
        var theme = Theme.Parse(".drawing path, .drawing rect { fill: none; stroke: var(--pencil); stroke-width: 1; }\n.drawing .b.c { stroke-width: 3; }\n.drawing .b { stroke-width: 2; stroke-dasharray: 3 2; fill: var(--do); }\n:root { --pencil: #010203; }\n@media x { .drawing .b { stroke-width: 9; } }");
        var plain = theme.Of(new PathMark("a", []));
        var b = theme.Of(new PathMark("b", []));
        Assert.Equal(("pencil", 1.0, ""), (plain.Stroke, plain.WidthPx, plain.Fill));
        Assert.Equal("do", b.Fill);
        Assert.Equal([3.0, 2], b.Dash);
        // Two classes weigh more than one, wherever they stand.
        Assert.Equal(3, theme.Of(new PathMark("b c", [])).WidthPx);
        Assert.Equal((1, 2, 3), theme.Colour("pencil"));
    }

    [Fact]
    public void Every_mark_of_every_drawing_can_be_seen()
    {
        Assert.True(Drawings.Count > 8);
        foreach (var mark in Drawings.SelectMany(d => d.Groups).SelectMany(g => g.Marks))
        {
            var look = Theme.Of(mark);
            Assert.True(look.Stroke.Length > 0 || look.Fill.Length > 0, $"{mark.GetType().Name} {mark.Class}");
            if (mark is LineMark or HatchMark) Assert.True(look.Stroke.Length > 0, mark.Class);
        }
    }

    [Fact]
    public void Verdicts_differ_by_more_than_colour()
    {
        Look Of(string verdict) => Theme.Of(new RectMark("bracket " + verdict, default));
        Assert.NotEqual(Of("ready").Fill, Of("check_first").Fill);
        Assert.NotEqual(Of("ready").Dash.Count, Of("check_first").Dash.Count);
        Assert.NotEqual(Of("not_here").Fill, Of("ready").Fill);
        Assert.Empty(Of("not_here").Dash);
    }

    [Theory]
    [InlineData("pencil", 4.5)]
    [InlineData("lead", 4.5)]
    [InlineData("do", 4.5)]
    [InlineData("rule", 3)]
    public void Ink_stands_out_from_the_paper_as_wcag_asks(string name, double least)
    {
        // WCAG 2.2, 1.4.3 and 1.4.11; relative luminance as defined there; paper is white.
        var (r, g, b) = Theme.Colour(name);
        double Linear(int c) => c / 255.0 <= 0.04045 ? c / 255.0 / 12.92 : Math.Pow((c / 255.0 + 0.055) / 1.055, 2.4);
        double luminance = 0.2126 * Linear(r) + 0.7152 * Linear(g) + 0.0722 * Linear(b);
        Assert.True(1.05 / (luminance + 0.05) >= least, $"{name}: {1.05 / (luminance + 0.05):0.00}");
    }

    [Fact]
    public void A_drawing_that_stands_alone_has_both_themes_a_title_and_says_its_facts()
    {
        foreach (var drawing in Drawings)
        {
            var svg = XDocument.Parse(Svg.Alone(drawing)).Root!;
            string style = svg.Elements().Single(e => e.Name.LocalName == "style").Value;
            Assert.Contains("prefers-color-scheme: dark", style, StringComparison.Ordinal);
            Assert.Contains("--pencil:#", style, StringComparison.Ordinal);
            Assert.Equal(drawing.Title, svg.Elements().Single(e => e.Name.LocalName == "title").Value);
            Assert.All(drawing.Facts, f => Assert.Contains(f.Fact.What, svg.Elements().Single(e => e.Name.LocalName == "desc").Value, StringComparison.Ordinal));
            Assert.DoesNotContain(svg.Descendants(), e => e.Name.LocalName is "script" or "image" || e.Attributes().Any(a => a.Name.LocalName is "href"));
        }
    }

    [Theory]
    [MemberData(nameof(SectionTests.Kinds), MemberType = typeof(SectionTests))]
    public void What_opens_behind_is_no_wider_than_its_hole_on_the_way_in(string kind)
    {
        var stages = Pattress.Papers.Sections.SectionDrawing.Stages(kind);
        Assert.Equal(Pattress.Papers.Sections.Stage.Set, stages[^1]);
        if (stages.Count == 1) return;
        Pattress.Jobs.SectionLayer[] stud = [new("board", 12.5, 0.3), new("void", 75, 9), new("board", 12.5, 0.3)];
        var drawing = Pattress.Papers.Sections.SectionDrawing.Of("s", SampleAnswer.Section(kind, stud), new(kind, 9, 32, 5, 11, 65), 3, new Sizing(320, 13), SampleAnswer.Plain, stages[0]);
        // The hole of the sample is 9 mm.
        var folded = drawing.Groups.SelectMany(g => g.Marks).OfType<PathMark>().Single(m => m.Class == "bearing").Points;
        Assert.All(folded, p => Assert.InRange(p.Y, -4.5, 4.5));
        Assert.True(folded.Max(p => p.X) > 12.5 + 10, "it reaches into the void");
    }
}
