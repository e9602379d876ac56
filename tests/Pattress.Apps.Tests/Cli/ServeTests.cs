using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using System.Text.RegularExpressions;

namespace Pattress.Apps.Tests.Cli;

/// <summary>The published command line serves the app: it finds its files wherever it is started from. The test script publishes it to artifacts/cli.</summary>
public sealed partial class ServeTests
{
    private static readonly string Program = Path.Combine(Samples.Root, "artifacts", "cli", "Pattress.Cli.dll");

    [Fact]
    public async Task The_published_serve_finds_the_files_of_the_app()
    {
        Assert.SkipUnless(File.Exists(Program), "artifacts/cli is not published; ./test publishes it");
        string url = $"http://127.0.0.1:{FreePort()}";
        var start = new ProcessStartInfo("dotnet", [Program, "serve"]) { WorkingDirectory = Path.GetTempPath(), RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment["ASPNETCORE_URLS"] = url;
        using var process = Process.Start(start)!;
        try
        {
            using var client = new HttpClient { BaseAddress = new Uri(url) };
            string page = await Answering(client);
            string script = Script().Match(page).Value;
            Assert.NotEmpty(script);
            Assert.Equal(HttpStatusCode.OK, (await client.GetAsync(script)).StatusCode);
            Assert.Contains("\"verdict\"", await client.GetStringAsync("api/demo/plan"));
        }
        finally
        {
            process.Kill();
            await process.WaitForExitAsync();
        }
    }

    private static async Task<string> Answering(HttpClient client)
    {
        for (int i = 0; ; i++)
        {
            try { return await client.GetStringAsync("/"); }
            catch (HttpRequestException) when (i < 150) { await Task.Delay(200); }
        }
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    [GeneratedRegex(@"_framework/[\w.-]+\.js")]
    private static partial Regex Script();
}
