using System.Text.RegularExpressions;
using Pattress.Jobs;
using Pattress.Jobs.Text;

namespace Pattress.Tests.Planning;

/// <summary>What a plan says to a fitter: checks that help, remedies with places, no raw ids. Source of the facts: common practice, no source.</summary>
public partial class PlanSentences
{
    public static TheoryData<string> Samples => AssumedNumbersTests.Samples;

    private static (Job Job, PlanAnswer Plan) Read(string sample)
    {
        var job = JobReader.Read(Embedded.Text(sample)).Value!;
        return (job, Planner.Plan(job, PlanData.Embedded));
    }

    [Theory, MemberData(nameof(Samples))]
    public void A_check_that_states_its_worth_helps(string sample)
    {
        var (_, plan) = Read(sample);
        var checks = plan.Checks.Concat(plan.Walls.Select(w => w.Next).OfType<CheckToDo>()).Where(c => c.Before > 0 || c.After > 0).ToList();
        Assert.All(checks, c => Assert.True(c.After >= c.Before + 0.0049, $"{c.Kind}: {c.Before} to {c.After}"));
    }

    [Theory, MemberData(nameof(Samples))]
    public void Every_sentence_that_gives_two_chances_gives_two_different_ones(string sample)
    {
        var (job, plan) = Read(sample);
        foreach (var check in plan.Checks.Concat(plan.Walls.Select(w => w.Next).OfType<CheckToDo>()))
        {
            var match = FromTo().Match(Texts.Sentence(check.Why, job.Settings));
            if (match.Success) Assert.NotEqual(match.Groups[1].Value, match.Groups[2].Value);
        }
    }

    [Theory, MemberData(nameof(Samples))]
    public void No_sentence_of_a_plan_shows_a_raw_id(string sample)
    {
        var (job, plan) = Read(sample);
        var ids = plan.Walls.SelectMany(w => w.Strips).Select(s => s.Id).Where(id => id.Contains('_')).ToList();
        var said = plan.Items.SelectMany(i => i.Remedies.Append(i.Why).Concat(i.Brackets.Select(b => b.Why))).Concat(plan.Checks.Select(c => c.Why)).Select(r => Texts.Sentence(r, job.Settings)).ToList();
        Assert.All(said, s => Assert.DoesNotContain(ids, id => s.Contains(id, StringComparison.Ordinal)));
        Assert.All(said, s => Assert.DoesNotContain('_', s));
    }

    [Theory, MemberData(nameof(Samples))]
    public void Where_nothing_holds_the_bracket_gives_the_same_reason_as_the_thing(string sample)
    {
        var (_, plan) = Read(sample);
        foreach (var item in plan.Items.Where(i => i.Verdict == Verdict.NotHere && i.Brackets.Count > 0 && i.Brackets.All(b => b.Fixing is null)))
            Assert.Contains(item.Brackets, b => b.Why.Code == item.Why.Code);
    }

    [Fact]
    public void A_strip_is_named_by_what_it_belongs_to_and_by_its_wall() =>
        Assert.Equal("A hole lies in the strip above and below the switch on Outside wall of the kitchen, where cables are allowed. Check that strip and record it.",
            Texts.Sentence(DemoHouse.Plan.Items.Single(i => i.Id == "kitchen-blind").Why, DemoHouse.Job.Settings));

    /// <summary>
    /// A header sounds solid, board on studs mostly hollow, and five taps cost half a minute where a hole costs two and its filling: so the
    /// ear is asked first. Where it was asked and heard both, only the drill is left. That order is common practice, no source.
    /// </summary>
    [Fact]
    public void Taps_then_a_thin_hole_settle_whether_there_is_a_header_over_the_window()
    {
        var check = Assert.Single(DemoHouse.Plan.Checks, c => c.Items.Contains("bay-pole"));
        Assert.Equal(("tap", "bay"), (check.Kind, check.Wall));
        Assert.True(check.After > check.Before + 0.1);
        var tapped = DemoHouse.WithWall(DemoHouse.Job, "bay", w => w with
        {
            Readings = [.. w.Readings, .. Enumerable.Range(0, 4).Select(i => new Reading { Id = $"over{i}", Kind = "tap", At = new(1700 + (80 * i), 2080), Sound = i % 2 == 0 ? "solid" : "hollow" })],
        });
        var then = Assert.Single(Planner.Plan(tapped, PlanData.Embedded).Checks, c => c.Items.Contains("bay-pole"));
        Assert.Equal(("hole", "bay"), (then.Kind, then.Wall));
        Assert.True(then.After > then.Before + 0.1);
    }

    [Fact]
    public void A_batten_and_a_noggin_are_proposed_between_the_studs_that_were_found()
    {
        var rail = DemoHouse.Item(DemoHouse.WithWall(DemoHouse.Job, "loft", w => w with { Zones = [] }), "loft-rail");
        foreach (string code in new[] { "remedy_batten_at", "remedy_noggin_at" })
        {
            var remedy = Assert.Single(rail.Remedies, r => r.Code == code);
            // The readings met the studs' screws at 1197 to 1201 and at 1802 mm.
            Assert.InRange(remedy.Values[0].Number, 1190, 1210);
            Assert.InRange(remedy.Values[1].Number, 1792, 1812);
        }
    }

    [GeneratedRegex(@"from ([\d.,]+ %) to (?:about )?([\d.,]+ %)")]
    private static partial Regex FromTo();
}
