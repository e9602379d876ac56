using System.Text.Json;
using Deque.AxeCore.Commons;
using Microsoft.Playwright;

namespace Pattress.Browser.Tests;

/// <summary>
/// Every rule of axe on the page as it stands. The script is put in once a page and asked again after each turn:
/// putting it in anew each time, through a blank page of its own, costs ten times what the rules cost.
/// </summary>
public static class Axe
{
    private static readonly string Script = new BundledAxeScriptProvider().GetScript();

    private const string Run = """
        async () => {
          const found = await axe.run({ resultTypes: ['violations'] });
          return JSON.stringify({ passes: found.passes.length, violations: found.violations.map(v => `${v.id}: ${v.help}: ${v.nodes.slice(0, 3).map(n => n.html).join(' | ')}`) });
        }
        """;

    /// <summary>What axe finds wrong, a line each; that it looked at all is asserted.</summary>
    public static async Task<IReadOnlyList<string>> Violations(IPage page)
    {
        if (!await page.EvaluateAsync<bool>("'axe' in window")) await page.EvaluateAsync(Script);
        using var answer = JsonDocument.Parse(await page.EvaluateAsync<string>(Run));
        Assert.True(answer.RootElement.GetProperty("passes").GetInt32() > 5, "axe looked at nothing");
        return [.. answer.RootElement.GetProperty("violations").EnumerateArray().Select(v => v.GetString()!)];
    }
}
