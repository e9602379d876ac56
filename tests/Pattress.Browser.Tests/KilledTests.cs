using System.Text.Json;
using Microsoft.Playwright;

namespace Pattress.Browser.Tests;

/// <summary>
/// The page is killed at moments that nobody chose, while a name is typed, a thing is moved or readings are put in; what had
/// shown as saved is on the device, in every kind of change.
/// </summary>
public class KilledTests(Chromium chromium, PublishedApp app)
{
    private const int Moments = 10, Seed = 20240607;

    /// <summary>A small job (invented), so that a start costs little: 50 of them are needed.</summary>
    private const string Job = """
        {"pattress_job": 1, "title": "Title 500",
         "walls": [{"id": "wall", "name": "Wall", "width_mm": 9000, "height_mm": 2400, "readings": [{"id": "told", "kind": "told", "says": "masonry"}]}],
         "fixtures": [{"id": "hook", "wall": "wall", "what": "hook", "at_mm": [500, 1500], "hang_kg": 1}]}
        """;

    /// <summary>Puts it on the device as the app itself keeps a job; the page that does it runs nothing of the app.</summary>
    private const string Lay = """
        text => new Promise((resolve, reject) => {
          const open = indexedDB.open('pattress', 2);
          open.onupgradeneeded = () => {
            open.result.createObjectStore('jobs', { keyPath: 'id' });
            open.result.createObjectStore('desk');
            open.result.createObjectStore('photos', { keyPath: 'id' }).createIndex('wall', 'wall');
          };
          open.onerror = () => reject(open.error);
          open.onsuccess = () => {
            const change = open.result.transaction(['jobs', 'desk'], 'readwrite');
            change.objectStore('jobs').put({ id: 'killed', title: 'Title', text, standing: '', revision: 1, at: 1 });
            change.objectStore('desk').put('killed', 'last');
            change.oncomplete = () => { open.result.close(); resolve(true); };
            change.onabort = () => reject(change.error);
          };
        })
        """;

    private const string Kept = """
        () => new Promise((resolve, reject) => {
          const open = indexedDB.open('pattress');
          open.onerror = () => reject(open.error);
          open.onsuccess = () => {
            const one = open.result.transaction('jobs').objectStore('jobs').get('killed');
            one.onsuccess = () => { open.result.close(); resolve(one.result.text); };
            one.onerror = () => reject(one.error);
          };
        })
        """;

    // Changes the page again and again, each time when the change before shows as saved (without a breath none ever would), and
    // notes the last number that showed as saved. A change is shown by the app, not by what was typed.
    private const string Changing = """
        ([kind, begun]) => {
          const digits = text => Number((text ?? '').replace(/\D/g, ''));
          const press = button => button?.click();
          const [shown, change] = {
            title: [
              () => digits(document.querySelector('.job-title').textContent),
              n => { const e = document.querySelector('main input[type=text]'); e.value = `Title ${n}`; e.dispatchEvent(new Event('change', { bubbles: true })); }],
            place: [
              () => digits(/([\d,]+) mm/.exec(document.querySelector('.readout').textContent)?.[1]),
              () => document.querySelector('[data-handle]').dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowRight', shiftKey: true, bubbles: true }))],
            reading: [
              () => digits(document.querySelector('ul.readings').closest('.card').querySelector('h2').textContent),
              () => {
                press(document.querySelector('main button.do'));
                const next = () => { const keys = document.querySelectorAll('dialog[open] .keypad button'); if (keys.length) { press(keys[0]); setTimeout(next, 1); } };
                setTimeout(next, 1);
              }],
          }[kind];
          window.acknowledged = begun;
          let wanted = begun;
          const step = () => {
            if (/^Saved/.test(document.querySelector('.kept').textContent)) {
              const now = shown();
              if (now > window.acknowledged) window.acknowledged = now;
              if (now >= wanted && !document.querySelector('dialog[open]')) { wanted = now + 1; change(wanted); }
            }
            setTimeout(step, 3);
          };
          step();
        }
        """;

    private static readonly (string Kind, string Path)[] Kinds = [("title", "/job"), ("place", "/hang/hook"), ("reading", "/wall/wall")];

    /// <summary>Five devices, each killed ten times: fifty moments, the same ones each run; each kill comes after something had shown as saved.</summary>
    [Theory]
    [InlineData(1), InlineData(2), InlineData(3), InlineData(4), InlineData(5)]
    public async Task Nothing_that_showed_as_saved_is_lost_at_fifty_moments(int device) => Assert.Equal(Moments, await Device(Seed + device));

    /// <returns>How many kills came after something had shown as saved.</returns>
    private async Task<int> Device(int seed)
    {
        var random = new Random(seed);
        var context = await chromium.Devices.Take(app);
        var inside = await Inside(context);
        await inside.EvaluateAsync(Lay, Job);
        var now = await WhatIsKept(inside);
        bool gone = false;
        inside.Crash += (_, _) => gone = true;
        int noted = 0;
        for (int moment = 0; moment < Moments; moment++)
        {
            var (kind, path) = Kinds[(seed + moment) % Kinds.Length];
            int acknowledged = await ChangeAndKill(context, kind, path, now[kind], random.Next(5, 400));
            // The browser may have put both pages into one process.
            if (gone) (inside, gone) = (await Inside(context), false);
            var kept = await WhatIsKept(inside);
            Assert.True(kept[kind] >= acknowledged, $"moment {moment}, {kind}: {acknowledged} showed as saved, {kept[kind]} is kept");
            // What was kept before, of the other kinds, is still there.
            Assert.All(now, n => Assert.True(kept[n.Key] >= n.Value, $"moment {moment}: {n.Key} went back from {n.Value} to {kept[n.Key]}"));
            if (acknowledged > now[kind]) noted++;
            now = kept;
        }

        await chromium.Devices.Return(context);
        return noted;
    }

    private async Task<IPage> Inside(IBrowserContext context)
    {
        var page = await context.NewPageAsync();
        await page.GotoAsync(app.Url + "/css/pattress.css");
        return page;
    }

    private async Task<int> ChangeAndKill(IBrowserContext context, string kind, string path, int begun, int afterMs)
    {
        var page = await context.NewPageAsync();
        await page.GotoAsync(app.Url + path, new() { WaitUntil = WaitUntilState.Commit });
        await page.WaitForSelectorAsync("main#main h1");
        await page.EvaluateAsync(Changing, new object[] { kind, begun });
        // The moment is counted from the first change that shows as saved, so that each kill has something to lose.
        await page.WaitForFunctionAsync("begun => window.acknowledged > begun", begun);
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

    /// <summary>Looks into the device from a page of another process, without starting the app.</summary>
    private static async Task<Dictionary<string, int>> WhatIsKept(IPage inside)
    {
        using var job = JsonDocument.Parse(await inside.EvaluateAsync<string>(Kept));
        var root = job.RootElement;
        return new()
        {
            ["title"] = int.Parse(root.GetProperty("title").GetString()!["Title ".Length..], System.Globalization.CultureInfo.InvariantCulture),
            ["place"] = (int)root.GetProperty("fixtures")[0].GetProperty("at_mm")[0].GetDouble(),
            ["reading"] = root.GetProperty("walls")[0].GetProperty("readings").GetArrayLength(),
        };
    }
}
