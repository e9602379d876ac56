using Pattress.Actions;
using Pattress.Jobs;
using Pattress.Jobs.Site;

namespace Pattress.Tests.Jobs.Site;

/// <summary>What is done on site, on the demo house and on a wall of its own. Rules of the trade from common practice, no source.</summary>
public class SiteTests
{
    private static readonly DateTimeOffset Noon = new(2026, 3, 1, 12, 0, 0, TimeSpan.Zero);
    private static readonly Job Demo = JobReader.Read(Embedded.Text("samples/demo-house.job.json")).Value!;
    private static readonly PlanAnswer DemoPlan = Plan(Demo);

    private static int _ids;

    private static PlanAnswer Plan(Job job) => Planner.Plan(job, PlanData.Embedded);

    private static string NewId() => $"x{_ids++}";

    [Fact]
    public void No_hole_is_deeper_than_the_fixing_and_the_wall_allow()
    {
        var list = DrillList.Of(Demo, DemoPlan);
        Assert.NotEmpty(list.Tasks);
        foreach (var task in list.Tasks)
        {
            var hole = DemoPlan.Items.Single(i => i.Id == task.Item).Brackets[task.Bracket].Holes.First(h => h.At == task.At);
            Assert.True(task.StopMm <= hole.DepthMm && task.DiameterMm <= hole.DiameterMm, task.ToString());
            if (task.Aim == DrillAim.Feel) Assert.True(task.StopMm <= task.FaceMm + 5, task.ToString());
        }
    }

    [Fact]
    public void Thin_holes_come_first_and_then_the_plans_order_of_work()
    {
        var tasks = DrillList.Of(Demo, DemoPlan).Tasks;
        Assert.Equal(tasks.OrderBy(t => t.Aim).Select(t => t), tasks);
        var ready = DemoPlan with { Items = [.. DemoPlan.Items.Where(i => i.Verdict == Verdict.Ready)] };
        var steps = Pattress.Planning.OrderOfWork.Steps(ready.Items).Skip(1).Select(s => (s.Bit, s.DiameterMm, s.StopMm));
        Assert.Equal(steps, tasks.Where(t => t.Aim == DrillAim.Widen).Select(t => (t.Bit, t.DiameterMm, t.StopMm)).Distinct());
    }

    [Fact]
    public void Nothing_is_drilled_where_the_answer_is_not_here_nor_widened_before_it_is_ready()
    {
        var verdicts = DemoPlan.Items.ToDictionary(i => i.Id, i => i.Verdict);
        Assert.Contains(Verdict.NotHere, verdicts.Values);
        Assert.Contains(Verdict.CheckFirst, verdicts.Values);
        var list = DrillList.Of(Demo, DemoPlan);
        Assert.DoesNotContain(list.Tasks, t => verdicts[t.Item] == Verdict.NotHere);
        Assert.DoesNotContain(list.Tasks, t => t.Aim == DrillAim.Widen && verdicts[t.Item] != Verdict.Ready);
        Assert.Equal(verdicts.Where(v => v.Value != Verdict.Ready).Select(v => v.Key).Order(), list.HeldBack.Select(h => h.Item).Distinct().Order());
    }

    [Fact]
    public void An_unsampled_textured_coating_and_an_unchecked_cable_strip_stop_even_the_thin_bit()
    {
        var textured = Demo with { Walls = [.. Demo.Walls.Select(w => w with { Condition = w.Condition with { Coating = "textured", Sampled = "not_sampled" } })] };
        Assert.Empty(DrillList.Of(textured, Plan(textured)).Tasks);
        var unchecked_ = Demo with { Walls = [.. Demo.Walls.Select(w => w with { StripChecks = [] })] };
        var plan = Plan(unchecked_);
        foreach (var task in DrillList.Of(unchecked_, plan).Tasks)
        {
            var strips = plan.Walls.Single(w => w.Id == task.Wall).Strips;
            Assert.DoesNotContain(Pattress.Planning.CableStrips.Touching(strips, task.At, task.DiameterMm), s => s.Checked.Length == 0);
        }
    }

    [Fact]
    public void A_whole_job_is_drilled_one_hole_at_a_time_and_ends()
    {
        var (job, plan) = (Demo, DemoPlan);
        for (int i = 0; i < 400; i++)
        {
            if (DrillList.Of(job, plan).Next is not { } task) break;
            var before = DrillList.Of(job, plan).ToDo.Count;
            job = DrillRecord.After(job, task, task.Asks ? Expected(plan, task) : "", NewId, Noon);
            plan = Plan(job);
            Assert.DoesNotContain(DrillList.Of(job, plan).ToDo, t => t.At == task.At && t.Aim == task.Aim && t.Item == task.Item && t.DiameterMm == task.DiameterMm);
            Assert.True(i < 399, $"no end: {before} to do");
        }
        Assert.NotEmpty(job.Done.Holes);
        Assert.Equal([], JobReader.Read(JobWriter.Write(job)).Problems);
    }

    /// <summary>A mirror of 3 kg on a wall told to be board on studs, where one hole ran into a void.</summary>
    private static Job Mirror { get; } = new()
    {
        Settings = new() { YearBuilt = 2010 },
        Walls =
        [
            new Wall
            {
                Id = "w", WidthMm = 3600, HeightMm = 2400,
                Readings =
                [
                    new Reading { Id = "t", Kind = "told", Says = "timber_studs" }, new Reading { Id = "h", Kind = "hooked_wire", At = new(900, 1500), ThicknessMm = 12.5 },
                    new Reading { Id = "h2", Kind = "hole", At = new(900, 1500), Met = "void", DiameterMm = 5, DepthMm = 60 },
                ],
            },
        ],
        Fixtures = [new Fixture { Id = "m", Wall = "w", What = "mirror", At = new(1800, 1500), Numbers = new Dictionary<string, double> { ["width_mm"] = 600, ["height_mm"] = 600, ["mass_kg"] = 3 } }],
    };

    // A screw into a stud is the first choice wherever one is met (common practice, no source).
    [Fact]
    public void A_stud_where_none_was_expected_replans_for_a_screw_and_says_so()
    {
        var (plan, after) = Met("support");
        Assert.Contains(PlanChanges.Between(plan, Plan(after)), c => c.Code == "change_fixing" && c.Values[3].Text.StartsWith("wood_screw", StringComparison.Ordinal));
    }

    // Board and nothing behind it, felt in the very hole, is what a cavity fixing wants (common practice, no source).
    [Fact]
    public void A_void_where_a_void_was_hoped_for_makes_it_ready_and_the_hole_is_widened_next()
    {
        var (plan, after) = Met("void");
        var now = Plan(after);
        Assert.Contains(PlanChanges.Between(plan, now), c => c.Code == "change_verdict" && c.Values[2].Text == "verdict_ready");
        Assert.Equal(DrillAim.Widen, DrillList.Of(after, now).Next!.Aim);
        Assert.Empty(PlanChanges.Between(now, now));
    }

    [Theory]
    [InlineData("masonry")]
    [InlineData("dab")]
    [InlineData("foam")]
    [InlineData("metal")]
    public void A_hole_that_met_something_else_is_never_widened_for_a_cavity_fixing(string met)
    {
        var (_, after) = Met(met);
        var list = DrillList.Of(after, Plan(after));
        Assert.DoesNotContain(list.ToDo, t => t.Aim == DrillAim.Widen);
        Assert.Contains(list.HeldBack, h => h.Why.Code == "drill_met_otherwise");
    }

    private static (PlanAnswer Before, Job After) Met(string met)
    {
        var plan = Plan(Mirror);
        return (plan, DrillRecord.After(Mirror, DrillList.Of(Mirror, plan).Next!, met, NewId, Noon));
    }

    [Fact]
    public void Cautions_are_asked_for_once_a_wall()
    {
        string wall = Demo.Walls[0].Id;
        var unread = SiteCautions.Unread(Demo, DemoPlan, wall);
        Assert.Contains(unread, c => c.Code == "caution_cables");
        var job = DrillRecord.Ticked(Demo, wall, [.. unread.Select(c => c.Code)], "q1", Noon);
        Assert.Empty(SiteCautions.Unread(job, DemoPlan, wall));
        Assert.NotEmpty(SiteCautions.Unread(job, DemoPlan, Demo.Walls[1].Id));
    }

    [Fact]
    public void A_wider_hole_than_planned_is_said()
    {
        var task = DrillList.Of(Demo, DemoPlan).Tasks.First(t => t.Aim == DrillAim.Widen);
        var job = DrillRecord.After(Demo, task with { DiameterMm = task.DiameterMm + 4 }, "", NewId, Noon);
        Assert.Contains(DrillList.Of(job, DemoPlan).HeldBack, h => h.Item == task.Item && h.Why.Code == "drill_too_wide");
    }

    [Fact]
    public void A_pull_is_at_least_the_load_and_never_what_could_harm()
    {
        var list = ProofList.Of(Demo, DemoPlan);
        Assert.NotEmpty(list.Tasks);
        Assert.All(list.Tasks, t => Assert.InRange(t.LoadN, double.Epsilon, t.CapN));
        Assert.All(list.Tasks, t => Assert.Equal(Verdict.Ready, DemoPlan.Items.Single(i => i.Id == t.Item).Verdict));
    }

    [Fact]
    public void A_pull_speaks_for_the_fixing_that_was_pulled()
    {
        var task = ProofList.Of(Demo, DemoPlan).Next!;
        var job = ProofList.Pulled(Demo, task, 30, "held", "p1", Noon);
        Assert.Equal(1, ProofList.Of(job, DemoPlan).Held);
        Assert.NotEqual(task with { Last = null }, ProofList.Of(job, DemoPlan).Next);
        var elsewhere = job with { Proofs = [job.Proofs[0] with { Fixing = "another.medium" }] };
        Assert.Equal(0, ProofList.Of(elsewhere, DemoPlan).Held);
        var failed = ProofList.Pulled(Demo, task, 12, "moved", "p2", Noon);
        Assert.Equal(Proven.Moved, HandOverSheet.Of(failed, DemoPlan).Rows.Single(r => r.Item == task.Item).Proven);
        Assert.NotEqual(Verdict.Ready, Plan(failed).Items.Single(i => i.Id == task.Item).Verdict);
        Assert.Equal([], JobReader.Read(JobWriter.Write(failed)).Problems);
    }

    [Fact]
    public void A_signature_is_for_the_sheet_that_was_signed()
    {
        var sheet = HandOverSheet.Of(Demo, DemoPlan);
        Assert.Equal(DemoPlan.Items.Count, sheet.Rows.Count + sheet.Left.Count);
        var job = sheet.Sign(Demo, "A. B.", [[new Point(0, 0), new Point(900, 400)]], "s1", Noon);
        Assert.NotNull(HandOverSheet.Of(job, DemoPlan).SignedBy(job));
        var changed = DemoPlan with { Items = [.. DemoPlan.Items.Select(i => i with { MassKg = i.MassKg + 1 })] };
        Assert.Null(HandOverSheet.Of(job, changed).SignedBy(job));
        Assert.True(HandOverSheet.Of(job, changed).ChangedSince(job));
    }

    [Fact]
    public void No_row_promises_more_than_was_planned_for()
    {
        foreach (var row in HandOverSheet.Of(Demo, DemoPlan).Rows)
        {
            Assert.True(row.CarriesKg <= DemoPlan.Items.Single(i => i.Id == row.Item).MassKg + 1e-6);
            // A rail that holds a person carries no mass; it is not to be used otherwise.
            bool person = DemoPlan.Items.Single(i => i.Id == row.Item).Class == Pattress.Actions.ConsequenceClass.HoldsPerson;
            Assert.Contains(row.Not, r => r.Code == (person ? "not_other_use" : "not_more"));
            Assert.NotEmpty(row.Look);
        }
    }

    [Theory]
    [InlineData(26.6, "metric", "26 kg")]
    [InlineData(9.47, "metric", "9.4 kg")]
    [InlineData(26.6, "imperial", "58 lb")]
    public void What_may_hang_is_shown_rounded_down(double kg, string units, string shown) =>
        Assert.Contains($"than {shown},", Pattress.Jobs.Text.Texts.Sentence(new Reason("not_more", Said.MassAtMost(kg)), new Settings { Units = units }));

    [Fact]
    public void What_is_missing_follows_the_work()
    {
        Assert.Equal("missing_wall", Missing(new Job()));
        Assert.Equal("missing_thing", Missing(new Job { Walls = [new Wall { Id = "w", WidthMm = 3000, HeightMm = 2400 }] }));
        Assert.Equal("missing_check", Missing(Demo));
    }

    private static string Missing(Job job) => Standing.Of(job, Plan(job)).Missing.Code;

    /// <summary>What the plan reckons with behind the face.</summary>
    private static string Expected(PlanAnswer plan, DrillTask task) =>
        Expectation.Of(plan.Items.Single(i => i.Id == task.Item).Brackets[task.Bracket].Section)[0];
}
