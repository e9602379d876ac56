using Pattress.Walls;

namespace Pattress.Tests.Walls;

/// <summary>Facts of the trade: common practice, no source.</summary>
public class WallFactsTests
{
    private static WallBelief Wall(params WallReading[] readings) => WallModel.Infer(new("w", "wall", readings));

    private static TapHeard[] Taps(string sound, int count) => [.. Enumerable.Range(0, count).Select(i => new TapHeard($"t{i}", i * 250, 1500, sound))];

    [Fact]
    public void A_bit_that_meets_solid_at_20_mm_makes_a_dab_wall_likeliest() =>
        Assert.Equal("dabs", Wall(new HoleFelt("h", 500, 1500) { SolidAtMm = 20 }).BestFamily.Family);

    [Fact]
    public void A_bit_that_meets_masonry_20_mm_behind_the_board_makes_a_dab_wall_likeliest() =>
        Assert.Equal("dabs", Wall(new HoleFelt("h", 500, 1500) { SolidAtMm = 32.5, Met = "masonry" }).BestFamily.Family);

    [Fact]
    public void A_bit_that_runs_up_to_the_chuck_is_in_a_stud_cavity()
    {
        var belief = Wall(new HoleFelt("h", 500, 1500) { Met = "void" });
        Assert.True(belief.Support("timber_stud") + belief.Support("steel_stud") > 0.9);
    }

    [Theory]
    [InlineData(12.3, 12.5, 1)]
    [InlineData(14.4, 12.5, 1)]
    [InlineData(26, 12.5, 2)]
    public void A_hooked_wire_measures_the_board(double wire, double board, int boards)
    {
        var best = Wall(new HoleFelt("h", 500, 1500) { Met = "void" }, new HookedWire("w", 500, 1500, wire)).Best.BuildUp;
        Assert.Equal((board, boards), (best.BoardMm, best.Boards));
    }

    [Theory]
    [InlineData("us", true)]
    [InlineData("eurocode_uk", false)]
    public void Where_boards_come_in_inches_a_wire_that_measures_five_eighths_has_measured_that_board(string standards, bool inches)
    {
        WallEvidence e = new("w", "wall", [new HoleFelt("h", 500, 1500) { Met = "void" }, new HookedWire("w", 500, 1500, 15.9), new TapHeard("t", 900, 1500, "hollow")]);
        Assert.Equal(inches, WallModel.Infer(e with { Standards = standards }).Best.BuildUp.BoardMm == 15.9);
    }

    [Theory]
    [InlineData("red", "dabs_brick")]
    [InlineData("grey_white", "dabs_aerated_block")]
    public void The_swarf_tells_the_masonry_behind(string swarf, string start)
    {
        var belief = Wall(new HoleFelt("h", 500, 1500) { SolidAtMm = 30, Met = "masonry", Swarf = swarf });
        Assert.StartsWith(start, belief.Best.BuildUp.Id, StringComparison.Ordinal);
    }

    [Fact]
    public void High_hollow_taps_with_many_solid_spots_are_dabs() => Assert.Equal("dabs",
        Wall([.. Taps("high", 8), .. Enumerable.Range(0, 4).Select(i => new TapHeard($"s{i}", 120 + (i * 500), 1900, "solid"))]).BestFamily.Family);

    [Fact]
    public void Another_sound_again_is_insulated_laminate() => Assert.StartsWith("laminate", Wall(
        [.. Taps("dull", 8), new HoleFelt("h", 500, 1500) { Met = "foam", Swarf = "foam" }]).BestFamily.Family, StringComparison.Ordinal);

    [Fact]
    public void Solid_everywhere_with_no_hollow_is_masonry() => Assert.Equal("masonry", Wall(Taps("solid", 10)).BestFamily.Family);

    [Fact]
    public void Old_houses_have_laths_and_new_ones_do_not()
    {
        WallEvidence e = new("w", "wall", [new HoleFelt("h", 500, 1500) { Met = "laths" }]);
        Assert.Equal("lath", WallModel.Infer(e with { YearBuilt = 1890 }).BestFamily.Family);
        Assert.True(WallModel.Infer(e with { YearBuilt = 2005 }).Family("lath") < WallModel.Infer(e with { YearBuilt = 1890 }).Family("lath"));
    }

    [Fact]
    public void A_stiff_wire_measures_the_void_and_narrows_it()
    {
        var before = Wall(new HoleFelt("h", 500, 1500) { Met = "void" }).Best;
        var after = Wall(new HoleFelt("h", 500, 1500) { Met = "void" }, new StiffWire("v", 500, 1500, 63)).Best;
        Assert.InRange(after.Void.MeanMm, 60, 67);
        Assert.True(after.Void.SdMm < before.Void.SdMm / 2);
    }

    [Fact]
    public void Steel_studs_draw_the_magnet_more_often()
    {
        double few = Wall(new HoleFelt("h", 5, 5) { Met = "void" }, new MagnetDrawn("m", 500, 1500, 2000, 3)).Support("steel_stud");
        double many = Wall(new HoleFelt("h", 5, 5) { Met = "void" }, new MagnetDrawn("m", 500, 1500, 2000, 8)).Support("steel_stud");
        Assert.True(many > few);
    }
}
