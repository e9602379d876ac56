using Pattress.Actions;
using Pattress.Jobs;
using static Pattress.Tests.Actions.FixtureSamples;

namespace Pattress.Tests.Actions;

// Hand arithmetic stands above each number; g = 9.80665 m/s2.
public sealed class RailFixtureTests
{
    private const double G = 9.80665;

    // A pole of 2 m on brackets at its ends carries 10 kg of cloth; pole and rings 2 x (0.31 + 0.2) = 1.02 kg.
    private static Fixture Pole(params (string, double)[] more) =>
        Of("curtain_pole", [("width_mm", 2000), ("drop_mm", 2500), ("fullness", 2), ("hem_mm", 0), ("fabric_g_m2", 1000), ("stack_mm", 200), .. more])
            .Words(("lining", "none")) with { Brackets = [new(2000, 1500), new(4000, 1500)] };

    [Fact]
    public void Pole_closed_and_open_shares_its_weight()
    {
        var pole = Pole().Load();
        Assert.Equal(11.02, pole.MassKg, 1e-12);
        // Half of 11.02 kg at 90 mm.
        foreach (string code in (string[])["curtain_closed", "curtain_open"])
        {
            Assert.Equal(-5.51 * G, pole.Case(0, code).Permanent.Vy, 1e-9);
            Assert.Equal(5.51 * G * 90, pole.Case(1, code).Permanent.My, 1e-6);
        }
    }

    [Fact]
    public void Pole_drawn_to_the_left_hangs_on_its_left_bracket()
    {
        var pole = Pole().Load();
        // Two stacks of 200 mm: 10 kg with its middle 200 mm from the left: (2000 - 200)/2000 = 0.9 of it on the left.
        Assert.Equal(-(0.51 + 9) * G, pole.Case(0, "curtain_left").Permanent.Vy, 1e-9);
        Assert.Equal(-(0.51 + 1) * G, pole.Case(1, "curtain_left").Permanent.Vy, 1e-9);
        Assert.Equal(-(0.51 + 9) * G, pole.Case(1, "curtain_right").Permanent.Vy, 1e-9);
        // Wherever they stand, a bracket at the end gets most when both are beside it.
        Assert.Equal(-(0.51 + 9) * G, pole.Case(0, "curtain_moving").Permanent.Vy, 1e-9);
    }

    [Fact]
    public void Pole_pulled_sideways_comes_to_one_bracket()
    {
        var pole = Pole(("pull_n", 50)).Load();
        Assert.Equal(100, pole.Case(0, "pulled_right").Variable.Vx, 1e-9);
        // A hand 80 mm wide at the end: (2000 - 40)/2000 of 2 x 50 N.
        Assert.Equal(98, pole.Case(0, "pulled_out").Variable.N, 1e-9);
    }

    [Fact]
    public void Overhanging_pole_lifts_nothing_but_loads_the_near_bracket_with_more_than_all()
    {
        var pole = Pole() with { Brackets = [new(2400, 1500), new(3600, 1500)] };
        // Brackets 400 mm in, 1200 apart; stacks' middle 200 mm outside the left one: 10 kg x 1400 / 1200.
        Assert.Equal(-(0.51 + 10 * 1400 / 1200.0) * G, pole.Load().Case(0, "curtain_left").Permanent.Vy, 1e-9);
    }

    [Fact]
    public void Long_pole_gets_a_middle_bracket()
    {
        // Common practice, no source: beyond about 1.2 m.
        Assert.Equal(2, Of("curtain_pole", ("width_mm", 1200)).Load().Brackets.Count);
        Assert.Equal(3, Of("curtain_pole", ("width_mm", 1300)).Load().Brackets.Count);
        Assert.Equal(3, Of("curtain_pole", ("width_mm", 2400)).Load().Brackets.Count);
    }

    [Fact]
    public void Middle_bracket_takes_no_less_than_on_equal_stiff_supports_and_no_more_than_all()
    {
        // C-2S-U: two equal spans, 1.25 w L of 2 w L on the middle; stiffness is not known, so at least that.
        var pole = Pole() with { Brackets = [new(2000, 1500), new(3000, 1500), new(4000, 1500)] };
        double middle = -pole.Load().Case(1, "curtain_closed").Permanent.Vy;
        Assert.InRange(middle, 0.625 * 11.02 * G - 1e-9, 11.02 * G);
    }

    [Fact]
    public void Track_on_a_ceiling_is_pulled_straight_down()
    {
        var track = (Of("curtain_track", ("width_mm", 2000), ("fabric_g_m2", 1000), ("fullness", 2), ("hem_mm", 0), ("drop_mm", 2500))
            .Words(("lining", "none")) with { Brackets = [new(2000, 1500), new(4000, 1500)] }).Load(Ceiling);
        // 10 kg of cloth and 2 x (0.3 + 0.2) = 1 kg of track.
        Assert.Equal(5.5 * G, track.Case(0, "curtain_closed").Permanent.N, 1e-9);
        Assert.Equal(0, track.Case(0, "curtain_closed").Permanent.My, 1e-9);
        Assert.Equal(ConsequenceClass.Overhead, track.Class);
    }

    [Fact]
    public void Straight_of_a_bay_may_have_to_carry_a_whole_curtain()
    {
        Fixture Track(string bay) => Of("curtain_track", ("width_mm", 1000), ("bay_length_mm", 3000), ("fabric_g_m2", 1000), ("fullness", 2),
            ("hem_mm", 0), ("drop_mm", 2500), ("stack_mm", 200)).Words(("lining", "none"), ("bay", bay)) with { Brackets = [new(2500, 1500), new(3500, 1500)] };
        // Round the bay 3 m x 2 x 2.5 m x 1 kg/m2 = 15 kg: one curtain of the pair, 7.5 kg, with its middle 100 mm from the left end of 1 m
        // of track (0.5 kg): 0.9 x 7.5 + 0.25.
        Assert.Equal(-(0.25 + 6.75) * G, Track("side").Load().Case(0, "curtain_left").Permanent.Vy, 1e-9);
        // Closed, a third of the cloth is here: 5 kg.
        Assert.Equal(-2.75 * G, Track("side").Load().Case(0, "curtain_closed").Permanent.Vy, 1e-9);
    }

    [Fact]
    public void Roller_blind_hangs_on_two_brackets()
    {
        var blind = Of("roller_blind", ("width_mm", 1500), ("drop_mm", 2000), ("fabric_g_m2", 400)).Load();
        // 1.5 x (2 x 0.4 + 0.3) = 1.65 kg and 1.5 x 0.4 kg/m of tube = 0.6 kg.
        Assert.Equal(2.25, blind.MassKg, 1e-12);
        Assert.Equal([2250, 3750], blind.Brackets.Select(b => b.At.X));
        Assert.Equal(-1.125 * G, blind.Case(0, "hangs").Permanent.Vy, 1e-9);
    }

    [Fact]
    public void Blind_up_into_a_recess_pulls_straight_out_of_the_lintel()
    {
        var blind = Of("roller_blind", ("width_mm", 1500), ("drop_mm", 2000), ("fabric_g_m2", 400)).Words(("mount", "recess")).Load();
        Assert.Equal(1.125 * G, blind.Case(0, "hangs").Permanent.N, 1e-9);
        Assert.Equal(0, blind.Case(0, "hangs").Permanent.Vy, 1e-9);
        Assert.Contains(blind.Cautions, c => c.Code == "caution_recess_edge");
    }

    [Fact]
    public void Roman_venetian_and_vertical_blinds_by_their_area()
    {
        // 1 x 2 m: cloth 1.15 x (0.3 + 0.15) + battens 0.6 = 1.1175 kg/m2, headrail 0.6 kg.
        Assert.Equal(2 * 1.1175 + 0.6, Blind("roman_blind"), 1e-12);
        // Slats 1.8 kg/m2, bottom bar 0.3, headrail 0.7.
        Assert.Equal(2 * 1.8 + 0.3 + 0.7, Blind("venetian_blind"), 1e-12);
        // Vanes 0.3 kg/m2 that overlap by a fifth, headrail 0.6.
        Assert.Equal(2 * 0.36 + 0.6, Blind("vertical_blind"), 1e-12);
    }

    [Fact]
    public void Shelf_carries_books_and_a_hand_on_its_edge()
    {
        var shelf = (Of("shelf", ("width_mm", 1000), ("depth_mm", 200), ("load_kg_m", 30), ("bracket_kg", 0.5), ("pull_n", 150))
            with { Brackets = [new(2500, 1500), new(3500, 1500)] }).Load();
        // Board 8 kN/m3 x 1.0 x 0.2 x 0.018 = 28.8 N, brackets 2 x 0.5 kg: half of it at 100 mm.
        Assert.Equal(-(28.8 + G) / 2, shelf.Case(0, "empty").Permanent.Vy, 1e-9);
        Assert.Equal((28.8 + G) / 2 * 100, shelf.Case(0, "empty").Permanent.My, 1e-6);
        // Books 30 kg: 15 kg on each.
        Assert.Equal(-15 * G, shelf.Case(0, "loaded").Variable.Vy, 1e-9);
        // A hand 80 mm wide, 2 x 150 N at the edge, nearest the bracket: 300 x 960/1000 = 288 N at 200 mm.
        Assert.Equal(15 * G * 100 + 288 * 200, shelf.Case(0, "leant_on").Variable.My, 1e-6);
    }

    [Fact]
    public void Floating_shelf_has_the_same_load_on_a_lower_plate()
    {
        (string, double)[] numbers = [("width_mm", 800), ("depth_mm", 200), ("load_kg_m", 30), ("bracket_kg", 0)];
        var brackets = new Point[] { new(2600, 1500), new(3400, 1500) };
        var shelf = (Of("shelf", numbers) with { Brackets = brackets }).Load();
        var floating = (Of("floating_shelf", numbers[..3]) with { Brackets = brackets }).Load();
        Assert.Equal(shelf.Case(0, "loaded").Variable.My, floating.Case(0, "loaded").Variable.My, 1e-9);
        Assert.True(Height(floating) < Height(shelf));
    }

    [Fact]
    public void Pelmet_hangs_out_in_front()
    {
        var pelmet = (Of("pelmet", ("width_mm", 1000), ("depth_mm", 150), ("height_mm", 200)) with { Brackets = [new(2500, 1500), new(3500, 1500)] }).Load();
        // Top 8 x 1.0 x 0.15 x 0.018 kN = 21.6 N at 75 mm, front 8 x 1.0 x 0.2 x 0.018 = 28.8 N at 150 mm, half on each.
        Assert.Equal(-25.2, pelmet.Case(0, "hangs").Permanent.Vy, 1e-9);
        Assert.Equal(10.8 * 75 + 14.4 * 150, pelmet.Case(0, "hangs").Permanent.My, 1e-6);
    }

    [Fact]
    public void Handrail_takes_the_line_load_of_its_standard()
    {
        var rail = Of("handrail", ("width_mm", 1000), ("end_mm", 0));
        // I-HANDRAIL-US: 50 lbf/ft = 0.72970 kN/m, half of a metre on each bracket; a person no less than 0.88964 kN.
        var us = Pattress.Actions.Fixtures.FixtureLoads.Of(rail, FixtureSamples.Wall, new() { Standards = "us" });
        Assert.Equal(729.70 / 2, us.Case(0, "line_out").Variable.N, 0.0025);
        Assert.True(-us.Case(0, "pulled_down").Variable.Vy > 0.96 * 900 - 1e-9);
        Assert.Equal(ConsequenceClass.HoldsPerson, us.Class);
    }

    private static double Blind(string what) => Of(what, ("width_mm", 1000), ("drop_mm", 2000)).Load().MassKg;

    private static double Height(FixtureActions a) => a.Brackets[0].Plate.Outline.Max(p => p.Y);
}
