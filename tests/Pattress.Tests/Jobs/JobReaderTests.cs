using System.Text;
using Pattress.Jobs;
using Pattress.Jobs.Versions;

namespace Pattress.Tests.Jobs;

public class JobReaderTests
{
    private const string Small = """
        {"pattress_job":1,"title":"Hall","settings":{"life_years":15,"partial_factors":{"variable":1.6},"house":{"kind":"flat","year_built":1930},"minute_price":0.75},
        "walls":[{"id":"w","width_mm":"4.2 m","height_mm":2400,"thickness_mm":"100 mm",
          "readings":[
            {"id":"r1","kind":"tap","at_mm":[320,1500],"sound":"hollow"},
            {"id":"r2","kind":"magnet","from_mm":[250,1500],"to_mm":[390,1500],"hits_mm":[[318.5,1510]],"withdrawn":"yes"},
            {"id":"r3","kind":"hole","at_mm":[318,1500],"met":"support","diameter_mm":3,"solid_at_mm":15,"depth_mm":40,"swarf":"wood"}],
          "openings":[{"id":"o","kind":"window","x_mm":1000,"y_mm":900,"width_mm":1200,"height_mm":1100}],
          "services":[{"id":"s","kind":"socket","x_mm":3000,"y_mm":300,"width_mm":86,"height_mm":86,"face":"other"}],
          "condition":{"moisture":"dry"}}],
        "fixtures":[{"id":"f","wall":"w","what":"curtain_pole","at_mm":[1600,2150],"width_mm":"1.8 m","drop_mm":1500,"fabric":"velvet","toe_strip":"yes","brackets":[{"at_mm":[800,2150]},{"at_mm":[2400,2150]}],"x_note":"by hand"}],
        "stock":[{"fixing":"strap_toggle.medium","count":4}]}
        """;

    [Fact]
    public void Reads_a_job_with_units_and_defaults()
    {
        var job = JobReader.Read(Small).Value!;
        var wall = Assert.Single(job.Walls);
        Assert.Equal((4200, 2400, 100, "unknown", "wall"), (wall.WidthMm, wall.HeightMm, wall.ThicknessMm, wall.OtherSide, wall.Kind));
        Assert.Equal([false, true, false], wall.Readings.Select(r => r.Withdrawn));
        Assert.Equal(new Point(318.5, 1510), Assert.Single(wall.Readings[1].Hits));
        Assert.Equal(new Rect(1000, 900, 1200, 1100), wall.Openings[0].Area);
        Assert.Equal("other", wall.Services[0].Face);
        Assert.Equal((15, 1.35, 1.6, 0.75m, 1930, "flat"), (job.Settings.LifeYears, job.Settings.GammaPermanent, job.Settings.GammaVariable, job.Settings.MinutePrice, job.Settings.YearBuilt, job.Settings.House));
        var pole = Assert.Single(job.Fixtures);
        Assert.Equal((1800, 1500, "velvet"), (pole.Numbers["width_mm"], pole.Numbers["drop_mm"], pole.Words["fabric"]));
        Assert.Equal([new Point(800, 2150), new Point(2400, 2150)], pole.Brackets);
        Assert.True(pole is { ToeStrip: true, Removable: false, OverBed: false });
        Assert.Equal(new StockItem("strap_toggle.medium", 4), Assert.Single(job.Stock));
    }

    [Fact]
    public void Writing_and_reading_again_gives_the_same_job()
    {
        var job = JobReader.Read(Small).Value!;
        string text = JobWriter.Write(job);
        Assert.Equal(text, JobWriter.Write(JobReader.Read(text).Value!));
    }

    [Fact]
    public void A_newer_document_says_so_and_is_not_looked_into()
    {
        var problem = Assert.Single(JobReader.Read("""{"pattress_job":2,"anything":[1,2],"walls":"new"}""").Problems);
        Assert.Equal(("newer_version", "$.pattress_job", "2"), (problem.Code, problem.Path, problem.Value));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-3)]
    public void A_version_that_never_was_is_refused(int version) =>
        Assert.Equal("unknown_version", Assert.Single(JobReader.Read($$"""{"pattress_job":{{version}},"walls":[],"fixtures":[]}""").Problems).Code);

    [Fact]
    public void An_older_document_is_brought_forward_step_by_step()
    {
        // A version that exists only here: it called the title "name", and the list of fixtures "things".
        JobMigration[] steps =
        [
            new(-1, job => Rename(job, "name", "title")),
            new(0, job => Rename(job, "things", "fixtures")),
        ];
        var old = Encoding.UTF8.GetBytes("""{"pattress_job":-1,"name":"Old house","walls":[],"things":[]}""");
        Assert.Equal("Old house", JobReader.Read(old, steps).Value!.Title);
        Assert.Equal("unknown_version", Assert.Single(JobReader.Read(old, steps[1..]).Problems).Code);
    }

    [Fact]
    public void A_document_of_every_version_is_kept_and_read()
    {
        for (int version = 1; version <= Job.Version; version++)
            Assert.Equal([], JobReader.Read(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Faults", "versions", $"version-{version}.job.json"))).Problems);
    }

    private static void Rename(System.Text.Json.Nodes.JsonObject job, string from, string to)
    {
        var value = job[from];
        job.Remove(from);
        job[to] = value;
    }
}
