using Pattress.Jobs;

namespace Pattress.Tests.Planning;

/// <summary>What is proposed where nothing holds can be done, and would hold. Source of the facts: common practice, no source.</summary>
public class RemedyTests
{
    public static TheoryData<string> Samples =>
    [
        "demo-house", "rented-flat", "masonry-house", "bathroom-rail", "dab-radiator", "laminate-kitchen", "steel-stud-office", "stair-gate", "hotel-screens-us",
        "textured-ceiling",
    ];

    private static PlanAnswer Plan(string sample) => Planner.Plan(DemoHouse.Read(sample), PlanData.Embedded);

    private static ItemAnswer Item(string sample, string id) => Plan(sample).Items.Single(i => i.Id == id);

    /// <summary>A bracket of twice the height is another bracket, and nobody hangs a radiator on six.</summary>
    [Theory, MemberData(nameof(Samples))]
    public void What_is_proposed_is_no_other_sort_of_thing(string sample)
    {
        foreach (var r in Plan(sample).Items.SelectMany(i => i.Remedies))
        {
            double[] n = [.. r.Values.Select(v => v.Number)];
            if (r.Code == "remedy_arm") Assert.True(n[0] < 2 * n[1] && n[2] > n[3] / 2, $"{r}");
            if (r.Code == "remedy_more_brackets") Assert.True(n[0] <= 2 * n[1], $"{r}");
            if (r.Code == "remedy_more_holes") Assert.True(n[0] <= 4, $"{r}");
        }
    }

    [Fact]
    public void A_radiator_is_not_told_to_weigh_less() =>
        Assert.DoesNotContain(Item("dab-radiator", "radiator").Remedies, r => r.Code is "remedy_less" or "remedy_more_brackets");

    /// <summary>Where a move is proposed, the moved bracket finds a fixing; from a stud that is too weak no other stud is named.</summary>
    [Fact]
    public void Where_a_move_is_proposed_it_holds()
    {
        int moved = 0;
        foreach (string sample in Samples.Select(s => s.Data))
        {
            var job = DemoHouse.Read(sample);
            foreach (var item in Planner.Plan(job, PlanData.Embedded).Items)
            {
                if (item.Remedies.FirstOrDefault(r => r.Code == "remedy_move") is not { } move) continue;
                var (to, from) = (move.Values[1].Number, move.Values[3].Number);
                int index = item.Brackets.ToList().FindIndex(b => Math.Abs(b.At.X - from) < 0.5);
                var places = item.Brackets.Select((b, i) => i == index ? b.At with { X = to } : b.At).ToList();
                var there = DemoHouse.Item(DemoHouse.With(job, item.Id, f => f with { Brackets = places }), item.Id).Brackets[index];
                Assert.True(there.Fixing is not null, $"{sample}, {item.Id}: nothing holds at {to} either");
                moved++;
            }
        }
        Assert.True(moved > 0);
    }

    [Fact]
    public void A_pole_on_steel_studs_too_thin_for_it_is_not_sent_to_the_next_steel_stud() =>
        Assert.DoesNotContain(Item("steel-stud-office", "pole-on-studs").Remedies, r => r.Code is "remedy_move" or "remedy_batten" or "remedy_batten_at");

    [Fact]
    public void What_comes_nearest_is_said_of_what_the_wall_most_likely_is()
    {
        var plan = Plan("bathroom-rail");
        var rail = plan.Items.Single(i => i.Id == "on-brick");
        Assert.Equal("not_here_weak", rail.Why.Code);
        Assert.Equal(plan.Walls.Single(w => w.Id == rail.Wall).BuildUps[0].BuildUp, rail.Why.Values[2].Text);
        Assert.Contains(rail.Remedies, r => r.Code == "remedy_designed");
    }

    /// <summary>Board alone never carries a person, on however many brackets.</summary>
    [Fact]
    public void More_brackets_on_board_are_never_proposed_for_a_person() =>
        Assert.DoesNotContain(Item("stair-gate", "gate-on-lath").Remedies, r => r.Code is "remedy_more_brackets" or "remedy_more_holes");

    [Theory, MemberData(nameof(Samples))]
    public void What_is_ready_keeps_as_a_whole_to_the_chance_that_is_allowed(string sample) =>
        Assert.All(Plan(sample).Items.Where(i => i.Verdict == Verdict.Ready), i => Assert.True(i.ProbabilityOfFailure <= i.TargetProbability, i.Id));

    /// <summary>A hole that met the stud is there already: to drill it again tells nothing.</summary>
    [Fact]
    public void A_support_that_a_hole_has_met_is_not_to_be_probed_again() =>
        Assert.DoesNotContain(Plan("hotel-screens-us").Checks, c => c.Kind == "probe");

    [Theory, MemberData(nameof(Samples))]
    public void The_bit_that_explores_is_bought_with_those_that_widen(string sample)
    {
        var plan = Plan(sample);
        bool explores = plan.Order.Any(s => s.What.Code == "step_explore");
        Assert.True(!explores || plan.Buy.Any(l => l.Id == "masonry 5"));
    }
}
