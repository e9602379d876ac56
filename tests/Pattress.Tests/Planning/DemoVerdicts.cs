using System.Text.Json.Nodes;
using Pattress.Jobs;

namespace Pattress.Tests.Planning;

/// <summary>
/// The demo house shows all three verdicts, and for each thing in it one changed entry, a reading or a load, turns its verdict.
/// The verdicts are what a fitter would say (common practice, no source): a rail, a shelf or a cabinet into timber or brick is ready, nothing
/// hangs overhead where no joist was found.
/// </summary>
public class DemoVerdicts
{
    [Fact]
    public void All_three_verdicts_occur() =>
        Assert.Equal([Verdict.Ready, Verdict.CheckFirst, Verdict.NotHere], DemoHouse.Plan.Items.Select(i => i.Verdict).Distinct().Order());

    [Fact]
    public void The_whole_plan_is_as_bad_as_its_worst_item() => Assert.Equal(Verdict.NotHere, DemoHouse.Plan.Verdict);

    /// <summary>Each row: item, its verdict, the entry that is changed (id of its object, field, new value), the verdict then.</summary>
    [Theory]
    [InlineData("book-shelf", Verdict.Ready, "book-shelf", "load_kg_m", "90", Verdict.NotHere)]
    [InlineData("breast-mirror", Verdict.Ready, "breast-mirror", "mass_kg", "90", Verdict.NotHere)]
    [InlineData("breast-screen", Verdict.Ready, "breast-screen", "mass_kg", "12", Verdict.NotHere)]
    [InlineData("kitchen-cabinet", Verdict.Ready, "kitchen-cabinet", "load_kg", "120", Verdict.NotHere)]
    [InlineData("loft-rail", Verdict.Ready, "loft-rail", "pull_n", "850", Verdict.NotHere)]
    [InlineData("landing-airer", Verdict.NotHere, "landing-hole-2", "met", "\"support\"", Verdict.CheckFirst)]
    public void One_changed_entry_turns_the_verdict(string item, Verdict before, string id, string field, string value, Verdict after)
    {
        Assert.Equal(before, DemoHouse.Item(DemoHouse.Job, item).Verdict);
        Assert.Equal(after, DemoHouse.Item(Changed(node => WithId(node, id)![field] = JsonNode.Parse(value)), item).Verdict);
    }

    /// <summary>Each row: item, its verdict, the wall and the list to which one entry is added, the verdict then.</summary>
    [Theory]
    [InlineData("bay-pole", Verdict.CheckFirst, "bay", "readings", """{"id":"new","kind":"hole","at_mm":[1820,2080],"met":"support","diameter_mm":3,"solid_at_mm":14,"depth_mm":50,"swarf":"wood"}""", Verdict.Ready)]
    [InlineData("kitchen-blind", Verdict.CheckFirst, "outside", "strip_checks", """{"id":"new","strip":"kitchen-switch_vertical","how":"detector"}""", Verdict.Ready)]
    public void One_added_record_turns_the_verdict(string item, Verdict before, string wall, string list, string entry, Verdict after)
    {
        Assert.Equal(before, DemoHouse.Item(DemoHouse.Job, item).Verdict);
        Assert.Equal(after, DemoHouse.Item(Changed(node => List(WithId(node, wall)!, list).Add(JsonNode.Parse(entry))), item).Verdict);
    }

    [Fact]
    public void A_mirror_on_a_wall_without_readings_is_no_longer_ready() =>
        Assert.NotEqual(Verdict.Ready, DemoHouse.Item(DemoHouse.WithWall(DemoHouse.Job, "breast", w => w with { Readings = [] }), "breast-mirror").Verdict);

    [Fact]
    public void A_rail_that_holds_a_person_is_refused_on_board_for_that_reason() =>
        Assert.Equal("not_here_person", DemoHouse.Item(DemoHouse.WithWall(DemoHouse.Job, "loft", w => w with { Zones = [] }), "loft-rail").Why.Code);

    [Fact]
    public void What_hangs_overhead_says_that_no_joist_is_known() =>
        Assert.Equal("no_support_here", DemoHouse.Item(DemoHouse.Job, "landing-airer").Why.Code);

    private static Job Changed(Action<JsonNode> change)
    {
        var node = JsonNode.Parse(Embedded.Text("samples/demo-house.job.json"))!;
        change(node);
        var outcome = JobReader.Read(node.ToJsonString());
        Assert.Empty(outcome.Problems);
        return outcome.Value!;
    }

    private static JsonArray List(JsonNode wall, string name)
    {
        if (wall[name] is JsonArray there) return there;
        var added = new JsonArray();
        wall[name] = added;
        return added;
    }

    private static JsonObject? WithId(JsonNode? node, string id) => node switch
    {
        JsonObject o when o["id"]?.GetValue<string>() == id => o,
        JsonObject o => o.Select(p => WithId(p.Value, id)).FirstOrDefault(found => found is not null),
        JsonArray a => a.Select(n => WithId(n, id)).FirstOrDefault(found => found is not null),
        _ => null,
    };
}
