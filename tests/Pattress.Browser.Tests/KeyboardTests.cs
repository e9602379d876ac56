using Microsoft.Playwright;

namespace Pattress.Browser.Tests;

/// <summary>The whole job without a mouse or a finger: Tab, Space, Enter and letters.</summary>
public class KeyboardTests(Chromium chromium, PublishedApp app)
{
    [Fact]
    public async Task The_demo_job_is_drilled_pulled_and_signed_for_by_keys_alone()
    {
        await using var visit = await Visit.To(chromium, app, "/", 1280);
        var page = visit.Page;
        // The page's clock is set forward while a pull is held.
        await visit.Context.Clock.InstallAsync();
        await visit.Go("/");
        await TabTo(page, "The demo house");
        await page.Keyboard.PressAsync("Enter");
        await Heading(page, "Walls");
        await TabTo(page, "Plan");
        await page.Keyboard.PressAsync("Enter");
        await Heading(page, "Plan");
        await TabTo(page, "Drill, one hole at a time");
        await page.Keyboard.PressAsync("Enter");
        await Heading(page, "Drilling, one hole at a time");
        int ticks = await page.Locator(".ticks input").CountAsync();
        Assert.True(ticks > 3, "the cautions were not asked for");
        for (int i = 0; i < ticks; i++)
        {
            await Until(page, "e => e.type === 'checkbox' && !e.checked");
            await page.Keyboard.PressAsync("Space");
        }

        await TabTo(page, "To the first hole");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".count")).ToContainTextAsync("Hole 1 of");
        await Until(page, "e => e.closest('.keypad.large') !== null");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".said")).ToContainTextAsync("Met:");
        var keys = new Keys(visit);
        await DrillTheRest(page, keys);
        await TabTo(page, "Prove");
        await page.Keyboard.PressAsync("Enter");
        await Heading(page, "Prove");
        Assert.True(await PullAll(page, keys) > 0, "nothing was pulled");
        await TabTo(page, "Hand over");
        await page.Keyboard.PressAsync("Enter");
        await Heading(page, "Hand over");
        await Until(page, "e => e.tagName === 'INPUT' && e.type === 'text'");
        await page.Keyboard.TypeAsync("A. B.");
        await Until(page, "e => e.type === 'checkbox'");
        await page.Keyboard.PressAsync("Space");
        await TabTo(page, "I have read it", back: true);
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".sign")).ToContainTextAsync("Signed by A. B.");
        await Assertions.Expect(page.Locator("nav.strip")).ToContainTextAsync("signed");
        await visit.Saved();
    }

    /// <summary>Every further hole meets what the plan reckons with first among the keys.</summary>
    private static async Task DrillTheRest(IPage page, Keys keys)
    {
        for (int i = 0; i < 60; i++)
        {
            await page.WaitForTimeoutAsync(60);
            foreach (var tick in await page.Locator(".ticks input").AllAsync()) await keys.Press(tick);
            if (await page.Locator(".ticks").CountAsync() > 0) await keys.Press(page.Locator(".drill button.do"));
            else if (await page.Locator(".drill .keypad.large").CountAsync() > 0) await keys.Press(page.Locator(".drill .keypad.large button").First);
            else return;
        }

        Assert.Fail("the holes have no end");
    }

    private static async Task<int> PullAll(IPage page, Keys keys)
    {
        int pulls = 0;
        for (var start = page.Locator("main button", new() { HasTextString = "Start the clock" }); await start.CountAsync() > 0; pulls++)
        {
            await keys.Press(start);
            await page.Clock.FastForwardAsync(31_000);
            await Assertions.Expect(page.Locator(".clock")).ToHaveTextAsync("0");
            await keys.Press(page.Locator("main button", new() { HasTextString = "No, it held" }));
            await page.WaitForTimeoutAsync(100);
            Assert.True(pulls < 30, "the pulls have no end");
        }

        return pulls;
    }

    private static Task Heading(IPage page, string text) => Assertions.Expect(page.Locator("h1")).ToHaveTextAsync(text);

    private static Task TabTo(IPage page, string label, bool back = false) => Until(page, $"e => e.textContent.trim().startsWith({System.Text.Json.JsonSerializer.Serialize(label)})", back);

    /// <summary>Tabs until the element in focus is the one wanted; it must be seen to have the focus.</summary>
    private static async Task Until(IPage page, string wanted, bool back = false)
    {
        for (int i = 0; i < 250; i++)
        {
            await page.Keyboard.PressAsync(back ? "Shift+Tab" : "Tab");
            if (!await page.EvaluateAsync<bool>($"({wanted})(document.activeElement)")) continue;
            Assert.NotEqual("none", await page.EvaluateAsync<string>("getComputedStyle(document.activeElement).outlineStyle"));
            return;
        }

        Assert.Fail("nothing in the order of tabs fits " + wanted);
    }
}
