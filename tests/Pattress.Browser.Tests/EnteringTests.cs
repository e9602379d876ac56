using System.Text.Json;
using Pattress.Jobs;

namespace Pattress.Browser.Tests;

/// <summary>
/// The demo house from an empty page, by touch alone and by keys alone: every wall with its openings, services, zones and a
/// reading of each kind that it has, every thing with its measures and brackets. What comes out is planned as the same job
/// from its document is, and as the command line plans the exported one.
/// </summary>
public class EnteringTests(Chromium chromium, PublishedApp app)
{
    private static readonly Job Demo = OneOfEachKind(JobReader.Read(Embedded.Text("samples/demo-house.job.json")).Value!);

    [Fact]
    public async Task The_demo_house_is_entered_by_touch_alone()
    {
        await using var visit = await Visit.To(chromium, app, "/", 360, touch: true);
        await new Entering(visit, new Finger(visit)).Whole(Demo);
        await SameAsTheSample(visit, Demo);
    }

    [Fact]
    public async Task The_demo_house_is_entered_by_keys_alone()
    {
        await using var visit = await Visit.Back(chromium, app, "/", 1280);
        await new Entering(visit, new Keys(visit)).Whole(Demo);
        await SameAsTheSample(visit, Demo);
    }

    /// <summary>More readings of a kind are entered with the same keys.</summary>
    private static Job OneOfEachKind(Job job) => job with
    {
        Walls = [.. job.Walls.Select(w => w with { Readings = [.. w.Readings.DistinctBy(r => (r.Kind, r.From?.X == r.To?.X))] })],
    };

    private static async Task SameAsTheSample(Visit visit, Job sample)
    {
        await visit.Saved();
        string file = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".job.json");
        await File.WriteAllTextAsync(file, await visit.Ask("JobOnDesk"));
        try
        {
            string planned = await PublishedApp.Run("dotnet", PublishedApp.CommandLine, "plan", file, "--json");
            AgreementTests.Same(planned, await visit.Ask("PlanOnDesk"));
            // Ids are made anew where things are entered; what is ready, and with what fixing, is the same.
            Assert.Equal(Verdicts(PlanJson.Write(Planner.Plan(sample, PlanData.Embedded), sample.Settings)), Verdicts(planned));
        }
        finally
        {
            File.Delete(file);
        }

        Assert.Empty(visit.Errors);
        Assert.All(visit.Requests, r => Assert.StartsWith(visit.Url + "/", r, StringComparison.Ordinal));
    }

    private static List<string> Verdicts(string plan)
    {
        using var document = JsonDocument.Parse(plan);
        return [.. document.RootElement.GetProperty("items").EnumerateArray().Select(i =>
            $"{i.GetProperty("name")}: {i.GetProperty("verdict")}, {string.Join(" ", i.GetProperty("brackets").EnumerateArray().Select(b => b.GetProperty("fixing").ToString()))}")];
    }
}
