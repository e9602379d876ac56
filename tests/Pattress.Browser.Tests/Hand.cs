using Microsoft.Playwright;

namespace Pattress.Browser.Tests;

/// <summary>Works the page as a person does who has no mouse.</summary>
public abstract class Hand(Visit visit)
{
    protected IPage Page => visit.Page;

    public abstract Task Press(ILocator target);

    /// <summary>Puts a text into an entry in place of what stands there.</summary>
    public abstract Task Type(ILocator entry, string text);

    public abstract Task Choose(ILocator list, string label);
}

/// <summary>A finger: taps, and what its own keyboard puts in. The browser's list of choices is its own, not the page's.</summary>
public sealed class Finger(Visit visit) : Hand(visit)
{
    public override Task Press(ILocator target) => target.TapAsync();

    public override async Task Type(ILocator entry, string text)
    {
        await entry.TapAsync();
        await entry.SelectTextAsync();
        await Page.Keyboard.InsertTextAsync(text);
        // As the keyboard on the glass is put away.
        await entry.BlurAsync();
    }

    public override async Task Choose(ILocator list, string label) => await list.SelectOptionAsync(new SelectOptionValue { Label = label });

    /// <summary>Draws from one place of the screen to another, by the browser's own touch events.</summary>
    public static async Task Drag(IPage page, double fromX, double fromY, double toX, double toY)
    {
        var session = await page.Context.NewCDPSessionAsync(page);
        await Touch(session, "touchStart", fromX, fromY);
        for (int i = 1; i <= 8; i++) await Touch(session, "touchMove", fromX + (toX - fromX) * i / 8, fromY + (toY - fromY) * i / 8);
        await session.SendAsync("Input.dispatchTouchEvent", new() { ["type"] = "touchEnd", ["touchPoints"] = Array.Empty<object>() });
        await session.DetachAsync();
    }

    private static Task Touch(ICDPSession session, string type, double x, double y) => session.SendAsync(
        "Input.dispatchTouchEvent", new() { ["type"] = type, ["touchPoints"] = new[] { new Dictionary<string, object> { ["x"] = x, ["y"] = y } } });
}

/// <summary>Keys alone: every target is reached with the tab key.</summary>
public sealed class Keys(Visit visit) : Hand(visit)
{
    // How many stops of the tab key the target is away, forwards or back, from where the focus is.
    private const string Stops = """
        target => {
          const scope = document.querySelector('dialog[open]') ?? document;
          const stops = [...scope.querySelectorAll('a[href], button, input, select, summary, [tabindex]')]
            .filter(e => e.tabIndex >= 0 && !e.disabled && e.checkVisibility());
          const to = stops.indexOf(target), here = document.activeElement;
          if (target === here) return 0;
          if (to < 0) return null;
          const at = stops.indexOf(here);
          if (at >= 0) return to - at;
          const next = stops.findIndex(s => here.compareDocumentPosition(s) & Node.DOCUMENT_POSITION_FOLLOWING);
          return to - (next < 0 || here === document.body ? 0 : next) + (to >= (next < 0 || here === document.body ? 0 : next) ? 1 : 0);
        }
        """;

    public override async Task Press(ILocator target)
    {
        await Reach(target);
        await Page.Keyboard.PressAsync(await target.EvaluateAsync<string>("e => e.type === 'checkbox' ? ' ' : 'Enter'"));
    }

    public override async Task Type(ILocator entry, string text)
    {
        await Reach(entry);
        await Page.Keyboard.PressAsync("Control+a");
        await Page.Keyboard.TypeAsync(text);
        await Page.Keyboard.PressAsync("Tab");
    }

    /// <summary>A closed list takes the arrow keys.</summary>
    public override async Task Choose(ILocator list, string label)
    {
        await Reach(list);
        int steps = await list.EvaluateAsync<int>("(e, label) => [...e.options].findIndex(o => o.text.trim() === label) - e.selectedIndex", label);
        for (int i = 0; i < Math.Abs(steps); i++) await Page.Keyboard.PressAsync(steps > 0 ? "ArrowDown" : "ArrowUp");
        Assert.Equal(label, await list.EvaluateAsync<string>("e => e.options[e.selectedIndex].text.trim()"));
    }

    private async Task Reach(ILocator target)
    {
        for (int tries = 0; tries < 4; tries++)
        {
            int? stops = await target.EvaluateAsync<int?>(Stops);
            Assert.True(stops is not null, "the tab key never comes to " + target);
            if (stops == 0) return;
            for (int i = 0; i < Math.Abs(stops.Value); i++) await Page.Keyboard.PressAsync(stops > 0 ? "Tab" : "Shift+Tab");
        }

        Assert.True(await target.EvaluateAsync<bool>("e => e === document.activeElement"), "the tab key did not come to " + target);
    }
}
