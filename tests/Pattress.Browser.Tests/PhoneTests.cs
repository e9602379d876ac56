using System.Text.Json;
using Microsoft.Playwright;

namespace Pattress.Browser.Tests;

/// <summary>In the hand: without a signal, killed, full, in two tabs, on two devices.</summary>
public class PhoneTests(Chromium chromium, PublishedApp app)
{
    private static string Sample => File.ReadAllText(Path.Combine(PublishedApp.Root, "samples", "demo-house.job.json"));

    private static readonly string[] FromNothing = ["jobs", "wall", "buy", "papers", "trials-report", "nothing"];

    /// <summary>The page's clock is set forward while a pull is held.</summary>
    [Fact]
    public async Task The_whole_demo_job_from_the_list_to_a_signed_sheet_offline()
    {
        await using var visit = await Visit.To(chromium, app, "/", 360);
        await visit.Installed();
        await visit.Context.SetOfflineAsync(true);
        await visit.Go("/drill");
        var deeds = new Deeds(visit);
        await deeds.DrillAll();
        await visit.Saved();
        var job = await deeds.Job();
        Assert.NotEqual(0, job.GetProperty("done").GetProperty("holes").GetArrayLength());
        await visit.Context.Clock.InstallAsync();
        await visit.Go("/prove");
        int pulls = await PullAll(visit, deeds);
        Assert.True(pulls > 0, "nothing was pulled");
        await visit.Go("/hand-over");
        await Assertions.Expect(visit.Page.Locator(".hand-over")).ToContainTextAsync("each bracket pulled and held");
        await deeds.SignWithAFinger();
        await Assertions.Expect(visit.Page.Locator(".sign")).ToContainTextAsync("Signed by");
        await visit.Saved();
        await visit.Go("/hand-over");
        await Assertions.Expect(visit.Page.Locator(".sign")).ToContainTextAsync("Signed by");
        await Assertions.Expect(visit.Page.Locator("nav.strip")).ToContainTextAsync("signed");
        job = await deeds.Job();
        Assert.Equal(pulls, job.GetProperty("proofs").GetArrayLength());
        Assert.All(job.GetProperty("proofs").EnumerateArray(), p => Assert.True(p.GetProperty("held_s").GetDouble() >= 30));
        Assert.NotEmpty(job.GetProperty("done").GetProperty("signed")[0].GetProperty("strokes").EnumerateArray());
    }

    [Fact]
    public async Task Every_page_works_with_the_server_gone()
    {
        await using var visit = await Visit.To(chromium, app, "/", 360);
        await visit.Installed();
        await visit.AllKept();
        await visit.Context.SetOfflineAsync(true);
        // Each page once by its link; those that fetch more than the app started with, and an unknown one, are also started from nothing.
        foreach (var (name, path) in Views.All)
        {
            await (FromNothing.Contains(name) ? visit.Go(path) : visit.Turn(path));
            Assert.True(await visit.Page.Locator("main#main h1").CountAsync() == 1, name);
        }

        Assert.True(visit.Errors.Count == 0, string.Join("\n", visit.Errors));
    }

    [Fact]
    public async Task A_pole_over_a_window_on_an_unknown_wall_takes_15_touches_at_most()
    {
        await using var visit = await Visit.Back(chromium, app, "/", 360);
        var deeds = new Deeds(visit);
        await deeds.Touch("New job");
        await Assertions.Expect(visit.Page.Locator("h1")).ToHaveTextAsync("New wall");
        await deeds.Choose("In it", "a window");
        await deeds.Touch("Add the wall");
        await deeds.Touch("Hang something");
        await deeds.Touch("curtain pole");
        await Assertions.Expect(visit.Page.Locator("h1")).ToHaveTextAsync("Curtain pole", new() { IgnoreCase = true });
        await deeds.Touch("Plan");
        await Assertions.Expect(visit.Page.Locator(".item .verdict")).ToBeVisibleAsync();
        var job = await deeds.Job();
        Assert.Equal("window", job.GetProperty("walls")[0].GetProperty("openings")[0].GetProperty("kind").GetString());
        Console.WriteLine($"first plan of a pole over a window: {deeds.Count} touches");
        Assert.InRange(deeds.Count, 1, 15);
    }

    [Fact]
    public async Task The_van_comes_along_into_a_new_job()
    {
        await using var visit = await Visit.Back(chromium, app, "/", 360);
        var deeds = new Deeds(visit);
        await deeds.Touch("New job");
        await visit.Turn("/job");
        await deeds.Touch("Add a fixing");
        var first = await deeds.Job();
        await deeds.Touch("New job");
        await visit.Saved();
        var second = await deeds.Job();
        Assert.NotEqual(first.GetProperty("id").GetString(), second.GetProperty("id").GetString());
        Assert.Equal(first.GetProperty("stock").GetRawText(), second.GetProperty("stock").GetRawText());
        Assert.Equal(1, second.GetProperty("stock").GetArrayLength());
    }

    [Fact]
    public async Task A_quick_answer_takes_three_touches()
    {
        await using var visit = await Visit.Back(chromium, app, "/", 360);
        var deeds = new Deeds(visit);
        await deeds.Touch("Quick answer");
        await deeds.Touch("curtain pole");
        await deeds.Touch("Nobody knows");
        await Assertions.Expect(visit.Page.Locator(".answer .verdict")).ToBeVisibleAsync();
        Assert.Equal(3, deeds.Count);
    }

    [Fact]
    public async Task A_surprise_is_said_and_the_wide_hole_is_held_back()
    {
        await using var visit = await Visit.Back(chromium, app, "/drill", 360);
        var deeds = new Deeds(visit);
        foreach (var tick in await visit.Page.Locator(".ticks input").AllAsync()) await tick.CheckAsync();
        await deeds.Touch("To the first hole");
        await Assertions.Expect(visit.Page.Locator(".count")).ToContainTextAsync("Hole 1 of");
        await Assertions.Expect(visit.Page.Locator(".bit")).ToContainTextAsync("Stop at");
        await deeds.Touch("foam");
        await Assertions.Expect(visit.Page.Locator(".said")).ToContainTextAsync("Met: foam");
        await Assertions.Expect(visit.Page.Locator("main")).ToContainTextAsync("Do not widen that hole");
        // Killed here, nothing is lost and it goes on where it stood.
        await visit.Saved();
        await visit.Go("/drill");
        await Assertions.Expect(visit.Page.Locator(".ticks")).ToHaveCountAsync(0);
        await Assertions.Expect(visit.Page.Locator("main")).ToContainTextAsync("Do not widen that hole");
    }

    [Fact]
    public async Task A_full_device_is_said_and_the_job_stays_on_the_desk()
    {
        await using var visit = await Visit.Back(chromium, app, "/job", 360);
        // What the browser throws when the quota is used up.
        await visit.Page.EvaluateAsync("() => { IDBObjectStore.prototype.put = () => { throw new DOMException('full', 'QuotaExceededError'); }; }");
        await SetTitle(visit.Page, "Too much");
        await Assertions.Expect(visit.Page.Locator("main [role=alert] p")).ToContainTextAsync("is not saved");
        await Assertions.Expect(visit.Page.Locator(".job-title")).ToHaveTextAsync("Too much");
        var file = await visit.Page.RunAndWaitForDownloadAsync(() => visit.Page.Locator("main [role=alert] button").ClickAsync());
        Assert.Contains("Too much", await File.ReadAllTextAsync(await file.PathAsync()), StringComparison.Ordinal);
    }

    /// <summary>The browser's own quota, not a made-up error: less room than is used already, and room again.</summary>
    [Fact]
    public async Task A_quota_that_is_used_up_is_said_and_the_next_change_is_kept_when_there_is_room_again()
    {
        await using var visit = await Visit.To(chromium, app, "/job", 360);
        // Before anything was written: the browser remembers for a while how much room there was.
        var session = await visit.Context.NewCDPSessionAsync(visit.Page);
        await session.SendAsync("Storage.overrideQuotaForOrigin", new() { ["origin"] = app.Url, ["quotaSize"] = 1 });
        await SetTitle(visit.Page, "Too much");
        await Assertions.Expect(visit.Page.Locator("main [role=alert] p")).ToContainTextAsync("is not saved");
        await Assertions.Expect(visit.Page.Locator(".kept")).Not.ToHaveTextAsync("Saved on this device");
        await Assertions.Expect(visit.Page.Locator(".job-title")).ToHaveTextAsync("Too much");
        await session.SendAsync("Storage.overrideQuotaForOrigin", new() { ["origin"] = app.Url });
        await SetTitle(visit.Page, "Room again");
        await visit.Saved();
        await visit.Go("/job");
        await Assertions.Expect(visit.Page.Locator(".job-title")).ToHaveTextAsync("Room again");
    }

    [Fact]
    public async Task Two_tabs_follow_each_other()
    {
        await using var visit = await Visit.Back(chromium, app, "/", 360);
        var first = visit.Page;
        await first.Locator("button", new() { HasTextString = "New job" }).ClickAsync();
        await visit.Saved();
        await first.GotoAsync(app.Url + "/job");
        await first.WaitForSelectorAsync("main#main h1");
        var second = await visit.Context.NewPageAsync();
        await Open(second, app);
        await SetTitle(second, "From the second");
        await Assertions.Expect(first.Locator(".job-title")).ToHaveTextAsync("From the second");
        await SetTitle(first, "From the first");
        await Assertions.Expect(second.Locator(".job-title")).ToHaveTextAsync("From the first");
    }

    [Fact]
    public async Task Two_devices_meet_records_by_union_and_differences_side_by_side()
    {
        await using var visit = await Visit.Back(chromium, app, "/job", 360);
        string ours = WithId(Sample, "0198f000-0000-7000-8000-000000000001");
        await Import(visit.Page, ours);
        await Assertions.Expect(visit.Page.Locator(".job-title")).ToContainTextAsync("emo");
        await visit.Saved();
        string theirs = ours.Replace("\"width_mm\": 4200", "\"width_mm\": 4100", StringComparison.Ordinal)
            .Replace("\"readings\": [", "\"readings\": [{\"id\": \"0198f000-0000-7000-8000-00000000000a\", \"kind\": \"told\", \"says\": \"masonry\"},", StringComparison.Ordinal);
        theirs = OnlyFirst(theirs, "0198f000-0000-7000-8000-00000000000a");
        Assert.NotEqual(ours, theirs);
        await Import(visit.Page, theirs.Replace("\"title\": \"", "\"title\": \"Other ", StringComparison.Ordinal));
        await Assertions.Expect(visit.Page.Locator("h1")).ToHaveTextAsync("Two versions of one job");
        await Assertions.Expect(visit.Page.Locator(".meet")).ToContainTextAsync("Other ");
        Assert.Contains("0198f000-0000-7000-8000-00000000000a", await visit.Ask("JobOnDesk"), StringComparison.Ordinal);
        await visit.Turn("/");
        await Assertions.Expect(visit.Page.Locator(".jobs li")).ToHaveCountAsync(2);
    }

    [Fact]
    public async Task Broken_files_are_refused_in_plain_words_and_change_nothing()
    {
        await using var visit = await Visit.Back(chromium, app, "/job", 360);
        string before = await visit.Ask("JobOnDesk");
        string[] broken = ["", "{", "[]", "not a job at all", "{\"pattress_job\": 99}", Sample[..(Sample.Length / 2)], Sample.Replace("\"walls\"", "\"wals\"", StringComparison.Ordinal), new string('[', 5000)];
        foreach (string text in broken)
        {
            await Import(visit.Page, text);
            await Assertions.Expect(visit.Page.Locator(".problems").First).ToBeVisibleAsync();
            Assert.Equal(before, await visit.Ask("JobOnDesk"));
        }

        Assert.Empty(visit.Errors);
    }

    [Fact]
    public async Task A_job_goes_over_by_code()
    {
        await using var visit = await Visit.To(chromium, app, "/", 360);
        await new Deeds(visit).Touch("New job");
        await visit.Saved();
        await visit.Turn("/share");
        await Assertions.Expect(visit.Page.Locator(".code path")).ToHaveCountAsync(1);
        string link = await visit.Ask("CodeOnDesk");
        await using var other = await Visit.To(chromium, app, "/take#" + link, 360);
        await other.Page.WaitForURLAsync("**/walls");
        Assert.Equal(Id(await visit.Ask("JobOnDesk")), Id(await other.Ask("JobOnDesk")));
        Assert.DoesNotContain(other.Requests, r => new Uri(r).Query.Length > 0 || r.Contains(link, StringComparison.Ordinal) && !r.Contains('#'));
    }

    private static string? Id(string job) => JsonDocument.Parse(job).RootElement.GetProperty("id").GetString();

    private static string WithId(string job, string id) => job.Replace("\"pattress_job\": 1,", $"\"pattress_job\": 1, \"id\": \"{id}\",", StringComparison.Ordinal);

    // The same reading must stand in one wall only.
    private static string OnlyFirst(string text, string id)
    {
        string reading = $"{{\"id\": \"{id}\", \"kind\": \"told\", \"says\": \"masonry\"}},";
        int first = text.IndexOf(reading, StringComparison.Ordinal) + reading.Length;
        return text[..first] + text[first..].Replace(reading, "", StringComparison.Ordinal);
    }

    private static async Task Open(IPage page, PublishedApp app)
    {
        await page.GotoAsync(app.Url + "/job");
        await page.WaitForSelectorAsync("main#main h1");
    }

    private static async Task SetTitle(IPage page, string title)
    {
        var input = page.Locator("main input[type=text]").First;
        await input.FillAsync(title);
        await input.PressAsync("Enter");
    }

    private static Task Import(IPage page, string text) =>
        page.Locator("input[type=file]").First.SetInputFilesAsync(new FilePayload { Name = "job.job.json", MimeType = "application/json", Buffer = System.Text.Encoding.UTF8.GetBytes(text) });

    private static async Task<int> PullAll(Visit visit, Deeds deeds)
    {
        int pulls = 0;
        for (; pulls < 12 && await visit.Page.Locator("button", new() { HasTextString = "Start the clock" }).CountAsync() > 0; pulls++)
        {
            await deeds.Touch("Start the clock");
            await visit.Page.Clock.FastForwardAsync(31_000);
            await Assertions.Expect(visit.Page.Locator(".clock")).ToHaveTextAsync("0", new() { Timeout = 60_000 });
            await deeds.Touch("No, it held");
            await visit.Page.WaitForTimeoutAsync(100);
        }

        return pulls;
    }
}
