using Microsoft.Playwright;

namespace Pattress.Browser.Tests;

/// <summary>What is asked for is explained where it stands, and can be hit with a thumb.</summary>
public class FieldTests(Chromium chromium, PublishedApp app)
{
    // A field says what to measure itself, or the group of fields that it stands in does.
    private const string Silent = """
        () => {
          document.querySelectorAll('details').forEach(d => { d.open = true; });
          return [...document.querySelectorAll('label.field')].filter(f => f.checkVisibility())
            .filter(f => !f.querySelector('.note, .says') && !f.closest('fieldset, .place, .card, form, section')?.querySelector('.note'))
            .map(f => f.firstElementChild.textContent);
        }
        """;

    // WCAG 2.2, 2.5.5: 44 px, but for links in a sentence; a box with its label is one target.
    private const string Small = """
        () => [...document.querySelectorAll('header a, header button, main button, main a[href], main input, main select, main summary, nav a')]
          .filter(e => e.checkVisibility() && !e.matches('.term, .unseen') && !(e.matches('a') && getComputedStyle(e).display === 'inline' && e.parentElement.textContent.trim() !== e.textContent.trim()))
          .map(e => [e, (e.closest('label.tick, label.button, .job-name') ?? e).getBoundingClientRect()])
          .filter(([, box]) => box.width > 0 && (box.height < 43.5 || box.width < 43.5))
          .map(([e, box]) => `${e.tagName} "${(e.textContent || e.getAttribute('aria-label') || e.type).trim().slice(0, 30)}" ${Math.round(box.width)} by ${Math.round(box.height)}`)
        """;

    [Fact]
    public async Task Every_field_says_what_to_measure_and_every_target_is_large_enough()
    {
        await using var visit = await Visit.Back(chromium, app, "/", 360);
        var wrong = new List<string>();
        int fields = 0;
        foreach (var (name, path) in Views.All)
        {
            await visit.Turn(path);
            wrong.AddRange((await visit.Page.EvaluateAsync<string[]>(Silent)).Select(f => $"{name}: \"{f}\" says nothing"));
            wrong.AddRange((await visit.Page.EvaluateAsync<string[]>(Small)).Select(t => $"{name}: {t}"));
            // What a sentence shows where a value is missing.
            if (System.Text.RegularExpressions.Regex.IsMatch(await visit.Page.Locator("main").InnerTextAsync(), @"(^|\s)\?(\s|$)")) wrong.Add(name + ": a value is missing");
            fields += await visit.Page.Locator("label.field").CountAsync();
        }

        Assert.True(fields > 60, "hardly any field was found");
        Assert.True(wrong.Count == 0, string.Join("\n", wrong.Distinct()));
    }

    [Fact]
    public async Task A_word_of_the_trade_is_explained_where_it_stands()
    {
        await using var visit = await Visit.Back(chromium, app, "/wall/breast", 360);
        var word = visit.Page.Locator("main button.term[popovertarget=term-dab]").First;
        var says = visit.Page.Locator("#term-dab");
        await Assertions.Expect(says).ToBeHiddenAsync();
        await word.ClickAsync();
        await Assertions.Expect(says).ToContainTextAsync("adhesive");
        await Assertions.Expect(says).ToBeVisibleAsync();
        await visit.Page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(says).ToBeHiddenAsync();
        await word.FocusAsync();
        await visit.Page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(says).ToBeVisibleAsync();
    }

    [Fact]
    public async Task The_help_page_shows_the_demo_house_at_each_step()
    {
        await using var visit = await Visit.Back(chromium, app, "/help", 360);
        await States.OpenAll(visit.Page);
        // Before and after the readings, what hangs, the section, four steps of setting the fixing, and its forces.
        await Assertions.Expect(visit.Page.Locator("main .drawing:not(.axes)")).ToHaveCountAsync(9, new() { Timeout = 60_000 });
        Assert.Empty(visit.Errors);
    }
}
