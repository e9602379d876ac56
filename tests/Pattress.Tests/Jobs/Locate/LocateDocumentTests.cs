using System.Text.Json;
using Pattress.Jobs.Locate;

namespace Pattress.Tests.Jobs.Locate;

public class LocateDocumentTests
{
    private const string Scan = """{"length_mm":"4.2 m","readings":[{"kind":"tap","at_mm":320,"sound":"solid"},{"kind":"magnet","from_mm":250,"to_mm":390,"hits_mm":[318.5]},{"kind":"hole","at_mm":318,"met":"support"}],"zones":[{"from_mm":2000,"to_mm":2640}],"x_note":"mine"}""";

    [Fact]
    public void The_answer_has_the_fields_that_stay()
    {
        var root = JsonDocument.Parse(LocateDocument.Answer(Scan, explain: true).Value!).RootElement;
        var support = root.GetProperty("supports").EnumerateArray().First(s => Math.Abs(s.GetProperty("centre_mm").GetDouble() - 318.5) < 8);
        Assert.True(support.GetProperty("probability").GetDouble() > 0.95 && support.GetProperty("sd_mm").GetDouble() < 10);
        Assert.Equal(1, root.GetProperty("pitch").EnumerateArray().Sum(p => p.GetProperty("probability").GetDouble()), 1e-6);
        var zone = Assert.Single(root.GetProperty("zones").EnumerateArray());
        Assert.InRange(zone.GetProperty("best_mm").GetDouble(), 2000, 2640);
        foreach (string name in new[] { "probability", "probability_usable", "probability_none" }) Assert.InRange(zone.GetProperty(name).GetDouble(), 0, 1);
        foreach (string name in new[] { "kind", "at_mm", "code", "why" }) Assert.True(root.GetProperty("next").TryGetProperty(name, out _));
        Assert.Equal(["hole-318", "magnet-250", "tap-320"], root.GetProperty("readings").EnumerateArray().Select(r => r.GetProperty("id").GetString()!).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("""{"length_mm":4200,"readings":[{"kind":"tap","at_mm":4300,"sound":"solid"}]}""", "off_wall", "$.readings[0].at_mm")]
    [InlineData("""{"length_mm":4200,"readings":[{"kind":"magnet","from_mm":250,"to_mm":390,"hits_mm":[400]}]}""", "hit_outside_sweep", "$.readings[0].hits_mm[0]")]
    [InlineData("""{"length_mm":4200,"readings":[],"zones":[{"from_mm":2640,"to_mm":2000}]}""", "backwards", "$.zones[0].to_mm")]
    [InlineData("""{"length_mm":4200,"readings":[{"kind":"tap","at_mm":3,"sound":"loud"}]}""", "unknown_word", "$.readings[0].sound")]
    [InlineData("""{"length_mm":4200,"readings":[{"kind":"tap","at_mm":3,"sound":"solid","met":"void"}]}""", "field_of_another_kind", "$.readings[0].met")]
    [InlineData("""{"length_mm":4200,"readings":[],"colour":"blue"}""", "unknown_field", "$.colour")]
    [InlineData("""{"length_mm":-1,"readings":[]}""", "negative", "$.length_mm")]
    [InlineData("""{"length_mm":4200,"readings":[{"id":"a","kind":"tap","at_mm":3,"sound":"solid"},{"id":"a","kind":"tap","at_mm":9,"sound":"solid"}]}""", "duplicate_id", "$.readings[1].id")]
    [InlineData("""{"length_mm":4200}""", "missing_field", "$.readings")]
    public void A_bad_scan_is_refused_with_its_path(string json, string code, string path)
    {
        var problem = Assert.Single(LocateDocument.Answer(json).Problems);
        Assert.Equal((code, path), (problem.Code, problem.Path));
    }

    [Fact]
    public void A_million_readings_are_refused_and_not_worked_through()
    {
        string many = "{\"length_mm\":4200,\"readings\":[" + string.Join(",", Enumerable.Repeat("0", 900_000)) + "]}";
        Assert.Equal("list_too_long", Assert.Single(LocateDocument.Answer(many).Problems).Code);
    }

    [Fact]
    public void Certain_readings_that_contradict_each_other_are_named()
    {
        var root = JsonDocument.Parse(LocateDocument.Answer("""{"length_mm":4200,"readings":[{"kind":"hole","at_mm":900,"met":"support"},{"kind":"hole","at_mm":900,"met":"void"}]}""").Value!).RootElement;
        var found = Assert.Single(root.GetProperty("contradictions").EnumerateArray());
        Assert.Equal("holes_disagree", found.GetProperty("code").GetString());
        Assert.Contains("900 mm", found.GetProperty("why").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_scan_gives_the_same_answer_byte_for_byte() => Assert.Equal(LocateDocument.Answer(Scan).Value, LocateDocument.Answer(Scan).Value);
}
