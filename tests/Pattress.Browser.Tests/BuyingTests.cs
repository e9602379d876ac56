using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.Playwright;

namespace Pattress.Browser.Tests;

/// <summary>HiGHS in the browser's worker reaches the cost that SCIP reaches on the command line, for every sample, with the API cut off; it can be stopped.</summary>
public class BuyingTests(Chromium chromium, PublishedApp app)
{
    private const string Ask = "async ([door, job]) => (await globalThis.getDotnetRuntime(0).getAssemblyExports('Pattress.Web.dll')).Pattress.Web.Browser.Doors[door](job)";

    private static IReadOnlyList<string> Samples => [.. Directory.EnumerateFiles(Path.Combine(PublishedApp.Root, "samples"), "*.job.json").Order(StringComparer.Ordinal).Select(f => JsonNode.Parse(File.ReadAllText(f))!.ToJsonString())];

    private static Task<string> Asked(Visit visit, string door, string job) => visit.Page.EvaluateAsync<string>(Ask, new[] { door, job });

    [Fact]
    public async Task Both_solvers_prove_the_same_cost_on_every_sample()
    {
        string file = Path.GetTempFileName();
        await File.WriteAllLinesAsync(file, Samples);
        string[] native = (await PublishedApp.Run("dotnet", PublishedApp.CommandLine, "buy", file, "--batch")).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        File.Delete(file);
        await using var visit = await Visit.Back(chromium, app, "/buy", 360, blockApi: true);
        for (int i = 0; i < Samples.Count; i++)
        {
            using var scip = JsonDocument.Parse(native[i]);
            using var highs = JsonDocument.Parse(await Asked(visit, "BuyFor", Samples[i]));
            Assert.Equal(scip.RootElement.GetProperty("status").GetString(), highs.RootElement.GetProperty("status").GetString());
            Assert.Equal(scip.RootElement.GetProperty("expected").GetDecimal(), highs.RootElement.GetProperty("expected").GetDecimal());
            Assert.Equal(scip.RootElement.GetProperty("buy_total").GetDecimal(), highs.RootElement.GetProperty("buy_total").GetDecimal());
        }
    }

    /// <summary>Stopped while the solver is still on its way, the quick list stands; asked again, the list is proven, and the quote takes it over to the penny.</summary>
    [Fact]
    public async Task The_search_can_be_stopped_and_begun_again_and_the_quote_follows_it()
    {
        await using var visit = await Visit.Back(chromium, app, "/buy", 360, blockApi: true);
        var find = visit.Page.GetByRole(AriaRole.Button, new() { Name = "Find the cheapest list" });
        await visit.Page.EvaluateAsync("() => { const post = Worker.prototype.postMessage; globalThis.letGo = () => { Worker.prototype.postMessage = post; }; Worker.prototype.postMessage = () => {}; }");
        await find.ClickAsync();
        await Assertions.Expect(visit.Page.GetByRole(AriaRole.Progressbar)).ToBeVisibleAsync();
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Stop" }).ClickAsync();
        await Assertions.Expect(find).ToBeVisibleAsync();
        await visit.Page.EvaluateAsync("() => globalThis.letGo()");
        await find.ClickAsync();
        await Assertions.Expect(visit.Page.Locator(".finding")).ToContainTextAsync("Proven cheapest");
        using var quote = JsonDocument.Parse(await PublishedApp.Run("dotnet", PublishedApp.CommandLine, "quote", Path.Combine(PublishedApp.Root, "samples", "demo-house.job.json"), "--json"));
        await visit.Page.Locator("a[href=quote]").ClickAsync();
        await Assertions.Expect(visit.Page.Locator("main")).ToContainTextAsync(quote.RootElement.GetProperty("total").GetDecimal().ToString("0.00", System.Globalization.CultureInfo.InvariantCulture));
        Assert.Empty(visit.Errors);
    }

    /// <summary>Measured and printed, not judged: forty brackets and more, planned here and bought for in the worker.</summary>
    [Fact]
    public async Task Time_of_buying_for_forty_brackets()
    {
        await using var visit = await Visit.Back(chromium, app, "/buy", 360, blockApi: true);
        var job = JsonNode.Parse(await File.ReadAllTextAsync(Path.Combine(PublishedApp.Root, "samples", "demo-house.job.json")))!;
        var things = job["fixtures"]!.AsArray();
        foreach (var (thing, copy) in things.ToList().SelectMany(t => Enumerable.Range(0, 3).Select(c => (t!, c))))
        {
            var another = thing.DeepClone();
            another["id"] = $"{thing["id"]}-{copy}";
            things.Add(another);
        }

        await Asked(visit, "BuyTimes", job.ToJsonString());
        string times = await Asked(visit, "BuyTimes", job.ToJsonString());
        Console.WriteLine("bought for in the worker, " + times);
        Assert.Contains("ms", times, StringComparison.Ordinal);
    }
}
