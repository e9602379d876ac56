using CsCheck;
using Pattress.Actions;
using Pattress.Fixings;
using Pattress.Jobs;
using Pattress.Planning;
using Pattress.Planning.Resisting;
using Pattress.Working;

namespace Pattress.Tests.Planning;

/// <summary>What must hold for every plan. Source of the facts: common practice, no source.</summary>
public class PlanFacts
{
    public static TheoryData<string> Samples => ["demo-house", "rented-flat", "masonry-house"];

    [Theory, MemberData(nameof(Samples))]
    public void The_same_job_gives_the_same_plan_byte_for_byte(string name)
    {
        var job = DemoHouse.Read(name);
        string first = PlanJson.Write(Planner.Plan(job, PlanData.Embedded), job.Settings);
        Assert.Equal(first, PlanJson.Write(Planner.Plan(job, PlanData.Embedded), job.Settings));
    }

    [Theory, MemberData(nameof(Samples))]
    public void Nothing_is_ready_in_an_unsampled_textured_coating_of_before_2000(string name)
    {
        var job = DemoHouse.Read(name);
        foreach (int? year in new int?[] { 1999, null })
        {
            var textured = job with
            {
                Settings = job.Settings with { YearBuilt = year },
                Walls = [.. job.Walls.Select(w => w with { Condition = w.Condition with { Coating = "textured", Sampled = "not_sampled" } })],
            };
            Assert.All(Planner.Plan(textured, PlanData.Embedded).Items, i => Assert.NotEqual(Verdict.Ready, i.Verdict));
        }
    }

    [Theory, MemberData(nameof(Samples))]
    public void Every_kind_is_feasible_or_rejected_with_a_reason(string name)
    {
        var plan = Planner.Plan(DemoHouse.Read(name), PlanData.Embedded);
        int sizes = FixingCatalogue.FromEmbedded.Sizes.Count;
        Assert.All(plan.Items.SelectMany(i => i.Brackets), b =>
            Assert.Equal(sizes, b.Alternatives.Count + b.Rejected.Count + (b.Fixing is null ? 0 : 1)));
    }

    [Theory, MemberData(nameof(Samples))]
    public void A_plan_always_carries_its_cautions(string name)
    {
        var codes = Planner.Plan(DemoHouse.Read(name), PlanData.Embedded).Cautions.Select(c => c.Code).ToList();
        Assert.Superset(new HashSet<string> { "caution_cables", "caution_pipes", "caution_eyes_dust", "caution_ladder", "caution_local_rules" }, codes.ToHashSet());
    }

    [Theory, MemberData(nameof(Samples))]
    public void What_is_not_here_names_what_would_do_and_what_is_to_be_checked_names_the_check(string name)
    {
        var plan = Planner.Plan(DemoHouse.Read(name), PlanData.Embedded);
        Assert.All(plan.Items.Where(i => i.Verdict != Verdict.Ready), i => Assert.NotEmpty(i.Remedies));
        Assert.All(plan.Items.Where(i => i.Verdict == Verdict.CheckFirst), i => Assert.Contains(plan.Checks, c => c.Items.Contains(i.Id)));
    }

    /// <summary>The guard: a printed formula, evaluated from its printed inputs, gives the printed result.</summary>
    [Theory, MemberData(nameof(Samples))]
    public void Every_printed_formula_of_a_plan_gives_its_printed_result(string name)
    {
        var steps = Planner.Plan(DemoHouse.Read(name), PlanData.Embedded).Items.SelectMany(i => i.Brackets).SelectMany(b => b.Working).ToList();
        Assert.NotEmpty(steps);
        Assert.All(steps.Where(s => s.Inputs.Count > 0), s => Assert.Equal(s.Value, FormulaReader.Evaluate(s.Formula, s.Inputs), 1e-9 * Math.Max(1, Math.Abs(s.Value))));
    }

    [Fact]
    public void A_hole_in_a_cable_strip_is_check_first_until_the_strip_is_recorded()
    {
        var job = DemoHouse.WithWall(DemoHouse.Job, "breast", w => w with { Services = [new("s", "socket", new(400, 300, 146, 86), "this")], StripChecks = [] });
        Assert.Equal(Verdict.CheckFirst, DemoHouse.Item(job, "breast-mirror").Verdict);
        var recorded = DemoHouse.WithWall(job, "breast", w => w with { StripChecks = [new("c", "s_vertical", "detector")] });
        Assert.Equal(Verdict.Ready, DemoHouse.Item(recorded, "breast-mirror").Verdict);
    }

    /// <summary>Of a wall that nobody has looked at the answer is to look; nothing that was not found is said of it.</summary>
    [Theory]
    [InlineData("curtain_pole")]
    [InlineData("roller_blind")]
    public void On_a_wall_without_any_reading_the_wall_is_to_be_looked_at_first(string what)
    {
        var job = DemoHouse.Job with { Walls = [new Wall { Id = "w", WidthMm = 4000, HeightMm = 2400 }], Fixtures = [new Fixture { Id = "f", Wall = "w", What = what, At = new(2000, 2100), Numbers = new Dictionary<string, double> { ["width_mm"] = 1500, ["drop_mm"] = 1800 } }] };
        var item = DemoHouse.Item(job, "f");
        Assert.Equal(Verdict.CheckFirst, item.Verdict);
        Assert.NotEqual("no_support_here", item.Why.Code);
    }

    /// <summary>What was drawn behind the face is believed when a thin hole met it, is to be checked until then, and is not believed when the hole ran into the void.</summary>
    [Theory]
    [InlineData(null, Verdict.CheckFirst)]
    [InlineData("support", Verdict.Ready)]
    [InlineData("void", Verdict.NotHere)]
    public void A_drawn_noggin_holds_a_person_only_once_a_hole_has_met_it(string? met, Verdict verdict)
    {
        bool wood = met == "support";
        var hole = new Reading { Id = "new", Kind = "hole", At = new(1500, 1010), Met = met, SolidAtMm = wood ? 12.5 : null, DepthMm = wood ? 50 : 62, Swarf = wood ? "wood" : "white", DiameterMm = 3 };
        var job = DemoHouse.WithWall(DemoHouse.Job, "loft", w => w with { Readings = [.. w.Readings.Where(r => r.Id != "loft-hole-3"), .. met is null ? [] : new[] { hole }] });
        Assert.Equal(verdict, DemoHouse.Item(job, "loft-rail").Verdict);
    }

    [Fact]
    public void A_strip_under_the_toe_never_lowers_what_a_bracket_carries_and_helps_where_the_toe_governs()
    {
        foreach (double height in new[] { 40.0, 60, 90, 150 })
        {
            var (with, without) = (Toe(height, true), Toe(height, false));
            Assert.True(with < without);
        }
    }

    /// <summary>The same of the bracket as a whole, with every kind that opens behind board.</summary>
    [Fact]
    public void With_a_strip_no_bracket_on_board_carries_less_and_where_the_toe_governs_it_carries_more()
    {
        var sizes = FixingCatalogue.FromEmbedded.Sizes.Where(s => s.Kind.HoldsBy == HoldsBy.Wings && s.Kind.Into.Contains(Behind.BoardVoid)).ToList();
        int governed = 0;
        Gen.Select(Gen.Double[30, 120], Gen.Double[6, 25], Gen.Double[1_000, 40_000], Gen.Int[0, sizes.Count - 1]).Sample((height, width, moment, i) =>
        {
            var (bare, strip) = (Used(sizes[i], height, width, moment, false), Used(sizes[i], height, width, moment, true));
            if (bare is null || strip is null) return bare == strip;
            if (bare.Governs == "toe") Interlocked.Increment(ref governed);
            return bare.Governs == "toe" ? strip.Utilisation < bare.Utilisation : strip.Utilisation <= bare.Utilisation * (1 + 1e-9);
        }, iter: 2_000);
        Assert.True(governed > 20, $"the toe governed {governed} times");
    }

    private static Hold? Used(FixingSize size, double height, double width, double moment, bool strip)
    {
        var plate = Thin with { Outline = [new(-width / 2, -height / 2), new(width / 2, -height / 2), new(width / 2, height / 2), new(-width / 2, height / 2)], Holes = [new(0, height / 4)] };
        var design = new Wrench(0, 0, moment, 0, -100, 0);
        var bracket = new BracketActions(0, new(0, 0), plate, [new("hangs", LoadDuration.Permanent, design, default, design, 0)]);
        var ask = Ask with { ToeStrip = strip };
        return new Forces(bracket, strip).Of([0], size.Kind.HoldsBy, OneBoard) is { } forces ? Holds.Worst(size, OneBoard, forces, plate.Holes, plate, ask, null) : null;
    }

    [Fact]
    public void A_screw_with_35_mm_in_a_stud_carries_more_than_any_single_board_fixing()
    {
        var catalogue = FixingCatalogue.FromEmbedded;
        var stud = new Spot("timber_studs.12_5", Behind.Timber, new(12.5, 0), new(90, 0), Spread.None, new(90, 0), Spread.None, "timber", []);
        var board = stud with { Behind = Behind.BoardVoid, Base = "gypsum_board" };
        var screw = catalogue.Find("wood_screw.medium")! with { LengthMm = 12.5 + 35 + 2 };
        double most = catalogue.Sizes.Where(s => s.Kind.Into.Contains(Behind.BoardVoid)).Max(s => Pull(s, board));
        Assert.True(Pull(screw, stud) > most, $"{Pull(screw, stud)} against {most}");
    }

    private static readonly Spot OneBoard = new("timber_studs.12_5", Behind.BoardVoid, new(12.5, 0), new(90, 0), Spread.None, new(0, 0), Spread.None, "gypsum_board", [new("board", 12.5, 0)]);

    private static readonly Ask Ask = new(ConsequenceClass.Hurts, false, false, false, new Settings(), "dry", 0.9, 1e-3);

    private static readonly BracketPlate Thin = new([new(-15, -30), new(15, -30), new(15, 30), new(-15, 30)], [new(0, 20)], 2, 50, false);

    private static double Pull(FixingSize size, Spot spot) => Resistances.Of(size, spot, Ask, LoadDuration.LongTerm, [new(0, 0)], Thin, null).Pull.DesignN;

    private static double Toe(double height, bool strip)
    {
        var plate = Thin with { Outline = [new(-15, -height / 2), new(15, -height / 2), new(15, height / 2), new(-15, height / 2)], Holes = [new(0, height / 4)] };
        var design = new Wrench(0, 0, 10_000, 0, -100, 0);
        var bracket = new BracketActions(0, new(0, 0), plate, [new("hangs", LoadDuration.Permanent, design, default, design, 0)]);
        return new Forces(bracket, strip).Of([0], HoldsBy.Wings, OneBoard)![0].ToeMpa;
    }
}
