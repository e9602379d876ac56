using Microsoft.Playwright;

namespace Pattress.Browser.Tests;

/// <summary>Measured and printed, not judged: the machine that builds is not the phone.</summary>
public class MeasuredTests(Chromium chromium, PublishedApp app)
{
    [Fact(DisableParallelization = true)]
    public async Task Time_of_a_plan_in_the_published_build()
    {
        await using var visit = await Visit.Back(chromium, app, "/plan", 360);
        var times = new List<double>();
        for (int i = 0; i < 9; i++) times.Add(await visit.AskNumber("PlanTime"));
        times.Sort();
        TestContext.Current.SendDiagnosticMessage("demo house planned in the browser: least {0:0} ms, median {1:0} ms", times[0], times[4]);
        Console.WriteLine(FormattableString.Invariant($"demo house planned in the browser: least {times[0]:0} ms, median {times[4]:0} ms"));
        Assert.All(times, t => Assert.True(t > 0));
    }

    [Fact(DisableParallelization = true)]
    public async Task Time_of_a_plan_after_one_change()
    {
        await using var visit = await Visit.Back(chromium, app, "/plan", 360);
        foreach (string door in (string[])["TimeAfterMoving", "TimeAfterReading"])
        {
            var least = new List<double>();
            for (int i = 0; await Least(visit, door, i) is var time && !double.IsNaN(time); i++) least.Add(time);
            Console.WriteLine(FormattableString.Invariant($"demo house, {door}: each of {string.Join(", ", least.Select(t => t.ToString("0")))} ms"));
            Assert.All(least, t => Assert.True(t > 0));
            Assert.True(least.Count >= 5);
        }
    }

    /// <summary>The goal is 16 ms; printed, since it depends on the machine.</summary>
    [Fact(DisableParallelization = true)]
    public async Task Time_of_a_wall_with_sixty_readings()
    {
        await using var visit = await Visit.Back(chromium, app, "/plan", 360);
        var times = new List<double>();
        for (int i = 0; i < 15; i++) times.Add(await visit.AskNumber("WallTime"));
        Console.WriteLine(FormattableString.Invariant($"wall with 60 readings in the browser: first {times[0]:0.0} ms, least {times.Min():0.0} ms, median {times.Order().ElementAt(7):0.0} ms"));
        Assert.All(times, t => Assert.True(t > 0));
    }

    private static async Task<double> Least(Visit visit, string door, int which)
    {
        double least = double.PositiveInfinity;
        for (int i = 0; i < 5; i++) least = Math.Min(least, await visit.AskNumber(door, which));
        return least;
    }

    [Fact(DisableParallelization = true)]
    public void Size_of_the_download()
    {
        var files = Directory.GetFiles(Path.Combine(PublishedApp.Server, "wwwroot"), "*.br", SearchOption.AllDirectories);
        double megabytes = files.Sum(f => new FileInfo(f).Length) / 1e6;
        Console.WriteLine(FormattableString.Invariant($"download, brotli: {megabytes:0.00} MB in {files.Length} files"));
        Assert.NotEmpty(files);
    }

    /// <summary>Installed, with the processor slowed to a quarter as a phone's is: the first paint, and when it can be used. The least of three.</summary>
    [Fact(DisableParallelization = true)]
    public async Task Start_of_the_installed_app_on_a_slow_processor()
    {
        await using var visit = await Visit.To(chromium, app, "/", 360);
        await visit.Installed();
        var session = await visit.Context.NewCDPSessionAsync(visit.Page);
        await session.SendAsync("Emulation.setCPUThrottlingRate", new Dictionary<string, object> { ["rate"] = 4 });
        await visit.Page.AddInitScriptAsync(Seen);
        var starts = new List<(double Paint, double Usable, string Steps)>();
        for (int i = 0; i < 3; i++)
        {
            await visit.Page.ReloadAsync(new() { WaitUntil = WaitUntilState.Commit });
            await visit.Ready();
            double usable = await visit.Page.EvaluateAsync<double>("performance.now()");
            double paint = await visit.Page.EvaluateAsync<double>("performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? -1");
            starts.Add((paint, usable, await visit.Page.EvaluateAsync<string>(Steps)));
        }

        var least = starts.MinBy(s => s.Usable);
        Console.WriteLine(FormattableString.Invariant($"installed, processor slowed 4 times: first paint {least.Paint:0} ms, usable {least.Usable:0} ms ({string.Join(", ", starts.Select(s => s.Usable.ToString("0")))}); {least.Steps}"));
        Assert.All(starts, s => Assert.InRange(s.Paint, 0, s.Usable));
    }

    private const string Seen = "new MutationObserver((_, o) => { if (document.querySelector('main#main h1')) { window.drawn = performance.now(); o.disconnect(); } }).observe(document, { childList: true, subtree: true })";

    // When the runtime's own program was there, the last part of the app, and when the app's first own line ran (it asks for its scripts).
    private const string Steps = """
        () => {
          const all = performance.getEntriesByType('resource'), at = (name, end) => Math.round(Math.max(0, ...all.filter(r => r.name.includes(name)).map(r => end ? r.responseEnd : r.startTime)));
          return `runtime there ${at('dotnet.native.wasm', true)}, parts there ${at('_framework/', true)}, first line ${at('js/keep.js', false)}, scripts there ${at('/js/', true)}, list of jobs drawn ${Math.round(window.drawn)} ms`;
        }
        """;

    /// <summary>A thing dragged for two seconds with the processor slowed to a quarter: frames a second, and the longest wait for one.</summary>
    [Fact(DisableParallelization = true)]
    public async Task Frames_while_a_thing_is_dragged_on_a_slow_processor()
    {
        await using var visit = await Visit.Back(chromium, app, "/hang/breast-mirror", 360);
        var box = (await visit.Page.Locator("[data-handle] .grip").First.BoundingBoxAsync())!;
        var session = await visit.Context.NewCDPSessionAsync(visit.Page);
        await session.SendAsync("Emulation.setCPUThrottlingRate", new Dictionary<string, object> { ["rate"] = 4 });
        float x = box.X + (box.Width / 2), y = box.Y + (box.Height / 2);
        await visit.Page.Mouse.MoveAsync(x, y);
        await visit.Page.Mouse.DownAsync();
        await visit.Page.EvaluateAsync(Dragging, new { x = (double)x, y = (double)y });
        await visit.Page.WaitForFunctionAsync("window.dragged");
        double[] frames = await visit.Page.EvaluateAsync<double[]>("window.dragged");
        await visit.Page.Mouse.UpAsync();
        double[] gaps = [.. frames.Zip(frames.Skip(1), (a, b) => b - a).Order()];
        Assert.True(gaps.Length > 3, "the drawing did not move");
        Console.WriteLine(FormattableString.Invariant($"dragging, processor slowed 4 times: {1000 * gaps.Length / (frames[^1] - frames[0]):0} frames a second, half within {gaps[gaps.Length / 2]:0} ms, nine in ten within {gaps[gaps.Length * 9 / 10]:0} ms, longest {gaps[^1]:0} ms"));
    }

    // The mouse is held down and moved by a script, once a frame for two seconds, so that it is never the mouse that is waited for.
    // What comes out are the moments of the frames in which the handle stood elsewhere than in the one before.
    private const string Dragging = """
        ({ x, y }) => {
          const handle = document.querySelector('[data-handle]'), frames = [], begun = performance.now();
          let last = '';
          const frame = () => {
            const t = performance.now(), now = handle.getAttribute('transform');
            if (now !== last) frames.push(t);
            last = now;
            handle.dispatchEvent(new PointerEvent('pointermove', { pointerId: 1, bubbles: true, clientX: x + 40 * Math.sin(t / 240), clientY: y + 20 * Math.cos(t / 180) }));
            if (t - begun < 2000) requestAnimationFrame(frame);
            else window.dragged = frames;
          };
          requestAnimationFrame(frame);
        }
        """;
}
