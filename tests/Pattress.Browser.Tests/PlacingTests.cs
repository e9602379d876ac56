using System.Text.Json;
using Microsoft.Playwright;

namespace Pattress.Browser.Tests;

/// <summary>A thing is placed by drag, by touch, by keys and by numbers; the drawing follows every frame, the plan soon after.</summary>
public class PlacingTests(Chromium chromium, PublishedApp app)
{
    private const string Thing = "breast-mirror";

    [Theory]
    [InlineData(360)]
    [InlineData(1280)]
    public async Task A_thing_follows_the_mouse_and_settles_where_it_is_let_go(int width)
    {
        await using var visit = await Visit.Back(chromium, app, "/hang/" + Thing, width);
        var (x, y) = await Place(visit);
        var (px, py) = await Middle(visit);
        await visit.Page.Mouse.MoveAsync(px, py);
        await visit.Page.Mouse.DownAsync();
        await visit.Page.Mouse.MoveAsync(px + 30, py - 20, new() { Steps = 6 });
        await NextFrame(visit);
        var (atX, atY) = await Middle(visit);
        Assert.Equal(px + 30, atX, 1.0);
        Assert.Equal(py - 20, atY, 1.0);
        await visit.Page.Mouse.UpAsync();
        double scale = await Scale(visit);
        var (x2, y2) = await Place(visit);
        // A pixel of the screen is what the finger can aim at; the rest is rounding to a millimetre.
        Assert.Equal(x + 30 / scale, x2, 1 / scale + 0.5);
        Assert.Equal(y + 20 / scale, y2, 1 / scale + 0.5);
        await Undo(visit);
        Assert.Equal((x, y), await Place(visit));
    }

    [Fact]
    public async Task While_it_stands_still_under_the_finger_the_verdict_is_already_there()
    {
        await using var visit = await Visit.Back(chromium, app, "/hang/" + Thing, 360);
        var (x, _) = await Place(visit);
        var (px, py) = await Middle(visit);
        double home = await HomeX(visit);
        await visit.Page.Mouse.MoveAsync(px, py);
        await visit.Page.Mouse.DownAsync();
        await visit.Page.Mouse.MoveAsync(px + 25, py, new() { Steps = 5 });
        await visit.Page.WaitForFunctionAsync("x => Number(document.querySelector('[data-handle]').dataset.x) > x + 10", home);
        Assert.True((await Place(visit)).X > x + 50);
        await visit.Page.Mouse.UpAsync();
        await Undo(visit);
        Assert.Equal(x, (await Place(visit)).X);
    }

    [Fact]
    public async Task A_finger_moves_the_thing_and_not_the_page()
    {
        await using var visit = await Visit.To(chromium, app, "/hang/" + Thing, 360, touch: true);
        var (x, _) = await Place(visit);
        await visit.Page.Locator(".handles").ScrollIntoViewIfNeededAsync();
        double scroll = await visit.Page.EvaluateAsync<double>("scrollY");
        var (px, py) = await Middle(visit);
        await Finger.Drag(visit.Page, px, py, px + 40, py + 60);
        Assert.True((await Place(visit)).X > x + 50);
        Assert.Equal(scroll, await visit.Page.EvaluateAsync<double>("scrollY"));
    }

    [Fact]
    public async Task Arrow_keys_move_it_by_ten_and_with_shift_by_one()
    {
        await using var visit = await Visit.Back(chromium, app, "/hang/" + Thing, 1280);
        var (x, y) = await Place(visit);
        await visit.Page.Locator("[data-handle]").FocusAsync();
        foreach (string key in (string[])["ArrowRight", "ArrowRight", "Shift+ArrowLeft", "ArrowDown"]) await visit.Page.Keyboard.PressAsync(key);
        Assert.Equal((x + 19, y - 10), await Place(visit));
    }

    [Fact]
    public async Task Numbers_run_from_the_datum_that_was_chosen()
    {
        await using var visit = await Visit.Back(chromium, app, "/hang/" + Thing, 360);
        await visit.Page.GetByLabel("Measure from").SelectOptionAsync(new SelectOptionValue { Label = "right corner" });
        await Fill(visit, "left of it", "600");
        // The chimney breast of the demo house is 1450 mm wide.
        Assert.Equal(850, (await Place(visit)).X);
        await visit.Page.GetByLabel("Measure from").SelectOptionAsync(new SelectOptionValue { Label = "ceiling and left corner" });
        await Fill(visit, "down from it", "700");
        // ... and 2500 mm high.
        Assert.Equal((850, 1800), await Place(visit));
    }

    [Fact]
    public async Task Brackets_are_placed_by_number_and_by_drag_and_given_back()
    {
        await using var visit = await Visit.Back(chromium, app, "/hang/" + Thing, 360);
        Assert.Empty(await Brackets(visit));
        await Button(visit, "Place them by hand").ClickAsync();
        var placed = await Brackets(visit);
        Assert.Equal(2, placed.Count);
        var second = visit.Page.GetByRole(AriaRole.Group, new() { Name = "Bracket 2", Exact = true });
        await second.GetByLabel("From the left").FillAsync("1000");
        await visit.Page.Keyboard.PressAsync("Enter");
        Assert.Equal(1000, (await Brackets(visit))[1].X);
        await visit.Page.GetByLabel("Move single brackets").CheckAsync();
        await visit.Page.Locator("[data-handle=bracket0]").FocusAsync();
        await visit.Page.Keyboard.PressAsync("ArrowLeft");
        Assert.Equal(placed[0].X - 10, (await Brackets(visit))[0].X, 1e-9);
        await Button(visit, "Let it place them itself").ClickAsync();
        Assert.Empty(await Brackets(visit));
    }

    [Fact]
    public async Task A_window_is_moved_on_the_drawing_of_its_wall()
    {
        await using var visit = await Visit.Back(chromium, app, "/wall/bay/edit", 1280);
        await visit.Page.Locator("[data-handle=bay-window]").FocusAsync();
        await visit.Page.Keyboard.PressAsync("ArrowLeft");
        using var job = await Job(visit);
        // It began at 1250 mm in the sample.
        Assert.Equal(1240, job.RootElement.GetProperty("walls")[0].GetProperty("openings")[0].GetProperty("x_mm").GetDouble());
    }

    private static ILocator Button(Visit visit, string name) => visit.Page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true });

    private static async Task Fill(Visit visit, string label, string value)
    {
        await visit.Page.Locator("fieldset").First.GetByLabel(label).FillAsync(value);
        await visit.Page.Keyboard.PressAsync("Enter");
    }

    private static Task Undo(Visit visit) => Button(visit, "Undo").ClickAsync();

    private static Task NextFrame(Visit visit) => visit.Page.EvaluateAsync("() => new Promise(r => requestAnimationFrame(() => requestAnimationFrame(r)))");

    private static async Task<(float X, float Y)> Middle(Visit visit)
    {
        var box = (await visit.Page.Locator("[data-handle] .grip").First.BoundingBoxAsync())!;
        return (box.X + box.Width / 2, box.Y + box.Height / 2);
    }

    private static Task<double> HomeX(Visit visit) => visit.Page.EvaluateAsync<double>("() => Number(document.querySelector('[data-handle]').dataset.x)");

    /// <summary>Pixels of the screen a millimetre.</summary>
    private static async Task<double> Scale(Visit visit)
    {
        var box = (await visit.Page.Locator(".movable .edge").First.BoundingBoxAsync())!;
        return box.Width / 1450;
    }

    private static Task<JsonDocument> Job(Visit visit) => visit.Ask("JobOnDesk").ContinueWith(t => JsonDocument.Parse(t.Result), TaskScheduler.Default);

    private static async Task<JsonElement> Fixture(Visit visit)
    {
        using var job = await Job(visit);
        return job.RootElement.GetProperty("fixtures").EnumerateArray().Single(f => f.GetProperty("id").GetString() == Thing).Clone();
    }

    private static async Task<(double X, double Y)> Place(Visit visit) => PointOf((await Fixture(visit)).GetProperty("at_mm"));

    private static async Task<IReadOnlyList<(double X, double Y)>> Brackets(Visit visit) =>
        (await Fixture(visit)).TryGetProperty("brackets", out var brackets) ? [.. brackets.EnumerateArray().Select(b => PointOf(b.GetProperty("at_mm")))] : [];

    private static (double X, double Y) PointOf(JsonElement at) => (at[0].GetDouble(), at[1].GetDouble());
}
