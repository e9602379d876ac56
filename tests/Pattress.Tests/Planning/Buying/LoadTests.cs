using Pattress.Jobs;
using Pattress.Jobs.Buying;
using Pattress.Planning;
using Pattress.Solvers;

namespace Pattress.Tests.Planning.Buying;

/// <summary>The morning's list and the order of work. Facts of the trade: common practice, no source.</summary>
public class LoadTests
{
    private static BuyLine Line(string id, string sort, int needed) => new(id, sort, needed, 0, 1, 10, 1m, 1m, ["thing"]);

    private static PlanAnswer Job(string title, params BuyLine[] lines) => DemoHouse.Plan with { Title = title, Buy = lines };

    [Fact]
    public void Fixings_add_up_and_a_bit_is_loaded_once()
    {
        var list = LoadList.Of([
            Job("one", Line("strap_toggle.medium", "fixing", 5), Line("masonry 5", "bit", 1)),
            Job("two", Line("strap_toggle.medium", "fixing", 7), Line("masonry 5", "bit", 1), Line("setting_tool", "tool", 1)),
            Job("three", Line("wood_screw.long", "fixing", 4))]);
        Assert.Equal([("strap_toggle.medium", 12), ("wood_screw.long", 4), ("masonry 5", 1), ("setting_tool", 1)], list.Select(l => (l.Id, l.Count)));
        Assert.Equal(["one", "two"], list[0].Jobs);
    }

    [Theory, InlineData("demo-house"), InlineData("rented-flat"), InlineData("masonry-house")]
    public async Task Each_bit_goes_in_once(string name)
    {
        var steps = (await JobBuyer.Buy(DemoHouse.Read(name), PlanData.Embedded, new ScipSolver())).Plan.Order;
        var bits = steps.Select(s => (s.Bit, s.DiameterMm)).ToList();
        Assert.Equal(bits.Distinct().Count() - 1, Enumerable.Range(1, bits.Count - 1).Count(i => bits[i] != bits[i - 1]));
    }

    [Fact]
    public void A_thinner_bit_does_not_come_between_exploring_and_drilling_with_the_same_bit()
    {
        var item = DemoHouse.Plan.Items.First(i => i.Verdict != Verdict.NotHere);
        HoleAnswer Hole(string bit, double diameter) => new(new(0, 0), diameter, 40, bit, 1, "");
        var steps = OrderOfWork.Steps([item with { Brackets = [item.Brackets[0] with { Holes = [Hole("wood", 3), Hole("masonry", 5), Hole("spear", 14)] }] }]);
        Assert.Equal([("masonry", 5.0), ("masonry", 5.0), ("wood", 3.0), ("spear", 14.0)], steps.Select(s => (s.Bit, s.DiameterMm)));
    }
}
