using System.Text.Json;
using Microsoft.Playwright;

namespace Pattress.Browser.Tests;

/// <summary>What can be changed on the page, and that the plan follows.</summary>
public class WorkingTests(Chromium chromium, PublishedApp app)
{
    [Theory]
    [InlineData(360)]
    [InlineData(1280)]
    public async Task Another_load_turns_the_verdict_and_undo_turns_it_back(int width)
    {
        await using var visit = await Visit.Back(chromium, app, "/plan/" + Demo.Load.Item, width);
        string before = await Verdict(visit);
        await visit.Page.Locator(".try select").First.SelectOptionAsync(Demo.Load.Field);
        var number = visit.Page.Locator(".try .slider input[type=text]");
        await number.FillAsync(Demo.Load.Value);
        await number.PressAsync("Enter");
        await Assertions.Expect(visit.Page.Locator(".answer .verdict")).ToHaveTextAsync(Demo.Load.Then);
        Assert.NotEqual(before, await Verdict(visit));
        await visit.Page.Locator("header button").First.ClickAsync();
        await Assertions.Expect(visit.Page.Locator(".answer .verdict")).ToHaveTextAsync(before);
    }

    [Theory]
    [InlineData(360)]
    [InlineData(1280)]
    public async Task A_reading_put_in_by_touching_the_drawing_changes_what_the_wall_is(int width)
    {
        await using var visit = await Visit.Back(chromium, app, "/wall/bay", width);
        string before = await Wall(visit, "bay");
        await visit.Page.Locator("#wall-bay svg").ClickAsync(new() { Position = new() { X = 150, Y = 60 } });
        await visit.Page.Locator("dialog button", new() { HasTextString = "thin probe hole" }).ClickAsync();
        await visit.Page.Locator("dialog button", new() { HasTextString = "a support" }).ClickAsync();
        await Assertions.Expect(visit.Page.Locator("dialog[open]")).ToHaveCountAsync(0);
        string after = await Wall(visit, "bay");
        Assert.NotEqual(before, after);
        await visit.Page.Locator(".readings button", new() { HasTextString = "Withdraw" }).First.ClickAsync();
        await Assertions.Expect(visit.Page.Locator(".withdrawn")).ToHaveCountAsync(1);
        Assert.Equal(before, await Wall(visit, "bay"));
    }

    [Fact]
    public async Task What_shows_as_saved_is_there_after_the_page_was_killed()
    {
        await using var visit = await Visit.Back(chromium, app, "/job", 360);
        for (int i = 1; i <= 3; i++)
        {
            var title = visit.Page.Locator("main input[type=text]").First;
            await title.FillAsync($"Title {i}");
            await title.PressAsync("Enter");
            await Assertions.Expect(visit.Page.Locator(".job-title")).ToHaveTextAsync($"Title {i}");
            await visit.Saved();
            await visit.Go("/job");
            await Assertions.Expect(visit.Page.Locator(".job-title")).ToHaveTextAsync($"Title {i}");
        }
    }

    [Fact]
    public async Task A_wrong_number_is_refused_with_what_is_allowed()
    {
        await using var visit = await Visit.Back(chromium, app, "/wall/bay/edit", 360);
        string before = await visit.Ask("JobOnDesk");
        var width = visit.Page.Locator("label.field:has(> span:text-is('Wide')) input").First;
        await width.FillAsync("-5");
        await width.PressAsync("Enter");
        await Assertions.Expect(visit.Page.Locator(".wrong .says").First).ToContainTextAsync("A number from 100 mm to 50000 mm");
        Assert.Equal(before, await visit.Ask("JobOnDesk"));
    }

    [Fact]
    public async Task A_change_that_the_document_would_refuse_is_refused_here_too()
    {
        await using var visit = await Visit.Back(chromium, app, "/wall/bay/edit", 360);
        string before = await visit.Ask("JobOnDesk");
        var width = visit.Page.Locator("label.field:has(> span:text-is('Wide')) input").First;
        // Narrower than where its window is.
        await width.FillAsync("1300");
        await width.PressAsync("Enter");
        await Assertions.Expect(visit.Page.Locator(".problems")).ToBeVisibleAsync();
        Assert.Equal(before, await visit.Ask("JobOnDesk"));
    }

    private static Task<string> Verdict(Visit visit) => visit.Page.Locator(".answer .verdict").InnerTextAsync();

    private static async Task<string> Wall(Visit visit, string id)
    {
        using var plan = await visit.Plan();
        return plan.RootElement.GetProperty("walls").EnumerateArray().Single(w => w.GetProperty("id").GetString() == id).GetRawText();
    }
}
