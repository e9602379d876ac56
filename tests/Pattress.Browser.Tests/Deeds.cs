using System.Text.Json;
using Microsoft.Playwright;

namespace Pattress.Browser.Tests;

/// <summary>What a person does on the page, counted.</summary>
public sealed class Deeds(Visit visit)
{
    /// <summary>Touches and typed numbers so far.</summary>
    public int Count { get; private set; }

    public async Task Touch(string label)
    {
        var target = visit.Page.Locator("main button:visible, main a:visible, nav a:visible, dialog[open] button:visible", new() { HasTextString = label }).First;
        await target.ClickAsync();
        Count++;
    }

    public async Task Touch(ILocator target)
    {
        await target.ClickAsync();
        Count++;
    }

    /// <summary>Opens a list and touches one of its choices: two touches.</summary>
    public async Task Choose(string label, string choice)
    {
        await visit.Page.Locator($"label.field:has(> span:text-is('{label}')) select").SelectOptionAsync(new SelectOptionValue { Label = choice });
        Count += 2;
    }

    /// <summary>Drills every hole that is asked for, each meeting what the plan reckons with.</summary>
    public async Task DrillAll()
    {
        for (int i = 0; i < 60; i++)
        {
            await visit.Page.WaitForTimeoutAsync(60);
            if (await visit.Page.Locator(".ticks").CountAsync() > 0)
            {
                foreach (var tick in await visit.Page.Locator(".ticks input").AllAsync()) await tick.CheckAsync();
                await Touch("To the first hole");
            }
            else if (await visit.Page.Locator(".keypad.large").CountAsync() == 0) return;
            else if (await visit.Page.Locator(".drill button", new() { HasTextString = "Drilled" }).CountAsync() > 0) await Touch("Drilled");
            else await Touch(visit.Page.Locator(".drill .keypad.large button").First);
        }
    }

    /// <summary>Draws something like a name with the finger.</summary>
    public async Task SignWithAFinger()
    {
        var pad = visit.Page.Locator("#pad");
        await pad.ScrollIntoViewIfNeededAsync();
        var box = (await pad.BoundingBoxAsync())!;
        await visit.Page.Mouse.MoveAsync(box.X + 20, box.Y + 60);
        await visit.Page.Mouse.DownAsync();
        for (int i = 1; i < 12; i++) await visit.Page.Mouse.MoveAsync(box.X + 20 + (i * 12), box.Y + 60 + (i % 2 == 0 ? 30 : -20));
        await visit.Page.Mouse.UpAsync();
        await Touch("I have read it");
    }

    public async Task<JsonElement> Job()
    {
        using var job = JsonDocument.Parse(await visit.Ask("JobOnDesk"));
        return job.RootElement.Clone();
    }
}
