using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Pattress.Browser.Tests;

public class ViewTests(Chromium chromium, PublishedApp app)
{
    [Theory]
    [InlineData(360)]
    [InlineData(1280)]
    public async Task Every_view_stands_by_itself(int width)
    {
        await using var visit = await Visit.To(chromium, app, "/", width);
        var wrong = new List<string>();
        foreach (var (name, path) in Views.All)
        {
            await visit.Turn(path);
            await Assertions.Expect(visit.Page.Locator("h1")).ToHaveCountAsync(1);
            int over = await Overflow(visit.Page);
            if (over > 0) wrong.Add($"{name} is {over} px wider than {width} px");
            wrong.AddRange((await Violations(visit.Page)).Select(v => name + ": " + v));
        }

        Assert.True(wrong.Count == 0, string.Join("\n", wrong));
        Assert.Empty(visit.Errors);
        Assert.All(visit.Requests, r => Assert.StartsWith(app.Url + "/", r, StringComparison.Ordinal));
        Assert.True(visit.Requests.Count > 10, "the requests were not seen");
    }

    [Fact]
    public async Task The_dark_theme_can_be_read()
    {
        await using var visit = await Visit.To(chromium, app, "/plan", 360, scheme: ColorScheme.Dark);
        Assert.Empty(await Violations(visit.Page));
    }

    [Fact]
    public async Task Folded_parts_are_as_readable()
    {
        await using var visit = await Visit.To(chromium, app, "/plan/" + Demo.Load.Item, 360);
        await visit.Page.EvaluateAsync("document.querySelectorAll('details').forEach(d => d.open = true)");
        Assert.Empty(await Violations(visit.Page));
    }

    [Theory]
    [InlineData(360)]
    [InlineData(1280)]
    public async Task Every_state_is_as_readable_as_every_view(int width)
    {
        await using var visit = await Visit.To(chromium, app, "/wall/bay", width);
        var wrong = new List<string>();
        foreach (var state in States.All)
        {
            await visit.Turn(state.Path);
            await state.Bring(visit.Page);
            int over = await Overflow(visit.Page);
            if (over > 0) wrong.Add($"{state.Name} is {over} px wider than {width} px");
            wrong.AddRange((await Violations(visit.Page)).Select(v => state.Name + ": " + v));
        }

        Assert.True(wrong.Count == 0, string.Join("\n", wrong));
        Assert.Empty(visit.Errors);
    }

    [Fact]
    public async Task Letters_of_twice_the_size_fit()
    {
        await using var visit = await Visit.To(chromium, app, "/plan/" + Demo.Load.Item, 360);
        await visit.Page.EvaluateAsync("document.documentElement.style.fontSize = '200%'");
        Assert.Equal(0, await Overflow(visit.Page));
    }

    [Theory]
    [InlineData("/wall/bay")]
    [InlineData("/plan")]
    public async Task Targets_are_44_px(string path)
    {
        await using var visit = await Visit.To(chromium, app, path, 360);
        var small = await visit.Page.EvaluateAsync<string[]>(
            "[...document.querySelectorAll('button, .button, select, summary, nav a')].filter(e => e.offsetParent).map(e => [e.textContent.trim(), e.getBoundingClientRect()]).filter(([, r]) => r.height < 43.9 || r.width < 43.9).map(([t, r]) => `${t} ${r.width} x ${r.height}`)");
        Assert.Empty(small);
    }

    private static Task<int> Overflow(IPage page) =>
        page.EvaluateAsync<int>("Math.max(0, document.documentElement.scrollWidth - document.documentElement.clientWidth)");

    private static async Task<IReadOnlyList<string>> Violations(IPage page)
    {
        AxeResult result = await page.RunAxe();
        Assert.NotEmpty(result.Passes);
        return [.. result.Violations.Select(v => $"{v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Take(3).Select(n => n.Html))}")];
    }
}
