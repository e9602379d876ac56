using System.Text.Json;
using Microsoft.Playwright;

namespace Pattress.Browser.Tests;

/// <summary>Better places for brackets: asked for, taken with one touch, given back with one.</summary>
public class LayoutsTests(Chromium chromium, PublishedApp app)
{
    private const string Thing = "bay-pole";

    [Theory]
    [InlineData(360)]
    [InlineData(1280)]
    public async Task A_layout_is_taken_with_one_touch_and_gives_the_verdict_that_it_promised(int width)
    {
        await using var visit = await Visit.Back(chromium, app, "/hang/" + Thing, width);
        var deeds = new Deeds(visit);
        var (verdict, before) = (await Verdict(visit), await Brackets(visit));
        await deeds.Touch("Look for better places");
        var layout = visit.Page.Locator("section[aria-label] ol > li", new() { Has = visit.Page.GetByRole(AriaRole.Button, new() { Name = "Take this" }) }).First;
        string promised = await layout.Locator(".verdict").InnerTextAsync();
        Assert.NotEqual(verdict, promised);
        await layout.GetByRole(AriaRole.Button).ClickAsync();
        await Assertions.Expect(visit.Page.Locator(".lead .verdict")).ToHaveTextAsync(promised);
        Assert.NotEqual(before, await Brackets(visit));
        await visit.Saved();
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true }).ClickAsync();
        await Assertions.Expect(visit.Page.Locator(".lead .verdict")).ToHaveTextAsync(verdict);
        Assert.Equal(before, await Brackets(visit));
        Assert.Empty(visit.Errors);
    }

    private static Task<string> Verdict(Visit visit) => visit.Page.Locator(".lead .verdict").InnerTextAsync();

    private static async Task<string> Brackets(Visit visit)
    {
        using var job = JsonDocument.Parse(await visit.Ask("JobOnDesk"));
        var thing = job.RootElement.GetProperty("fixtures").EnumerateArray().Single(f => f.GetProperty("id").GetString() == Thing);
        return thing.TryGetProperty("brackets", out var brackets) ? brackets.GetRawText() : "";
    }
}
