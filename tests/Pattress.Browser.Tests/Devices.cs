using System.Collections.Concurrent;
using Microsoft.Playwright;

namespace Pattress.Browser.Tests;

/// <summary>
/// Devices that have the app installed, handed from one visit to the next. Between two visits everything that the app keeps is
/// taken away but the app itself: most of what a first start costs is fetching and compiling it.
/// </summary>
public sealed class Devices(IBrowser browser)
{
    // What a page may keep; the worker and its files stay.
    private const string Kept = "cookies,file_systems,indexeddb,local_storage,websql";

    private readonly ConcurrentBag<IBrowserContext> _idle = [];
    private readonly ConcurrentDictionary<IBrowserContext, string> _origins = new();

    /// <summary>A device with the app and no job.</summary>
    public async Task<IBrowserContext> Take(PublishedApp app)
    {
        if (_idle.TryTake(out var device)) return device;
        device = await browser.NewContextAsync(new() { ViewportSize = new() { Width = 360, Height = 800 }, BypassCSP = true, ReducedMotion = ReducedMotion.Reduce });
        device.SetDefaultTimeout(60_000);
        var page = await device.NewPageAsync();
        await page.GotoAsync(app.Url + "/help");
        await page.WaitForSelectorAsync("main#main h1");
        await page.WaitForFunctionAsync("navigator.serviceWorker.controller !== null");
        await Clear(device, app.Url);
        _origins[device] = app.Url;
        return device;
    }

    public async ValueTask Return(IBrowserContext device)
    {
        await device.UnrouteAllAsync();
        await Clear(device, _origins[device]);
        _idle.Add(device);
    }

    private static async Task Clear(IBrowserContext device, string origin)
    {
        var blank = await device.NewPageAsync();
        foreach (var page in device.Pages.Where(p => p != blank).ToList()) await page.CloseAsync();
        var session = await device.NewCDPSessionAsync(blank);
        await session.SendAsync("Storage.clearDataForOrigin", new() { ["origin"] = origin, ["storageTypes"] = Kept });
        await blank.CloseAsync();
    }
}
