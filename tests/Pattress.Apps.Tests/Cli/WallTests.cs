using System.Globalization;
using System.Text.Json;

namespace Pattress.Apps.Tests.Cli;

/// <summary><c>pattress wall</c>: what a wall is, what to check next, and what each reading changed.</summary>
public class WallTests
{
    private static readonly string Landing = Path.Combine(Samples.Root, "samples", "landing.wall.json");

    private static string Wall(string readings) => """{"wall":{"id":"w","width_mm":3000,"height_mm":2400,"readings":[""" + readings + "]}}";

    [Fact]
    public async Task Chances_sum_to_one_and_build_ups_stand_in_their_order()
    {
        using var answer = JsonDocument.Parse((await Ran.Pattress("wall", Landing, "--json")).Out);
        var families = Numbers(answer.RootElement.GetProperty("families"), "probability");
        Assert.Equal(1, families.Sum(), 1e-6);
        var builds = Numbers(answer.RootElement.GetProperty("build_ups"), "probability");
        Assert.Equal(builds.OrderDescending(), builds);
        Assert.False(answer.RootElement.TryGetProperty("readings", out _));
        Assert.NotEmpty(answer.RootElement.GetProperty("cautions").EnumerateArray());
    }

    [Theory]
    // Common practice, no source: masonry about 20 mm behind the board is a dab gap; up to the chuck is a stud cavity; foam comes out in crumbs.
    [InlineData("""{"id":"a","kind":"hole","at_mm":[700,1200],"met":"masonry","solid_at_mm":33,"depth_mm":60,"swarf":"red"}""", "dabs")]
    [InlineData("""{"id":"a","kind":"hole","at_mm":[700,1200],"met":"void","depth_mm":75}""", "timber_studs")]
    [InlineData("""{"id":"a","kind":"hole","at_mm":[700,1200],"met":"foam","depth_mm":30,"swarf":"foam"}""", "laminate")]
    public async Task One_hole_says_what_the_wall_is(string hole, string family)
    {
        using var answer = JsonDocument.Parse((await Ran.Reading(Wall(hole), "wall", "-", "--json")).Out);
        Assert.Equal(family, answer.RootElement.GetProperty("families")[0].GetProperty("family").GetString());
    }

    [Fact]
    public async Task An_unread_wall_asks_for_a_check_that_is_worth_more_than_its_price()
    {
        using var answer = JsonDocument.Parse((await Ran.Reading(Wall(""), "wall", "-", "--json")).Out);
        var next = answer.RootElement.GetProperty("next");
        Assert.NotEqual("none", next.GetProperty("kind").GetString());
        Assert.True(next.GetProperty("gain_minutes").GetDouble() > 0);
        Assert.True(next.GetProperty("after").GetDouble() >= next.GetProperty("before").GetDouble());
        Assert.False(string.IsNullOrEmpty(next.GetProperty("code").GetString()));
    }

    [Fact]
    public async Task Explain_gives_each_reading_its_log_odds()
    {
        using var answer = JsonDocument.Parse((await Ran.Pattress("wall", Landing, "--json", "--explain")).Out);
        var readings = answer.RootElement.GetProperty("readings").EnumerateArray().ToList();
        Assert.Equal(["tap-1", "tap-2", "tap-3", "tap-4", "sweep", "probe"], readings.Select(r => r.GetProperty("id").GetString()));
        foreach (var r in readings)
        {
            // The definition: ln(p/(1-p)) with the reading less without it.
            Assert.Equal(LogOdds(r.GetProperty("with").GetDouble()) - LogOdds(r.GetProperty("without").GetDouble()), r.GetProperty("log_odds").GetDouble(), 1e-3);
            Assert.NotEmpty(r.GetProperty("changed").EnumerateArray());
        }
    }

    [Fact]
    public async Task What_was_expected_of_each_hole_stands_beside_what_it_met()
    {
        string tap = Tap("a", "solid"), hole = Hole("h", "support"), again = Hole("i", "support");
        using var answer = JsonDocument.Parse((await Ran.Reading(Wall($"{tap},{hole},{again}"), "wall", "-", "--json", "--explain")).Out);
        var holes = answer.RootElement.GetProperty("holes");
        var log = holes.GetProperty("log").EnumerateArray().ToList();
        Assert.Equal(["h", "i"], log.Select(h => h.GetProperty("reading").GetString()));
        List<double> p = Numbers(holes.GetProperty("log"), "predicted");
        // What was expected of the first is what the tap alone said; the second, at the same place, was surer.
        using var alone = JsonDocument.Parse((await Ran.Reading(Wall($"{tap},{Hole("h", "void")}"), "wall", "-", "--json", "--explain")).Out);
        Assert.Equal(Numbers(alone.RootElement.GetProperty("holes").GetProperty("log"), "predicted")[0], p[0], 1e-9);
        Assert.True(p[1] > p[0]);
        // Brier by its definition, both holes having met.
        Assert.Equal((((1 - p[0]) * (1 - p[0])) + ((1 - p[1]) * (1 - p[1]))) / 2, holes.GetProperty("brier").GetDouble(), 1e-8);
        // A tap that sounded solid over what was wood can only raise that rate.
        var rate = holes.GetProperty("rates").EnumerateArray().First(r => r.GetProperty("name").GetString() == "tap_solid_on");
        Assert.True(rate.GetProperty("now").GetDouble() > rate.GetProperty("assumed").GetDouble());
    }

    private static string Tap(string id, string sound) => $$"""{"id":"{{id}}","kind":"tap","at_mm":[1310,1500],"sound":"{{sound}}"}""";

    private static string Hole(string id, string met) => $$"""{"id":"{{id}}","kind":"hole","at_mm":[1310,1500],"met":"{{met}}"}""";

    [Fact]
    public async Task A_probe_that_met_the_support_speaks_strongly_for_it()
    {
        string wall = Wall("""{"id":"a","kind":"probe","at_mm":[1310,1200],"met":"support"}""");
        using var answer = JsonDocument.Parse((await Ran.Reading(wall, "wall", "-", "--json", "--explain")).Out);
        // A thin probe confirms, common practice, no source; log odds of 3 are twenty to one.
        Assert.True(answer.RootElement.GetProperty("readings")[0].GetProperty("support_log_odds").GetDouble() > 3);
    }

    [Fact]
    public async Task A_job_answers_every_wall_and_a_wall_answers_one()
    {
        using var job = JsonDocument.Parse((await Ran.Pattress("wall", Samples.DemoHouse, "--json")).Out);
        using var written = JsonDocument.Parse(await File.ReadAllTextAsync(Samples.DemoHouse));
        Assert.Equal(Ids(written.RootElement), Ids(job.RootElement));
        using var one = JsonDocument.Parse((await Ran.Pattress("wall", Landing, "--json")).Out);
        Assert.Equal("landing", one.RootElement.GetProperty("id").GetString());
    }

    [Fact]
    public async Task Another_wall_of_the_house_moves_this_one_and_says_so()
    {
        const string Dabs = """{"id":"o","width_mm":3000,"height_mm":2400,"readings":[{"id":"r","kind":"hole","at_mm":[700,1200],"met":"masonry","solid_at_mm":30,"depth_mm":60,"swarf":"red"}]}""";
        string wall = """{"wall":{"id":"w","width_mm":3000,"height_mm":2400,"readings":[]},"other_walls":[""" + Dabs + "]}";
        using var answer = JsonDocument.Parse((await Ran.Reading(wall, "wall", "-", "--json")).Out);
        var house = answer.RootElement.GetProperty("from_house");
        Assert.True(house.GetProperty("together").GetDouble() > house.GetProperty("alone").GetDouble());
    }

    [Fact]
    public async Task A_contradiction_is_named_with_its_readings()
    {
        string wall = Wall("""{"id":"a","kind":"hooked_wire","at_mm":[500,1200],"thickness_mm":26},{"id":"b","kind":"hooked_wire","at_mm":[600,1200],"thickness_mm":12.5}""");
        using var answer = JsonDocument.Parse((await Ran.Reading(wall, "wall", "-", "--json")).Out);
        var found = Assert.Single(answer.RootElement.GetProperty("contradictions").EnumerateArray());
        Assert.Equal(["b", "a"], found.GetProperty("readings").EnumerateArray().Select(r => r.GetString()));
    }

    [Fact]
    public async Task Every_problem_is_reported_at_once_with_its_path()
    {
        string wall = Wall("""{"id":"a","kind":"tap","at_mm":[5000,1200],"sound":"solid"},{"id":"a","kind":"tap","at_mm":[500,1200],"sound":"loud"}""");
        var ran = await Ran.Reading(wall, "wall", "-");
        Assert.Equal(2, ran.Exit);
        Assert.Empty(ran.Out);
        Assert.Contains("$.wall.readings[0].at_mm", ran.Error);
        Assert.Contains("$.wall.readings[1].id", ran.Error);
        Assert.Contains("$.wall.readings[1].sound", ran.Error);
    }

    [Fact]
    public async Task A_batch_answers_each_line_and_ends_with_2_for_a_bad_one()
    {
        var ran = await Ran.Reading($"{Wall("")}\n{{\"wall\":{{}}}}\n{Wall("")}\n", "wall", "-", "--batch");
        string[] lines = ran.Out.TrimEnd('\n').Split('\n');
        Assert.Equal(2, ran.Exit);
        Assert.Equal(3, lines.Length);
        Assert.Equal(lines[0], lines[2]);
        Assert.Contains("missing_field", lines[1]);
    }

    [Theory]
    [InlineData]
    [InlineData("--explain")]
    public async Task It_reads_well_as_text(params string[] switches)
    {
        var ran = await Ran.Pattress(["wall", Landing, .. switches]);
        Assert.Equal(0, ran.Exit);
        Assert.Empty(ran.Error);
        Assert.DoesNotContain("_", ran.Out);
        Assert.Contains("Next:", ran.Out);
        Assert.All(ran.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    [Fact]
    public async Task Locate_explains_too()
    {
        var ran = await Ran.Pattress("locate", Path.Combine(Samples.Root, "samples", "landing.scan.json"), "--json", "--explain");
        using var answer = JsonDocument.Parse(ran.Out);
        foreach (var r in answer.RootElement.GetProperty("readings").EnumerateArray())
            Assert.Equal(LogOdds(r.GetProperty("with").GetDouble()) - LogOdds(r.GetProperty("without").GetDouble()), r.GetProperty("log_odds").GetDouble(), 1e-3);
        Assert.Equal(6, answer.RootElement.GetProperty("readings").GetArrayLength());
    }

    [Theory]
    [InlineData("locate")]
    [InlineData("wall")]
    public async Task A_million_readings_are_refused_at_the_door(string command)
    {
        string many = string.Join(',', Enumerable.Range(0, 1_000_000).Select(i => string.Create(CultureInfo.InvariantCulture, $$"""{"kind":"tap","at_mm":{{i % 900}},"sound":"solid"} """)));
        var ran = await Ran.Reading($$"""{"length_mm":1000,"readings":[{{many}}]}""", command, "-");
        Assert.Equal(2, ran.Exit);
        Assert.NotEmpty(ran.Error);
    }

    [Theory]
    [InlineData("wall", "wall")]
    [InlineData("locate", "readings")]
    public async Task Its_schema_is_published(string document, string field)
    {
        using var schema = JsonDocument.Parse((await Ran.Pattress("schema", document)).Out);
        Assert.True(schema.RootElement.GetProperty("properties").TryGetProperty(field, out _));
    }

    private static List<double> Numbers(JsonElement rows, string field) => [.. rows.EnumerateArray().Select(r => r.GetProperty(field).GetDouble())];

    private static List<string?> Ids(JsonElement house) => [.. house.GetProperty("walls").EnumerateArray().Select(w => w.GetProperty("id").GetString())];

    private static double LogOdds(double p) => Math.Log(p / (1 - p));
}
