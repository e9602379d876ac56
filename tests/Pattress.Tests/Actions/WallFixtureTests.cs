using Pattress.Actions;
using static Pattress.Tests.Actions.FixtureSamples;

namespace Pattress.Tests.Actions;

// Every expected number is worked out by hand in the line above it; g = 9.80665 m/s2.
public sealed class WallFixtureTests
{
    private const double G = 9.80665;

    [Fact]
    public void Hook_carries_what_hangs_on_it_at_its_arm()
    {
        var hook = Of("hook", ("hang_kg", 10), ("projection_mm", 40), ("pull_n", 60)).Load();
        // 10 kg at 40 mm: 98.0665 N and 3922.66 Nmm; a pull of 2 x 60 N.
        Same(new(0, 0, 3922.66, 0, -98.0665, 0), hook.Case(0, "hangs").Permanent);
        Same(new(120, 0, 0, 0, 0, 0), hook.Case(0, "pulled_out").Variable);
        Same(new(0, 0, 120 * 40, 0, -120, 0), hook.Case(0, "pulled_down").Variable);
        // To the right at 40 mm the left edge opens: Mx = -120 x 40.
        Same(new(0, -4800, 0, 120, 0, 0), hook.Case(0, "pulled_right").Variable);
    }

    [Fact]
    public void Hook_in_a_ceiling_is_pulled_straight_off_it()
    {
        var hook = Of("hook", ("hang_kg", 10), ("projection_mm", 40)).Load(Ceiling);
        Same(new(98.0665, 0, 0, 0, 0, 0), hook.Case(0, "hangs").Permanent);
        // Sideways 2 x 50 N at 40 mm.
        Same(new(0, -4000, 0, 100, 0, 0), hook.Case(0, "pulled_right").Variable);
        Assert.Equal(ConsequenceClass.Overhead, hook.Class);
    }

    [Fact]
    public void Packing_lengthens_the_arm()
    {
        var hook = Of("hook", ("hang_kg", 10), ("projection_mm", 40), ("packing_mm", 10)).Load();
        Assert.Equal(98.0665 * 50, hook.Case(0, "hangs").Permanent.My, 1e-9);
    }

    [Fact]
    public void Screen_on_an_arm_turns_its_plate_when_swung_aside()
    {
        var screen = Of("screen", ("mass_kg", 20), ("arm_kg", 5), ("extension_mm", 500)).Words(("arm", "reaching")).Load();
        // 25 kg = 245.16625 N; straight out at 500 mm, My = 122583.125 Nmm.
        Same(new(0, 0, 122583.125, 0, -245.16625, 0), screen.Case(0, "hangs").Permanent);
        // Swung right: 500 mm to the side, so the plate is turned clockwise by as much; it then stands 120 mm off.
        Same(new(0, 0, 29419.95, 0, -245.16625, -122583.125), screen.Case(0, "arm_right").Permanent);
        Same(new(0, 0, 29419.95, 0, -245.16625, 122583.125), screen.Case(0, "arm_left").Permanent);
        // Pulled straight out, 2 x 100 N.
        Same(new(200, 0, 0, 0, 0, 0), screen.Case(0, "pulled_out").Variable);
        Assert.Equal(4, screen.Brackets[0].Plate.Holes.Count);
    }

    [Fact]
    public void Cabinet_hangs_on_two_hangers_and_bears_at_its_foot()
    {
        var cabinet = Of("cabinet", ("width_mm", 600), ("height_mm", 720), ("depth_mm", 300), ("mass_kg", 15), ("load_kg", 30)).Load();
        Assert.Equal(45, cabinet.MassKg, 1e-12);
        Assert.Equal([2750, 3250], cabinet.Brackets.Select(b => b.At.X));
        // Own 15 kg = 147.09975 N: half of it, 73.549875 N, on each hanger at 10 mm. Turning about the foot 670 mm below:
        // pull = W (150 - 10) / 670 = 30.7372..., half of it on each.
        Same(new(147.09975 * 140 / 670 / 2, 0, 735.49875, 0, -73.549875, 0), cabinet.Case(0, "empty").Permanent);
        // Contents 30 kg: twice that.
        Same(new(294.1995 * 140 / 670 / 2, 0, 1470.9975, 0, -147.09975, 0), cabinet.Case(1, "loaded").Variable);
        // A hand of 2 x 150 N on the door that stands out 300 + 300 mm at the left side, x = -300; hangers at +-250:
        // shear on the left one 300 (1/2 + 300/500) = 330 N, contents 147.09975 N; pull 300 x 590 / 670 / 2 and the contents'.
        var door = cabinet.Case(0, "door_left").Variable;
        Assert.Equal(-330 - 147.09975, door.Vy, 1e-9);
        Assert.Equal(300 * 590 / 670.0 / 2 + 294.1995 * 140 / 670 / 2, door.N, 1e-9);
    }

    [Fact]
    public void Radiator_hangs_with_its_water()
    {
        var radiator = Of("radiator", ("width_mm", 1000), ("height_mm", 600), ("mass_kg", 30), ("water_l", 5.5), ("depth_mm", 100)).Load();
        Assert.Equal(35.5, radiator.MassKg, 1e-12);
        // Two brackets at +-350 mm; 35.5 kg = 348.136075 N, half on each; arm 35 + 50 mm.
        Assert.Equal([2650, 3350], radiator.Brackets.Select(b => b.At.X));
        Same(new(0, 0, 174.0680375 * 85, 0, -174.0680375, 0), radiator.Case(0, "filled").Permanent);
        // A child of 2 x 250 N on the right end, 500 mm off the middle: right bracket 500 (1/2 + 500/700) = 607.142857 N.
        Assert.Equal(-500 * (0.5 + 500 / 700.0), radiator.Case(1, "child_stands_right").Variable.Vy, 1e-9);
    }

    [Fact]
    public void Coat_rack_carries_a_coat_on_every_hook()
    {
        var rack = Of("coat_rack", ("width_mm", 550), ("hooks", 4), ("coat_kg", 3), ("mass_kg", 2), ("projection_mm", 60)).Load();
        // Screws 75 mm in: two of them, 400 mm apart. 12 kg of coats = 117.6798 N, half of it at 60 mm.
        Assert.Equal([2800, 3200], rack.Brackets.Select(b => b.At.X));
        Same(new(0, 0, 58.8399 * 60, 0, -58.8399, 0), rack.Case(0, "loaded").Variable);
        Assert.Equal(14, rack.MassKg, 1e-12);
    }

    [Fact]
    public void Stair_gate_pulls_at_its_upper_hinge()
    {
        var gate = Of("stair_gate", ("width_mm", 800), ("height_mm", 600), ("mass_kg", 6), ("pull_n", 200)).Load();
        // A child of 2 x 200 N rides 800 mm from the pins 600 mm apart: +-400 x 800 / 600 = 533.333 N, shear 200 N on each.
        var upper = gate.Case(1, "child_swings").Variable;
        Assert.Equal(400 * 800 / 600.0, upper.N, 1e-9);
        Assert.Equal(-200, upper.Vy, 1e-9);
        Assert.Equal(-400 * 800 / 600.0, gate.Case(0, "child_swings").Variable.N, 1e-9);
        Assert.Equal(ConsequenceClass.HoldsPerson, gate.Class);
    }

    [Fact]
    public void Shutter_leaf_swung_open_pulls_at_the_top_screw()
    {
        var shutter = Of("shutter", ("width_mm", 1000), ("height_mm", 700)).Load();
        // 0.7 m2 x 10 kg/m2 and 3.4 m of frame x 2 kg/m = 13.8 kg: 6.9 kg = 67.665885 N a side. Two screws 500 mm apart.
        Assert.Equal(13.8, shutter.MassKg, 1e-12);
        Assert.Equal(4, shutter.Brackets.Count);
        // Leaf 500 wide stands open: its weight 250 mm out from the pin: 67.665885 x 250 / 500 on the upper screw.
        Assert.Equal(67.665885 / 2, shutter.Case(1, "open").Permanent.N, 1e-9);
        // A child of 2 x 100 N on its edge: 200 x 500 / 500.
        Assert.Equal(200, shutter.Case(1, "child_swings").Variable.N, 1e-9);
        Assert.Equal(-67.665885 / 2, shutter.Case(3, "closed").Permanent.Vy, 1e-9);
    }

    [Fact]
    public void Towel_rail_is_grabbed_at_its_end()
    {
        var rail = Of("towel_rail", ("width_mm", 550), ("towels_kg", 4), ("projection_mm", 80)).Load();
        // Flanges 25 mm in, 500 apart. 2 x 250 N at the end: on the near flange 500 x 525 / 500 = 525 N with wet towels 2 kg = 19.6133 N.
        Assert.Equal(525, rail.Case(1, "pulled_out").Variable.N, 1e-9);
        Assert.Equal(-525 - 2 * G, rail.Case(1, "pulled_down").Variable.Vy, 1e-9);
    }

    [Fact]
    public void Grab_rail_flange_takes_a_whole_person()
    {
        var rail = Of("grab_rail", ("projection_mm", 80)).Load();
        // 2 x 850 N in any direction at either flange.
        foreach (int flange in (int[])[0, 1])
        {
            Same(new(0, 0, 136000, 0, -1700, 0), rail.Case(flange, "pulled_down").Variable);
            Same(new(1700, 0, 0, 0, 0, 0), rail.Case(flange, "pulled_out").Variable);
            Same(new(0, 136000, 0, -1700, 0, 0), rail.Case(flange, "pulled_left").Variable);
        }
        Assert.Equal(ConsequenceClass.HoldsPerson, rail.Class);
    }

    [Fact]
    public void Cord_cleat_is_tugged_up_and_down()
    {
        var cleat = Of("cord_cleat").Load();
        // 2 x 60 N at 15 mm.
        Same(new(0, 0, 1800, 0, -120, 0), cleat.Case(0, "pulled_down").Variable);
        Same(new(0, 0, -1800, 0, 120, 0), cleat.Case(0, "pulled_up").Variable);
    }

    [Fact]
    public void Picture_on_two_hooks_shares_its_weight()
    {
        var picture = Of("picture", ("width_mm", 600), ("height_mm", 800), ("mass_kg", 8)).Words(("hang", "two_hooks")).Load();
        // Hooks three fifths of 600 mm apart; 4 kg = 39.2266 N each at 15 mm.
        Assert.Equal([2820, 3180], picture.Brackets.Select(b => b.At.X));
        Same(new(0, 0, 39.2266 * 15, 0, -39.2266, 0), picture.Case(0, "hangs").Permanent);
    }

    [Fact]
    public void Mirror_weighs_its_glass_and_its_frame()
    {
        var mirror = Of("mirror", ("width_mm", 900), ("height_mm", 700), ("glass_mm", 4), ("projection_mm", 20)).Words(("hang", "two_hooks")).Load();
        // 0.63 m2 of 4 mm glass at 2.5 kg/m2 a mm = 6.3 kg, frame and back at 5 kg/m2 = 3.15 kg; half of 9.45 kg on each hook, 20 mm out.
        Assert.Equal(9.45, mirror.MassKg, 1e-12);
        Same(new(0, 0, 4.725 * G * 20, 0, -4.725 * G, 0), mirror.Case(0, "hangs").Permanent);
    }

    [Fact]
    public void Free_thing_that_bears_below_pulls_at_its_top()
    {
        var free = Of("free", ("mass_kg", 20), ("cog_out_mm", 150), ("bears_below_mm", 100)).Load();
        // One screw 100 mm above the edge that bears: T = W a / d = 196.133 x 150 / 100.
        Assert.Equal(196.133 * 1.5, free.Case(0, "hangs").Permanent.N, 1e-9);
        Assert.Equal(0, free.Case(0, "hangs").Permanent.My, 1e-9);
    }

    private static void Same(Wrench expected, Wrench actual)
    {
        const double Within = 1e-9;
        Assert.Equal(expected.N, actual.N, Within);
        Assert.Equal(expected.Mx, actual.Mx, 1e-6);
        Assert.Equal(expected.My, actual.My, 1e-6);
        Assert.Equal(expected.Vx, actual.Vx, Within);
        Assert.Equal(expected.Vy, actual.Vy, Within);
        Assert.Equal(expected.Tz, actual.Tz, 1e-6);
    }
}
