using Pattress.Fixings;

namespace Pattress.Tests.Fixings;

/// <summary>Facts of the trade about what fits where. Source of every row: common practice, no source.</summary>
public class FitFacts
{
    private static readonly FixingCatalogue Catalogue = FixingCatalogue.FromEmbedded;

    private static Spot Board(double board, double voidMm, double sd = 1) => new(
        "board_on_studs", Behind.BoardVoid, new(board, 0.3), new(voidMm, sd), Spread.None, new(0, 0), Spread.None, "gypsum_board", []);

    private static Spot BehindGap(double masonryAt) => new(
        "board_on_dabs", Behind.MasonryBehindGap, new(12.5, 0.3), new(masonryAt - 12.5, 1), new(masonryAt, 1), new(0, 0), Spread.None, "brick", []);

    /// <summary>Hole, least void (null where the trade gives none; about, so within 5 mm) and what opens behind, as the trade has them.</summary>
    [Theory]
    [InlineData("knotting_plug.6x30", 6, null, null)]
    [InlineData("knotting_plug.8x40", 8, 30.0, null)]
    [InlineData("knotting_plug.8x65", 8, null, null)]
    [InlineData("nylon_nut_plug.medium", 10, 35.0, null)]
    [InlineData("hollow_wall_anchor.short", 9, null, null)]
    [InlineData("hollow_wall_anchor.medium", 9, null, null)]
    [InlineData("spring_toggle.medium", 14, null, 50.0)]
    [InlineData("strap_toggle.medium", 14, 50.0, 50.0)]
    [InlineData("strap_clamp.medium", 10, null, 40.0)]
    [InlineData("wide_wing_plug.short", 20, 7.0, null)]
    [InlineData("wide_wing_plug.long", 20, 20.0, 82.0)]
    [InlineData("bearer_plate.long", 25, 30.0, 120.0)]
    [InlineData("pivot_bar.medium", 16, null, 45.0)]
    [InlineData("sleeved_through_fixing.medium", 10, null, null)]
    public void Sizes_are_those_of_the_trade(string id, double hole, double? voidMm, double? opens)
    {
        var size = Catalogue.Find(id)!;
        Assert.Equal(hole, size.HoleMm);
        if (voidMm is { } least) Assert.InRange(size.VoidMm, least - 5, least + 5);
        if (opens is { } wide) Assert.Equal(wide, size.BearsLongMm);
    }

    [Fact]
    public void The_shorter_anchor_needs_less_and_opens_less_and_a_pivot_bar_needs_under_20_mm()
    {
        var (shorter, longer) = (Catalogue.Find("hollow_wall_anchor.short")!, Catalogue.Find("hollow_wall_anchor.medium")!);
        Assert.True(shorter.VoidMm < longer.VoidMm && shorter.BearsLongMm < longer.BearsLongMm);
        Assert.True(Catalogue.Find("pivot_bar.medium")!.VoidMm < 20 && Catalogue.Find("wide_wing_plug.long")!.BearsLongMm > 80);
    }

    /// <summary>Comes out again, can be used again, wants a setting tool.</summary>
    [Theory]
    [InlineData("spring_toggle", false, false, false)]
    [InlineData("strap_toggle", true, false, false)]
    [InlineData("hollow_wall_anchor", true, false, true)]
    [InlineData("pivot_bar", true, true, false)]
    [InlineData("wide_wing_plug", true, true, false)]
    [InlineData("hammer_in", false, false, false)]
    public void Kinds_come_out_or_not(string id, bool removable, bool reusable, bool tool)
    {
        var kind = Catalogue.Kinds.Single(k => k.Id == id);
        Assert.Equal((removable, reusable, tool), (kind.Removable, kind.Reusable, kind.SettingTool != "none"));
    }

    private static string? Why(string size, Spot spot) => Fit.Refusal(Catalogue.Find(size)!, spot)?.Code;

    [Theory]
    [InlineData("knotting_plug.6x30", 12.5, 60, "too_short_to_knot")]
    [InlineData("knotting_plug.8x40", 12.5, 60, null)]
    [InlineData("strap_toggle.medium", 12.5, 30, "void_too_shallow")]
    [InlineData("strap_toggle.medium", 12.5, 60, null)]
    [InlineData("pivot_bar.medium", 12.5, 20, null)]
    [InlineData("wide_wing_plug.short", 12.5, 10, null)]
    [InlineData("wide_wing_plug.long", 12.5, 15, "void_too_shallow")]
    [InlineData("bearer_plate.long", 12.5, 20, "void_too_shallow")]
    [InlineData("knotting_plug.8x65", 27, 60, null)]
    public void In_board_with_a_void(string size, double board, double voidMm, string? code) => Assert.Equal(code, Why(size, Board(board, voidMm)));

    /// <summary>"Masonry too": knotting plug 8 x 40, nylon plug with steel nut, strap clamp; what opens behind a board is for board (common practice, no source).</summary>
    [Theory]
    [InlineData("knotting_plug.8x40", null)]
    [InlineData("nylon_nut_plug.medium", null)]
    [InlineData("strap_clamp.medium", null)]
    [InlineData("plug_and_screw.medium", null)]
    [InlineData("hollow_wall_anchor.medium", "not_for_base")]
    [InlineData("strap_toggle.medium", "not_for_base")]
    [InlineData("pivot_bar.medium", "not_for_base")]
    public void In_plaster_on_brick(string size, string? code) => Assert.Equal(code, Why(size, Brick));

    /// <summary>By hand: 13 mm of plaster and 18 mm of rack leave 50 - 13 - 18 = 19 mm of the nylon plug in the brick, less than half of its 40.</summary>
    [Fact]
    public void A_thick_plate_takes_from_the_depth() =>
        Assert.Equal("screw_too_short", Fit.Refusal(Catalogue.Find("nylon_nut_plug.medium")!, Brick, 18)?.Code);

    private static readonly Spot Brick = new("brick", Behind.Masonry, new(13, 2), new(0, 0), new(13, 2), new(0, 0), Spread.None, "brick", []);

    [Fact]
    public void A_sleeve_reaches_masonry_40_mm_behind_the_face() => Assert.Null(Why("sleeved_through_fixing.medium", BehindGap(40)));

    [Fact]
    public void A_sleeve_does_not_reach_masonry_50_mm_behind_the_face() =>
        Assert.Equal("masonry_beyond_sleeve", Why("sleeved_through_fixing.medium", BehindGap(50)));

    [Fact]
    public void A_plug_through_a_dab_gap_draws_the_board_back() =>
        Assert.Equal("board_drawn_back", Why("plug_and_screw.medium", BehindGap(30) with { Behind = Behind.Masonry }));

    [Theory]
    [InlineData("hollow_wall_anchor.long", true)]
    [InlineData("pivot_bar.medium", true)]
    [InlineData("nylon_nut_plug.medium", true)]
    [InlineData("knotting_plug.8x40", true)]
    [InlineData("strap_toggle.medium", false)]
    [InlineData("spring_toggle.medium", false)]
    public void Four_kinds_open_in_the_foam_of_a_laminate(string size, bool opens) =>
        Assert.Equal(opens, Catalogue.Find(size)!.Kind.Into.Contains(Behind.BoardFoam));

    [Fact]
    public void What_is_not_known_is_no_fit()
    {
        var vague = Board(12.5, 52, sd: 20);
        Assert.Equal("void_too_shallow", Why("strap_toggle.medium", vague));
        Assert.Null(Why("strap_toggle.medium", Board(12.5, 52, sd: 1)));
    }

    [Fact]
    public void Wings_beside_a_stud_foul_it() =>
        Assert.Equal("wings_foul_support", Why("strap_toggle.medium", Board(12.5, 70) with { SupportClear = new(4, 1) }));

    [Fact]
    public void Two_toggles_too_close_foul_each_other()
    {
        var toggle = Catalogue.Find("strap_toggle.medium")!;
        Assert.NotNull(Neighbours.Foul(toggle, [new(0, 0), new(0, 15)]));
        Assert.Null(Neighbours.Foul(toggle, [new(0, 0), new(0, 60)]));
    }

    [Fact]
    public void An_old_hole_in_the_way_is_seen_and_a_bearer_plate_bridges_it()
    {
        Pattress.Jobs.OldHole[] old = [new("h1", new(100, 100), 8)];
        Assert.Equal("old_hole", Neighbours.OldHole(Catalogue.Find("strap_toggle.medium")!, new(105, 100), old)?.Code);
        Assert.Null(Neighbours.OldHole(Catalogue.Find("bearer_plate.long")!, new(105, 100), old));
    }

    [Fact]
    public void The_next_hole_swallows_the_failed_one()
    {
        var next = NextHole.After(Catalogue.Find("knotting_plug.8x40")!, Board(12.5, 70), Catalogue.Sizes)!;
        Assert.True(next.HoleMm > 8);
        Assert.Null(Fit.Refusal(next, Board(12.5, 70)));
    }

    [Fact]
    public void Every_kind_of_the_trade_has_a_size_and_a_source() => Assert.All(Catalogue.Kinds, k =>
    {
        Assert.Contains(Catalogue.Sizes, s => s.Kind == k);
        Assert.NotEmpty(k.Source);
    });
}
