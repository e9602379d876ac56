using System.Text.Json;

namespace Pattress.Browser.Tests;

/// <summary>What the app may cost: download, requests, and that it asks nobody but its own server.</summary>
public class BudgetTests(Chromium chromium, PublishedApp app)
{
    private const double FirstMb = 3.5, WholeMb = 6;
    private const int MostRequests = 90;

    // The same as in service-worker.js: what a wall can be edited without.
    private static readonly string[] Later = ["/later/", "/highs/", "/fonts/", "PdfSharp", "Pattress.Pdf", ".ttf"];

    private static string Root => Path.Combine(PublishedApp.Server, "wwwroot");

    [Fact]
    public void The_download_stays_within_its_budget()
    {
        var sizes = Assets().Select(a => (Url: a, Bytes: Size(a))).ToList();
        Assert.True(sizes.Count > 30, "the list of assets was not found");
        double whole = sizes.Sum(s => s.Bytes) / 1e6, first = sizes.Where(s => !Later.Any(l => ("/" + s.Url).Contains(l, StringComparison.OrdinalIgnoreCase))).Sum(s => s.Bytes) / 1e6;
        Console.WriteLine(FormattableString.Invariant($"download, brotli: {first:0.00} MB until a wall can be edited, {whole:0.00} MB the whole, {sizes.Count} files"));
        Assert.InRange(first, 0.1, FirstMb);
        Assert.InRange(whole, first, WholeMb);
    }

    [Fact]
    public async Task Few_requests_and_none_leaves_the_origin()
    {
        await using var visit = await Visit.To(chromium, app, "/", 360);
        int first = visit.Requests.Count;
        Console.WriteLine($"requests until the first page: {first}");
        Assert.InRange(first, 10, MostRequests);
        await visit.Installed();
        foreach (var (_, path) in Views.All) await visit.Turn(path);
        Assert.All(visit.Requests.Where(r => !r.StartsWith("blob:", StringComparison.Ordinal) && !r.StartsWith("data:", StringComparison.Ordinal)), r => Assert.StartsWith(app.Url + "/", r, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Scripts_run_under_a_policy_without_unsafe_inline()
    {
        using var client = new HttpClient();
        using var reply = await client.GetAsync(app.Url + "/");
        string header = string.Join(';', reply.Headers.GetValues("Content-Security-Policy")), page = await reply.Content.ReadAsStringAsync();
        foreach (string policy in (string[])[header, page])
        {
            Assert.Contains("script-src 'self' 'wasm-unsafe-eval'", policy, StringComparison.Ordinal);
            Assert.DoesNotContain("unsafe-inline", policy, StringComparison.Ordinal);
            Assert.DoesNotContain("'unsafe-eval'", policy, StringComparison.Ordinal);
        }

        Assert.DoesNotContain("<script>", page, StringComparison.Ordinal);
        await using var visit = await Visit.To(chromium, app, "/", 360, bypassPolicy: false);
        foreach (var (_, path) in Views.All) await visit.Turn(path);
        Assert.DoesNotContain(visit.Errors, e => e.Contains("Content Security Policy", StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void The_app_can_be_put_on_the_home_screen()
    {
        using var manifest = JsonDocument.Parse(File.ReadAllText(Path.Combine(Root, "manifest.webmanifest")));
        Assert.Equal("standalone", manifest.RootElement.GetProperty("display").GetString());
        Assert.Contains(manifest.RootElement.GetProperty("icons").EnumerateArray(), i => i.GetProperty("sizes").GetString() == "512x512");
        Assert.All(manifest.RootElement.GetProperty("icons").EnumerateArray(), i => Assert.True(File.Exists(Path.Combine(Root, i.GetProperty("src").GetString()!))));
    }

    /// <summary>A new version is offered and waits; the page goes on with the old one until it is taken.</summary>
    [Fact]
    public async Task A_newer_version_is_offered_and_never_forced()
    {
        await using var visit = await Visit.To(chromium, app, "/job", 360);
        await visit.Installed();
        // Another address for the same scope is another version to the browser: it is installed beside the one in charge, and waits.
        await visit.Page.EvaluateAsync("navigator.serviceWorker.register('service-worker.js?newer', { scope: './' }).then(() => true)");
        await visit.Page.WaitForSelectorAsync(".newer");
        Assert.Equal("/job", new Uri(visit.Page.Url).AbsolutePath);
        await visit.Page.EvaluateAsync("window.stillHere = true");
        await visit.Page.WaitForTimeoutAsync(500);
        Assert.True(await visit.Page.EvaluateAsync<bool>("window.stillHere === true"));
        await visit.Page.Locator(".newer button").First.ClickAsync();
        await visit.Page.WaitForFunctionAsync("window.stillHere === undefined");
        await visit.Ready();
    }

    private static List<string> Assets()
    {
        string text = File.ReadAllText(Path.Combine(Root, "service-worker-assets.js"));
        using var list = JsonDocument.Parse(text[text.IndexOf('{')..(text.LastIndexOf('}') + 1)]);
        return [.. list.RootElement.GetProperty("assets").EnumerateArray().Select(a => a.GetProperty("url").GetString()!)];
    }

    private static long Size(string url)
    {
        string file = Path.Combine(Root, url.Replace('/', Path.DirectorySeparatorChar));
        return new FileInfo(File.Exists(file + ".br") ? file + ".br" : file).Length;
    }
}
