using Pattress.Jobs;
using Pattress.Jobs.Repairs;
using Pattress.Planning.Repairs;
using Pattress.Tests.Planning;

namespace Pattress.Tests.Jobs.Repairs;

/// <summary>Putting right after a fixing came away. Facts of the trade: common practice, no source.</summary>
public class PuttingRightTests
{
    private static IReadOnlyList<RepairAnswer> Ways(double hole, bool torn = false, bool crushed = false) =>
        PuttingRight.Of(Job, "picture", 0, new(hole, torn, crushed), PlanData.Embedded);

    private static Job Job { get; } = DemoHouse.Read("rented-flat");

    [Fact]
    public void Opening_the_wall_is_always_left_and_never_ready_at_once() =>
        Assert.Contains(Ways(60, crushed: true), w => w is { Way: "open_up", Verdict: Verdict.CheckFirst, WaitHours: > 0 });

    [Fact]
    public void Whatever_goes_in_the_old_hole_swallows_it_and_bears_beyond_the_damage()
    {
        foreach (double hole in new[] { 6.0, 9, 14, 18, 24 })
            foreach (var way in Ways(hole, torn: true).Where(w => w.Way == "bigger"))
            {
                var size = Pattress.Fixings.FixingCatalogue.FromEmbedded.Find(way.Fixing)!;
                Assert.True(size.HoleMm >= hole && size.BearsLongMm >= hole + 20, way.Fixing);
            }
    }

    [Fact]
    public void In_crushed_board_nothing_goes_back_into_the_hole() => Assert.DoesNotContain(Ways(14, crushed: true), w => w.Way == "bigger");

    [Fact]
    public void Damaged_board_is_never_ready() => Assert.All(Ways(8).Where(w => w.Way is "bigger" or "bridge"), w => Assert.NotEqual(Verdict.Ready, w.Verdict));

    [Fact]
    public void More_damage_never_leaves_more_ways() => Assert.True(Ways(8).Count >= Ways(60, crushed: true).Count);

    [Fact]
    public void A_bracket_that_is_not_there_has_no_ways() => Assert.Empty(PuttingRight.Of(Job, "picture", 7, new(8, false, false), PlanData.Embedded));

    [Fact]
    public void Lost_width_by_hand() => Assert.Equal((14.0, 34.0, 64.0), (new Remains(14, false, false).LostMm, new Remains(14, true, false).LostMm, new Remains(14, true, true).LostMm));
}
