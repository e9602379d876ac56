namespace Pattress.Browser.Tests;

/// <summary>Measured and printed, not judged: the machine that builds is not the phone.</summary>
public class MeasuredTests(Chromium chromium, PublishedApp app)
{
    [Fact]
    public async Task Time_of_a_plan_in_the_published_build()
    {
        await using var visit = await Visit.To(chromium, app, "/plan", 360);
        var times = new List<double>();
        for (int i = 0; i < 9; i++) times.Add(await visit.AskNumber("PlanTime"));
        times.Sort();
        TestContext.Current.SendDiagnosticMessage("demo house planned in the browser: least {0:0} ms, median {1:0} ms", times[0], times[4]);
        Console.WriteLine(FormattableString.Invariant($"demo house planned in the browser: least {times[0]:0} ms, median {times[4]:0} ms"));
        Assert.All(times, t => Assert.True(t > 0));
    }

    [Fact]
    public void Size_of_the_download()
    {
        var files = Directory.GetFiles(Path.Combine(PublishedApp.Server, "wwwroot"), "*.br", SearchOption.AllDirectories);
        double megabytes = files.Sum(f => new FileInfo(f).Length) / 1e6;
        Console.WriteLine(FormattableString.Invariant($"download, brotli: {megabytes:0.00} MB in {files.Length} files"));
        Assert.NotEmpty(files);
    }
}
