using Microsoft.Playwright;

namespace Pattress.Browser.Tests;

/// <summary>A finger on the glass, by the browser's own touch events.</summary>
internal static class Finger
{
    public static async Task Drag(IPage page, double fromX, double fromY, double toX, double toY)
    {
        var session = await page.Context.NewCDPSessionAsync(page);
        await Touch(session, "touchStart", fromX, fromY);
        for (int i = 1; i <= 8; i++) await Touch(session, "touchMove", fromX + (toX - fromX) * i / 8, fromY + (toY - fromY) * i / 8);
        await session.SendAsync("Input.dispatchTouchEvent", new() { ["type"] = "touchEnd", ["touchPoints"] = Array.Empty<object>() });
        await session.DetachAsync();
    }

    private static Task Touch(ICDPSession session, string type, double x, double y) => session.SendAsync(
        "Input.dispatchTouchEvent", new() { ["type"] = type, ["touchPoints"] = new[] { new Dictionary<string, object> { ["x"] = x, ["y"] = y } } });
}
