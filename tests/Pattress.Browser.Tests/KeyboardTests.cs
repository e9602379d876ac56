using Microsoft.Playwright;

namespace Pattress.Browser.Tests;

/// <summary>The whole job without a mouse or a finger: Tab, Space, Enter and letters.</summary>
public class KeyboardTests(Chromium chromium, PublishedApp app)
{
    [Fact]
    public async Task The_demo_job_is_drilled_and_handed_over_by_keys_alone()
    {
        await using var visit = await Visit.To(chromium, app, "/", 1280);
        var page = visit.Page;
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
        await visit.Saved();
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
