using static Pattress.Tests.Actions.FixtureSamples;
using static Pattress.Tests.Actions.HandWork;

namespace Pattress.Tests.Actions;

/// <summary>Cabinets, radiators, towel rails, racks, gates and shutters: every number by the hand arithmetic above it.</summary>
public sealed class BoxesByHandTests
{
    private static readonly (string, double)[] Cabinet = [("width_mm", 600), ("height_mm", 720), ("depth_mm", 300)];

    // Two backs 2 x 0.6 x 0.72, two sides 2 x 0.72 x 0.3, 3 + 1 boards of 0.6 x 0.3: 2.016 m2 at 12 kg/m2 = 24.192 kg.
    // Three shelves 0.6 m wide of crockery 4 kN/m3, 0.3 deep and 0.2 high: 1000 x 4 x 0.3 x 0.2 / g = 240 / g kg/m.
    [Fact]
    public void Cabinet_by_its_boards_and_contents()
    {
        var cabinet = Of("cabinet", Cabinet);
        Assert.Equal(24.192, cabinet.Step("m_cabinet"), 1e-12);
        Assert.Equal(240 / G, cabinet.Step("m_per_metre"), 1e-12);
        Assert.Equal(3 * 0.6 * 240 / G, cabinet.Step("m_contents"), 1e-12);
        Assert.Equal(24.192 + 432 / G, cabinet.Load().MassKg, 1e-9);
        Assert.Equal(["empty", "loaded", "door_left", "door_right"], cabinet.Load().Codes());
    }

    // Packing 10: hangers 20 out, the middle 160; the foot 670 below: W (160 - 20) / 670 over two hangers.
    [Fact]
    public void Cabinet_stands_off_by_its_packing()
    {
        var cabinet = Of("cabinet", [.. Cabinet, ("mass_kg", 15), ("load_kg", 30), ("packing_mm", 10)]).Load();
        At(cabinet, (-250, 0), (250, 0));
        Same(new(15 * G * 140 / 670 / 2, 0, 7.5 * G * 20, 0, -7.5 * G, 0), cabinet.Case(1, "empty").Permanent);
        // The door on the right stands out by half the width, 300, in front of 310: 300 N at 610 - 20 from the wall, 300 to the right;
        // turning: 300 x 300 / (2 x 250^2) x 250 = 180 N more on the right.
        var door = cabinet.Case(1, "door_right").Variable;
        Assert.Equal(300 * 590 / 670.0 / 2 + 30 * G * 140 / 670 / 2, door.N, 1e-9);
        Assert.Equal(-150 - 180 - 15 * G, door.Vy, 1e-9);
        Assert.Equal(-150 + 180 - 15 * G, cabinet.Case(0, "door_right").Variable.Vy, 1e-9);
        Assert.Equal(160, cabinet.Brackets[0].Plate.ArmMm, 1e-12);
        Assert.Equal(45, cabinet.MassKg, 1e-12);
    }

    // Doors of a wide one stand out 600 at most: 300 N at 300 + 600 - 10; 700 to the left, hangers +-650: 150 + 300 x 700 x 650 / (2 x 650^2).
    [Fact]
    public void Wide_cabinet_has_doors_of_600()
    {
        var wide = Of("cabinet", ("width_mm", 1400), ("height_mm", 720), ("depth_mm", 300), ("mass_kg", 15), ("load_kg", 0)).Load();
        var door = wide.Case(0, "door_left").Variable;
        Assert.Equal(300 * 890 / 670.0 / 2, door.N, 1e-9);
        Assert.Equal(-150 - 300 * 700 / 1300.0, door.Vy, 1e-9);
    }

    // Four hangers: two more 720 - 100 below; a low one, 160 high: half of it, 80, below, and the foot 110 below the hangers.
    // A rail: screws at most 400 mm apart, 500 / 400 -> three.
    [Fact]
    public void Hangers_and_rails()
    {
        At(Of("cabinet", Cabinet).Words(("hanging", "four_hangers")).Load(), (-250, 0), (250, 0), (-250, -620), (250, -620));
        At(Of("cabinet", Cabinet).Words(("hanging", "rail")).Load(), (-250, 0), (0, 0), (250, 0));
        var low = Of("cabinet", ("width_mm", 600), ("height_mm", 160), ("depth_mm", 300), ("mass_kg", 10), ("load_kg", 0)).Words(("hanging", "four_hangers")).Load();
        At(low, (-250, 0), (250, 0), (-250, -80), (250, -80));
        // Levers 110 and 30 above the foot: W x 140 x 110 / (2 (110^2 + 30^2)).
        Assert.Equal(10 * G * 140 * 110 / (2 * (110 * 110 + 30 * 30)), low.Case(0, "empty").Permanent.N, 1e-9);
        Assert.Equal(10 * G * 140 * 30 / (2 * (110 * 110 + 30 * 30)), low.Case(2, "empty").Permanent.N, 1e-9);
        // As low as they come, 100: the foot is 50 below.
        var strip = Of("cabinet", ("width_mm", 600), ("height_mm", 100), ("depth_mm", 300), ("mass_kg", 10), ("load_kg", 0)).Load();
        Assert.Equal(10 * G * 140 / 50 / 2, strip.Case(0, "empty").Permanent.N, 1e-9);
    }

    // 0.6 m2 of double panel with two fins: 57 kg/m2 and 10.5 l/m2: 34.2 kg and 6.3 l; 105 deep, 35 off the wall: 87.5 out.
    [Fact]
    public void Radiator_by_its_face()
    {
        var radiator = Of("radiator", ("width_mm", 1000), ("height_mm", 600)).Load();
        Assert.Equal(40.5, radiator.MassKg, 1e-12);
        At(radiator, (-350, 0), (350, 0));
        Same(new(0, 0, 20.25 * G * 87.5, 0, -20.25 * G, 0), radiator.Case(0, "filled").Permanent);
        Assert.Equal(87.5, radiator.Brackets[0].Plate.ArmMm, 1e-12);
        Assert.True(radiator.Warns("radiator_pipes"));
        Assert.Equal(["filled", "child_stands_left", "child_pulls_left", "child_stands_right", "child_pulls_right"], radiator.Codes());
    }

    // 500 N on the upper right corner, 500 to the right, 300 up, 100 in front of the hooks 35 out. Right hook: 250 + 500 x 500 x 350 / (2 x 350^2).
    [Theory]
    [InlineData("right", 1), InlineData("left", 0)]
    public void Radiator_with_a_child_on_its_corner(string side, int near)
    {
        var radiator = Of("radiator", ("width_mm", 1000), ("height_mm", 600), ("mass_kg", 30), ("water_l", 5), ("depth_mm", 100)).Load();
        double more = 500 * 500 / 700.0;
        Same(new(0, 0, 500 * 100 / 2.0 + (250 + more) * 35, 0, -250 - more, 0), radiator.Case(near, "child_stands_" + side).Variable);
        Same(new(0, 0, 500 * 100 / 2.0 + (250 - more) * 35, 0, -250 + more, 0), radiator.Case(1 - near, "child_stands_" + side).Variable);
        Same(new(250 + more, 0, 500 * 300 / 2.0, 0, 0, 0), radiator.Case(near, "child_pulls_" + side).Variable);
        Same(new(250 - more, 0, 500 * 300 / 2.0, 0, 0, 0), radiator.Case(1 - near, "child_pulls_" + side).Variable);
    }

    // Beyond 1300 mm between the hooks there is a third.
    [Theory]
    [InlineData(1600, 2), InlineData(1700, 3)]
    public void Long_radiator_gets_a_third_bracket(double width, int brackets) =>
        Assert.Equal(brackets, Of("radiator", ("width_mm", width)).Load().Brackets.Count);

    // A ladder 500 x 800: flanges +-225, +-400. 6 kg, 4 l of water, 4 kg of towels.
    [Fact]
    public void Heated_ladder_on_four_flanges()
    {
        var ladder = Of("towel_rail", ("width_mm", 500), ("height_mm", 800), ("mass_kg", 6), ("water_l", 4), ("towels_kg", 4)).Load();
        At(ladder, (-225, 400), (225, 400), (-225, -400), (225, -400));
        Assert.Equal(14, ladder.MassKg, 1e-12);
        Same(new(0, 0, 2.5 * G * 80, 0, -2.5 * G, 0), ladder.Case(0, "empty").Permanent);
        Same(new(0, 0, G * 80, 0, -G, 0), ladder.Case(0, "wet_towels").Variable);
        // 500 N out at the upper right end (250, 400): 125 + 500 x 400 x 400 / (4 x 400^2) up the ladder, +- 500 x 250 x 225 / (4 x 225^2) along it.
        double along = 500 * 250 / 900.0;
        int[] sign = [-1, 1, -1, 1], up = [1, 1, -1, -1];
        for (int i = 0; i < 4; i++)
        {
            Assert.Equal(125 + 125 * up[i] + along * sign[i], ladder.Case(i, "pulled_out").Variable.N, 1e-9);
            Assert.Equal(125 + 125 * up[i] - along * sign[i], ladder.Case(i, "pulled_out_left_end").Variable.N, 1e-9);
            // Down: 500 x 250 over 4 (225^2 + 400^2) turns it clockwise.
            double turn = 500 * 250 / (4.0 * (225 * 225 + 400 * 400));
            Assert.Equal(-125 - turn * 225 * sign[i] - G, ladder.Case(i, "pulled_down").Variable.Vy, 1e-9);
            Assert.Equal(turn * 400 * up[i], ladder.Case(i, "pulled_down").Variable.Vx, 1e-9);
            Assert.Equal(-turn * 400 * up[i], ladder.Case(i, "pulled_down_left_end").Variable.Vx, 1e-9);
        }
        Assert.Equal(["empty", "wet_towels", "pulled_down", "pulled_out", "pulled_left", "pulled_right", "pulled_up", "pulled_down_and_out",
            "pulled_down_left_end", "pulled_out_left_end", "pulled_up_left_end", "pulled_down_and_out_left_end"], ladder.Codes());
        Assert.True(ladder.Warns("not_a_grab_rail"));
    }

    // Screws 75 in from 600 and at most 400 apart: three, +-225 and 0. Board 1.5 kg 30 mm out, coats 5 x 3 kg 60 mm out.
    [Fact]
    public void Coat_rack_on_three_screws()
    {
        var rack = Of("coat_rack").Load();
        At(rack, (-225, 0), (0, 0), (225, 0));
        Same(new(0, 0, 1.5 * G * 30 / 3, 0, -0.5 * G, 0), rack.Case(1, "empty").Permanent);
        Same(new(0, 0, 5 * G * 60, 0, -5 * G, 0), rack.Case(2, "loaded").Variable);
        // 200 N down on the last hook, 600 / 2 - 75 / 2 = 262.5 to the right: 200 / 3 + 200 x 262.5 x 225 / (2 x 225^2).
        double turned = 200 * 262.5 / 450;
        double[] sign = [-1, 0, 1];
        for (int i = 0; i < 3; i++)
        {
            Same(new(0, 0, 200 * 60 / 3.0 + 5 * G * 60, 0, -200 / 3.0 - turned * sign[i] - 5 * G, 0), rack.Case(i, "pulled_down").Variable);
            Same(new(0, 0, 200 * 60 / 3.0 + 5 * G * 60, 0, -200 / 3.0 + turned * sign[i] - 5 * G, 0), rack.Case(i, "pulled_down_left_end").Variable);
            Same(new(200 / 3.0 + turned * sign[i], 0, 5 * G * 60, 0, -5 * G, 0), rack.Case(i, "pulled_out").Variable);
            Same(new(200 / 3.0 - turned * sign[i], 0, 5 * G * 60, 0, -5 * G, 0), rack.Case(i, "pulled_out_left_end").Variable);
            // Sideways at 60 mm out: the left screw is pulled by 200 x 60 x 225 / (2 x 225^2).
            Same(new(-200 * 60 / 450.0 * sign[i], 0, 5 * G * 60, 200 / 3.0, -5 * G, 0), rack.Case(i, "pulled_right").Variable);
        }
        Assert.Equal(16.5, rack.MassKg, 1e-12);
        Assert.Equal(["empty", "loaded", "pulled_down", "pulled_out", "pulled_left", "pulled_right", "pulled_down_left_end", "pulled_out_left_end"], rack.Codes());
    }

    // Ends that would overlap leave half of the length: 100 / 4 in.
    [Fact]
    public void Short_rack_has_its_screws_at_the_quarters() => At(Of("coat_rack", ("width_mm", 100)).Load(), (-25, 0), (25, 0));

    // Hinges +-300; 6 kg, its middle 400 from the pins 30 + 20 mm out: W x 400 x 300 / (2 x 300^2).
    [Fact]
    public void Stair_gate_on_its_hinges()
    {
        var gate = Of("stair_gate", ("packing_mm", 20)).Load();
        At(gate, (0, -300), (0, 300));
        Same(new(6 * G * 400 / 600, 0, 3 * G * 50, 0, -3 * G, 0), gate.Case(1, "hangs").Permanent);
        Same(new(-6 * G * 400 / 600, 0, 3 * G * 50, 0, -3 * G, 0), gate.Case(0, "hangs").Permanent);
        // 400 N at the top: all of it on the upper hinge.
        Same(new(400, 0, 0, 0, 0, 0), gate.Case(1, "pulled_out").Variable);
        Same(new(0, 0, 0, 0, 0, 0), gate.Case(0, "pulled_out").Variable);
        Same(new(0, -400 * 50, 0, 400, 0, 0), gate.Case(1, "pulled_right").Variable);
        Same(new(0, 0, 0, 0, 0, 0), gate.Case(0, "pulled_right").Variable);
        Same(new(0, 400 * 50, 0, -400, 0, 0), gate.Case(1, "pulled_left").Variable);
        // A child of 400 N 800 mm from the pins.
        Same(new(400 * 800 / 600.0, 0, 200 * 50, 0, -200, 0), gate.Case(1, "child_swings").Variable);
        Assert.True(gate.Warns("stair_gate"));
    }

    // 1.2 x 1.6 m: 1.92 x 10 + 5.6 x 2 = 30.4 kg, half on each side. Screws 100 in from the ends of 1600 and at most 500 apart: four, 1400 / 3 apart.
    [Fact]
    public void Shutter_on_four_screws_a_side()
    {
        var shutter = Of("shutter", ("width_mm", 1200), ("height_mm", 1600)).Load();
        double third = 1400 / 3.0, w = 15.2 * G, squares = 2 * (700 * 700 + third * third / 4);
        At(shutter, (-600, -700), (-600, -700 + third), (-600, 700 - third), (-600, 700), (600, -700), (600, -700 + third), (600, 700 - third), (600, 700));
        Assert.Equal(30.4, shutter.MassKg, 1e-12);
        Same(new(0, 0, w / 4 * 30, 0, -w / 4, 0), shutter.Case(7, "closed").Permanent);
        // Open, a leaf of 600 has its middle 300 from the pins.
        Same(new(w * 300 * 700 / squares, 0, w / 4 * 30, 0, -w / 4, 0), shutter.Case(3, "open").Permanent);
        Same(new(w * 300 * third / 2 / squares, 0, w / 4 * 30, 0, -w / 4, 0), shutter.Case(6, "open").Permanent);
        Same(new(200.0 * 600 * 700 / squares, 0, 50 * 30, 0, -50, 0), shutter.Case(7, "child_swings").Variable);
        Same(new(-w * 300 * 700 / squares, 0, w / 4 * 30, 0, -w / 4, 0), shutter.Case(4, "child_swings").Permanent);
    }

    // Four panels fold to leaves of 300; a single one hangs like one of a pair; packing moves the pins out.
    [Theory]
    [InlineData(4, 300), InlineData(1, 600), InlineData(2, 600)]
    public void Shutter_leaves(double panels, double leaf)
    {
        var shutter = Of("shutter", ("width_mm", 1200), ("height_mm", 400), ("panels", panels), ("packing_mm", 15)).Load();
        // 400 high: 100 in from top and bottom, two screws 200 apart.
        At(shutter, (-600, -100), (-600, 100), (600, -100), (600, 100));
        Same(new(200 * leaf / 200, 0, 100 * 45, 0, -100, 0), shutter.Case(1, "child_swings").Variable);
    }

    // Below 400 high the screws are a quarter in.
    [Fact]
    public void Low_shutter_has_its_screws_a_quarter_in() =>
        At(Of("shutter", ("width_mm", 1200), ("height_mm", 300)).Load(), (-600, -75), (-600, 75), (600, -75), (600, 75));

    // All on one side: that side carries both leaves. A bracket in the very middle belongs to the right.
    [Fact]
    public void Shutter_brackets_placed_by_hand()
    {
        var shutter = Of("shutter", ("width_mm", 1200), ("height_mm", 1600));
        double w = 15.2 * G;
        Assert.Equal(-w, shutter.Placed((-600, -100), (-600, 100)).Load().Case(0, "closed").Permanent.Vy, 1e-9);
        var uneven = shutter.Placed((-600, -100), (-600, 0), (-600, 100), (0, -100), (0, 100)).Load();
        Assert.Equal(-w / 3, uneven.Case(0, "closed").Permanent.Vy, 1e-9);
        Assert.Equal(-w / 2, uneven.Case(3, "closed").Permanent.Vy, 1e-9);
    }

    [Theory]
    [InlineData("wood", 10), InlineData("mdf", 13), InlineData("plastic", 11)]
    public void Shutter_panels_weigh(string panel, double kg) =>
        // 1 x 1 m: the panel and 4 m of frame at 2 kg/m.
        Assert.Equal(kg + 8, Of("shutter", ("width_mm", 1000), ("height_mm", 1000)).Words(("panel", panel)).Load().MassKg, 1e-12);
}
