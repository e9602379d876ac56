using Microsoft.Playwright;

namespace Pattress.Browser.Tests;

/// <summary>Small things that make a page easy to read, and that once were not so.</summary>
public class LookTests(Chromium chromium, PublishedApp app)
{
    [Fact]
    public async Task Price_and_waiting_time_of_a_way_are_two_sentences()
    {
        await using var visit = await Visit.To(chromium, app, "/repair/kitchen-blind/1", 360);
        await visit.Page.GetByLabel("Width of the hole").FillAsync("10");
        await visit.Page.Keyboard.PressAsync("Tab");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "What can be done" }).ClickAsync();
        var waiting = visit.Page.Locator("[aria-live] li", new() { HasTextString = "h to dry or harden" });
        await Assertions.Expect(waiting.First).ToBeVisibleAsync();
        Assert.All(await waiting.AllInnerTextsAsync(), said => Assert.Matches(@"[0-9]\. [0-9]+ h to dry", said));
        // What nobody measured is folded below the ways.
        await Assertions.Expect(visit.Page.Locator("[aria-live] details", new() { HasTextString = "is no longer patched" })).ToHaveCountAsync(1);
    }

    /// <summary>Bold letters are wider than the room that a drawing left for them.</summary>
    [Theory]
    [InlineData(320), InlineData(360), InlineData(1280)]
    public async Task In_sunlight_the_letters_of_a_drawing_stay_inside_it(int width)
    {
        await using var visit = await Visit.To(chromium, app, "/", width);
        await visit.Page.EvaluateAsync("document.documentElement.dataset.theme = 'sun'");
        foreach (string path in new[] { "/wall/bay", "/wall/landing", "/plan/" + Demo.Load.Item })
        {
            await visit.Turn(path);
            var texts = await visit.Page.EvaluateAsync<string[]>(Letters);
            Assert.NotEmpty(texts);
            Assert.All(texts, t => Assert.Equal("500 inside", t[(t.IndexOf('|', StringComparison.Ordinal) + 1)..]));
        }
    }

    private const string Letters = """
        () => [...document.querySelectorAll('svg text')].filter(t => t.getBoundingClientRect().width > 0 && t.closest('.drawing')).map(t => {
          const a = t.getBoundingClientRect(), b = t.ownerSVGElement.getBoundingClientRect();
          const inside = a.left >= b.left - 1 && a.right <= b.right + 1 && a.top >= b.top - 1 && a.bottom <= b.bottom + 1;
          return t.textContent + '|' + getComputedStyle(t).fontWeight + (inside ? ' inside' : ' outside');
        })
        """;

    [Fact]
    public async Task Every_step_of_a_working_has_its_number()
    {
        await using var visit = await Visit.To(chromium, app, "/plan/" + Demo.Load.Item, 360);
        foreach (string found in await visit.Page.EvaluateAsync<string[]>(Steps)) Assert.Equal("step 0, 1 each, counter(step) \".\" shown", found);
        Assert.NotEmpty(await visit.Page.EvaluateAsync<string[]>(Steps));
    }

    private const string Steps = """
        () => { document.querySelectorAll('details').forEach(d => d.open = true); return [...document.querySelectorAll('.working li')].map(li => {
          const list = getComputedStyle(li.parentElement), mark = getComputedStyle(li, '::before');
          return list.counterReset + ', ' + mark.counterIncrement.replace('step ', '') + ' each, ' + mark.content + (mark.display !== 'none' && mark.visibility === 'visible' ? ' shown' : ' hidden');
        }); }
        """;

    /// <summary>Narrower than where its window is: names and places first, paths only in the fold, and no page full of them.</summary>
    [Fact]
    public async Task What_is_refused_is_said_in_words_before_any_path()
    {
        await using var visit = await Visit.To(chromium, app, "/wall/bay/edit", 320);
        var width = visit.Page.Locator("label.field:has(> span:text-is('Wide')) input").First;
        await width.FillAsync("1300");
        await width.PressAsync("Enter");
        var said = visit.Page.Locator(".problems > ul > li");
        await Assertions.Expect(said.First).ToContainTextAsync("Bay in the front room, window: 1,250 mm to 2,350 mm from the left");
        Assert.InRange(await said.CountAsync(), 1, 4);
        Assert.All(await said.AllInnerTextsAsync(), t => Assert.DoesNotContain("$", t, StringComparison.Ordinal));
        var path = visit.Page.Locator(".problems code", new() { HasTextString = "$.walls[0].openings[0]" });
        await Assertions.Expect(path).ToBeHiddenAsync();
        await visit.Page.Locator(".problems summary").ClickAsync();
        await Assertions.Expect(path).ToBeVisibleAsync();
        // It belongs to the page where it was tried: who turns the page has seen it.
        await visit.Page.WaitForTimeoutAsync(600);
        await visit.Turn("/walls");
        await Assertions.Expect(visit.Page.Locator(".problems")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task What_all_things_share_is_said_once_on_the_page_of_certainty()
    {
        await using var visit = await Visit.To(chromium, app, "/trials/certainty", 360);
        await Assertions.Expect(visit.Page.GetByText("the chance of failure never relaxes it.")).ToHaveCountAsync(1);
        Assert.DoesNotMatch(@"known: 0 %", await visit.Page.Locator("main").InnerTextAsync());
    }

    [Fact]
    public async Task A_batten_that_is_not_taken_with_one_touch_says_what_to_enter()
    {
        await using var visit = await Visit.To(chromium, app, "/hang/bay-pole", 360);
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Look for better places" }).ClickAsync();
        var batten = visit.Page.Locator("li", new() { HasTextString = "On a batten" });
        await Assertions.Expect(batten.Locator(".note")).ToContainTextAsync("hang one more thing");
        await Assertions.Expect(batten.GetByRole(AriaRole.Button)).ToHaveCountAsync(0);
    }
}
