using Microsoft.Playwright;

namespace Pattress.Browser.Tests;

public class ViewTests(Chromium chromium, PublishedApp app)
{
    private static readonly string[] Themes = ["dark", "sun", "light"];

    [Theory]
    [InlineData(360)]
    [InlineData(1280)]
    public async Task Every_view_stands_by_itself_in_each_theme(int width)
    {
        await using var visit = await Visit.Back(chromium, app, "/", width);
        var wrong = new List<string>();
        foreach (var (name, path) in Views.All)
        {
            await visit.Turn(path);
            await Assertions.Expect(visit.Page.Locator("h1")).ToHaveCountAsync(1);
            int over = await Overflow(visit.Page);
            if (over > 0) wrong.Add($"{name} is {over} px wider than {width} px");
            foreach (string theme in Themes) wrong.AddRange((await In(theme, visit.Page)).Select(v => $"{name}, {theme}: {v}"));
        }

        Assert.True(wrong.Count == 0, string.Join("\n", wrong));
        Assert.Empty(visit.Errors);
        Assert.All(visit.Requests, r => Assert.StartsWith(app.Url + "/", r, StringComparison.Ordinal));
        Assert.True(visit.Requests.Count > 10, "the requests were not seen");
    }

    [Theory]
    [InlineData(320, 100)]
    [InlineData(360, 200)]
    public async Task Every_view_fits_a_narrow_phone_and_letters_of_twice_the_size(int width, int percent)
    {
        await using var visit = await Visit.Back(chromium, app, "/", width);
        await visit.Page.EvaluateAsync("percent => document.documentElement.style.fontSize = percent + '%'", percent);
        await visit.Page.EvaluateAsync("dispatchEvent(new Event('resize'))");
        var wrong = new List<string>();
        foreach (var (name, path) in Views.All)
        {
            await visit.Turn(path);
            int over = await Overflow(visit.Page);
            if (over > 0) wrong.Add($"{name} is {over} px too wide: {await Widest(visit.Page)}");
        }

        Assert.True(wrong.Count == 0, string.Join("\n", wrong));
    }

    /// <summary>Contrast by WCAG 2.2, 1.4.3: 4.5 for text, 3 for lines (1.4.11); in sunlight 7 (1.4.6).</summary>
    [Theory]
    [InlineData("light", 4.5, 3)]
    [InlineData("dark", 4.5, 3)]
    [InlineData("sun", 7, 3)]
    public async Task Colours_stand_out_by_measure(string theme, double text, double line)
    {
        await using var visit = await Visit.Back(chromium, app, "/", 360);
        var colours = await visit.Page.EvaluateAsync<Dictionary<string, string>>(
            "theme => { document.documentElement.dataset.theme = theme; const s = getComputedStyle(document.documentElement); return Object.fromEntries(['board', 'sheet', 'pencil', 'lead', 'rule', 'do', 'do-ink', 'hatch'].map(n => [n, s.getPropertyValue('--' + n).trim()])); }", theme);
        foreach (string ground in (string[])["board", "sheet"])
        {
            foreach (string ink in (string[])["pencil", "lead", "do"]) Assert.True(Contrast(colours[ink], colours[ground]) >= text, $"{ink} on {ground} in {theme}: {Contrast(colours[ink], colours[ground]):0.00}");
            foreach (string ink in (string[])["rule", "hatch"]) Assert.True(Contrast(colours[ink], colours[ground]) >= line, $"{ink} on {ground} in {theme}: {Contrast(colours[ink], colours[ground]):0.00}");
        }

        Assert.True(Contrast(colours["do-ink"], colours["do"]) >= text);
        Assert.Equal(21, Contrast("#000000", "#ffffff"), 6);
    }

    private static double Contrast(string a, string b)
    {
        double x = Luminance(a), y = Luminance(b);
        return (Math.Max(x, y) + 0.05) / (Math.Min(x, y) + 0.05);
    }

    // WCAG 2.2, definition of relative luminance.
    private static double Luminance(string colour)
    {
        double Part(int i)
        {
            double c = Convert.ToInt32(colour.Substring(1 + (2 * i), 2), 16) / 255.0;
            return c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
        }

        return (0.2126 * Part(0)) + (0.7152 * Part(1)) + (0.0722 * Part(2));
    }

    [Fact]
    public async Task Folded_parts_are_as_readable()
    {
        await using var visit = await Visit.Back(chromium, app, "/plan/" + Demo.Load.Item, 360);
        await visit.Page.EvaluateAsync("document.querySelectorAll('details').forEach(d => d.open = true)");
        Assert.Empty(await Axe.Violations(visit.Page));
    }

    [Theory]
    [InlineData(360)]
    [InlineData(1280)]
    public async Task Every_state_is_as_readable_as_every_view(int width)
    {
        await using var visit = await Visit.Back(chromium, app, "/wall/bay", width);
        var wrong = new List<string>();
        foreach (var state in States.All)
        {
            // By way of another page, so that no sheet of the state before stands open.
            await visit.Turn("/help");
            await visit.Turn(state.Path);
            await state.Bring(visit.Page);
            int over = await Overflow(visit.Page);
            if (over > 0) wrong.Add($"{state.Name} is {over} px wider than {width} px");
            foreach (string theme in Themes) wrong.AddRange((await In(theme, visit.Page)).Select(v => $"{state.Name}, {theme}: {v}"));
        }

        Assert.True(wrong.Count == 0, string.Join("\n", wrong));
        Assert.Empty(visit.Errors);
    }

    /// <summary>WCAG 2.2, 2.5.5: 44 px, but for words in a sentence.</summary>
    [Fact]
    public async Task Targets_are_44_px()
    {
        await using var visit = await Visit.Back(chromium, app, "/", 360);
        var wrong = new List<string>();
        foreach (var (name, path) in Views.All)
        {
            await visit.Turn(path);
            var small = await visit.Page.EvaluateAsync<string[]>(
                "[...document.querySelectorAll('button, .button, select, summary, nav a')].filter(e => e.offsetParent && !e.matches('.term')).map(e => [e.textContent.trim(), e.getBoundingClientRect()]).filter(([, r]) => r.height < 43.9 || r.width < 43.9).map(([t, r]) => `${t} ${r.width} x ${r.height}`)");
            wrong.AddRange(small.Select(t => $"{name}: {t}"));
        }

        Assert.True(wrong.Count == 0, string.Join("\n", wrong));
    }

    private static async Task<IReadOnlyList<string>> In(string theme, IPage page)
    {
        await page.EvaluateAsync("theme => document.documentElement.dataset.theme = theme", theme);
        return await Axe.Violations(page);
    }

    private static Task<int> Overflow(IPage page) =>
        page.EvaluateAsync<int>("Math.max(0, document.documentElement.scrollWidth - document.documentElement.clientWidth)");

    /// <summary>What sticks out, so that a failure says where to look.</summary>
    private static Task<string> Widest(IPage page) => page.EvaluateAsync<string>(
        "[...document.querySelectorAll('main *, nav *, header *')].filter(e => (e.getBoundingClientRect().right > document.documentElement.clientWidth + 1 || e.scrollWidth > e.clientWidth + 1 && e.clientWidth > 1) && !e.closest('.scroll')).slice(0, 4).map(e => e.tagName + '.' + (e.getAttribute('class') ?? '') + ' ' + (e.textContent ?? '').trim().slice(0, 30)).join(' | ')");
}
