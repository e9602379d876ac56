using Pattress.Walls;

namespace Pattress.Tests.Walls;

public class WallChecksTests
{
    private static readonly CheckSite Hidden = new(true, false, true);

    [Fact]
    public void An_unknown_wall_asks_for_a_check_that_is_expected_to_help()
    {
        var next = WallChecks.Next(WallModel.Infer(new("w", "wall", [])), Hidden);
        Assert.NotEqual("", next.Check);
        Assert.True(next.GainMinutes > 0);
        Assert.Equal("check_" + next.Check, next.Why.Code);
    }

    [Fact]
    public void A_wall_that_is_known_asks_for_nothing()
    {
        var known = WallModel.Infer(new("w", "wall", [new HoleFelt("h", 5, 5) { Met = "void" }, new HookedWire("w", 5, 5, 12.4), new StiffWire("v", 5, 5, 88),
            new MagnetDrawn("m", 0, 0, 3000, 4), new WordReading("o", 0, 0, "outlet", "board_and_void"), new HookedWire("w2", 900, 5, 12.6)]));
        Assert.Equal("", WallChecks.Next(known, Hidden).Check);
    }

    [Fact]
    public void A_hole_in_sight_is_dearer_than_a_hidden_one()
    {
        var belief = WallModel.Infer(new("w", "wall", []));
        double hidden = WallChecks.Next(belief, Hidden).GainMinutes, seen = WallChecks.Next(belief, Hidden with { Hidden = false }).GainMinutes;
        Assert.True(hidden > seen);
    }
}
