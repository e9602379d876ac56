using Pattress.Actions;
using Pattress.Actions.Beams;
using Pattress.Actions.Fixtures;
using Pattress.Jobs;
using static Pattress.Tests.Actions.FixtureSamples;
using static Pattress.Tests.Actions.HandWork;

namespace Pattress.Tests.Actions;

/// <summary>What carries a push, rails in cups, what is noted as assumed, and bounds: by the hand arithmetic above each.</summary>
public sealed class CarriersByHandTests
{
    // From (10, 5) the push is 20 to the right, 25 below and 50 out: moments 3 x 20 - 1 x 50, 3 x -25 - 2 x 50, 20 x 2 + 25 x 1.
    [Fact]
    public void Moments_of_a_push() => Same(new(3, 10, -175, 1, 2, 65), new Push(30, -20, 50, new(1, 2, 3)).About(10, 5));

    // Levers 100 and 20 above the edge: 100 N at 104 mm out, 10,400 Nmm over 100^2 + 20^2, pull 100 and 20; the 4000 Nmm by which the left one
    // would then pull too much sideways go round: -+ 4000 x 50 / (2 x 50^2) = 40.
    [Fact]
    public void Body_on_an_edge_with_brackets_askew()
    {
        var carried = new Body([new(-50, 0), new(50, -80)], 0, -100).Carry(new(0, -40, 104, new(0, -100, 0)));
        Assert.Equal([60, 60], carried.Select(w => Math.Round(w.N, 9)));
        Assert.All(carried, w => Assert.Equal((0, 0), (w.Mx, w.My)));
    }

    // Brackets in one place cannot take a twist by their spread: each plate takes half of 100 x 30. In an upright line they cannot take a sideways
    // tilt: each plate takes half of 200 x 100.
    [Fact]
    public void What_the_spread_cannot_take_goes_into_the_plates()
    {
        Assert.All(new Body([new(0, 0), new(0, 0)], 0).Carry(new(30, 0, 0, new(0, -100, 0))), w => Same(new(0, 0, 0, 0, -50, -1500), w));
        Assert.All(new Body([new(0, -50), new(0, 50)], 0).Carry(new(0, 0, 100, new(200, 0, 0))), w => Same(new(0, -10_000, 0, 100, 0, 0), w));
        Assert.All(new Body([new(-50, 0), new(50, 0)], 0).Carry(new(0, 0, 100, new(0, -200, 0))), w => Same(new(0, 0, 10_000, 0, -100, 0), w));
    }

    // Three rigid supports, spans 200 and 1800 (Clapeyron): q on the long one alone, M = -q L2^3 / 8 (L1 + L2) = -36,450 Nmm, so the end one is
    // pulled down by 36,450 / 200 = 182.25 N. Out of cups it lifts there, and the others carry 90 N each.
    [Fact]
    public void Rail_lifts_out_of_cups()
    {
        var beam = new Beam(2000, 3e8, new BeamSupport(0), new(200), new(2000));
        UniformLoad[] long_ = [new(200, 2000, 0.1)], end = [new(1900, 2000, 0.1)];
        Assert.Equal(-182.25, new RailState(beam, false).Standing(long_, 0), 1e-9);
        var cups = new RailState(beam, true);
        Assert.Equal([0, 90, 90], Enumerable.Range(0, 3).Select(i => Math.Round(cups.Standing(long_, i), 9)));
        // Another load after it: 10 N 50 mm before the end: 10 x 1750 / 1800.
        Assert.Equal(10 * 1750 / 1800.0, cups.Standing(end, 2), 1e-9);
        // Two equal spans under one load lift nowhere: 3/8, 10/8, 3/8 of q L.
        var even = new RailState(new Beam(2000, 3e8, new BeamSupport(0), new(1000), new(2000)), true);
        Assert.Equal([37.5, 125, 37.5], Enumerable.Range(0, 3).Select(i => Math.Round(even.Standing([new(0, 2000, 0.1)], i), 9)));
        // On two it would fall, so they hold: 100 N on the overhang pull the far one down by 100.
        Assert.Equal(-100, new RailState(new Beam(2000, 3e8, new BeamSupport(500), new(1000)), true).Standing([new(1000, 2000, 0.1)], 0), 1e-9);
    }

    // Uniform load, the middle bracket 3000 N/mm among ends of 30 (assumed): what it takes makes its sinking as large as that of the rail there,
    // 5 W L^3 / 384 EI + W / 2k less R (L^3 / 48 EI + 1 / 2k).
    [Fact]
    public void Middle_bracket_at_its_worst()
    {
        var pole = Of("curtain_pole", ("width_mm", 2000), ("drop_mm", 2500), ("fullness", 2), ("hem_mm", 0), ("fabric_g_m2", 1000))
            .Words(("lining", "none")).Placed((-1000, 0), (0, 0), (1000, 0)).Load();
        double w = 11.02 * G, bend = 8e9 / 3.02e8, r = (5 * w * bend / 384 + w / 60) / (bend / 48 + 1 / 60.0 + 1 / 3000.0);
        Assert.Equal(-r, pole.Case(1, "curtain_closed").Permanent.Vy, 1e-6);
    }

    // 2 m x 2 x (2.5 + 0.3 hem) x (0.3 + 0.15 kg/m2).
    [Fact]
    public void Hems_weigh() => Assert.Equal(5.04, Of("curtain_pole", ("width_mm", 2000), ("drop_mm", 2500)).Step("m_cloth"), 1e-12);

    [Fact]
    public void Just_beyond_a_spacing_there_is_one_bracket_more()
    {
        Assert.Equal(3, Of("roman_blind", ("width_mm", 1150.5)).Load().Brackets.Count);
        Assert.Equal(3, Of("shelf", ("width_mm", 900.5)).Load().Brackets.Count);
        Assert.Equal(3, Of("floating_shelf", ("width_mm", 600.5), ("end_mm", 100)).Load().Brackets.Count);
        Assert.Equal(3, Of("pelmet", ("width_mm", 1000.5)).Load().Brackets.Count);
        Assert.Equal(3, Of("curtain_track", ("width_mm", 650.5)).Load().Brackets.Count);
    }

    // One bracket carries all contents, 6 kN/m3 x 0.2 x 0.25 x 1 m = 300 N.
    [Fact]
    public void One_bracket_carries_all_contents() =>
        Assert.Equal(-300, Of("shelf", ("width_mm", 1000), ("depth_mm", 200)).Placed((0, 0)).Load().Case(0, "loaded").Variable.Vy, 1e-9);

    [Fact]
    public void Nobody_pulls_with_no_force() => Assert.Equal(["hangs"], Of("hook", ("pull_n", 0)).Load().Codes());

    [Fact]
    public void Single_curtain_on_a_track_has_no_open_case() =>
        Assert.DoesNotContain("curtain_open", Of("curtain_track").Words(("curtains", "single")).Load().Codes());

    // Brackets placed where the thing has no place of its own have its middle in their midst: the weight is shared evenly and turns nothing.
    [Fact]
    public void Middle_of_placed_brackets()
    {
        var free = (Of("free", ("mass_kg", 10), ("cog_out_mm", 0)) with { At = default, Brackets = [new(1000, 500), new(2000, 700)] }).Load();
        Assert.All(free.Brackets, b => Same(new(0, 0, 0, 0, -5 * G, 0), b.Cases[0].Permanent));
    }

    [Theory]
    [InlineData("curtain_pole", "", "field.stack_mm field.fabric field.fullness weight.fabric.medium weight.rings rail.wood_28 field.dynamic_factor weight.cov.person")]
    [InlineData("curtain_track", "bay=middle", "field.bay_length_mm rail.track_light")]
    [InlineData("picture", "hang=wire", "field.sag_mm field.glass_mm weight.glass")]
    [InlineData("screen", "", "field.extension_mm field.arm_kg field.arm")]
    [InlineData("shelf", "", "field.load field.load_height_mm weight.load.books weight.board.particleboard weight.stiffness.particleboard field.bracket_kg weight.cov.contents weight.bracket.stiffness_least weight.bracket.stiffness_most")]
    [InlineData("radiator", "", "field.type weight.radiator.double_two_fins weight.radiator_water.double_two_fins weight.radiator_depth.double_two_fins weight.water")]
    public void What_was_not_entered_is_noted(string what, string word, string names)
    {
        var fixture = word.Length == 0 ? Of(what) : Of(what).Words((word.Split('=')[0], word.Split('=')[1]));
        var noted = fixture.Load().Assumptions;
        foreach (string name in names.Split(' ')) Assert.Contains(noted, a => a.Values[0].Text == name && a.Source.Length > 0);
        Assert.Single(noted, a => a.Code == "assumed_plate");
        Assert.Equal(noted.Count, noted.Select(a => a.Code + (a.Values[0].Text ?? "")).Distinct().Count());
    }

    // ASCE 7 4.5.1 (from memory), 50 lbf/ft = 729.70 N/m: taken in the American set, and said.
    [Fact]
    public void American_line_load_is_noted()
    {
        var us = FixtureLoads.Of(Of("handrail"), FixtureSamples.Wall, new() { Standards = "us" });
        Assert.Equal(729.70, Assert.Single(us.Assumptions, a => a.Values[0].Text == "field.line_n_m").Values[1].Number, 0.005);
        Assert.DoesNotContain(Of("hook", ("bracket_width_mm", 30), ("bracket_height_mm", 60), ("holes", 2)).Load().Assumptions, a => a.Code == "assumed_plate");
    }

    [Fact]
    public void Fields_allow_what_they_say()
    {
        var kind = FixtureCatalogue.Find("shelf")!;
        var width = kind.Field("width_mm")!;
        Assert.All((double[])[100, 3000, 6000, 100.5], v => Assert.True(width.Allows(v)));
        Assert.All((double[])[99.9, 6000.1, double.NaN, double.PositiveInfinity, double.NegativeInfinity], v => Assert.False(width.Allows(v)));
        var count = kind.Field("bracket_count")!;
        Assert.True(count.Allows(2));
        Assert.False(count.Allows(2.5));
        Assert.False(kind.Field("material")!.Allows(3));
        Assert.True(kind.Field("material")!.Allows("glass"));
        Assert.False(kind.Field("material")!.Allows("ice"));
        Assert.Null(kind.Field("nothing"));
    }

    // Nearly square to one another: products of -0.1 and -10 against a millionth of 1000 x 1000.
    [Theory]
    [InlineData(-1e-4, 1.35), InlineData(-1e-2, 0.9)]
    public void Help_is_more_than_rounding(double n, double factor)
    {
        Wrench g = new(1000, 0, 0, 0, 0, 0), q = new(n, 0, 0, 1000, 0, 0);
        Same(factor * g + 1.5 * q, Combination.Design(g, q, new()));
    }
}
