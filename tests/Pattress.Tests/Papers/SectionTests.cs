using Pattress.Jobs;
using Pattress.Papers.Brackets;
using Pattress.Papers.Drawings;
using Pattress.Papers.Sections;

namespace Pattress.Tests.Papers;

public class SectionTests
{
    /// <summary>Every kind of TRADE's list, by its fixed id.</summary>
    public static TheoryData<string> Kinds =>
    [
        "self_drive_plug", "hammer_in", "knotting_plug", "nylon_nut_plug", "wing_driven_plug", "hollow_wall_anchor", "spring_toggle", "strap_toggle",
        "strap_clamp", "pivot_bar", "self_drilling_toggle", "small_wing_disc", "wide_wing_plug", "bearer_plate", "plug_and_screw", "plug_in_dab",
        "sleeved_through_fixing", "wood_screw", "steel_screw",
    ];

    private static readonly SectionLayer[] Stud = [new("skim", 2, 0.5), new("board", 12.5, 0.3), new("void", 75, 9), new("board", 12.5, 0.3)];

    private static Drawing Draw(string kind, params SectionLayer[] layers) =>
        SectionDrawing.Of("s", SampleAnswer.Section(kind, layers), new FixingShape(kind, 9, 32, 5, 11, 65), 3, new Sizing(320, 13), SampleAnswer.Plain);

    private static IEnumerable<T> Marks<T>(Drawing drawing, string cssClass) where T : Mark =>
        drawing.Groups.SelectMany(g => g.Marks).OfType<T>().Where(m => m.Class.Split(' ')[0] == cssClass);

    [Fact]
    public void Layers_lie_one_behind_the_other_to_scale()
    {
        var layers = Marks<RectMark>(Draw("strap_toggle", Stud), "layer").Select(m => m.Area).ToList();
        Assert.Equal([2, 12.5, 75, 12.5], layers.Select(a => Math.Round(a.Width, 9)));
        Assert.Equal([0, 2, 14.5, 89.5], layers.Select(a => Math.Round(a.X, 9)));
    }

    [Fact]
    public void A_thick_last_layer_is_cut_short_and_says_so()
    {
        var drawing = Draw("plug_and_screw", new SectionLayer("brick", 215, 10));
        Assert.Contains(drawing.Facts, f => f.Fact.Says == "draw_goes_on");
        Assert.True(Marks<RectMark>(drawing, "layer").Single().Area.Width < 215);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_kind_has_a_screw_and_lies_within_the_drawing(string kind)
    {
        var drawing = Draw(kind, Stud);
        Assert.NotEmpty(Marks<PathMark>(drawing, "screw"));
        var marks = drawing.Groups.SelectMany(g => g.Marks).OfType<PathMark>().Where(m => m.Class is "screw" or "bearing" or "body").SelectMany(m => m.Points);
        Assert.All(marks, p => Assert.True(drawing.View.Contains(p), $"{kind} {p}"));
        Assert.DoesNotContain("NaN", Svg.Of(drawing), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("strap_toggle")]
    [InlineData("spring_toggle")]
    [InlineData("hollow_wall_anchor")]
    [InlineData("pivot_bar")]
    [InlineData("bearer_plate")]
    [InlineData("wide_wing_plug")]
    public void What_opens_bears_on_the_back_of_the_board(string kind)
    {
        var drawing = Draw(kind, Stud);
        var xs = drawing.Groups.SelectMany(g => g.Marks).Where(m => m.Class == "bearing").SelectMany(m => m switch
        {
            RectMark r => [r.Area.X],
            PathMark p => p.Points.Select(q => q.X),
            _ => (IEnumerable<double>)[],
        }).ToList();
        // Skim 2 and board 12.5 in front of it.
        Assert.Equal(14.5, xs.Min(), 9);
    }

    [Fact]
    public void It_spans_as_wide_as_it_opens()
    {
        var bar = Marks<RectMark>(Draw("pivot_bar", Stud), "bearing").Single().Area;
        Assert.Equal(32, bar.Height, 9);
    }

    [Fact]
    public void Where_nothing_fits_the_wall_alone_is_drawn() =>
        Assert.Empty(Marks<PathMark>(SectionDrawing.Of("s", SampleAnswer.Section(null, Stud), null, 3, Sizing.Phone, SampleAnswer.Plain), "screw"));

    [Fact]
    public void Forces_are_drawn_in_proportion_and_said()
    {
        var drawing = BracketDrawing.Of("b", SampleAnswer.Bracket(0, new(625, 2100), "strap_toggle.medium"), new Sizing(320, 13), SampleAnswer.Plain);
        Assert.Equal(["draw_pull|31, draw_shear|88", "draw_pull|212, draw_shear|88"], drawing.Facts.Where(f => f.Fact.What.StartsWith("draw_fixing_number", StringComparison.Ordinal)).Select(f => f.Fact.Says));
        var pulls = Marks<CircleMark>(drawing, "pull").Select(m => m.RadiusMm * drawing.PxPerMm - 3).ToList();
        Assert.Equal(31.0 / 212, pulls.Min() / pulls.Max(), 6);
    }
}
