namespace Pattress.Browser.Tests;

/// <summary>
/// Takes pictures of every view when PATTRESS_SCREENS is 1, or of those that it names, in every theme, into docs/screens; they are
/// looked at by people. Of a very long page the first part is taken.
/// </summary>
public class ScreenTests(Chromium chromium, PublishedApp app)
{
    private const int MostPx = 3600;

    private static readonly string[] Themes = ["light", "dark", "sun"];

    [Fact]
    public async Task Pictures_of_every_view()
    {
        if (Environment.GetEnvironmentVariable("PATTRESS_SCREENS") is not { } wanted)
        {
            Assert.Skip("only on demand: PATTRESS_SCREENS=1");
            return;
        }

        var views = Views.All.Where(v => wanted == "1" || wanted.Split(',').Contains(v.Name)).ToList();
        var states = States.Pictured.Where(s => wanted == "1" || wanted.Split(',').Contains(s.Name)).ToList();
        foreach (int width in (int[])[360, 1280])
        {
            await using var visit = await Visit.To(chromium, app, "/", width);
            foreach (var (name, path) in views)
            {
                await visit.Page.SetViewportSizeAsync(width, 800);
                await visit.Turn(path);
                await Take(visit, name, width);
            }

            foreach (var state in states)
            {
                await visit.Page.SetViewportSizeAsync(width, 800);
                await visit.Turn("/help");
                await visit.Turn(state.Path);
                await state.Bring(visit.Page);
                await visit.Page.WaitForTimeoutAsync(150);
                await Take(visit, state.Name.Replace(' ', '-').Replace(",", "", StringComparison.Ordinal), width);
            }
        }
    }

    private static async Task Take(Visit visit, string name, int width)
    {
        foreach (string theme in Themes)
        {
            await visit.Page.EvaluateAsync("theme => document.documentElement.dataset.theme = theme", theme);
            // The strip at the foot sticks to the window: make the window as high as the page. A sheet lies over the window as it is.
            int height = await visit.Page.EvaluateAsync<int>("document.querySelector('dialog[open]') ? 800 : document.documentElement.scrollHeight");
            await visit.Page.SetViewportSizeAsync(width, Math.Clamp(height, 640, MostPx));
            byte[] picture = await visit.Page.ScreenshotAsync();
            await File.WriteAllBytesAsync(Path.Combine(PublishedApp.Root, "docs", "screens", $"{name}-{width}-{theme}.png"), SmallPicture.Of(picture));
        }

        await visit.Page.EvaluateAsync("delete document.documentElement.dataset.theme");
    }
}
