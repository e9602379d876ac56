using Pattress.Jobs;
using Pattress.Papers.Documents;
using UglyToad.PdfPig.Content;

namespace Pattress.Tests.Papers;

/// <summary>The template is as large as the wall: measured in the file's own coordinates, and laid over the plan.</summary>
public class TemplateTests
{
    public static TheoryData<string> Sizes => ["a4", "letter"];

    private static PdfFile Template(Job job, string size) => new(PaperSamples.Pdf("template", PaperSamples.Input(job, PaperSize.Find(size))));

    private static IEnumerable<Page> Parts(PdfFile file) => file.Pages.Where(p => PdfFile.TextOf(p).Contains("This line must be 100 mm long", StringComparison.Ordinal));

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Each_part_has_a_line_of_100_mm_across_and_one_up(string size)
    {
        using var file = Template(PaperSamples.DemoHouse, size);
        var parts = Parts(file).ToList();
        Assert.True(parts.Count >= 3, "hardly a part was found");
        foreach (var part in parts)
        {
            var lengths = PdfFile.Lines(part).Where(l => Math.Abs(l.From.To(l.To) - 100) < 1).ToList();
            // They stand outside the frame, above it and at its left, where no plate of 100 mm can be taken for one.
            double head = PdfFile.SizeMm(part).Height - 46;
            var across = Assert.Single(lengths, l => Math.Abs(l.From.Y - l.To.Y) < 0.01 && l.From.Y > head);
            var up = Assert.Single(lengths, l => Math.Abs(l.From.X - l.To.X) < 0.01 && l.From.X < 12);
            Assert.Equal(100, across.From.To(across.To), 0.1);
            Assert.Equal(100, up.From.To(up.To), 0.1);
        }
    }

    [Fact]
    public void An_imperial_job_has_a_line_of_four_inches_too()
    {
        using var file = Template(PaperSamples.Imperial(PaperSamples.DemoHouse), "letter");
        Assert.All(Parts(file), p => Assert.Contains(PdfFile.Lines(p), l => Math.Abs(l.From.To(l.To) - 4 * 25.4) < 0.1));
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Holes_lie_on_the_page_as_they_lie_on_the_wall(string size)
    {
        // By hand: two brackets 50 mm apart and 30 mm down, each with one hole of 9 mm, 22 mm above its middle; they fit on one page.
        var input = PaperSamples.ByHand([SampleAnswer.Bracket(0, new(600, 2100), "strap_toggle.medium"), SampleAnswer.Bracket(1, new(650, 2070), "strap_toggle.medium")]);
        using var file = new PdfFile(PaperSamples.Pdf("template", input with { Size = PaperSize.Find(size)! }));
        var holes = PdfFile.Circles(Assert.Single(Parts(file))).Where(c => Math.Abs(c.Diameter - 9) < 0.05).Select(c => c.Middle).OrderBy(p => p.X).ToList();
        Assert.Equal(2, holes.Count);
        Assert.Equal(50, holes[1].X - holes[0].X, 0.05);
        Assert.Equal(-30, holes[1].Y - holes[0].Y, 0.05);
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Parts_laid_over_each_other_by_their_crosses_are_the_wall(string size)
    {
        // By hand: holes 400 mm apart and 40 mm up; 400 mm is more than a page of either size is wide.
        var input = PaperSamples.ByHand([SampleAnswer.Bracket(0, new(600, 2100), "strap_toggle.medium"), SampleAnswer.Bracket(1, new(1000, 2140), "strap_toggle.medium")]);
        using var file = new PdfFile(PaperSamples.Pdf("template", input with { Size = PaperSize.Find(size)! }));
        var parts = Parts(file).ToList();
        Assert.True(parts.Count > 1);
        var holes = new List<Place>();
        double x = 0, y = 0;
        for (int i = 0; i < parts.Count; i++)
        {
            if (i > 0)
            {
                var (left, right) = (Crosses(parts[i - 1]).OrderByDescending(c => c.X).First(), Crosses(parts[i]).OrderBy(c => c.X).First());
                (x, y) = (x + left.X - right.X, y + left.Y - right.Y);
            }
            holes.AddRange(PdfFile.Circles(parts[i]).Where(c => Math.Abs(c.Diameter - 9) < 0.05).Select(c => new Place(c.Middle.X + x, c.Middle.Y + y)));
        }
        Assert.Equal(400, holes.Max(h => h.X) - holes.Min(h => h.X), 0.1);
        Assert.Equal(40, holes.Max(h => h.Y) - holes.Min(h => h.Y), 0.1);
    }

    [Theory]
    [InlineData("demo")]
    [InlineData("masonry")]
    public void The_template_agrees_with_the_plan(string job)
    {
        var input = PaperSamples.Input(job == "demo" ? PaperSamples.DemoHouse : PaperSamples.Masonry);
        using var file = new PdfFile(PaperSamples.Pdf("template", input));
        var pages = Parts(file).ToList();
        var alone = input.Plan.Items.Where(i => i.Verdict != Verdict.NotHere).SelectMany(i => i.Brackets.Where(b => b.Holes.Count > 1)).ToList();
        Assert.NotEmpty(alone);
        foreach (var bracket in alone)
        {
            // On one of the pages the bracket's holes lie to each other as in the plan.
            Assert.Contains(pages, page => bracket.Holes.All(h => Lies(page, bracket.Holes[0], h)));
        }
    }

    private static bool Lies(Page page, HoleAnswer first, HoleAnswer other)
    {
        var circles = PdfFile.Circles(page);
        return circles.Any(a => Math.Abs(a.Diameter - first.DiameterMm) < 0.05 && circles.Any(b =>
            Math.Abs(b.Diameter - other.DiameterMm) < 0.05 && Math.Abs(b.Middle.X - a.Middle.X - (other.At.X - first.At.X)) < 0.1 && Math.Abs(b.Middle.Y - a.Middle.Y - (other.At.Y - first.At.Y)) < 0.1));
    }

    /// <summary>Register crosses: a level and an upright line of 10 mm with one middle.</summary>
    private static IEnumerable<Place> Crosses(Page page)
    {
        var lines = PdfFile.Lines(page).Where(l => Math.Abs(l.From.To(l.To) - 10) < 0.05).ToList();
        Place Middle((Place From, Place To) l) => new((l.From.X + l.To.X) / 2, (l.From.Y + l.To.Y) / 2);
        return lines.Where(l => Math.Abs(l.From.Y - l.To.Y) < 0.01).Select(Middle)
            .Where(m => lines.Any(l => Math.Abs(l.From.X - l.To.X) < 0.01 && Middle(l).To(m) < 0.05));
    }
}
