using System.Diagnostics;
using System.Net;
using System.Net.Sockets;

[assembly: AssemblyFixture(typeof(Pattress.Browser.Tests.PublishedApp))]
// Two visits beside each other, each with a browser context of its own; what is measured runs alone.
[assembly: Xunit.v3.Parallelization(Mode = Xunit.Sdk.ParallelMode.All, MaxThreads = 2)]

namespace Pattress.Browser.Tests;

/// <summary>
/// The published server on a free port of the loopback address. It is taken from the folder that PATTRESS_PUBLISHED names,
/// else from artifacts/server, where the test script puts it; where it is missing it is published once.
/// </summary>
public sealed class PublishedApp : IAsyncLifetime
{
    private Process? _server;

    public string Url { get; private set; } = "";

    public static string Root { get; } = FindRoot();

    public static string Server => Folder("PATTRESS_PUBLISHED", "server", "Pattress.Server");

    public static string CommandLine => Path.Combine(Folder("PATTRESS_PUBLISHED_CLI", "cli", "Pattress.Cli"), "Pattress.Cli.dll");

    public async ValueTask InitializeAsync()
    {
        string folder = Server;
        Url = $"http://127.0.0.1:{FreePort()}";
        var start = new ProcessStartInfo("dotnet", [Path.Combine(folder, "Pattress.Server.dll"), "--urls", Url]) { WorkingDirectory = folder, RedirectStandardOutput = true };
        _server = Process.Start(start) ?? throw new InvalidOperationException("the server did not start");
        _server.BeginOutputReadLine();
        await Answering();
    }

    public async ValueTask DisposeAsync()
    {
        if (_server is null) return;
        if (!_server.HasExited) _server.Kill();
        await _server.WaitForExitAsync();
        _server.Dispose();
    }

    /// <summary>Runs a program and gives what it printed.</summary>
    public static async Task<string> Run(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { WorkingDirectory = Root, RedirectStandardOutput = true })!;
        string output = await process.StandardOutput.ReadToEndAsync();
        await process.WaitForExitAsync();
        Assert.True(process.ExitCode == 0, $"{program} {string.Join(' ', arguments)}: exit code {process.ExitCode}");
        return output;
    }

    private static string Folder(string variable, string name, string project)
    {
        string folder = Environment.GetEnvironmentVariable(variable) ?? Path.Combine(Root, "artifacts", name);
        if (File.Exists(Path.Combine(folder, project + ".dll"))) return folder;
        Run("dotnet", "publish", Path.Combine("src", project), "-c", "Release", "-v", "q", "--nologo", "-o", folder).GetAwaiter().GetResult();
        return folder;
    }

    private async Task Answering()
    {
        using var client = new HttpClient();
        for (int i = 0; i < 600; i++)
        {
            Assert.False(_server!.HasExited, "the server stopped");
            try
            {
                if ((await client.GetAsync(Url)).StatusCode == HttpStatusCode.OK) return;
            }
            catch (HttpRequestException)
            {
                // Not listening yet.
            }

            await Task.Delay(100);
        }

        Assert.Fail("the server did not answer within a minute");
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private static string FindRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (File.Exists(Path.Combine(folder.FullName, "Pattress.slnx"))) return folder.FullName;
        throw new DirectoryNotFoundException("no Pattress.slnx above " + AppContext.BaseDirectory);
    }
}
