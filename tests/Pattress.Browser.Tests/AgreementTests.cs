using System.Text;
using System.Text.Json;

namespace Pattress.Browser.Tests;

/// <summary>
/// The same job planned by the command line, the HTTP API and the browser. Phone and server agree bit for bit in + - x and
/// square roots, not in exp and log, so numbers are compared to 1e-9; words, and so every verdict, must be the same.
/// </summary>
public class AgreementTests(Chromium chromium, PublishedApp app)
{
    private static string Sample => Path.Combine(PublishedApp.Root, "samples", "demo-house.job.json");

    [Fact]
    public async Task The_browser_alone_agrees_with_the_command_line()
    {
        string command = await PublishedApp.Run("dotnet", PublishedApp.CommandLine, "plan", Sample, "--json");
        await using var visit = await Visit.To(chromium, app, "/plan", 1280, blockApi: true);
        Same(command, await visit.Ask("PlanOnDesk"));
        Assert.DoesNotContain(visit.Requests, r => r.Contains("/api/", StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_api_agrees_with_the_command_line()
    {
        string command = await PublishedApp.Run("dotnet", PublishedApp.CommandLine, "plan", Sample, "--json");
        using var client = new HttpClient();
        using var body = new StringContent(await File.ReadAllTextAsync(Sample), Encoding.UTF8, "application/json");
        using var reply = await client.PostAsync(app.Url + "/api/plan", body);
        Assert.True(reply.IsSuccessStatusCode, reply.StatusCode.ToString());
        Same(command, await reply.Content.ReadAsStringAsync());
    }

    [Fact]
    public async Task The_document_on_the_desk_plans_the_same_on_the_command_line()
    {
        await using var visit = await Visit.Back(chromium, app, "/plan", 1280, blockApi: true);
        string file = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".job.json");
        await File.WriteAllTextAsync(file, await visit.Ask("JobOnDesk"));
        try
        {
            Same(await PublishedApp.Run("dotnet", PublishedApp.CommandLine, "plan", file, "--json"), await visit.Ask("PlanOnDesk"));
        }
        finally
        {
            File.Delete(file);
        }
    }

    internal static void Same(string expected, string actual)
    {
        using JsonDocument a = JsonDocument.Parse(expected), b = JsonDocument.Parse(actual);
        Assert.True(a.RootElement.GetProperty("items").GetArrayLength() > 0);
        var differences = new List<string>();
        Compare(a.RootElement, b.RootElement, "$", differences);
        Assert.True(differences.Count == 0, string.Join("\n", differences.Take(20)));
    }

    private static void Compare(JsonElement a, JsonElement b, string path, List<string> differences)
    {
        if (a.ValueKind != b.ValueKind) differences.Add($"{path}: {a} and {b}");
        else if (a.ValueKind == JsonValueKind.Object) CompareObjects(a, b, path, differences);
        else if (a.ValueKind == JsonValueKind.Array) CompareArrays(a, b, path, differences);
        else if (a.ValueKind == JsonValueKind.Number ? !Near(a.GetDouble(), b.GetDouble()) : a.ToString() != b.ToString()) differences.Add($"{path}: {a} and {b}");
    }

    private static bool Near(double a, double b) => a == b || Math.Abs(a - b) <= 1e-9 * Math.Max(Math.Abs(a), Math.Abs(b));

    private static void CompareObjects(JsonElement a, JsonElement b, string path, List<string> differences)
    {
        var names = a.EnumerateObject().Select(p => p.Name).Union(b.EnumerateObject().Select(p => p.Name));
        foreach (string name in names)
        {
            if (a.TryGetProperty(name, out var x) && b.TryGetProperty(name, out var y)) Compare(x, y, path + "." + name, differences);
            else differences.Add($"{path}.{name} is there only once");
        }
    }

    private static void CompareArrays(JsonElement a, JsonElement b, string path, List<string> differences)
    {
        if (a.GetArrayLength() != b.GetArrayLength()) differences.Add($"{path}: {a.GetArrayLength()} and {b.GetArrayLength()} of them");
        foreach (var (x, y, i) in a.EnumerateArray().Zip(b.EnumerateArray()).Select((p, i) => (p.First, p.Second, i))) Compare(x, y, $"{path}[{i}]", differences);
    }
}
