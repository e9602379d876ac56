using Pattress.Actions;
using Pattress.Jobs;
using static Pattress.Tests.Actions.FixtureSamples;
using static Pattress.Tests.Actions.HandWork;

namespace Pattress.Tests.Actions;

/// <summary>Poles, tracks, blinds, rails, shelves and pelmets: every number by the hand arithmetic above it.</summary>
public sealed class RailsByHandTests
{
    // 2 m of pole and rings 0.31 + 0.2 kg/m, 1.02 kg; 2 x 2 x 2.5 m of 1 kg/m2, 10 kg.
    private static readonly (string, double)[] Pole = [("width_mm", 2000), ("drop_mm", 2500), ("fullness", 2), ("hem_mm", 0), ("fabric_g_m2", 1000)];

    private static Fixture Curtain(string what, params (string, string)[] words) => Of(what, Pole).Words([("lining", "none"), .. words]);

    [Fact]
    public void Where_brackets_go()
    {
        // Poles: 125 in from the ends, one more beyond each 1.2 m. Tracks and blinds: 75 in, 0.5 m and 1 m apart at most.
        At(Curtain("curtain_pole").Load(), (-875, 0), (0, 0), (875, 0));
        At(Of("curtain_track", ("width_mm", 1200)).Load(), (-525, 0), (-175, 0), (175, 0), (525, 0));
        At(Of("roman_blind", ("width_mm", 2200)).Load(), (-1025, 0), (-1025 + 2050 / 3.0, 0), (1025 - 2050 / 3.0, 0), (1025, 0));
        At(Of("venetian_blind", ("width_mm", 1150)).Load(), (-500, 0), (500, 0));
        // Rails that hold people: grab rails by their flanges, 0.9 m apart at most; handrails 200 in, 1 m apart at most.
        At(Of("grab_rail", ("width_mm", 1000)).Load(), (-500, 0), (0, 0), (500, 0));
        At(Of("grab_rail", ("width_mm", 900)).Load(), (-450, 0), (450, 0));
        At(Of("handrail", ("width_mm", 2200)).Load(), (-900, 0), (0, 0), (900, 0));
        // Pelmets 100 in, 0.8 m apart at most.
        At(Of("pelmet", ("width_mm", 1500)).Load(), (-650, 0), (0, 0), (650, 0));
        // Shelves a fifth in, 150 at most, 0.6 m apart at most (0.4 m on hidden rods); or as many and as far in as is said.
        At(Of("shelf", ("width_mm", 600)).Load(), (-180, 0), (180, 0));
        At(Of("shelf", ("width_mm", 1000)).Load(), (-350, 0), (0, 0), (350, 0));
        At(Of("floating_shelf", ("width_mm", 600)).Load(), (-180, 0), (180, 0));
        At(Of("floating_shelf", ("width_mm", 800)).Load(), (-250, 0), (0, 0), (250, 0));
        At(Of("shelf", ("width_mm", 1000), ("bracket_count", 2), ("end_mm", 100)).Load(), (-400, 0), (400, 0));
        At(Of("shelf", ("width_mm", 1000), ("bracket_count", 1)).Load(), (0, 0));
    }

    // Stacks nobody measured: of a pair an eighth of the rail each, of a single curtain a quarter; either way 10 kg with its middle 250 from the end:
    // (2000 - 250) / 2000 = 0.875 of it on the bracket at that end.
    [Theory]
    [InlineData("pair"), InlineData("single")]
    public void Curtain_drawn_to_one_side(string curtains)
    {
        var pole = Curtain("curtain_pole", ("curtains", curtains)).Placed((-1000, 0), (1000, 0)).Load();
        Assert.Equal(-(0.51 + 8.75) * G, pole.Case(0, "curtain_left").Permanent.Vy, 1e-9);
        Assert.Equal(-(0.51 + 1.25) * G, pole.Case(0, "curtain_right").Permanent.Vy, 1e-9);
        Assert.Equal(-(0.51 + 8.75) * G, pole.Case(1, "curtain_moving").Permanent.Vy, 1e-9);
        Assert.Equal(curtains == "pair", pole.Codes().Contains("curtain_open"));
    }

    // Stacks cannot be longer than the rail holds: two of 1 m fill it, so the left bracket has half.
    [Fact]
    public void Stacks_are_no_longer_than_the_rail()
    {
        var pole = (Curtain("curtain_pole") with { Numbers = Pole.Append(("stack_mm", 4000.0)).ToDictionary(p => p.Item1, p => p.Item2) }).Placed((-1000, 0), (1000, 0)).Load();
        Assert.Equal(-5.51 * G, pole.Case(0, "curtain_left").Permanent.Vy, 1e-9);
        Assert.Equal(-5.51 * G, pole.Case(0, "curtain_moving").Permanent.Vy, 1e-9);
    }

    // One bracket carries all of it, wherever the curtain is; a person's tug too.
    [Fact]
    public void One_bracket_carries_everything()
    {
        var pole = Curtain("curtain_pole").Placed((0, 0)).Load();
        Assert.All(pole.Brackets[0].Cases.Where(c => c.Code.StartsWith("curtain", StringComparison.Ordinal)), c => Assert.Equal(-11.02 * G, c.Permanent.Vy, 1e-9));
        Same(new(0, 0, 100 * 90, 0, -100, 0), pole.Case(0, "pulled_down").Variable);
        // Two screws of one support, 5 mm apart, share it; 6 mm apart they are two supports.
        Assert.Equal(-5.51 * G, Curtain("curtain_pole").Placed((0, 0), (5, 0)).Load().Case(0, "curtain_left").Permanent.Vy, 1e-9);
        Assert.True(Curtain("curtain_pole").Placed((0, 0), (6, 0)).Load().Case(0, "curtain_left").Permanent.Vy < -20 * G);
    }

    // Round a bay nobody measured: twice this straight of 2 m. 20 kg in all, half of it here: 11 kg with 1 kg of track.
    [Fact]
    public void Track_round_a_bay()
    {
        var track = Curtain("curtain_track", ("bay", "middle"), ("curtains", "single")).Placed((-1000, 0), (1000, 0)).Load();
        Assert.Equal(11, track.MassKg, 1e-12);
        Assert.Equal(-5.5 * G, track.Case(0, "curtain_closed").Permanent.Vy, 1e-9);
        // A single curtain stacks here whole, 20 kg on a quarter of the rail.
        Assert.Equal(-(0.5 + 17.5) * G, track.Case(0, "curtain_left").Permanent.Vy, 1e-9);
        Assert.DoesNotContain("curtain_open", track.Codes());
        // Of a pair one half, 10 kg, stacks here.
        var pair = Curtain("curtain_track", ("bay", "middle")).Placed((-1000, 0), (1000, 0)).Load();
        Assert.Equal(-(0.5 + 8.75) * G, pair.Case(0, "curtain_left").Permanent.Vy, 1e-9);
        // A bay cannot be shorter than its straight.
        var shorter = (Curtain("curtain_track", ("bay", "middle")) with { Numbers = Pole.Append(("bay_length_mm", 1000.0)).ToDictionary(p => p.Item1, p => p.Item2) }).Load();
        Assert.Equal(11, shorter.MassKg, 1e-12);
        // A heavy track, 0.6 + 0.2 kg/m.
        Assert.Equal(11.6, Curtain("curtain_track", ("track", "heavy")).Load().MassKg, 1e-12);
    }

    // A hand 80 mm wide, or a quarter of a short rail: at the end of 200 mm, 50 wide: (200 - 25) / 200 of 2 x 60 N.
    [Fact]
    public void Hand_on_a_short_blind() =>
        Assert.Equal(120 * 0.875, Of("roller_blind", ("width_mm", 200)).Load().Case(0, "pulled_out").Variable.N, 1e-9);

    [Fact]
    public void Cords_are_said_where_there_are_cords()
    {
        foreach (string what in (string[])["roller_blind", "roman_blind", "venetian_blind", "vertical_blind"])
            foreach (string control in (string[])["chain", "cord", "wand", "motor"])
                Assert.Equal(control is "chain" or "cord", Of(what).Words(("control", control)).Load().Warns("cords"));
    }

    // 1 m: vanes 1.2 x 0.3 x 2 = 0.72 kg, headrail 0.6 kg; drawn to the left they stack on a quarter: 0.875 of them on the left.
    [Fact]
    public void Vertical_blind_stacks_like_a_curtain()
    {
        var blind = Of("vertical_blind", ("width_mm", 1000), ("drop_mm", 2000)).Placed((-500, 0), (500, 0)).Load();
        Assert.Equal(-(0.3 + 0.875 * 0.72) * G, blind.Case(0, "curtain_left").Permanent.Vy, 1e-9);
        Assert.Equal(-0.66 * G, blind.Case(1, "curtain_closed").Permanent.Vy, 1e-9);
    }

    // 1 x 2 m with blackout lining and heavy interlining: 2 x (1.15 x (0.3 + 0.33 + 0.4) + 0.6) + 0.6 kg.
    [Fact]
    public void Heavy_roman_blind() => Assert.Equal(2 * (1.15 * 1.03 + 0.6) + 0.6,
        Of("roman_blind", ("width_mm", 1000), ("drop_mm", 2000)).Words(("lining", "blackout"), ("interlining", "heavy")).Load().MassKg, 1e-12);

    // 1 kg on two flanges, 80 mm out; on three a third each, and every one takes the whole of a person, 2 x 850 N, slanting too.
    [Fact]
    public void Grab_rail_by_its_flanges()
    {
        Same(new(0, 0, G / 2 * 80, 0, -G / 2, 0), Of("grab_rail").Load().Case(1, "hangs").Permanent);
        var three = Of("grab_rail", ("width_mm", 1000), ("packing_mm", 10)).Load();
        Same(new(0, 0, G / 3 * 90, 0, -G / 3, 0), three.Case(2, "hangs").Permanent);
        double s = 1700 / Math.Sqrt(2);
        Same(new(s, 0, s * 90, 0, -s, 0), three.Case(2, "pulled_down_and_out").Variable);
        Same(new(0, 0, -1700 * 90, 0, 1700, 0), three.Case(0, "pulled_up").Variable);
        Assert.True(three.Warns("grab_rail"));
        Assert.True(three.Warns("person"));
        Assert.Equal(90, three.Brackets[0].Plate.ArmMm, 1e-12);
    }

    // 2 m on brackets at its ends, 75 mm out: 4.4 kg; the line load 0.36 N/mm over it, half on each.
    [Fact]
    public void Handrail_on_two_brackets()
    {
        var rail = Of("handrail", ("width_mm", 2000)).Placed((-1000, 0), (1000, 0)).Load();
        Same(new(0, 0, 2.2 * G * 75, 0, -2.2 * G, 0), rail.Case(0, "hangs").Permanent);
        Same(new(0, 0, 360 * 75, 0, -360, 0), rail.Case(1, "line_down").Variable);
        Same(new(360, 0, 0, 0, 0, 0), rail.Case(1, "line_out").Variable);
        Same(new(0, -900 * 75, 0, 900, 0, 0), rail.Case(1, "pulled_right").Variable);
        // A hand 80 mm wide at the end: 0.98 of 2 x 450 N.
        Same(new(0, 0, -882 * 75, 0, 882, 0), rail.Case(0, "pulled_up").Variable);
        Assert.Equal(LoadDuration.ShortTerm, rail.Case(0, "line_out").Duration);
        Assert.Equal(["hangs", "line_down", "line_out", "pulled_down", "pulled_out", "pulled_left", "pulled_right", "pulled_up", "pulled_down_and_out"], rail.Codes());
        Assert.True(rail.Warns("handrail"));
        // Entered, the line load is as entered, in the American set too.
        var us = Pattress.Actions.Fixtures.FixtureLoads.Of(Of("handrail", ("width_mm", 2000), ("line_n_m", 500)).Placed((-1000, 0), (1000, 0)), FixtureSamples.Wall, new() { Standards = "us" });
        Assert.Equal(500, us.Case(0, "line_out").Variable.N, 1e-9);
    }

    // Particleboard 8 kN/m3 x 1.0 x 0.2 x 0.018 = 28.8 N and three brackets of 0.4 kg; books 6 kN/m3 x 0.2 x 0.25 = 300 N a metre.
    [Fact]
    public void Shelf_with_books()
    {
        var shelf = Of("shelf", ("width_mm", 1000), ("depth_mm", 200), ("packing_mm", 10));
        Assert.Equal(28.8 + 1.2 * G, shelf.Step("W_own"), 1e-9);
        Assert.Equal(300, shelf.Step("W_contents"), 1e-9);
        Assert.Equal(328.8 / G + 1.2, shelf.Load().MassKg, 1e-9);
        // Two brackets 1 m apart: a hand sideways, 300 N 210 mm out: 300 x 210 x 500 / (2 x 500^2) pulls the left one.
        var two = shelf.Placed((-500, 0), (500, 0)).Load();
        Same(new(-63, 0, 150 * 110, 150, -150, 0), two.Case(1, "pulled_right").Variable);
        Same(new(63, 0, 150 * 110, 150, -150, 0), two.Case(0, "pulled_right").Variable);
        Same(new(0.96 * 300, 0, 150 * 110, 0, -150, 0), two.Case(0, "pulled_out").Variable);
        Same(new(0, 0, 150 * 110 + 288 * 210, 0, -150 - 288, 0), two.Case(0, "leant_on").Variable);
        Same(new(0, 0, (14.4 + 0.4 * G) * 110, 0, -14.4 - 0.4 * G, 0), two.Case(0, "loaded").Permanent);
        Assert.Equal(110, two.Brackets[0].Plate.ArmMm, 1e-12);
        Assert.Equal(["empty", "loaded", "leant_on", "pulled_out", "pulled_left", "pulled_right"], two.Codes());
        // Hidden rods weigh nothing of their own.
        Assert.Equal(328.8 / G, Of("floating_shelf", ("width_mm", 1000), ("depth_mm", 200)).Load().MassKg, 1e-9);
        Assert.True(Of("shelf").Words(("material", "glass")).Load().Warns("glass"));
        Assert.False(Of("shelf").Load().Warns("glass"));
    }

    // 1000 mm, brackets 200 in from the left end and at the right: contents 0.3 N/mm on any spans. The left bracket gets the overhang and the
    // span: 0.3 x 1000^2 / (2 x 800) = 187.5 N; the right one, the overhang empty, 0.3 x 800 / 2 = 120 N.
    [Fact]
    public void Contents_lie_where_they_are_worst()
    {
        var shelf = Of("shelf", ("width_mm", 1000), ("depth_mm", 200)).Placed((-300, 0), (500, 0)).Load();
        Assert.Equal(-187.5, shelf.Case(0, "loaded").Variable.Vy, 1e-9);
        Assert.Equal(-120, shelf.Case(1, "loaded").Variable.Vy, 1e-9);
    }

    // A bracket beyond the end makes the board longer: a bracket at 600 of 1000 mm from -500: 300 N over 1100 mm, half on each.
    [Fact]
    public void Bracket_beyond_the_end()
    {
        var shelf = Of("shelf", ("width_mm", 1000), ("depth_mm", 200)).Placed((-500, 0), (600, 0)).Load();
        Assert.Equal(-150, shelf.Case(0, "loaded").Variable.Vy, 1e-9);
        Assert.Equal(-150, shelf.Case(1, "loaded").Variable.Vy, 1e-9);
    }

    // Top 8 x 1.0 x 0.15 x 0.018 kN = 21.6 N at 75 + 10, front 28.8 N at 150 + 10; a hand of 2 x 50 N at the front: 0.96 of it.
    [Fact]
    public void Pelmet_with_packing()
    {
        var pelmet = Of("pelmet", ("width_mm", 1000), ("depth_mm", 150), ("packing_mm", 10)).Placed((-500, 0), (500, 0)).Load();
        Same(new(0, 0, 10.8 * 85 + 14.4 * 160, 0, -25.2, 0), pelmet.Case(1, "hangs").Permanent);
        Same(new(0, 0, 96 * 160, 0, -96, 0), pelmet.Case(1, "pulled_down").Variable);
        Same(new(96, 0, 0, 0, 0, 0), pelmet.Case(0, "pulled_out").Variable);
        Assert.Equal(50.4 / G, pelmet.MassKg, 1e-12);
        Assert.Equal(85, pelmet.Brackets[0].Plate.ArmMm, 1e-12);
        Assert.Equal(["hangs", "pulled_down", "pulled_out"], pelmet.Codes());
    }

    // 5 q L^4 / 384 E I of any handbook: E I = 1600 x 250 x 18^3 / 12 = 194.4e6; board 36 N + 30 kg on 1.2 m, the middle 1 m between brackets.
    // k_def of particleboard P4 2.25 (EN 1995-1-1 Table 3.2, from memory).
    [Fact]
    public void Shelf_sags_and_creeps()
    {
        var shelf = Of("shelf", ("width_mm", 1200), ("depth_mm", 250), ("load_kg_m", 25)).Placed((-500, 0), (500, 0));
        double q = (8 * 1.2 * 0.25 * 18 + 30 * G) / 1200, w = 5 * q * 1e12 / (384 * 194.4e6);
        Assert.Equal(194.4e6, shelf.Step("EI"), 1e-3);
        Assert.Equal(w, shelf.Step("w_inst"), 1e-9);
        Assert.Equal(3.25 * w, shelf.Step("w_fin"), 1e-9);
        // P4 may not stand damper than class 1: its value there is taken.
        Assert.Equal(2.25, shelf.Step("k_def", new() { ServiceClass = 2 }), 1e-12);
        Assert.Equal(0.8, shelf.Words(("material", "softwood")).Step("k_def", new() { ServiceClass = 2 }), 1e-12);
        Assert.Equal(0, shelf.Words(("material", "glass")).Step("k_def"), 1e-12);
        Assert.True(shelf.Load().Warns("shelf_sags"));
        // 100 mm between the middle ones, 450 the longest span, and one board of 40 mm hardly sags.
        Assert.Equal(5 * q * Math.Pow(450, 4) / (384 * 194.4e6), shelf.Placed((-500, 0), (-50, 0), (50, 0), (500, 0)).Step("w_inst"), 1e-9);
        Assert.False(Of("shelf", ("width_mm", 600), ("depth_mm", 250), ("board_mm", 40)).Load().Warns("shelf_sags"));
        Assert.False(shelf.Placed((0, 0)).Load().Warns("shelf_sags"));
        Assert.False(shelf.Placed((0, 0), (0, 50)).Load().Warns("shelf_sags"));
    }
}
