using static Pattress.Tests.Actions.FixtureSamples;
using static Pattress.Tests.Actions.HandWork;

namespace Pattress.Tests.Actions;

/// <summary>Pictures, mirrors, screens, hooks and free things: every number by the hand arithmetic above it.</summary>
public sealed class HangingByHandTests
{
    private static readonly (string, double)[] Picture = [("width_mm", 600), ("height_mm", 800), ("mass_kg", 8)];

    // On one hook it swings: a hand of 2 x 20 N comes to the hook itself, 15 mm out. Pulled off, it turns about its foot 750 mm below:
    // 40 x 750 / 750 = 40 N.
    [Fact]
    public void Picture_on_one_hook()
    {
        var picture = Of("picture", Picture).Load();
        At(picture, (0, 0));
        Same(new(0, 0, 8 * G * 15, 0, -8 * G, 0), picture.Case(0, "hangs").Permanent);
        Same(new(40, 0, 0, 0, 0, 0), picture.Case(0, "pulled_out").Variable);
        Same(new(0, 0, 600, 0, -40, 0), picture.Case(0, "pulled_down").Variable);
        Same(new(0, -600, 0, 40, 0, 0), picture.Case(0, "pulled_right").Variable);
        Same(new(0, 600, 0, -40, 0, 0), picture.Case(0, "pulled_left").Variable);
        Assert.Equal(["hangs", "pulled_down", "pulled_out", "pulled_left", "pulled_right"], picture.Codes());
        Assert.Equal(15, picture.Brackets[0].Plate.ArmMm, 1e-12);
    }

    // Hooks three fifths of 600 mm apart, +-180; 50 mm below the top, so the middle is 750 / 2 = 375 mm below them. Sideways 40 N there turns
    // the pair: 40 x 375 = 15,000 Nmm over 2 x 180^2, 15,000 x 180 / 64,800 = 41.667 N down on the left and up on the right.
    [Fact]
    public void Picture_on_two_hooks_is_turned_by_a_hand()
    {
        var picture = Of("picture", Picture).Words(("hang", "two_hooks")).Load();
        At(picture, (-180, 0), (180, 0));
        double turned = 15_000 * 180 / 64_800.0;
        Same(new(0, -20 * 15, turned * 15, 20, -turned, 0), picture.Case(0, "pulled_right").Variable);
        Same(new(0, -20 * 15, -turned * 15, 20, turned, 0), picture.Case(1, "pulled_right").Variable);
        // Off the wall: 40 N at 375 mm above the foot needs only 10 N on each hook, but what is pulled off hangs on the hooks alone: 20 each.
        Same(new(20, 0, 0, 0, 0, 0), picture.Case(0, "pulled_out").Variable);
        Same(new(0, 0, 20 * 15, 0, -20, 0), picture.Case(1, "pulled_down").Variable);
    }

    // A low one, 80 mm high: hooks are in its middle's height at least, 40 mm above the foot; middle 20 mm below them: 40 x 20 x 180 / 64,800.
    [Fact]
    public void Low_picture_has_its_hooks_at_half_its_height()
    {
        var low = Of("picture", ("width_mm", 600), ("height_mm", 80), ("mass_kg", 8)).Words(("hang", "two_hooks")).Load();
        Assert.Equal(40 * 20 * 180 / 64_800.0, low.Case(1, "pulled_right").Variable.Vy, 1e-12);
    }

    // Sag nobody measured: 360 / 6 = 60 mm. H = W / 2 x 180 / 60 inwards at each hook, 15 mm out.
    [Fact]
    public void Wire_between_hooks_pulls_them_together()
    {
        var wire = Of("picture", Picture).Words(("hang", "wire_between_hooks"));
        double h = 4 * G * 180 / 60;
        Same(new(0, -h * 15, 4 * G * 15, h, -4 * G, 0), wire.Load().Case(0, "hangs").Permanent);
        Same(new(0, h * 15, 4 * G * 15, -h, -4 * G, 0), wire.Load().Case(1, "hangs").Permanent);
        // The same from right to left.
        Assert.Equal(-h, wire.Placed((180, 0), (-180, 0)).Load().Case(0, "hangs").Permanent.Vx, 1e-9);
        Assert.Equal(4 * G * Math.Sqrt(180 * 180 + 60 * 60) / 60, wire.Step("T_wire"), 1e-9);
        // One hook alone, or a wire over hooks, is not pulled sideways.
        Assert.Equal(0, wire.Placed((0, 0)).Load().Case(0, "hangs").Permanent.Vx, 1e-12);
        Assert.Equal(0, Of("picture", Picture).Words(("hang", "wire")).Placed((-100, 0), (100, 0)).Load().Case(0, "hangs").Permanent.Vx, 1e-12);
    }

    [Fact]
    public void Glass_is_said_where_there_is_glass()
    {
        Assert.True(Of("picture").Load().Warns("glass"));
        Assert.False(Of("picture", ("glass_mm", 0)).Load().Warns("glass"));
        // 0.9 x 0.5 m2 of 2 mm glass at 2.5 kg/m2 a mm and 8 kg/m2 of frame: 0.45 x 13 = 5.85 kg.
        Assert.Equal(5.85, Of("picture", ("width_mm", 900), ("height_mm", 500), ("frame_kg_m2", 8)).Load().MassKg, 1e-12);
    }

    // 24 kg 60 mm in front; a hand of 2 x 100 N at the edge, 1230 / 2 = 615 mm to the right.
    [Fact]
    public void Flat_screen_is_pulled_at_its_edge()
    {
        var screen = Of("screen", ("mass_kg", 20)).Load();
        At(screen, (0, 0));
        Same(new(0, 0, 24 * G * 60, 0, -24 * G, 0), screen.Case(0, "hangs").Permanent);
        Same(new(0, 0, 200 * 60, 0, -200, -200 * 615), screen.Case(0, "pulled_down").Variable);
        Same(new(0, 0, -200 * 60, 0, 200, 200 * 615), screen.Case(0, "pulled_up").Variable);
        Same(new(200, 200 * 615, 0, 0, 0, 0), screen.Case(0, "pulled_out").Variable);
        Same(new(0, -200 * 60, 0, 200, 0, 0), screen.Case(0, "pulled_right").Variable);
        Same(new(0, 200 * 60, 0, -200, 0, 0), screen.Case(0, "pulled_left").Variable);
        Assert.Equal(["hangs", "pulled_down", "pulled_up", "pulled_out", "pulled_left", "pulled_right"], screen.Codes());
    }

    // On an arm: 450 + 10 mm of packing out; swung, 460 to the side and 120 + 10 out; level pulls come to the pins 60 mm out.
    [Fact]
    public void Reaching_screen_swings_and_is_packed()
    {
        var screen = Of("screen", ("mass_kg", 20), ("packing_mm", 10)).Words(("arm", "reaching")).Load();
        Same(new(0, 0, 24 * G * 460, 0, -24 * G, 0), screen.Case(0, "hangs").Permanent);
        Same(new(0, 0, 24 * G * 130, 0, -24 * G, 24 * G * 460), screen.Case(0, "arm_left").Permanent);
        Same(new(0, 0, 200 * 130, 0, -200, 200 * 460), screen.Case(0, "pulled_down_arm_left").Variable);
        Same(new(0, 0, 200 * 130, 0, -200, -200 * 460), screen.Case(0, "pulled_down_arm_right").Variable);
        Same(new(0, 0, 200 * 460, 0, -200, -200 * 615), screen.Case(0, "pulled_down").Variable);
        Same(new(200, 0, 0, 0, 0, 0), screen.Case(0, "pulled_out").Variable);
        Same(new(0, -200 * 60, 0, 200, 0, 0), screen.Case(0, "pulled_right").Variable);
        Assert.Equal(24 * G * 460, screen.Case(0, "pulled_down").Permanent.My, 1e-9);
    }

    // Two plates 200 mm apart, upright: they sit 120 mm out at most, so 500 - 120 mm of reach pull the upper one: W x 380 x 100 / (2 x 100^2).
    [Fact]
    public void Reaching_screen_on_two_plates()
    {
        var screen = Of("screen", ("mass_kg", 20), ("extension_mm", 500)).Words(("arm", "reaching")).Placed((0, -100), (0, 100)).Load();
        double w = 24 * G;
        Same(new(w * 380 / 200, 0, w / 2 * 120, 0, -w / 2, 0), screen.Case(1, "hangs").Permanent);
        Same(new(-w * 380 / 200, 0, w / 2 * 120, 0, -w / 2, 0), screen.Case(0, "hangs").Permanent);
        // Swung to the left: 200 N at 500 mm turn the pair: 200 x 500 / (2 x 100^2) = 5 N a mm, 500 N to the left on the upper, at 120 mm.
        Same(new(0, 500 * 120, 100 * 120, -500, -100, 0), screen.Case(1, "pulled_down_arm_left").Variable);
        Same(new(0, -500 * 120, 100 * 120, 500, -100, 0), screen.Case(0, "pulled_down_arm_left").Variable);
    }

    // A short arm: 50 mm out, so the pins are no further out than the screen.
    [Fact]
    public void Short_arm_is_pulled_where_the_screen_is() =>
        Same(new(0, -200 * 50, 0, 200, 0, 0), Of("screen", ("extension_mm", 50)).Words(("arm", "reaching")).Load().Case(0, "pulled_right").Variable);

    private static readonly (string, double)[] Free =
        [("mass_kg", 10), ("cog_out_mm", 100), ("cog_x_mm", 30), ("cog_y_mm", -20), ("packing_mm", 5), ("pull_out_mm", 200)];

    // 10 kg 30 mm to the right, 20 below, 105 out; a hand of 2 x 100 N 205 out. Slanting: 200 / sqrt 2 = 141.42 down and as much out.
    [Fact]
    public void Free_thing_on_one_bracket()
    {
        var free = Of("free", Free).Load();
        double w = 10 * G, s = 200 / Math.Sqrt(2);
        Same(new(0, 0, w * 105, 0, -w, -30 * w), free.Case(0, "hangs").Permanent);
        Same(new(200, 200 * 30, -200 * 20, 0, 0, 0), free.Case(0, "pulled_out").Variable);
        Same(new(0, 200 * 205, 0, -200, 0, -20 * 200), free.Case(0, "pulled_left").Variable);
        Same(new(0, -200 * 205, 0, 200, 0, 20 * 200), free.Case(0, "pulled_right").Variable);
        Same(new(0, 0, -200 * 205, 0, 200, 30 * 200), free.Case(0, "pulled_up").Variable);
        Same(new(s, s * 30, -20 * s + s * 205, 0, -s, -30 * s), free.Case(0, "pulled_down_and_out").Variable);
        Assert.Equal(105, free.Brackets[0].Plate.ArmMm, 1e-12);
        // Where no hand's place is given it pulls at the middle of gravity.
        Assert.Equal(200 * 105, Of("free", Free[..^1]).Load().Case(0, "pulled_down").Variable.My, 1e-9);
    }

    // From a ceiling down is off it, and there is no edge to bear on.
    [Fact]
    public void Free_thing_on_a_ceiling()
    {
        var free = Of("free", [.. Free, ("bears_below_mm", 50)]).Load(Ceiling);
        double w = 10 * G, s = 200 / Math.Sqrt(2);
        Same(new(w, 30 * w, -20 * w, 0, 0, 0), free.Case(0, "hangs").Permanent);
        Same(new(0, 0, -200 * 205, 0, 200, 30 * 200), free.Case(0, "pulled_out").Variable);
        Same(new(s, 30 * s, -20 * s - s * 205, 0, s, 30 * s), free.Case(0, "pulled_down_and_out").Variable);
        Same(new(-200, -30 * 200, 20 * 200, 0, 0, 0), free.Case(0, "pulled_up").Variable);
    }

    // Off the wall, 200 N at 80 mm above the edge that bears; brackets 100 and 20 above it: 16,000 x 100 / 10,400 = 153.846 and 30.769; they need
    // 15.385 more between the three, 5.128 each. Pressed on, nothing is pulled.
    [Fact]
    public void Free_thing_that_bears_on_an_edge()
    {
        var free = Of("free", ("mass_kg", 10), ("cog_out_mm", 150), ("cog_y_mm", -20), ("bears_below_mm", 100)).Placed((0, 0), (0, -80), (0, -130))
            with { At = new(3000, 1500) };
        var load = free.Load();
        double missing = (200 - 16_000 * 120 / 10_400.0) / 3;
        Assert.Equal(16_000 * 100 / 10_400.0 + missing, load.Case(0, "pulled_out").Variable.N, 1e-9);
        Assert.Equal(16_000 * 20 / 10_400.0 + missing, load.Case(1, "pulled_out").Variable.N, 1e-9);
        Assert.Equal(missing, load.Case(2, "pulled_out").Variable.N, 1e-9);
        Assert.All(load.Brackets, b => Assert.Equal(0, b.Cases.Single(c => c.Code == "pulled_up").Variable.N, 1e-12));
        // Its weight 150 mm out, 98.0665 N: 14,709.975 Nmm.
        Assert.Equal(10 * G * 150 * 100 / 10_400, load.Case(0, "hangs").Permanent.N, 1e-9);
    }

    [Theory]
    [InlineData("nuisance", Pattress.Actions.ConsequenceClass.Nuisance), InlineData("hurts", Pattress.Actions.ConsequenceClass.Hurts)]
    [InlineData("overhead", Pattress.Actions.ConsequenceClass.Overhead), InlineData("holds_person", Pattress.Actions.ConsequenceClass.HoldsPerson)]
    public void Class_of_a_free_thing_is_as_entered(string word, Pattress.Actions.ConsequenceClass expected) =>
        Assert.Equal(expected, Of("free").Words(("class", word)).Load().Class);

    // 15 + 10 mm of packing out; 0.05 kg.
    [Fact]
    public void Cleat_by_hand()
    {
        var cleat = Of("cord_cleat", ("packing_mm", 10)).Load();
        Same(new(0, 0, 0.05 * G * 25, 0, -0.05 * G, 0), cleat.Case(0, "hangs").Permanent);
        Same(new(0, -120 * 25, 0, 120, 0, 0), cleat.Case(0, "pulled_right").Variable);
        Assert.True(cleat.Warns("cords"));
        // At 1500 mm by its place on the wall; lower down it is within reach.
        Assert.False(cleat.Warns("cord_within_reach"));
        Assert.True((Of("cord_cleat") with { At = new(3000, 1400) }).Load().Warns("cord_within_reach"));
    }
}
