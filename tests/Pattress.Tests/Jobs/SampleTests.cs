using System.Text.Json;
using Json.Schema;
using Pattress.Jobs;

namespace Pattress.Tests.Jobs;

public class SampleTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(JobSchema.Text);

    public static TheoryData<string> Samples => [.. Embedded.Names("samples/")];

    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_sample_is_read_and_written_back(string name)
    {
        var read = JobReader.Read(Embedded.Text(name));
        Assert.Empty(read.Problems);
        string text = JobWriter.Write(read.Value!);
        Assert.Equal(text, JobWriter.Write(JobReader.Read(text).Value!));
        Assert.Contains("invented", read.Value!.Title, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_sample_and_what_is_written_of_it_fits_the_published_schema(string name)
    {
        Assert.True(Fits(Embedded.Text(name)));
        Assert.True(Fits(JobWriter.Write(JobReader.Read(Embedded.Text(name)).Value!)));
    }

    [Fact]
    public void The_demo_house_hangs_one_of_each()
    {
        var whats = JobReader.Read(Embedded.Text("samples/demo-house.job.json")).Value!.Fixtures.Select(f => f.What);
        Assert.Equal(["cabinet", "curtain_pole", "free", "grab_rail", "mirror", "roller_blind", "screen", "shelf"], whats.Order(StringComparer.Ordinal));
    }

    internal static bool Fits(string json)
    {
        using var document = JsonDocument.Parse(json);
        return Schema.Evaluate(document.RootElement).IsValid;
    }
}
