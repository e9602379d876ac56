using System.Text.Json;
using Microsoft.Playwright;

namespace Pattress.Browser.Tests;

/// <summary>One visit to the app with no job kept from before, and every request it made.</summary>
public sealed class Visit : IAsyncDisposable
{
    private readonly IBrowserContext _context;
    private readonly Func<ValueTask> _leave;
    private readonly List<string> _requests = [], _errors = [];

    private Visit(IBrowserContext context, IPage page, string url, Func<ValueTask> leave) => (_context, Page, Url, _leave) = (context, page, url, leave);

    public IPage Page { get; }

    public string Url { get; }

    /// <summary>Addresses that were asked for, whole.</summary>
    public IReadOnlyList<string> Requests => _requests;

    /// <summary>Errors on the console and unhandled ones.</summary>
    public IReadOnlyList<string> Errors => _errors;

    /// <summary>To the app on a device that has never seen it.</summary>
    /// <param name="width">Of the window, px.</param>
    /// <param name="blockApi">Every request to /api/ is cut off.</param>
    /// <param name="touch">A phone: it is touched and has no mouse.</param>
    public static async Task<Visit> To(Chromium chromium, PublishedApp app, string path, int width, bool blockApi = false, ColorScheme scheme = ColorScheme.Light, bool touch = false, bool bypassPolicy = true)
    {
        // axe is put in by script, which the page's own policy would forbid.
        var context = await chromium.Browser.NewContextAsync(new() { ViewportSize = new() { Width = width, Height = 800 }, BypassCSP = bypassPolicy, ColorScheme = scheme, HasTouch = touch, IsMobile = touch, ReducedMotion = ReducedMotion.Reduce });
        context.SetDefaultTimeout(60_000);
        if (blockApi) await context.RouteAsync("**/api/**", r => r.AbortAsync());
        return await Begin(context, app, path, context.DisposeAsync);
    }

    /// <summary>Back to the app on a device that has it installed, with no job kept: a start costs a third of a first one.</summary>
    /// <param name="width">Of the window, px.</param>
    /// <param name="blockApi">Every request to /api/ is cut off.</param>
    public static async Task<Visit> Back(Chromium chromium, PublishedApp app, string path, int width, bool blockApi = false)
    {
        var context = await chromium.Devices.Take(app);
        if (blockApi) await context.RouteAsync("**/api/**", r => r.AbortAsync());
        return await Begin(context, app, path, () => chromium.Devices.Return(context), width);
    }

    private static async Task<Visit> Begin(IBrowserContext context, PublishedApp app, string path, Func<ValueTask> leave, int? width = null)
    {
        var visit = new Visit(context, await context.NewPageAsync(), app.Url, leave);
        if (width is { } wide) await visit.Page.SetViewportSizeAsync(wide, 800);
        visit.Listen();
        await visit.Go(path);
        return visit;
    }

    public async Task Go(string path)
    {
        await Page.GotoAsync(Url + path);
        await Ready();
    }

    /// <summary>The app itself has drawn its page; before that the static shell stands there.</summary>
    public Task Ready() => Page.WaitForSelectorAsync("main#main h1");

    /// <summary>The worker keeps the app: from now on no server is needed.</summary>
    public Task Installed() => Page.WaitForFunctionAsync("navigator.serviceWorker.controller !== null");

    /// <summary>What is fetched late, solver, papers and letters, is on the device too.</summary>
    public async Task AllKept()
    {
        // Asked here again and again: a promise that the page waits for counts as true before it is kept.
        for (int i = 0; i < 300; i++)
        {
            if (await Page.EvaluateAsync<bool>(LateIsKept)) return;
            await Page.WaitForTimeoutAsync(200);
        }

        Assert.Fail("solver and papers were not kept within a minute");
    }

    private const string LateIsKept = """
        async () => {
          const text = await (await fetch('service-worker-assets.js')).text();
          const late = JSON.parse(text.slice(text.indexOf('{'), text.lastIndexOf('}') + 1)).assets.map(a => a.url)
            .filter(u => /(^|\/)(later|highs|fonts)\/|PdfSharp|Pattress\.Pdf|\.ttf$/i.test(u) && /\.(m?js|wasm|json|ttf|woff2?)$/.test(u));
          const kept = (await Promise.all((await caches.keys()).map(async n => (await (await caches.open(n)).keys()).map(r => r.url)))).flat();
          return late.length > 3 && late.every(u => kept.includes(new URL(u, document.baseURI).href));
        }
        """;

    /// <summary>Goes to another view without starting anew, as a link does.</summary>
    public async Task Turn(string path)
    {
        await Page.EvaluateAsync("path => Blazor.navigateTo(path)", path);
        await Page.WaitForFunctionAsync("path => location.pathname === path", path);
        await Page.WaitForSelectorAsync("h1");
        await Page.WaitForTimeoutAsync(150);
    }

    /// <summary>Asks one of the page's doors for a text.</summary>
    public Task<string> Ask(string door) => Page.EvaluateAsync<string>(Door(door));

    public Task<double> AskNumber(string door) => Page.EvaluateAsync<double>(Door(door));

    /// <summary>Asks for a number by an index; NaN where there is none.</summary>
    public async Task<double> AskNumber(string door, int which) =>
        await Page.EvaluateAsync<double>(Door(door, which.ToString(System.Globalization.CultureInfo.InvariantCulture)));

    public async Task<JsonDocument> Plan() => JsonDocument.Parse(await Ask("PlanOnDesk"));

    public Task Saved() => Assertions.Expect(Page.Locator(".kept")).ToHaveTextAsync("Saved on this device");

    /// <summary>The context, for further pages of the same browser.</summary>
    public IBrowserContext Context => _context;

    public ValueTask DisposeAsync() => _leave();

    private static string Door(string door, string argument = "") =>
        $"async () => (await globalThis.getDotnetRuntime(0).getAssemblyExports('Pattress.Web.dll')).Pattress.Web.Browser.Doors.{door}({argument})";

    private void Listen()
    {
        Page.Request += (_, request) => _requests.Add(request.Url);
        Page.PageError += (_, error) => _errors.Add(error);
        Page.Console += (_, message) =>
        {
            if (message.Type == "error") _errors.Add($"{new Uri(Page.Url).AbsolutePath}: {message.Text} {message.Location}");
        };
    }
}
