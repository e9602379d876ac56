namespace Pattress.Browser.Tests;

/// <summary>Takes pictures of every view when PATTRESS_SCREENS is 1, or of those that it names; they are looked at by people.</summary>
public class ScreenTests(Chromium chromium, PublishedApp app)
{
    [Fact]
    public async Task Pictures_of_every_view()
    {
        if (Environment.GetEnvironmentVariable("PATTRESS_SCREENS") is not { } wanted)
        {
            Assert.Skip("only on demand: PATTRESS_SCREENS=1");
            return;
        }

        foreach (int width in (int[])[360, 1280])
        {
            await using var visit = await Visit.To(chromium, app, "/", width);
            foreach (var (name, path) in Views.All.Where(v => wanted == "1" || wanted.Split(',').Contains(v.Name)))
            {
                await visit.Page.SetViewportSizeAsync(width, 800);
                await visit.Turn(path);
                // The strip at the foot sticks to the window: make the window as high as the page.
                int height = await visit.Page.EvaluateAsync<int>("document.documentElement.scrollHeight");
                await visit.Page.SetViewportSizeAsync(width, Math.Max(640, height));
                string file = Path.Combine(PublishedApp.Root, "docs", "screens", $"{name}-{width}.png");
                await visit.Page.ScreenshotAsync(new() { Path = file, FullPage = true });
                Assert.True(File.Exists(file));
            }
        }
    }
}
