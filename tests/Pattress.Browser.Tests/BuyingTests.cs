using System.Text.Json;
using Microsoft.Playwright;

namespace Pattress.Browser.Tests;

/// <summary>HiGHS in the browser's worker reaches the cost that SCIP reaches on the command line, for every sample, with the API cut off.</summary>
public class BuyingTests(Chromium chromium, PublishedApp app)
{
    private const string BuyFor = "async job => (await globalThis.getDotnetRuntime(0).getAssemblyExports('Pattress.Web.dll')).Pattress.Web.Browser.Doors.BuyFor(job)";

    public static TheoryData<string> Samples => [.. Directory.EnumerateFiles(Path.Combine(PublishedApp.Root, "samples"), "*.job.json").Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal)];

    [Theory, MemberData(nameof(Samples))]
    public async Task Both_solvers_prove_the_same_cost(string sample)
    {
        string file = Path.Combine(PublishedApp.Root, "samples", sample);
        using var native = JsonDocument.Parse(await PublishedApp.Run("dotnet", PublishedApp.CommandLine, "buy", file, "--json"));
        await using var visit = await Visit.To(chromium, app, "/buy", 360, blockApi: true);
        using var browser = JsonDocument.Parse(await visit.Page.EvaluateAsync<string>(BuyFor, await File.ReadAllTextAsync(file)));
        Assert.Equal(native.RootElement.GetProperty("status").GetString(), browser.RootElement.GetProperty("status").GetString());
        Assert.Equal(native.RootElement.GetProperty("expected").GetDecimal(), browser.RootElement.GetProperty("expected").GetDecimal());
        Assert.Equal(native.RootElement.GetProperty("buy_total").GetDecimal(), browser.RootElement.GetProperty("buy_total").GetDecimal());
    }

    [Fact]
    public async Task The_page_finds_the_cheapest_list_and_says_that_it_is_proven()
    {
        await using var visit = await Visit.To(chromium, app, "/buy", 360, blockApi: true);
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Find the cheapest list" }).ClickAsync();
        await Assertions.Expect(visit.Page.Locator(".finding")).ToContainTextAsync("Proven cheapest");
        Assert.Empty(visit.Errors);
    }
}
