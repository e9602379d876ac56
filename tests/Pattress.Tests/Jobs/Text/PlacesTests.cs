using System.Text.Json;
using Pattress.Jobs;
using Pattress.Jobs.Text;

namespace Pattress.Tests.Jobs.Text;

/// <summary>A fitter reads names and words, not paths. What is expected was written by hand from the demo house's own names.</summary>
public class PlacesTests
{
    private static readonly Settings Usual = new();

    private static Job Demo { get; } = JobReader.Read(Embedded.Text("samples/demo-house.job.json")).Value!;

    [Theory]
    [InlineData("$", "the document")]
    [InlineData("$.walls[1]", "wall 2")]
    [InlineData("$.walls[0].width_mm", "wall 1, width")]
    [InlineData("$.walls[0].readings[5].at_mm", "wall 1, reading 6, place")]
    [InlineData("$.walls[0].readings[9].hits_mm[1]", "wall 1, reading 10, place 2 that drew")]
    [InlineData("$.fixtures[1].brackets[0].at_mm[1]", "thing 2, bracket 1, place")]
    [InlineData("$.settings.life_years", "settings, years it shall hang")]
    [InlineData("$.done.signed[0].strokes[2][1]", "what was done on site, signature 1, stroke 3")]
    [InlineData("$.walls[0].colour", "wall 1, \"colour\"")]
    [InlineData("$.walls[0]['my field']", "wall 1, \"my field\"")]
    [InlineData("line 3, pack", "line 3, pack")]
    public void Where_it_stands_in_a_document_that_was_not_read(string path, string words) => Assert.Equal(words, Places.Of(path, null, Usual));

    [Theory]
    [InlineData("$.walls[0].width_mm", "Bay in the front room, width")]
    [InlineData("$.walls[0].openings[0]", "Bay in the front room, window")]
    [InlineData("$.walls[0].services[0]", "Bay in the front room, socket")]
    [InlineData("$.walls[0].readings[5].at_mm", "Bay in the front room, reading 6 (tap with the knuckle), place")]
    [InlineData("$.fixtures[0].brackets[1].at_mm", "Curtain pole over the bay window, bracket 2, place")]
    [InlineData("$.walls[99].width_mm", "wall 100, width")]
    public void Where_it_stands_in_a_job_that_is_known(string path, string words) => Assert.Equal(words, Places.Of(path, Demo, Usual));

    [Fact]
    public void Of_two_sockets_it_is_said_which()
    {
        var wall = Demo.Walls[0];
        var job = Demo with { Walls = [wall with { Services = [.. wall.Services, wall.Services[0] with { Id = "second" }] }] };
        Assert.Equal(("Bay in the front room, socket 1", "Bay in the front room, socket 2"), (Places.Of("$.walls[0].services[0]", job, Usual), Places.Of($"$.walls[0].services[{wall.Services.Count}]", job, Usual)));
    }

    [Fact]
    public void A_thing_without_a_name_is_called_by_its_kind() =>
        Assert.Equal("thing 1 (curtain pole), bracket 1", Places.Of("$.fixtures[0].brackets[0]", Demo with { Fixtures = [.. Demo.Fixtures.Select(f => f with { Name = "" })] }, Usual));

    [Fact]
    public void No_path_and_no_bare_pair_of_numbers_is_left_in_what_is_said_plainly()
    {
        var refused = JobReader.Read(JobWriter.Write(Demo with { Walls = [Demo.Walls[0] with { WidthMm = 1300 }, .. Demo.Walls.Skip(1)] })).Problems;
        Assert.NotEmpty(refused);
        Assert.All(refused, p => Assert.DoesNotMatch(@"\$|\[\d|_mm", Texts.Plainly(p, Demo, Usual)));
        Assert.Contains("Bay in the front room, window: 1,250 mm to 2,350 mm from the left, 850 mm to 2,000 mm up would lie off its wall. Move it or take it out first.",
            refused.Select(p => Texts.Plainly(p, Demo, Usual)));
        // The command line keeps the path.
        Assert.All(refused, p => Assert.StartsWith("$.", Texts.Sentence(p), StringComparison.Ordinal));
    }

    [Fact]
    public void Every_field_of_a_job_has_words_of_its_own()
    {
        using var schema = JsonDocument.Parse(JobSchema.Text);
        var names = Properties(schema.RootElement).ToHashSet(StringComparer.Ordinal);
        Assert.True(names.Count > 100, "the schema names hardly any field");
        Assert.Equal([], names.Where(n => Places.Of("$." + n, null, Usual).Contains('"')).Order(StringComparer.Ordinal));
    }

    private static IEnumerable<string> Properties(JsonElement at) => at.ValueKind switch
    {
        JsonValueKind.Object => at.EnumerateObject().SelectMany(p => p is { Name: "properties", Value.ValueKind: JsonValueKind.Object }
            ? p.Value.EnumerateObject().SelectMany(f => Properties(f.Value).Prepend(f.Name)) : Properties(p.Value)),
        JsonValueKind.Array => at.EnumerateArray().SelectMany(Properties),
        _ => [],
    };
}
