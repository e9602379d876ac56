using System.Text.Json;
using Pattress.Jobs;
using Pattress.Jobs.Text;

namespace Pattress.Tests.Jobs;

public class PlanJsonTests
{
    private static readonly Job Demo = JobReader.Read(Embedded.Text("samples/demo-house.job.json")).Value!;
    private static readonly Lazy<PlanAnswer> Plan = new(() => Planner.Plan(Demo, PlanData.Embedded));

    private static JsonElement Document => JsonDocument.Parse(PlanJson.Write(Plan.Value, Demo.Settings)).RootElement;

    [Fact]
    public void The_plan_has_the_fields_that_were_promised()
    {
        Has(Document, "verdict", "items", "checks", "buy", "cautions", "assumptions");
        var item = Document.GetProperty("items")[0];
        Has(item, "id", "verdict", "why", "code", "brackets");
        var bracket = item.GetProperty("brackets")[0];
        Has(bracket, "at_mm", "fixing", "count", "utilisation", "governs", "probability_of_failure", "holes", "rejected");
        Assert.Equal(2, bracket.GetProperty("at_mm").GetArrayLength());
        Has(bracket.GetProperty("holes")[0], "at_mm", "diameter_mm", "depth_mm", "bit");
        Has(bracket.GetProperty("rejected")[0], "fixing", "why", "code");
    }

    [Fact]
    public void Every_item_is_there_with_a_verdict() =>
        Assert.Equal(Demo.Fixtures.Select(f => f.Id), Document.GetProperty("items").EnumerateArray().Select(i => i.GetProperty("id").GetString()));

    [Fact]
    public void Wherever_there_is_a_why_its_code_is_there_too_and_has_a_sentence()
    {
        var whys = Objects(Document).Where(o => o.TryGetProperty("why", out _)).ToList();
        Assert.True(whys.Count > 50);
        Assert.Equal([], whys.Select(o => o.GetProperty("code").GetString()!).Where(c => !Texts.Has(c)).Distinct());
        Assert.Equal([], whys.Select(o => o.GetProperty("why").GetString()!).Where(w => w.Length == 0 || w.Contains('?')).Distinct());
    }

    [Fact]
    public void Every_build_up_and_governing_mechanism_has_words()
    {
        var ids = Objects(Document).SelectMany(o => Ids("build_up", "", o).Concat(Ids("governs", "mechanism.", o)));
        Assert.Equal([], ids.Distinct().Where(id => !Texts.Has(id)));
    }

    [Fact]
    public void The_same_job_gives_the_same_document() =>
        Assert.Equal(PlanJson.Write(Plan.Value, Demo.Settings), PlanJson.Write(Planner.Plan(Demo, PlanData.Embedded), Demo.Settings));

    [Fact]
    public void One_line_holds_the_same_document()
    {
        string line = PlanJson.Write(Plan.Value, Demo.Settings, indented: false);
        Assert.DoesNotContain('\n', line);
        Assert.True(JsonElement.DeepEquals(Document, JsonDocument.Parse(line).RootElement));
    }

    private static IEnumerable<string> Ids(string field, string prefix, JsonElement o) =>
        o.TryGetProperty(field, out var text) && text.ValueKind == JsonValueKind.String && text.GetString() is { Length: > 0 } id ? [prefix + id] : [];

    private static void Has(JsonElement element, params string[] names) =>
        Assert.Equal([], names.Where(n => !element.TryGetProperty(n, out _)));

    private static IEnumerable<JsonElement> Objects(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().SelectMany(p => Objects(p.Value)).Prepend(element),
        JsonValueKind.Array => element.EnumerateArray().SelectMany(Objects),
        _ => [],
    };
}
