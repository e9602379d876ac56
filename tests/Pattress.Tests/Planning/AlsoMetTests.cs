using Pattress.Fixings;
using Pattress.Jobs;
using Pattress.Jobs.Text;

namespace Pattress.Tests.Planning;

/// <summary>
/// What else a fitter meets: doors, hardboard and furniture panels; walls that this program does not judge alone; things for
/// a licensed trade. Which they are: common practice, no source.
/// </summary>
public class AlsoMetTests
{
    private static readonly string[] Further =
    [
        "no_fines", "cast_concrete", "clinker_block", "rubble", "honeycomb", "metal_lath", "resilient_bars", "gypsum_fibre", "wood_backed",
        "furred_ceiling", "sloping_ceiling",
    ];

    public static TheoryData<string> FurtherWalls => [.. Further];

    [Theory]
    [MemberData(nameof(FurtherWalls))]
    public void Further_wall_is_check_first_with_what_to_find_out(string builtAs)
    {
        var (_, brick) = HookOn(Brick);
        Assert.NotEqual(Verdict.NotHere, brick.Verdict);
        var (plan, item) = HookOn(Brick with { BuiltAs = builtAs });
        Assert.Equal(Verdict.CheckFirst, item.Verdict);
        Assert.Equal("check_further", item.Why.Code);
        Assert.Contains(plan.Checks, c => c.Kind == "look" && c.Why.Code == "find_out." + builtAs);
        Assert.Contains(plan.Walls[0].Notes, n => n.Code == "find_out." + builtAs);
        Assert.True(Texts.Has("built_as." + builtAs) && Texts.Has("find_out." + builtAs));
    }

    [Fact]
    public void Every_further_wall_that_the_document_takes_is_tested() => Assert.Equal(Pattress.Jobs.FurtherWalls.Ids, Further);

    [Theory]
    [InlineData(1500, Verdict.CheckFirst, "check_further")]
    [InlineData(900, null, null)]
    public void Hole_in_coving_is_check_first_and_one_below_it_is_not_touched(double y, Verdict? verdict, string? why)
    {
        var coved = Brick with { Zones = [new("cove", "coving", new(0, 1400, 3000, 400))] };
        var (plan, item) = HookOn(coved, y);
        var (_, without) = HookOn(Brick, y);
        Assert.Equal(verdict ?? without.Verdict, item.Verdict);
        if (why is not null) Assert.Equal(why, item.Why.Code);
        Assert.Equal(verdict is not null, plan.Checks.Any(c => c.Why.Code == "find_out.coving"));
    }

    // A hollow door is two thin skins, hardboard 3 mm, furniture 18 mm: what holds on them is judged as a panel, never as a stud wall.
    [Theory]
    [InlineData("door_leaf")]
    [InlineData("panel")]
    public void Doors_and_panels_are_believed_to_be_panels(string kind)
    {
        var (plan, item) = HookOn(Brick with { Zones = [new("leaf", kind, new(1000, 0, 1000, 2000))] });
        string[] ids = [.. plan.Walls[0].Zones.Single().BuildUps.Select(b => b.BuildUp)];
        foreach (string id in (string[])["door_leaf.hollow", "hardboard_panel.3", "furniture_panel.18"]) Assert.Contains(id, ids);
        // Which of them it is has not been seen: something is asked before the hole.
        Assert.NotEqual(Verdict.Ready, item.Verdict);
    }

    [Fact]
    public void A_solid_panel_takes_a_wood_screw() => Assert.Contains("wood_screw", Chosen(HookOn(Panel(
        new Reading { Id = "h", Kind = "hole", At = new(1500, 1400), Met = "support", SolidAtMm = 3, DepthMm = 45, Swarf = "wood" })).Item));

    [Fact]
    public void On_a_thin_skin_nothing_is_taken_that_wants_a_board()
    {
        var thin = HookOn(Panel(
            new Reading { Id = "w", Kind = "hooked_wire", At = new(1500, 1400), ThicknessMm = 3.2 },
            new Reading { Id = "v", Kind = "stiff_wire", At = new(1500, 1400), VoidMm = 29 })).Item;
        // A pull of twice 50 N on a 3 mm skin, and the battens not found.
        Assert.NotEqual(Verdict.Ready, thin.Verdict);
        foreach (string kind in Chosen(thin))
            Assert.Contains(FixingCatalogue.FromEmbedded.Kinds.Single(k => k.Id == kind).Into, b => b is Behind.PanelVoid or Behind.Timber);
    }

    [Theory]
    [InlineData("basin", "plumber")]
    [InlineData("boiler", "gas_engineer")]
    [InlineData("water_heater", "plumber_and_electrician")]
    public void What_is_for_a_licensed_trade_is_refused_with_whom_to_call(string what, string trade)
    {
        var job = new Job { Walls = [Brick], Fixtures = [new() { Id = "f", Wall = "w", What = what, At = new(1500, 1200) }] };
        var item = Planner.Plan(job, PlanData.Embedded).Items.Single();
        Assert.Equal(Verdict.NotHere, item.Verdict);
        Assert.Equal("licensed_trade", item.Why.Code);
        Assert.Empty(item.Brackets);
        Assert.Equal("trade." + trade, item.Remedies.Single().Values[0].Text);
        Assert.True(Texts.Has("trade." + trade));
        Assert.Contains(Texts.Name("trade." + trade), Texts.Sentence(item.Remedies[0], job.Settings), StringComparison.Ordinal);
    }

    private static Wall Brick => new()
    {
        Id = "w", WidthMm = 3000, HeightMm = 2400, OtherSide = "outside", Condition = new() { Moisture = "dry" },
        Readings =
        [
            new() { Id = "told", Kind = "told", Says = "masonry" }, new() { Id = "tap", Kind = "tap", At = new(1500, 1300), Sound = "dull" },
            new() { Id = "hole", Kind = "hole", At = new(1490, 1350), Met = "masonry", SolidAtMm = 13, DepthMm = 50, Swarf = "red" },
        ],
    };

    private static Wall Panel(params Reading[] readings) =>
        Brick with { Readings = readings, Zones = [new("leaf", "panel", new(1000, 1000, 1000, 800))] };

    private static (PlanAnswer Plan, ItemAnswer Item) HookOn(Wall wall, double y = 1400)
    {
        var hook = new Fixture { Id = "f", Wall = "w", What = "hook", At = new(1500, y), Numbers = new Dictionary<string, double> { ["hang_kg"] = 1 } };
        var plan = Planner.Plan(new Job { Walls = [wall], Fixtures = [hook], Settings = new() { YearBuilt = 2005 } }, PlanData.Embedded);
        return (plan, plan.Items.Single());
    }

    private static IEnumerable<string> Chosen(ItemAnswer item) => item.Brackets.Where(b => b.Fixing is not null).Select(b => b.Fixing!.Split('.')[0]);
}
