using Microsoft.Playwright;

namespace Pattress.Browser.Tests;

/// <summary>The page is killed at moments that nobody chose; what had shown as saved is on the device.</summary>
public class KilledTests(Chromium chromium, PublishedApp app)
{
    private const int Moments = 25, Seed = 20240607;

    // Types a new title again and again and notes the last one that showed as saved.
    private const string Typing = """
        () => {
          window.acknowledged = 0;
          const title = document.querySelector('main input[type=text]'), kept = document.querySelector('.kept'), shown = document.querySelector('.job-title');
          let typed = window.begun;
          const type = () => {
            title.value = `Title ${++typed}`;
            title.dispatchEvent(new Event('change', { bubbles: true }));
          };
          const step = () => {
            const saved = /^Saved/.test(kept.textContent) && /^Title (\d+)$/.exec(shown.textContent);
            if (saved) window.acknowledged = Number(saved[1]);
            // The next one only when this one shows as saved: typed without a breath, none ever would.
            if (saved && Number(saved[1]) === typed) type();
            setTimeout(step, 3);
          };
          type();
          step();
        }
        """;

    private const string Kept = """
        () => new Promise((resolve, reject) => {
          const open = indexedDB.open('pattress');
          open.onerror = () => reject(open.error);
          open.onsuccess = () => {
            const all = open.result.transaction('jobs').objectStore('jobs').getAll();
            all.onsuccess = () => resolve(all.result.length ? all.result[0].title : '');
            all.onerror = () => reject(all.error);
          };
        })
        """;

    /// <summary>Two devices beside each other, each killed 25 times: 50 moments, the same ones each run.</summary>
    [Fact]
    public async Task Nothing_that_showed_as_saved_is_lost_at_fifty_moments()
    {
        int[] noted = await Task.WhenAll(Device(Seed), Device(Seed + 1));
        Assert.All(noted, n => Assert.True(n > 5, $"only {n} kills came after something showed as saved"));
    }

    /// <returns>How many kills came after something had shown as saved.</returns>
    private async Task<int> Device(int seed)
    {
        var random = new Random(seed);
        await using var context = await chromium.Browser.NewContextAsync();
        context.SetDefaultTimeout(120_000);
        int begun = 0, noted = 0;
        for (int moment = 0; moment < Moments; moment++)
        {
            int acknowledged = await TypeAndKill(context, begun, random.Next(20, 600));
            int kept = await WhatIsKept(context);
            Assert.True(kept >= acknowledged, $"moment {moment}: Title {acknowledged} showed as saved, Title {kept} is kept");
            if (acknowledged > begun) noted++;
            begun = Math.Max(kept, acknowledged) + 1000;
        }

        return noted;
    }

    private async Task<int> TypeAndKill(IBrowserContext context, int begun, int afterMs)
    {
        var page = await context.NewPageAsync();
        await page.GotoAsync(app.Url + "/job");
        await page.WaitForSelectorAsync("main input[type=text]");
        await page.EvaluateAsync("begun => { window.begun = begun; }", begun);
        await page.EvaluateAsync(Typing);
        // The moment is counted from the first title that shows as saved, so that each kill has something to lose.
        await page.WaitForFunctionAsync("() => window.acknowledged > window.begun");
        await page.WaitForTimeoutAsync(afterMs);
        int acknowledged = await page.EvaluateAsync<int>("() => window.acknowledged");
        var crashed = new TaskCompletionSource();
        page.Crash += (_, _) => crashed.TrySetResult();
        var session = await context.NewCDPSessionAsync(page);
        // The answer never comes: the process is gone.
        _ = session.SendAsync("Page.crash");
        await Task.WhenAny(crashed.Task, Task.Delay(5000));
        await page.CloseAsync();
        return acknowledged;
    }

    /// <summary>Looks into the device without starting the app.</summary>
    private async Task<int> WhatIsKept(IBrowserContext context)
    {
        var page = await context.NewPageAsync();
        await page.GotoAsync(app.Url + "/css/pattress.css");
        string title = await page.EvaluateAsync<string>(Kept);
        await page.CloseAsync();
        return title.StartsWith("Title ", StringComparison.Ordinal) ? int.Parse(title["Title ".Length..], System.Globalization.CultureInfo.InvariantCulture) : 0;
    }
}
