using System.Text.Json;
using Microsoft.Playwright;

namespace Pattress.Browser.Tests;

/// <summary>What the user's jobs taught stands beside them on the device: it comes along into the next job, and is left out or taken in.</summary>
public class OwnTrialsTests(Chromium chromium, PublishedApp app)
{
    private const string Kept = """
        () => new Promise((resolve, reject) => {
          const open = indexedDB.open('pattress');
          open.onerror = () => reject(open.error);
          open.onsuccess = () => {
            const one = open.result.transaction('desk').objectStore('desk').get('trials');
            one.onsuccess = () => { open.result.close(); resolve(one.result ?? ''); };
          };
        })
        """;

    private const string Break = """
        () => new Promise((resolve, reject) => {
          const open = indexedDB.open('pattress');
          open.onerror = () => reject(open.error);
          open.onsuccess = () => {
            const change = open.result.transaction('desk', 'readwrite');
            change.objectStore('desk').put('{', 'trials');
            change.oncomplete = () => { open.result.close(); resolve(true); };
          };
        })
        """;

    [Fact]
    public async Task A_test_is_kept_counts_in_the_next_job_and_can_be_left_out()
    {
        await using var visit = await WithATest();
        await Assertions.Expect(Rows(visit)).ToHaveCountAsync(1);
        var test = Assert.Single(await Tests(visit.Page));
        Assert.Equal(700, test.GetProperty("test").GetProperty("load_n").GetDouble());
        Assert.False(test.TryGetProperty("out", out _));
        // The next job has no test of its own and lists what the first one taught.
        await visit.Turn("/job");
        await new Deeds(visit).Touch("New job");
        await visit.Saved();
        await visit.Turn("/trials");
        await Assertions.Expect(Rows(visit)).ToHaveCountAsync(1);
        await Rows(visit).GetByRole(AriaRole.Button).ClickAsync();
        await Assertions.Expect(visit.Page.Locator(".withdrawn")).ToHaveCountAsync(1);
        Assert.True(Assert.Single(await Tests(visit.Page)).GetProperty("out").GetString() == "yes");
        // Read from the device by an app that has just started, on a page that needs a job.
        await visit.Go("/trials");
        await Assertions.Expect(visit.Page.Locator(".withdrawn")).ToHaveCountAsync(1);
        Assert.Empty(visit.Errors);
    }

    [Fact]
    public async Task A_list_that_cannot_be_read_is_said_and_not_written_over()
    {
        await using var visit = await WithATest();
        await visit.Page.EvaluateAsync(Break);
        await visit.Go("/trials");
        await Assertions.Expect(visit.Page.Locator("main [role=alert]")).ToHaveCountAsync(1);
        await Enter(visit, "800");
        await visit.Saved();
        await Assertions.Expect(visit.Page.Locator("main [role=alert]")).ToHaveCountAsync(1);
        Assert.Equal("{", await visit.Page.EvaluateAsync<string>(Kept));
    }

    private async Task<Visit> WithATest()
    {
        var visit = await Visit.Back(chromium, app, "/", 360);
        await new Deeds(visit).Touch("New job");
        await visit.Saved();
        await visit.Turn("/trials");
        await Enter(visit, "700");
        await visit.Saved();
        return visit;
    }

    private static async Task Enter(Visit visit, string newtons)
    {
        await visit.Page.Locator("label.field:has(> span:text-is('Load when it failed or was stopped')) input").FillAsync(newtons);
        await visit.Page.Keyboard.PressAsync("Tab");
        await new Deeds(visit).Touch("Put it in");
    }

    private static ILocator Rows(Visit visit) => visit.Page.Locator("section:has(> h2:text('From all your jobs')) ul.readings li");

    private static async Task<IReadOnlyList<JsonElement>> Tests(IPage page)
    {
        using var kept = JsonDocument.Parse(await page.EvaluateAsync<string>(Kept));
        return [.. kept.RootElement.GetProperty("tests").EnumerateArray().Select(t => t.Clone())];
    }
}
