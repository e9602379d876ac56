using Microsoft.Playwright;

namespace Pattress.Browser.Tests;

/// <summary>A state of a page that one does not see when it opens.</summary>
public sealed record State(string Name, string Path, Func<IPage, Task> Bring);

/// <summary>Sheets, folds, refusals and empty pages. The last ones leave an empty job behind.</summary>
public static class States
{
    public static IReadOnlyList<State> All { get; } =
    [
        new("reading sheet", "/wall/bay", p => Press(p, "Add a reading")),
        new("keys of a hole", "/wall/bay", async p => { await Press(p, "Add a reading"); await Press(p, "hole"); }),
        new("sweep", "/wall/bay", async p => { await Press(p, "Add a reading"); await Press(p, "magnet"); await p.Locator("dialog summary").ClickAsync(); }),
        new("wrong number", "/wall/bay/edit", p => Enter(p, "Wide", "-5")),
        new("refused change", "/wall/bay/edit", p => Enter(p, "Wide", "1300")),
        new("brackets by hand", "/hang/breast-mirror", async p => { await Press(p, "Place them by hand"); await p.GetByLabel("Move single brackets").CheckAsync(); }),
        new("where it turns", "/plan/breast-mirror", async p => { await Press(p, "Show where the verdict turns"); await p.WaitForSelectorAsync(".turns li"); }),
        new("better places", "/hang/bay-pole", async p => { await Press(p, "Look for better places"); await p.WaitForSelectorAsync("[role=status] li, p[role=status]"); }),
        new("ways to put right", "/repair/kitchen-blind/1", async p => { await Enter(p, "Width of the hole", "10"); await Press(p, "What can be done"); await p.WaitForSelectorAsync("[aria-live] ol li"); }),
        new("a word explained", "/wall/breast", p => Press(p, "dabs")),
        new("help opened", "/help", async p => { await OpenAll(p); await p.WaitForSelectorAsync(".steps .drawing"); }),
        new("table of a drawing", "/wall/bay", p => p.Locator(".facts-fold summary").First.ClickAsync()),
        new("first hole", "/drill", FirstHole),
        new("pull running", "/prove", p => Press(p, "Start the clock")),
        new("quick, which wall", "/quick", p => Press(p, "hook")),
        new("quick answer", "/quick", async p => { await Press(p, "hook"); await Press(p, "Nobody knows"); await p.WaitForSelectorAsync(".answer"); }),
        new("new job", "/job", p => Press(p, "New job")),
        new("no walls", "/walls", _ => Task.CompletedTask),
        new("nothing to hang", "/hang", _ => Task.CompletedTask),
        new("no wall to hang on", "/hang/new", _ => Task.CompletedTask),
        new("empty plan", "/plan", _ => Task.CompletedTask),
        new("nothing to buy", "/buy", _ => Task.CompletedTask),
    ];

    /// <summary>Those that pictures are kept of.</summary>
    public static IEnumerable<State> Pictured => All.Where(s => s.Name is "reading sheet" or "ways to put right" or "keys of a hole" or "refused change" or "quick answer" or "brackets by hand" or "first hole" or "pull running" or "help opened" or "a word explained");

    private static Task Press(IPage page, string name) =>
        page.Locator("dialog[open], body:not(:has(dialog[open])) main").GetByRole(AriaRole.Button, new() { Name = name }).First.ClickAsync();

    /// <summary>Opens every fold of a page, one after the other.</summary>
    internal static async Task OpenAll(IPage page)
    {
        for (var closed = page.Locator("main > details:not([open]) > summary"); await closed.CountAsync() > 0;) await closed.First.ClickAsync();
    }

    private static async Task FirstHole(IPage page)
    {
        foreach (var tick in await page.Locator(".ticks input").AllAsync()) await tick.CheckAsync();
        await Press(page, "To the first hole");
        await page.WaitForSelectorAsync(".keypad.large");
    }

    private static async Task Enter(IPage page, string label, string value)
    {
        var entry = page.Locator($"label.field:has(> span:text-is('{label}')) input").First;
        await entry.FillAsync(value);
        await entry.PressAsync("Enter");
    }
}
